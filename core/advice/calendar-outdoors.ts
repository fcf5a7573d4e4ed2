import { outdoors } from '../plan/schema.ts';
import { coldLimits, runPlants } from '../plants/index.ts';
import type { Crossing } from '../plants/index.ts';
import type { Draft, LotInSeason } from './calendar-lot.ts';
import { standsIn, trifle } from './calendar-lot.ts';
import type { RingSpan } from './calendar-ring.ts';
import { ringDay, ringSpans } from './calendar-ring.ts';
import { crossingWords, dayWords } from './calendar-words.ts';

/** Kelvin over its cold limit at which a night counts as safe, and the shortest summer worth the carrying [days] (judgement). */
export const safeMargin = 2;
const safeAtLeast = 28;
/** Days by which the plan may carry it out later than is safe without a word about it [days] (judgement). */
const patience = 14;

/** Leaf temperature at which cold would hurt the lot on each day if it stood outdoors all season [°C]. */
export function outdoorLimits({ season, planned, numbers }: LotInSeason): Float64Array {
  const { lived } = season.outdoors;
  const days = {
    meanLeaf: lived.leafMean,
    leastLeaf: lived.leafLeast,
    mostLeaf: lived.leafMost,
    meanNightLeaf: lived.leafNight,
    dailyLight: lived.dailyLight,
    photoperiod: lived.photoperiod,
  };
  return coldLimits(
    numbers,
    runPlants(numbers, days, { watering: planned.watering, startDay: season.startDay }),
  );
}

/**
 * The safe nights of a lot that stands outdoors at any time: the longest run of days whose least leaf temperature
 * outdoors stays `safeMargin` above the limit it would have there, hardened as it would be there. The last of them is
 * the last safe night of autumn, the first the first of spring. Bringing in and putting out are named where the plan
 * leaves it out on a night that harms, or in for long after nights are safe.
 */
export function outdoorTasks(subject: LotInSeason): Draft[] {
  const { season, lot } = subject;
  if (!lot.stays.some(({ placeId }) => placeId === outdoors)) return [];
  const { leafLeast } = season.outdoors.lived;
  const limits = outdoorLimits(subject);
  const count = leafLeast.length;
  const safe = (day: number) => leafLeast[day] >= limits[day] + safeMargin;
  const summer = longest(ringSpans(count, 0, safeAtLeast, safe));
  if (summer === null) return [];
  const cross = (day: number, margin: number, way: Crossing['way']): Crossing => {
    const of = ringDay(day, count);
    const series = 'least leaf temperature of the night outdoors';
    return { series, value: leafLeast[of], threshold: limits[of] + margin, unit: '°C', way };
  };
  const draft = (kind: Draft['kind'], day: number, words: string, crossing: Crossing): Draft => {
    const limit = crossing.threshold - (kind === 'bring-in' ? 0 : safeMargin);
    const against =
      kind === 'bring-in' ? '' : ` (${safeMargin} K over where cold would hurt it, ${written(limit)})`;
    const before =
      crossing.way === 'rose above'
        ? `, after ${written(leafLeast[ringDay(day - 1, count)])} the night before`
        : '';
    const because = crossingWords(crossing).replace(/: (\S+ °C)\.$/, `${against}: $1${before}.`);
    return { kind, from: ringDay(day, count), to: null, words, because, crossing };
  };
  const tasks = [
    draft(
      'last-safe-night',
      summer.to,
      'The last safe night outdoors is over. Under cover before dark from today on.',
      cross(summer.to + 1, safeMargin, 'fell below'),
    ),
    draft(
      'first-safe-night',
      summer.from,
      'The first safe night outdoors; from here on they stay safe.',
      cross(summer.from, safeMargin, 'rose above'),
    ),
  ];
  const harm = firstHarm(subject, summer);
  if (harm !== null) {
    const words = 'Bring in before tonight: the cold would hurt it.';
    const threshold = lot.coldLimit[ringDay(harm, count)];
    tasks.push(draft('bring-in', harm - 1, words, { ...cross(harm, 0, 'fell below'), threshold }));
  }
  const out = carriedOut(subject, summer);
  if (out !== null) {
    const words = `May go outdoors from today, once hardened off; the plan leaves it in until ${dayWords(out, season.startDay)}.`;
    tasks.push(draft('put-out', summer.from, words, cross(summer.from, safeMargin, 'rose above')));
  }
  return tasks;
}

const written = (celsius: number) => `${celsius.toFixed(1).replace('-', '−')} °C`;

function longest(spans: readonly RingSpan[]): RingSpan | null {
  const length = ({ from, to }: RingSpan) => to - from + 1;
  return spans.reduce<RingSpan | null>(
    (best, span) => (best === null || length(span) > length(best) ? span : best),
    null,
  );
}

/** First day after the safe nights on which the plan has it outdoors and the season hurts it; null where there is none. */
function firstHarm({ lot }: LotInSeason, summer: RingSpan): number | null {
  const count = lot.state.length;
  for (let day = summer.to + 1; day < summer.from + count; day++) {
    const of = day % count;
    if (standsIn(lot, of) === outdoors && lot.frostDose[of] > trifle) return day;
  }
  return null;
}

/** Day on which the plan carries it outdoors, where that is long after nights are safe; null otherwise. */
function carriedOut({ lot }: LotInSeason, summer: RingSpan): number | null {
  const count = lot.state.length;
  for (let day = summer.from; day <= summer.to; day++) {
    if (standsIn(lot, ringDay(day, count)) === outdoors)
      return day - summer.from > patience ? ringDay(day, count) : null;
  }
  return null;
}
