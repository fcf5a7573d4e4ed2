import { burningHours, coverings, heaterOf, lampOf } from '../../core/index.ts';
import type { Heater, Lamp, Place, Plan } from '../../core/index.ts';
import { clock, hoursWords, minutesOf, namedHours, withHours } from '../lamps/hours.ts';
import { formatHours, formatNumber, formatPower, formatTemperature } from '../state/units.ts';
import type { UnitPreferences } from '../state/units.ts';

/** What can be moved at a place without opening its form. All functions give a new plan. */
export function withPlace(plan: Plan, placeId: string, change: (place: Place) => Place): Plan {
  return { ...plan, places: plan.places.map((place) => (place.id === placeId ? change(place) : place)) };
}

export function withLamp(place: Place, index: number, change: Partial<Lamp>): Place {
  return { ...place, lamps: place.lamps.map((lamp, at) => (at === index ? { ...lamp, ...change } : lamp)) };
}

export function withHeater(place: Place, index: number, change: Partial<Heater>): Place {
  return {
    ...place,
    heaters: place.heaters.map((heater, at) => (at === index ? { ...heater, ...change } : heater)),
  };
}

/** Hours a day that a lamp is on, or those of the day it lengthens to. */
export const lampHours = namedHours;

/** The lamp burning `hours` a day, from when it goes on now. */
export function lampForHours(lamp: Lamp, hours: number): Partial<Lamp> {
  const { on, off, second } = withHours(lamp, hours);
  return { on, off, second };
}

/** The lamp going on at `minutes` after midnight, for as long as now; a second block moves along. */
export function lampFrom(lamp: Lamp, minutes: number): Partial<Lamp> {
  if (burningHours(lamp) === 24) return {};
  const later = minutes - minutesOf(lamp.on);
  const moved = ({ on, off }: { readonly on: string; readonly off: string }) => ({
    on: clock(minutesOf(on) + later),
    off: clock(minutesOf(off) + later),
  });
  return { ...moved(lamp), second: lamp.second && moved(lamp.second) };
}

export const startMinutes = (lamp: Lamp) => minutesOf(lamp.on) % 1440;

/** What a hardware shop sells (common practice, no source); enough to see what heating would do. */
export const triedHeater: Heater = heaterOf({
  id: 'tried-heater',
  name: 'Fan heater',
  kind: 'fan',
  power: 1000,
  setPointDay: 5,
  setPointNight: 5,
});

/** A white LED of 130 W a square metre of growing area, hung 40 cm over the plants (common practice, no source). */
export function triedLamp(place: Place): Lamp {
  const side = Math.min(1.2, Math.sqrt(place.growingArea) * 0.7);
  return lampOf({
    id: 'tried-lamp',
    name: 'LED panel',
    technology: 'led-white',
    watts: Math.max(10, Math.round((place.growingArea * 130) / 5) * 5),
    efficacy: 2.6,
    count: 1,
    height: 0.4,
    length: side,
    width: side,
    on: '07:00',
    off: '19:00',
  });
}

export const linings = () => coverings.filter((covering) => covering.use === 'lining');
export const fleeces = () => coverings.filter((covering) => covering.use === 'fleece');

const nameOf = (id: string | null) => coverings.find((covering) => covering.id === id)?.name ?? 'none';

/** A glazed place can be lined; a tent, a shelf or a list of surfaces cannot. */
export function canLine(place: Place): boolean {
  return !['tent', 'shelf', 'listed'].includes(place.shape.kind);
}

/** What differs between two states of a place, each in a few words: `lamp 14 h a day`, `bubble lining`. */
export function changesOf(before: Place, after: Place, units: UnitPreferences): string[] {
  const words: string[] = [];
  after.lamps.forEach((lamp, index) => {
    const was = before.lamps[index];
    if (!was) words.push(`${lamp.name} ${formatPower(lamp.watts)}`);
    else {
      if (lampHours(was) !== lampHours(lamp))
        words.push(`${lamp.name} ${formatHours(lampHours(lamp))} a day`);
      else if (hoursWords(was) !== hoursWords(lamp)) words.push(`${lamp.name} ${hoursWords(lamp)}`);
      if (was.watts !== lamp.watts) words.push(`${lamp.name} ${formatPower(lamp.watts)}`);
      if (was.dimming !== lamp.dimming) words.push(`${lamp.name} at ${formatNumber(lamp.dimming * 100)} %`);
    }
  });
  after.heaters.forEach((heater, index) => {
    const was = before.heaters[index];
    if (!was || was.setPointNight !== heater.setPointNight || was.setPointDay !== heater.setPointDay)
      words.push(`${heater.name} set to ${formatTemperature(heater.setPointNight, units, 1)}`);
  });
  if (before.lining !== after.lining)
    words.push(after.lining === null ? 'no lining' : nameOf(after.lining).toLowerCase());
  const [was, now] = [before.fleece, after.fleece];
  if (JSON.stringify(was) !== JSON.stringify(now))
    words.push(
      now === null
        ? 'no fleece'
        : `${nameOf(now.covering).toLowerCase()}, ${now.layers} layer${now.layers === 1 ? '' : 's'}`,
    );
  return words;
}

/** All that a trial changes, place by place; '' where it changes nothing. */
export function trialWords(before: Plan, after: Plan, units: UnitPreferences): string {
  const parts = after.places.flatMap((place) => {
    const was = before.places.find((each) => each.id === place.id);
    const changes = was ? changesOf(was, place, units) : ['new'];
    return changes.length === 0 ? [] : [`${place.name}: ${changes.join(', ')}`];
  });
  return parts.join('; ');
}
