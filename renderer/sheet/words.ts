import { plantStates } from '../../core/index.ts';
import type { LotSeason, Plan, PlaceSeason, SeasonResult } from '../../core/index.ts';
import { doseOf, harmKinds } from '../marks/notches.ts';
import type { HarmKind } from '../marks/notches.ts';
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
};

function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}

/** Days of each state within the winter half-year, as indexed by `plantStates`. */
export function winterDays(lot: LotSeason, season: SeasonResult): number[] {
  const days = plantStates.map(() => 0);
  for (let day = season.winterFrom; day <= season.winterTo; day += 1) days[lot.state[day]] += 1;
  return days;
}

export function mainWinterState(
  lot: LotSeason,
  season: SeasonResult,
): { code: number; days: number; of: number } {
  const days = winterDays(lot, season);
  const most = Math.max(...days);
  return { code: days.indexOf(most), days: most, of: season.winterTo - season.winterFrom + 1 };
}

/** First day of winter on which a lot takes harm, and of which kind; null where it takes none. */
export function firstHarm(lot: LotSeason, season: SeasonResult): { kind: HarmKind; day: number } | null {
  for (const kind of harmKinds) {
    const day = doseOf(lot, kind).findIndex(
      (dose, at) => dose > 0 && at >= season.winterFrom && at <= season.winterTo,
    );
    if (day >= 0) return { kind, day };
  }
  return null;
}

export interface Verdict {
  readonly words: string;
  /** What goes wrong in winter; '' where nothing does. */
  readonly harm: string;
}

/** The winter of a place in one or two plain sentences: who does what, and what goes wrong. */
export function verdict(place: PlaceSeason, plan: Plan, season: SeasonResult): Verdict {
  const nameOf = (lotId: string) => plan.lots.find((lot) => lot.id === lotId)?.name ?? '';
  if (place.lots.length === 0) return { words: 'Nothing stands here yet.', harm: '' };
  const byDoing = new Map<string, string[]>();
  for (const lot of place.lots) {
    const main = mainWinterState(lot, season);
    const share = main.days / main.of;
    const span = share > 0.85 ? 'all winter' : `for ${formatDays(main.days)}`;
    const phrase = `will ${doing[plantStates[main.code].id]} ${span}`;
    byDoing.set(phrase, [...(byDoing.get(phrase) ?? []), nameOf(lot.lotId)]);
  }
  const words = [...byDoing].map(([phrase, names]) => `${listed(names)} ${phrase}`).join('; ');
  return { words: `${words}.`, harm: harmWords(place, nameOf, season) };
}

function harmWords(place: PlaceSeason, nameOf: (lotId: string) => string, season: SeasonResult): string {
  const byKind = new Map<HarmKind, { names: string[]; day: number }>();
  for (const lot of place.lots) {
    const first = firstHarm(lot, season);
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
