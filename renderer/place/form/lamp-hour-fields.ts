import { daylightReaches, holdsAtNoTime, hoursOverlap } from '../../../core/index.ts';
import type { Lamp, LampControl, Place } from '../../../core/index.ts';
import { choice, number, plain } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import type { Option } from '../../forms/option.ts';
import { formatHours } from '../../state/units.ts';
import { optionsFrom } from './choices.ts';

type ControlOf<K extends LampControl['kind']> = Extract<LampControl, { kind: K }>;
type Block = NonNullable<Lamp['second']>;

const always = 'It would burn always or never: a whole day is 0:00 to 24:00.';

/** Why a block of hours cannot stand, by itself or beside the other one; null where it can. */
function blockRefusal(block: Block, other: Block | null): string | null {
  if (holdsAtNoTime(block.on, block.off)) return always;
  if (other === null || holdsAtNoTime(other.on, other.off) || !hoursOverlap(block, other)) return null;
  return `It would run into the other block, ${other.on} to ${other.off}.`;
}

/** By the clock, also where the sun or dark days have their say within these hours. */
export const clockFields: readonly Field<Lamp>[] = [
  plain('clock', 'on', 'On at', {
    words: 'on at another time',
    refuse: (on, lamp) => blockRefusal({ on, off: lamp.off }, lamp.second),
  }),
  plain('clock', 'off', 'Off at', {
    words: 'off at another time',
    refuse: (off, lamp) => blockRefusal({ on: lamp.on, off }, lamp.second),
  }),
];

export const secondFields = (lamp: Lamp): readonly Field<Block>[] => [
  plain('clock', 'on', 'On again at', {
    words: 'second block on',
    refuse: (on, { off }) => blockRefusal({ on, off }, lamp),
  }),
  plain('clock', 'off', 'Off again at', {
    words: 'second block off',
    refuse: (off, { on }) => blockRefusal({ on, off }, lamp),
  }),
];

const minutes = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
const clock = (after: number) => {
  const at = (Math.round(after / 15) * 15) % 1440;
  return `${String(Math.floor(at / 60)).padStart(2, '0')}:${String(at % 60).padStart(2, '0')}`;
};

/** A second block of two hours at most in the middle of the dark ones; null where less than an hour is dark. */
export function firstSecond({ on, off }: Lamp): Block | null {
  const dark = (minutes(on) - minutes(off) + 2880) % 1440;
  if (dark < 60) return null;
  const start = minutes(off) + dark / 2 - Math.min(60, dark / 4);
  const block = { on: clock(start), off: clock(start + Math.min(120, dark / 2)) };
  return blockRefusal(block, { on, off }) === null ? block : null;
}

/** What may switch it: the sun only where it reaches the plants. */
export function controlOptions(lamp: Lamp, place: Place | null): Option[] {
  const daylit = place === null || daylightReaches(place) || lamp.control.kind !== 'clock';
  return optionsFrom({
    clock: 'the clock',
    ...(daylit
      ? { extend: 'dusk and dawn, to lengthen the day', daylight: 'the clock, on dark days only' }
      : {}),
  });
}

/** Another switch starts at what is usual (common practice, no source). */
export function controlFrom(kind: string, { mostDay }: Lamp): LampControl {
  if (kind === 'extend') return { kind, hours: Math.min(12, mostDay ?? 12), end: 'both' };
  if (kind === 'daylight') return { kind, below: 150, deadTime: 30 };
  return { kind: 'clock' };
}

const pastMost = (hours: number) => `That is past the longest day allowed, ${formatHours(hours)}.`;

export const extendFields = ({ mostDay }: Lamp): readonly Field<ControlOf<'extend'>>[] => [
  number('hours', 'Makes the day', 'h', [1, 24], {
    words: 'length of the day',
    hint: 'civil twilight counts',
    refuse: (hours) => (mostDay === null || hours <= mostDay ? null : pastMost(mostDay)),
  }),
  choice(
    'end',
    'It burns',
    optionsFrom({ dawn: 'before dawn', dusk: 'after dusk', both: 'half before dawn, half after dusk' }),
    { words: 'end of the day' },
  ),
];

export const darkDayFields: readonly Field<ControlOf<'daylight'>>[] = [
  number('below', 'Burns while daylight is under', 'µmol m⁻² s⁻¹', [1, 2000], {
    words: 'daylight it waits for',
    hint: 'at the plants',
  }),
  number('deadTime', 'Then stays so for at least', 'min', [0, 240], { digits: 0, words: 'dead time' }),
];

export const dayFields: readonly Field<Lamp>[] = [
  number('mostDay', 'Longest day it may make', 'h', [4, 24], {
    empty: true,
    words: 'longest day',
    hint: 'for plants that flower in short days; leave empty for none',
    refuse: (most, { control }) =>
      control.kind !== 'extend' || control.hours <= most
        ? null
        : `It is set to make the day ${formatHours(control.hours)} long.`,
  }),
];
