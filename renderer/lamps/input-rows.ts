import { burningHours } from '../../core/index.ts';
import type { Lamp } from '../../core/index.ts';
import { formatHours, formatLength, formatMoney, formatNumber, formatPower } from '../state/units.ts';
import type { UnitPreferences } from '../state/units.ts';
import { hoursWords, namedHours, withHours } from './hours.ts';

/** A row of the ledger in which each option has a number to type. */
export interface InputRow {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly minimum: number;
  readonly maximum: number;
  readonly integer?: boolean;
  readonly digits?: number;
  readonly value: (lamp: Lamp) => number;
  readonly part: (lamp: Lamp, value: number) => Partial<Lamp>;
  /** How it is for a lamp that is there, in words. */
  readonly words: (lamp: Lamp) => string;
  /** What more there is to say below the number; '' where nothing is. */
  readonly hint?: (lamp: Lamp) => string;
}

/** What a grower changes most; the rest of a lamp stands under its own disclosure. */
export function inputRows(units: UnitPreferences, currency: string): readonly InputRow[] {
  return [
    {
      id: 'watts',
      label: 'Watts at the plug, each',
      unit: 'W',
      minimum: 0.5,
      maximum: 5000,
      digits: 1,
      value: (lamp) => lamp.watts,
      part: (_, watts) => ({ watts }),
      words: (lamp) => formatPower(lamp.watts),
    },
    {
      id: 'count',
      label: 'How many',
      unit: '',
      minimum: 1,
      maximum: 100,
      integer: true,
      value: (lamp) => lamp.count,
      part: (_, count) => ({ count }),
      words: (lamp) => formatNumber(lamp.count),
    },
    {
      id: 'height',
      label: 'Height over the plants',
      unit: 'm',
      minimum: 0.02,
      maximum: 5,
      digits: 2,
      value: (lamp) => lamp.height,
      part: (_, height) => ({ height }),
      words: (lamp) => formatLength(lamp.height, units),
    },
    {
      id: 'hours',
      label: 'Hours on a day',
      unit: 'h',
      minimum: 0.25,
      maximum: 24,
      digits: 2,
      value: namedHours,
      part: (lamp, hours) => withHours(lamp, hours),
      words: (lamp) => formatHours(namedHours(lamp)),
      hint: (lamp) => (burningHours(lamp) === 24 && lamp.control.kind === 'clock' ? '' : hoursWords(lamp)),
    },
    {
      id: 'dimming',
      label: 'Dimmed to',
      unit: '%',
      minimum: 10,
      maximum: 100,
      digits: 0,
      value: (lamp) => Number((lamp.dimming * 100).toPrecision(12)),
      part: (_, percent) => ({ dimming: percent / 100 }),
      words: (lamp) => (lamp.dimming === 1 ? 'full light' : `${formatNumber(lamp.dimming * 100)}\u00a0%`),
    },
    {
      id: 'price',
      label: `Price to buy, all of them (${currency})`,
      unit: '',
      minimum: 0,
      maximum: 100000,
      digits: 2,
      value: (lamp) => lamp.price,
      part: (_, price) => ({ price }),
      words: (lamp) => (lamp.price > 0 ? `${formatMoney(lamp.price, currency)}, paid` : 'paid'),
    },
  ];
}
