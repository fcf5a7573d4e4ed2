import { outdoors } from '../plan/schema.ts';
import type { Lot, Plan } from '../plan/schema.ts';
import type { FlowerCue, FlowerOutlook } from '../plants/index.ts';
import { monthNames, monthOfSeasonDay } from '../season/index.ts';
import { daysBeforeMonth } from '../season/calendar.ts';
import type { FlowerKeeping, FlowerWay } from './flower-result.ts';
import type { Hunt } from './flower-run.ts';
import type { FlowerWindow } from './flower-search.ts';
import type { Subject } from './flower-subject.ts';

/** A day of the season, or one after it, as a date: `3 February`. */
export function dateWords(day: number, startDay: number): string {
  const month = monthOfSeasonDay(day, startDay);
  return `${((startDay + day) % 365) - daysBeforeMonth[month - 1] + 1} ${monthNames[month - 1]}`;
}

const spanWords = ({ from, to }: FlowerWindow, startDay: number) =>
  `from ${dateWords(from, startDay)} to ${dateWords(to, startDay)}`;

const daysWords = (count: number) => (count === 1 ? 'one day' : `${count} days`);

const monthDayWords = (monthDay: string) =>
  `${Number(monthDay.slice(3))} ${monthNames[Number(monthDay.slice(0, 2)) - 1]}`;

function placeWords(plan: Plan, placeId: string): string {
  if (placeId === outdoors) return 'outdoors';
  return `in ${plan.places.find(({ id }) => id === placeId)?.name ?? placeId}`;
}

/** How a lot is kept: "keep Echeverias in Landing window until 3 February, then in Lean-to". */
function keepingWords(plan: Plan, lot: Lot, keeping: FlowerKeeping): string {
  const same =
    keeping.placeId === lot.place && JSON.stringify(keeping.moves) === JSON.stringify([...lot.moves]);
  if (same) return `leave ${lot.name} as planned`;
  const first = `keep ${lot.name} ${placeWords(plan, keeping.placeId)}`;
  if (keeping.moves.length === 0) return `${first} all the year`;
  const later = keeping.moves.map(({ on, to }, index) => {
    const then = index === keeping.moves.length - 1 ? ', then' : ',';
    return ` until ${monthDayWords(on)}${then} ${placeWords(plan, to)}`;
  });
  return `${first}${later.join('')}`;
}

const upper = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** A way in the grower's words, with what comes of it. */
export function wayWords(plan: Plan, way: Omit<FlowerWay, 'words'>, startDay: number): string {
  const both = {
    from: Math.max(way.one.window.from, way.other.window.from),
    to: Math.min(way.one.window.to, way.other.window.to),
  };
  const lots = [way.one, way.other].map((keeping) =>
    keepingWords(plan, plan.lots.find(({ id }) => id === keeping.lotId) as Lot, keeping),
  );
  const parts = lots.every((each) => each.startsWith('leave ')) ? ['leave both as planned'] : lots;
  const warmth = way.warmth === null ? [] : [warmthWords(plan, way.warmth)];
  const harmed = [way.one, way.other].flatMap(({ lotId, harmDays }) => {
    const name = plan.lots.find(({ id }) => id === lotId)?.name ?? lotId;
    return harmDays > 0 ? [`; ${daysWords(harmDays)} of scorch, wet cold or decline more for ${name}`] : [];
  });
  const what = upper([...parts, ...warmth].join('; '));
  return `${what}: both flower ${spanWords(both, startDay)}${harmed.join('')}.`;
}

function warmthWords(plan: Plan, { placeId, kelvin, cost }: NonNullable<FlowerWay['warmth']>): string {
  const name = plan.places.find(({ id }) => id === placeId)?.name ?? placeId;
  const money = `${Math.abs(cost).toFixed(0)} ${plan.tariff.currency} a season`;
  return `heat ${name} ${Math.abs(kelvin)} K ${kelvin > 0 ? 'warmer' : 'cooler'} (${money} ${cost >= 0 ? 'more' : 'less'})`;
}

/** Why a lot does not flower by its outlook, or when it does. */
function outlookWords({ cue, days, needed, metOn, window }: FlowerOutlook, startDay: number): string {
  if (window !== null) return `flower ${spanWords(window, startDay)}`;
  if (cue === 'unknown') return 'what sets flower is not known';
  const need = cue === 'cool rest' ? 'days of cool rest' : 'days of the right length running';
  if (metOn === null) return `${days} of the ${needed} ${need} it needs`;
  return cue === 'cool rest'
    ? 'a cool rest, but no warmth after it'
    : 'the right days, but when flowers follow is not known';
}

/** Both lots as the plan has them. */
export function nowWords(subjects: readonly Subject[], overlap: number | null, startDay: number): string {
  const each = subjects.map(({ lot, now }) => `${lot.name}: ${outlookWords(now.flowering, startDay)}`);
  const apart =
    overlap === null ? '' : ` (${daysWords(Math.abs(overlap))} ${overlap > 0 ? 'together' : 'between'})`;
  return `${upper(each.join('; '))}${apart}.`;
}

/** Why no way was found. */
export function whyNotWords(hunt: Hunt): string {
  const { subjects, nearestNeed } = hunt;
  for (const { lot, now } of subjects)
    if (now.flowering.cue === 'unknown')
      return `What sets flower in ${lot.name} is not known, so no date can be given.`;
  if (hunt.cancelled()) return 'The search was stopped before it found a way.';
  for (const [which, { lot }] of subjects.entries()) {
    const best = nearestNeed[which];
    if (best !== null && best.metOn === null) return neverWords(lot.name, best);
  }
  if (hunt.nearest > 0)
    return 'They would flower together, but only where one of them is harmed or has no bench.';
  if (hunt.nearest > -Infinity)
    return `Wherever both can stand unharmed, ${daysWords(-hunt.nearest)} or more lie between the two.`;
  const barred = subjects
    .filter((_, which) => hunt.barred[which] && !hunt.flowers[which])
    .map(({ lot }) => lot.name);
  if (barred.length > 0)
    return `${barred.join(' and ')} would be set for flower only where they are harmed or have no bench.`;
  return 'The cool rest can be had, but nowhere the warmth to flower after it.';
}

function neverWords(name: string, { cue, days, needed }: FlowerCue): string {
  const need = cue === 'cool rest' ? 'days of cool rest' : 'days of the right length running';
  return `${name} need ${needed} ${need}, and get ${days} at most wherever they are kept.`;
}
