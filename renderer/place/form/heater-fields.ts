import type { Heater } from '../../../core/index.ts';
import { choice, named, number, plain } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import { burns } from './cautions.ts';
import { heaterOptions } from './choices.ts';

const isBurner = (heater: Heater) => burns(heater.kind);
const isPump = (heater: Heater) => heater.kind === 'heat-pump';
const pumpRefusal = (mild: number, cold: number) =>
  mild >= cold ? null : 'It cannot give more heat for its electricity in colder air.';
const emptyTank = 'leave empty where it is not reckoned with';

export const heaterFields: readonly Field<Heater>[] = [
  named('name'),
  choice('kind', 'Kind', heaterOptions),
  number('power', 'Heat at full power', 'W', [1, 100000], { words: 'power' }),
];

export const holdFields: readonly Field<Heater>[] = [
  number('setPointDay', 'Holds by day', '°C', [-20, 40], { words: 'held by day' }),
  number('setPointNight', 'Holds by night', '°C', [-20, 40], { words: 'held by night' }),
];

/** What only burners and heat pumps have. */
export const fuelFields: readonly Field<Heater>[] = [
  number('tank', 'A full bottle holds', 'kg', [0.1, 5000], {
    empty: true,
    hint: emptyTank,
    words: 'bottle',
    shown: (heater) => heater.kind === 'propane',
  }),
  number('tank', 'A full tank holds', 'litres', [0.1, 5000], {
    empty: true,
    hint: emptyTank,
    words: 'tank',
    shown: (heater) => heater.kind === 'paraffin',
  }),
  plain('tick', 'flued', 'Burnt gases leave through a flue', { words: 'flue', shown: isBurner }),
  number('coefficientAt7', 'Heat for electricity at 7 °C outdoors', '', [1, 8], {
    shown: isPump,
    words: 'coefficient at 7 °C',
    hint: 'times; on its label, rated by EN 14511',
    refuse: (value, heater) => pumpRefusal(value, heater.coefficientAtMinus7),
  }),
  number('coefficientAtMinus7', 'Heat for electricity at −7 °C outdoors', '', [1, 8], {
    shown: isPump,
    words: 'coefficient at −7 °C',
    refuse: (value, heater) => pumpRefusal(heater.coefficientAt7, value),
  }),
];

export const thermostatFields: readonly Field<Heater>[] = [
  number('differential', 'Thermostat switches within', 'K', [0, 6], { words: 'thermostat' }),
];

type Hours = NonNullable<Heater['hours']>;
export const hoursFields: readonly Field<Hours>[] = [
  plain('clock', 'from', 'Holds from'),
  plain('clock', 'to', 'Holds to'),
];
export const firstHours: Hours = { from: '17:00', to: '08:00' };

/** Without hours it holds all day, and there is no time outside them. */
export const frostWatchFields: readonly Field<Heater>[] = [
  number('frostWatch', 'Outside these hours it still keeps', '°C', [-20, 30], {
    empty: true,
    hint: 'frost watch; leave empty for off',
    words: 'frost watch',
    shown: (heater) => heater.hours !== null,
  }),
];
