import { lampOf as lampWith, lampTechnologies } from '../../core/index.ts';
import type { Lamp, LampComparison, LampOption, Place } from '../../core/index.ts';

/** An option while it is being put together: one kind of lamp, its number, height and hours. */
export interface LampDraft {
  readonly id: string;
  readonly name: string;
  readonly technology: string;
  readonly watts: number;
  readonly efficacy: number;
  readonly count: number;
  readonly height: number;
  readonly hours: number;
  /** Hour of switching on [minutes after midnight]. */
  readonly onMinutes: number;
  readonly length: number;
  readonly width: number;
  readonly price: number;
}

export const mostOptions = 6;

/** Where a place has no lamp yet: recent LED [W m⁻²] and the area one lamp lights [m²]. Common practice, no source. */
const wattsOnSquareMetre = 75;
const areaOfOneLamp = 0.6;

/** `HH:MM` of minutes after midnight; 24:00 only for a lamp that never goes off. */
function clock(minutes: number): string {
  const wrapped = minutes === 1440 ? 1440 : ((minutes % 1440) + 1440) % 1440;
  return `${String(Math.floor(wrapped / 60)).padStart(2, '0')}:${String(wrapped % 60).padStart(2, '0')}`;
}

function minutes(time: string): number {
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
}

/** Hours a day a lamp is on; through midnight where `off` comes before `on`. */
export function hoursOf(lamp: Pick<Lamp, 'on' | 'off'>): number {
  const span = minutes(lamp.off) - minutes(lamp.on);
  return (span > 0 ? span : span + 1440) / 60;
}

export function lampOf(draft: LampDraft): Lamp {
  const through = draft.hours >= 24;
  const on = through ? 0 : draft.onMinutes;
  return lampWith({
    id: draft.id,
    name: draft.name,
    technology: draft.technology,
    watts: draft.watts,
    efficacy: draft.efficacy,
    count: draft.count,
    height: draft.height,
    length: draft.length,
    width: draft.width,
    on: clock(on),
    off: through ? '24:00' : clock(on + Math.round(draft.hours * 60)),
    price: draft.price,
  });
}

/** A draft like a lamp that is there. */
export function draftOf(lamp: Lamp, id: string): LampDraft {
  const { technology, watts, efficacy, count, height, length, width, price } = lamp;
  return {
    id,
    name: lamp.name,
    technology,
    watts: watts * lamp.dimming,
    efficacy,
    count,
    height,
    hours: hoursOf(lamp),
    onMinutes: minutes(lamp.on),
    length,
    width,
    price,
  };
}

/** What a technology brings along when it is chosen: its usual efficacy. Watts, number and height stay the user's. */
export function withTechnology(draft: LampDraft, technologyId: string): LampDraft {
  const technology = lampTechnologies.find((one) => one.id === technologyId);
  if (!technology) throw new Error(`expected a known lamp technology, got ${technologyId}`);
  return {
    ...draft,
    technology: technology.id,
    name: technology.name,
    efficacy: technology.efficacy.typical,
  };
}

/** What a lamp of these watts may cost to buy, from the catalogue's price a watt; a start for the user's own price. */
export function usualPrice(draft: Pick<LampDraft, 'technology' | 'watts' | 'count'>): number {
  const technology = lampTechnologies.find((one) => one.id === draft.technology);
  return technology ? Math.round(technology.pricePerWatt.value * draft.watts * draft.count) : 0;
}

/** Options to begin with: the lamp there two hours longer and at twice the watts, or two sizes of the first technology. */
export function firstDrafts(place: Place): LampDraft[] {
  const there = place.lamps[0];
  if (there) {
    const like = draftOf(there, 'option-2');
    return [
      { ...like, name: `${like.name}, 2 h longer`, hours: Math.min(24, like.hours + 2), price: 0 },
      {
        ...like,
        id: 'option-3',
        name: `${like.name}, twice the watts`,
        watts: like.watts * 2,
        price: usualPrice({ ...like, watts: like.watts * 2 }),
      },
    ];
  }
  const count = Math.max(1, Math.round(place.growingArea / areaOfOneLamp));
  const watts = Math.max(5, Math.round((place.growingArea * wattsOnSquareMetre) / count / 5) * 5);
  const shape = { count, height: 0.4, hours: 12, onMinutes: 420, length: 0.4, width: 0.4 };
  const blank = { ...shape, id: 'option-2', name: '', technology: '', watts, efficacy: 1, price: 0 };
  const small = withTechnology(blank, lampTechnologies[0].id);
  const large = { ...small, id: 'option-3', name: `${small.name}, twice the watts`, watts: watts * 2 };
  return [small, large].map((draft) => ({ ...draft, price: usualPrice(draft) }));
}

/** The first option is always what is there, bought already; the drafts follow. */
export function optionsOf(place: Place, drafts: readonly LampDraft[]): LampOption[] {
  const there = {
    name: place.lamps.length > 0 ? 'What is there' : 'No lamp, as now',
    lamps: place.lamps.map((lamp) => ({ ...lamp, price: 0 })),
  };
  return [there, ...drafts.map((draft) => ({ name: draft.name, lamps: [lampOf(draft)] }))];
}

/** An identifier that no draft has yet. */
export function freeId(drafts: readonly LampDraft[]): string {
  let number = drafts.length + 2;
  while (drafts.some((draft) => draft.id === `option-${number}`)) number += 1;
  return `option-${number}`;
}

/** Means over a coarse grid of the map, to be written as numbers: place in 0–1 of the area and value. */
export function coarse(comparison: LampComparison, across: number, down: number) {
  const { map, columns, rows } = comparison;
  const cells: { key: number; x: number; y: number; value: number }[] = [];
  for (let j = 0; j < down; j++) {
    for (let i = 0; i < across; i++) {
      let sum = 0;
      let count = 0;
      for (let row = Math.floor((j * rows) / down); row < Math.ceil(((j + 1) * rows) / down); row++) {
        for (
          let column = Math.floor((i * columns) / across);
          column < Math.ceil(((i + 1) * columns) / across);
          column++
        ) {
          sum += map[row * columns + column];
          count += 1;
        }
      }
      cells.push({
        key: j * across + i,
        x: (i + 0.5) / across,
        y: (j + 0.5) / down,
        value: count > 0 ? sum / count : 0,
      });
    }
  }
  return cells;
}
