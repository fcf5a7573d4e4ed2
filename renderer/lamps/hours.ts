import { burningHours } from '../../core/index.ts';
import type { Lamp, Tariff } from '../../core/index.ts';
import { formatHours, formatNumber } from '../state/units.ts';

const day = 1440;

/** Minutes after midnight of `HH:MM`. */
export function minutesOf(time: string): number {
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
}

/** `HH:MM` of minutes after midnight; 24:00 only for a lamp that never goes off. */
export function clock(minutes: number): string {
  const wrapped = minutes === day ? day : ((minutes % day) + day) % day;
  return `${String(Math.floor(wrapped / 60)).padStart(2, '0')}:${String(wrapped % 60).padStart(2, '0')}`;
}

/** Length of a span [min]; through midnight where `off` comes before `on`, none where they are the same. */
function spanOf({ on, off }: { readonly on: string; readonly off: string }): number {
  const span = minutesOf(off) - minutesOf(on);
  return span >= 0 ? span : span + day;
}

type Times = Pick<Lamp, 'on' | 'off' | 'second'>;

/** Hours a day a grower would name: those of the clock, or of the day that the lamp lengthens to. */
export function namedHours(lamp: Lamp): number {
  return lamp.control.kind === 'extend' ? lamp.control.hours : burningHours(lamp);
}

/** The lamp for so many hours, a lengthened day no longer than the longest allowed: the first block ends later or sooner, a second block stays while it is clear of it. */
export function withHours(lamp: Lamp, hours: number): Lamp {
  if (lamp.control.kind === 'extend') {
    const most = lamp.mostDay ?? 24;
    return { ...lamp, control: { ...lamp.control, hours: Math.min(most, Math.max(1, hours)) } };
  }
  if (hours >= 24) return { ...lamp, on: '00:00', off: '24:00', second: null };
  const minutes = Math.round(hours * 60);
  const on = minutesOf(lamp.on);
  const single = { ...lamp, second: null, off: clock(on + minutes) };
  if (!lamp.second) return single;
  const first = minutes - spanOf(lamp.second);
  const clear = spanOf({ on: lamp.on, off: lamp.second.on });
  return first < 1 || first > clear ? single : { ...lamp, off: clock(on + first) };
}

/** How the hours come about, in words: `07:00 to 19:00`, `day made 14 h long`. */
export function hoursWords(lamp: Lamp): string {
  const { control, mostDay } = lamp;
  const most = mostDay === null ? '' : `, no day over ${formatHours(mostDay)}`;
  if (control.kind === 'extend') {
    const end = { dawn: 'before dawn', dusk: 'after dusk', both: 'before dawn and after dusk' }[control.end];
    return `day made ${formatHours(control.hours)} long, ${end}${most}`;
  }
  const dim =
    control.kind === 'daylight' ? `, while daylight is under ${formatNumber(control.below)} µmol` : '';
  return `${timesWords(lamp)}${dim}${most}`;
}

export function timesWords(times: Times): string {
  const first = spanOf(times) === day ? 'all day' : `${times.on} to ${times.off}`;
  return times.second ? `${first} and ${times.second.on} to ${times.second.off}` : first;
}

/** A stretch of the 24 hours [min], never through midnight. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A span of the clock as stretches of one day, cut at midnight. */
export function stretches({ on, off }: { readonly on: string; readonly off: string }): Stretch[] {
  const from = minutesOf(on) % day;
  const length = spanOf({ on, off });
  if (length === 0) return [];
  const to = from + length;
  return to <= day
    ? [{ from, to }]
    : [
        { from, to: day },
        { from: 0, to: to - day },
      ];
}

export function litStretches(times: Times): Stretch[] {
  return [...stretches(times), ...(times.second ? stretches(times.second) : [])];
}

/** Stretches of a day that begins at noon, so that a night is whole: cut at noon, joined at midnight. */
export function fromNoon(spans: readonly Stretch[]): Stretch[] {
  const noon = day / 2;
  const cut = spans
    .flatMap(({ from, to }) =>
      from < noon && to > noon
        ? [
            { from, to: noon },
            { from: noon, to },
          ]
        : [{ from, to }],
    )
    .map(({ from, to }) => ({ from: (from + noon) % day, to: ((from + noon) % day) + to - from }))
    .sort((a, b) => a.from - b.from);
  return cut.reduce<Stretch[]>((joined, span) => {
    const last = joined.at(-1);
    return last && last.to === span.from
      ? [...joined.slice(0, -1), { from: last.from, to: span.to }]
      : [...joined, span];
  }, []);
}

/** When the night price holds; none without one. */
export function cheapStretches(tariff: Tariff): Stretch[] {
  return tariff.nightPrice === null ? [] : stretches({ on: tariff.nightFrom, off: tariff.nightTo });
}

/** Hours of the day that are the coldest third outdoors, as stretches, from the mean of each hour. */
export function coldStretches(meanByHour: readonly number[]): Stretch[] {
  const limit = [...meanByHour].sort((a, b) => a - b)[Math.floor(meanByHour.length / 3) - 1];
  const found: { from: number; to: number }[] = [];
  meanByHour.forEach((value, hour) => {
    if (!(value <= limit)) return;
    const last = found.at(-1);
    if (last && last.to === hour * 60) last.to += 60;
    else found.push({ from: hour * 60, to: hour * 60 + 60 });
  });
  return found;
}
