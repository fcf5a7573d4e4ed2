import { lampOf, lampTechnologies } from '../../core/index.ts';
import type { Lamp, LampOption, Place, Plan } from '../../core/index.ts';
import { namedHours, withHours } from './hours.ts';

/** An option while it is being put together: a whole lamp, and whether the user named it. */
export interface LampDraft {
  readonly id: string;
  readonly lamp: Lamp;
  readonly named: boolean;
}

export const mostOptions = 6;

/** Most letters of a lamp's name that a plan keeps. */
const longestName = 60;
/** Highest price of lamps that a plan keeps. */
const mostPrice = 100_000;

/** Where a place has no lamp yet: recent LED [W m⁻²] and the area one lamp lights [m²]. Common practice, no source. */
const wattsOnSquareMetre = 75;
const areaOfOneLamp = 0.6;

/** A draft like a lamp that is there, all its fields kept. */
export function draftOf(lamp: Lamp, id: string): LampDraft {
  return { id, lamp: { ...lamp, id }, named: false };
}

/** A draft with some fields of its lamp changed; a price that was the usual one stays the usual one. */
export function withPart(draft: LampDraft, part: Partial<Lamp>): LampDraft {
  const lamp = withHalf({ ...draft.lamp, ...part }, draft.lamp, part);
  const follows = part.price === undefined && draft.lamp.price === usualPrice(draft.lamp);
  return { ...draft, lamp: follows ? { ...lamp, price: usualPrice(lamp) } : lamp };
}

/** Watts measured at half the light keep their proportion where the lamp's watts change. */
function withHalf(lamp: Lamp, before: Lamp, part: Partial<Lamp>): Lamp {
  if (part.watts === undefined || part.wattsAtHalf !== undefined || lamp.wattsAtHalf === null) return lamp;
  return { ...lamp, wattsAtHalf: Math.max(0.1, (lamp.wattsAtHalf * lamp.watts) / before.watts) };
}

/** A draft under a name of the user's choice; an empty one changes nothing. */
export function withName(draft: LampDraft, text: string): LampDraft {
  const name = text.trim().slice(0, longestName);
  return name === '' ? draft : { ...draft, named: true, lamp: { ...draft.lamp, name } };
}

/** What a technology brings along when it is chosen: its usual efficacy, price and, unless named, its name. */
export function withTechnology(draft: LampDraft, technologyId: string): LampDraft {
  const technology = lampTechnologies.find((one) => one.id === technologyId);
  if (!technology) throw new Error(`expected a known lamp technology, got ${technologyId}`);
  const lamp = {
    ...draft.lamp,
    technology: technology.id,
    efficacy: technology.efficacy.typical,
    wattsAtHalf: null,
    name: draft.named ? draft.lamp.name : technology.name,
  };
  return { ...draft, lamp: { ...lamp, price: usualPrice(lamp) } };
}

/** What lamps of these watts may cost to buy, from the catalogue's price a watt; a start for the user's own price. */
export function usualPrice(lamp: Pick<Lamp, 'technology' | 'watts' | 'count'>): number {
  const technology = lampTechnologies.find((one) => one.id === lamp.technology);
  const price = technology ? technology.pricePerWatt.value * lamp.watts * lamp.count : 0;
  return Math.min(mostPrice, Math.round(price));
}

function called(lamp: Lamp, words: string): Lamp {
  return { ...lamp, name: `${lamp.name.slice(0, longestName - words.length - 2)}, ${words}` };
}

/** Options to begin with: the lamp there two hours longer and at twice the watts, or two sizes of the first technology. */
export function firstDrafts(place: Place): LampDraft[] {
  const there = place.lamps[0];
  if (there) {
    const like = draftOf(there, 'option-2').lamp;
    const longer = withHours({ ...like, price: 0 }, Math.min(24, namedHours(like) + 2));
    const twice = { ...like, id: 'option-3', watts: Math.min(5000, like.watts * 2) };
    return [
      { id: 'option-2', lamp: called(longer, '2 h longer'), named: false },
      {
        id: 'option-3',
        lamp: called({ ...twice, price: usualPrice(twice) }, 'twice the watts'),
        named: false,
      },
    ];
  }
  const count = Math.max(1, Math.min(100, Math.round(place.growingArea / areaOfOneLamp)));
  const watts = Math.max(5, Math.round((place.growingArea * wattsOnSquareMetre) / count / 5) * 5);
  const blank = lampOf({
    id: 'option-2',
    name: 'Lamp',
    technology: lampTechnologies[0].id,
    watts: Math.min(2500, watts),
    efficacy: 1,
    count,
    height: 0.4,
    length: 0.4,
    width: 0.4,
    on: '07:00',
    off: '19:00',
  });
  const small = withTechnology({ id: 'option-2', lamp: blank, named: false }, blank.technology);
  const twice = { ...small.lamp, id: 'option-3', watts: small.lamp.watts * 2 };
  return [
    small,
    {
      id: 'option-3',
      lamp: called({ ...twice, name: twice.name.split(',')[0], price: usualPrice(twice) }, 'twice the watts'),
      named: false,
    },
  ];
}

/** Lamps of the place that an option leaves hanging: those over the other shelf. */
export function othersOf(place: Place, draft: LampDraft): readonly Lamp[] {
  return place.lamps.filter((lamp) => lamp.shelf !== draft.lamp.shelf);
}

/** The first option is always what is there, bought already; the drafts follow, with the lamps of the other shelf. */
export function optionsOf(place: Place, drafts: readonly LampDraft[]): LampOption[] {
  const paid = (lamp: Lamp): Lamp => ({ ...lamp, price: 0 });
  const there = {
    name: place.lamps.length > 0 ? 'What is there' : 'No lamp, as now',
    lamps: place.lamps.map(paid),
  };
  return [
    there,
    ...drafts.map((draft) => ({
      name: draft.lamp.name,
      lamps: [draft.lamp, ...othersOf(place, draft).map(paid)],
    })),
  ];
}

/** The place with an option hung in it instead of the lamps over the same shelf. */
export function placeWith(place: Place, draft: LampDraft): Place {
  const others = othersOf(place, draft);
  let id = 'lamp';
  for (let number = 2; others.some((lamp) => lamp.id === id); number += 1) id = `lamp-${number}`;
  return { ...place, lamps: [{ ...draft.lamp, id }, ...others] };
}

/** The plan with one place changed. */
export function planWith(plan: Plan, place: Place): Plan {
  return { ...plan, places: plan.places.map((one) => (one.id === place.id ? place : one)) };
}

/** An identifier that no draft has yet. */
export function freeId(drafts: readonly LampDraft[]): string {
  let number = drafts.length + 2;
  while (drafts.some((draft) => draft.id === `option-${number}`)) number += 1;
  return `option-${number}`;
}
