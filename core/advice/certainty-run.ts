import { planGroup, planNumbers } from '../plan/plan-groups.ts';
import type { GroupNumbers, PlantGroup } from '../plan/groups.ts';
import type { Lot, Plan } from '../plan/schema.ts';
import { drawNumbers } from '../plants/index.ts';
import { randomStream } from '../weather/index.ts';
import type { WeatherYear, Winters } from '../weather/index.ts';
import { createSeasonCache, judgeLot, placeOn, seasonSetting } from '../season/index.ts';
import type { SeasonCache, SeasonSetting } from '../season/index.ts';
import { monthDayOf } from './calendar-words.ts';
import type { Certainty } from './certainty-result.ts';
import { sampleOf } from './certainty-sample.ts';
import { addWinter, emptyTally, readTally } from './certainty-tally.ts';
import type { LotTally } from './certainty-tally.ts';

/** Half-width of a 95 % interval within which a share is sure enough. */
const sureEnough = 0.05;

/** Draws of thresholds in the shown winter after which their share is within 5 %: 1.96² × 0.25 / 0.05², rounded up. */
const drawsInShown = 400;

export interface RunOptions {
  readonly cache: SeasonCache;
  readonly draws: number;
  readonly most: number;
  readonly seed: number;
  readonly winters: Winters;
  readonly spread: number;
}

/** A certainty that grows by a winter at a time. */
export interface CertaintyRun {
  /** As far as it has grown. */
  readonly now: Certainty;
  /** True where it is sure enough, or the most winters are reached. */
  readonly done: boolean;
  /** Runs one winter more. */
  grow(): Certainty;
}

/** Lots that differ in name and number alone share what is found for one of them. */
interface LikeLots {
  readonly lot: Lot;
  readonly key: string;
  readonly group: PlantGroup;
  readonly numbers: GroupNumbers;
  readonly tally: LotTally;
  sure: boolean;
}

function keyOf(lot: Lot): string {
  return JSON.stringify({ ...lot, id: '', name: '', plants: null, area: 0 });
}

function likeLots(plan: Plan): Map<string, LikeLots> {
  const kinds = new Map<string, LikeLots>();
  for (const lot of plan.lots) {
    const key = keyOf(lot);
    if (kinds.has(key)) continue;
    const group = planGroup(plan, lot.group);
    if (group === null) throw new RangeError(`expected a plant group of the plan, got ${lot.group}`);
    const numbers = planNumbers(plan, lot.group);
    kinds.set(key, { lot, key, group, numbers, tally: emptyTally(), sure: false });
  }
  return kinds;
}

/** The plan with those places alone in which the lots ever stand. */
function placesOf(plan: Plan, lots: readonly LikeLots[]): Plan {
  const ids = new Set(lots.flatMap(({ lot }) => [lot.place, ...lot.moves.map((move) => move.to)]));
  return { ...plan, places: plan.places.filter((place) => ids.has(place.id)) };
}

/** Thresholds of a lot as drawn for one sample: the same for a winter and draw whatever else is in the plan. */
function drawOf(of: LikeLots, winter: number, draw: number, { seed, spread }: RunOptions): GroupNumbers {
  const scrambled = Math.imul(seed + 1, 0x2c1b3c6d) ^ Math.imul(winter + 1, 0x297a2d39) ^ (draw + 1);
  return drawNumbers(of.group, of.numbers, randomStream(scrambled | 0), spread);
}

/**
 * Begins a certainty: each `grow` runs the heat of the places through another winter, and in it judges every lot that
 * is not sure enough yet, with its thresholds as they are and as drawn.
 */
export function certaintyRun(plan: Plan, weather: WeatherYear, options: RunOptions): CertaintyRun {
  const kinds = likeLots(plan);
  const open = () => [...kinds.values()].filter((kind) => !kind.sure);
  const shown = seasonSetting(placesOf(plan, open()), weather, options.cache);
  let winters = 0;
  let now = reading(plan, kinds, winters, options);
  return {
    get now() {
      return now;
    },
    get done() {
      return open().length === 0 || winters >= options.most;
    },
    grow() {
      const lots = open();
      if (lots.length === 0) return now;
      const year = options.winters.winter(winters);
      const setting = seasonSetting(placesOf(plan, lots), year, createSeasonCache());
      for (const kind of lots) growLot(kind, shown, setting, winters, options);
      winters += 1;
      now = reading(plan, kinds, winters, options);
      return now;
    },
  };
}

/**
 * A lot that stands on each date where it does in the shown season, told for a season that begins on another day of the
 * year: between the tropics a season's first day follows its weather, and a lot's first place goes with that day.
 */
export function lotFrom(lot: Lot, shownStart: number, start: number): Lot {
  if (start === shownStart || lot.moves.length === 0) return lot;
  const place = placeOn(lot, shownStart, (start - shownStart + 365) % 365);
  const first = monthDayOf(0, shownStart);
  const back = lot.moves.some(({ on }) => on === first) ? [] : [{ on: first, to: lot.place }];
  return { ...lot, place, moves: [...lot.moves, ...back] };
}

function growLot(
  kind: LikeLots,
  shown: SeasonSetting,
  setting: SeasonSetting,
  winter: number,
  options: RunOptions,
): void {
  const { lot, tally } = kind;
  const shift = shown.year.startDay - setting.year.startDay;
  const there = lotFrom(lot, shown.year.startDay, setting.year.startDay);
  const draws = Array.from({ length: options.draws }, (_, draw) => drawOf(kind, winter, draw, options));
  const drawn = draws.map((each) => sampleOf(judgeLot(setting, there, each), shift));
  const inShown = (tally.inShown < drawsInShown ? draws : []).map((each) =>
    sampleOf(judgeLot(shown, lot, each)),
  );
  const { weeks } = sampleOf(judgeLot(shown, lot));
  addWinter(tally, weeks, { nominal: sampleOf(judgeLot(setting, there), shift), drawn, inShown });
}

function reading(
  plan: Plan,
  kinds: ReadonlyMap<string, LikeLots>,
  winters: number,
  options: RunOptions,
): Certainty {
  const found = new Map(
    [...kinds.values()].map((kind) => [kind.key, readTally(kind.lot.id, kind.tally, options.draws)]),
  );
  let halfWidth = 0;
  for (const [key, lot] of found) {
    const widest = lot.halfWidth.reduce((most, value) => Math.max(most, value), 0);
    (kinds.get(key) as LikeLots).sure = widest <= sureEnough;
    halfWidth = Math.max(halfWidth, widest);
  }
  return {
    winters,
    draws: options.draws,
    halfWidth,
    enough: halfWidth <= sureEnough,
    origin: options.winters.origin,
    lots: plan.lots.map((lot) => ({ ...found.get(keyOf(lot)), lotId: lot.id }) as Certainty['lots'][number]),
  };
}
