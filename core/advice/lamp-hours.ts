import type { Lamp } from '../plan/lamp.ts';
import { minutesOf } from '../plan/fields.ts';
import type { Tariff } from '../plan/schema.ts';
import { spanMinutes } from '../cost/index.ts';
import { shiftClock } from './change.ts';

const dayMinutes = 1440;

/** Hours a day the clock lets a lamp burn, both blocks together and shared minutes counted once [h]. */
export function burningHours({ on, off, second }: Pick<Lamp, 'on' | 'off' | 'second'>): number {
  const first = spanMinutes(on, off);
  if (second === null) return first / 60;
  const lit = new Uint8Array(dayMinutes);
  const light = (from: number, length: number) => {
    for (let minute = 0; minute < length; minute++) lit[(from + minute) % dayMinutes] = 1;
  };
  light(minutesOf(on), first);
  light(minutesOf(second.on), spanMinutes(second.on, second.off));
  return lit.reduce((sum, value) => sum + value, 0) / 60;
}

type ClockHours = Pick<Lamp, 'on' | 'off' | 'second'>;

/**
 * A lamp's clock hours made longer by `extra` minutes, or shorter where they are negative. One block is moved at its
 * end, then at its beginning, half and half; of two the shorter gap between them is filled until they are one, or
 * the second is cut until it is gone.
 */
export function stretchedHours({ on, off, second }: ClockHours, extra: number): ClockHours {
  if (second === null) {
    const later = Math.round(extra / 2 / 15) * 15;
    return { on: shiftClock(on, later - extra), off: shiftClock(off, later), second };
  }
  const length = spanMinutes(second.on, second.off);
  if (extra <= -length) return stretchedHours({ on, off, second: null }, extra + length);
  const longer = (time: string) => shiftClock(time, extra);
  if (extra < 0) return { on, off, second: { on: second.on, off: longer(second.off) } };
  const [between, around] = [spanMinutes(off, second.on), spanMinutes(second.off, on)];
  if (between <= around) {
    return extra < between
      ? { on, off: longer(off), second }
      : stretchedHours({ on, off: second.off, second: null }, extra - between);
  }
  return extra < around
    ? { on, off, second: { on: second.on, off: longer(second.off) } }
    : stretchedHours({ on: second.on, off, second: null }, extra - around);
}

/** One block of so many minutes from a time; the whole day as 00:00 to 24:00. */
function blockFrom(begin: number, minutes: number): { on: string; off: string } {
  if (minutes >= dayMinutes) return { on: '00:00', off: '24:00' };
  const on = shiftClock('00:00', begin);
  return { on, off: shiftClock(on, minutes) };
}

/** Ways to lay a lamp's clock hours: one block begun at each of `starts`, or the night price first and the rest elsewhere. */
export function placedLamps(lamp: Lamp, starts: readonly number[], tariff: Tariff): Lamp[] {
  if (lamp.control.kind === 'extend') {
    const { control } = lamp;
    return (['dawn', 'dusk', 'both'] as const).map((end) => ({ ...lamp, control: { ...control, end } }));
  }
  const minutes = Math.round(burningHours(lamp) * 60);
  if (minutes === 0) return [];
  const single = starts.map((start) => ({ ...lamp, ...blockFrom(start, minutes), second: null }));
  return [...single, ...split(lamp, starts, minutes, tariff)];
}

/** The night price's hours whole, and what is left of the lamp's hours begun at each start that does not overlap them. */
function split(lamp: Lamp, starts: readonly number[], minutes: number, tariff: Tariff): Lamp[] {
  if (tariff.nightPrice === null || tariff.nightPrice >= tariff.dayPrice) return [];
  const cheap = spanMinutes(tariff.nightFrom, tariff.nightTo);
  const rest = minutes - cheap;
  if (cheap === 0 || rest <= 0) return [];
  const from = minutesOf(tariff.nightFrom);
  return starts.flatMap((start) => {
    const after = (start - from + dayMinutes) % dayMinutes;
    if (after <= cheap || after + rest >= dayMinutes) return [];
    return [{ ...lamp, on: tariff.nightFrom, off: tariff.nightTo, second: blockFrom(start, rest) }];
  });
}
