import { plantStates } from '../../core/index.ts';
import type { LotSeason, Plan, PlaceSeason, SeasonResult } from '../../core/index.ts';
import { doseOf, harmKinds } from '../marks/notches.ts';
import type { HarmKind } from '../marks/notches.ts';
import { spansIn } from '../marks/stays.ts';
import { formatDay, formatDays } from './time.ts';

/** What the plants of a state do, after a name and `will`, which suits one plant, a genus and many alike. */
const doing: Record<string, string> = {
  growing: 'keep growing',
  slow: 'grow slowly',
  'resting-cold': 'rest from cold',
  'resting-heat': 'rest from heat',
  'resting-dim': 'rest from dark',
  'resting-dry': 'rest dry',
  stretching: 'stretch for want of light',
};

const harming: Record<HarmKind, string> = {
  frost: 'Cold harms',
  chill: 'Chill harms',
  heat: 'Heat burns',
  scorch: 'Sun scorches',
  wetCold: 'Wet cold rots',
  decline: 'Lasting heat weakens',
};

function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}

type InPlace = Pick<PlaceSeason, 'placeId' | 'lots'>;

/** Days of winter on which a lot stands in a place (or outdoors). */
function winterDaysIn(lot: LotSeason, placeId: string, season: SeasonResult): number[] {
  const days: number[] = [];
  for (const { from, to } of spansIn(lot, placeId))
    for (let day = Math.max(from, season.winterFrom); day <= Math.min(to, season.winterTo); day += 1)
      days.push(day);
  return days;
}

/**
 * The state a lot is in on most of its winter days in a place, on how many, of how many there and of the whole winter;
 * null where it is there on none.
 */
export function mainWinterState(
  lot: LotSeason,
  placeId: string,
  season: SeasonResult,
): { code: number; days: number; here: number; of: number } | null {
  const counts = plantStates.map(() => 0);
  const days = winterDaysIn(lot, placeId, season);
  if (days.length === 0) return null;
  for (const day of days) counts[lot.state[day]] += 1;
  const most = Math.max(...counts);
  return {
    code: counts.indexOf(most),
    days: most,
    here: days.length,
    of: season.winterTo - season.winterFrom + 1,
  };
}

/** First day of winter on which a lot takes harm in a place, and of which kind; null where it takes none. */
export function firstHarm(
  lot: LotSeason,
  placeId: string,
  season: SeasonResult,
): { kind: HarmKind; day: number } | null {
  const days = winterDaysIn(lot, placeId, season);
  for (const kind of harmKinds) {
    const doses = doseOf(lot, kind);
    const day = days.find((each) => doses[each] > 0);
    if (day !== undefined) return { kind, day };
  }
  return null;
}

/** Days on which a lot stands in a place as dates; days at both ends of the season run on into each other. */
export function stayWords(lot: LotSeason, placeId: string, season: SeasonResult): string {
  const spans = [...spansIn(lot, placeId)];
  const [first, last] = [spans[0], spans[spans.length - 1]];
  if (spans.length > 1 && first.from === 0 && last.to === season.days - 1)
    spans.splice(0, spans.length, ...spans.slice(1, -1), { from: last.from, to: first.to });
  const date = (day: number) => formatDay(season.startDate, day);
  return listed(spans.map(({ from, to }) => `from ${date(from)} to ${date(to)}`));
}

export interface Verdict {
  readonly words: string;
  /** What goes wrong in winter; '' where nothing does. */
  readonly harm: string;
}

/** What a lot does in a place; of one that is there for less than a third of winter only when it is there. */
function phraseOf(lot: LotSeason, placeId: string, season: SeasonResult): string {
  const main = mainWinterState(lot, placeId, season);
  if (main === null || main.here < main.of / 3) return `will stand here ${stayWords(lot, placeId, season)}`;
  const span = main.days / main.of > 0.85 ? 'all winter' : `for ${formatDays(main.days)}`;
  return `will ${doing[plantStates[main.code].id]} ${span}`;
}

/** The winter of a place (or outdoors) in one or two plain sentences: who does what, and what goes wrong. */
export function verdict(place: InPlace, plan: Plan, season: SeasonResult): Verdict {
  const nameOf = (lotId: string) => plan.lots.find((lot) => lot.id === lotId)?.name ?? '';
  if (place.lots.length === 0) return { words: 'Nothing stands here yet.', harm: '' };
  const byDoing = new Map<string, string[]>();
  for (const lot of place.lots) {
    const phrase = phraseOf(lot, place.placeId, season);
    byDoing.set(phrase, [...(byDoing.get(phrase) ?? []), nameOf(lot.lotId)]);
  }
  const words = [...byDoing].map(([phrase, names]) => `${listed(names)} ${phrase}`).join('; ');
  return { words: `${words}.`, harm: harmWords(place, nameOf, season) };
}

function harmWords(place: InPlace, nameOf: (lotId: string) => string, season: SeasonResult): string {
  const byKind = new Map<HarmKind, { names: string[]; day: number }>();
  for (const lot of place.lots) {
    const first = firstHarm(lot, place.placeId, season);
    if (!first) continue;
    const known = byKind.get(first.kind) ?? { names: [], day: first.day };
    byKind.set(first.kind, {
      names: [...known.names, nameOf(lot.lotId)],
      day: Math.min(known.day, first.day),
    });
  }
  return [...byKind]
    .map(
      ([kind, { names, day }]) =>
        `${harming[kind]} ${listed(names)} from about ${formatDay(season.startDate, day)}.`,
    )
    .join(' ');
}
