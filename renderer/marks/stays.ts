import type { LotSeason, Stay } from '../../core/index.ts';
import { dayX } from '../sheet/paths.ts';
import type { Run } from '../sheet/paths.ts';

/** Days `from` to `to`, both counted. */
export type Span = Pick<Stay, 'from' | 'to'>;

/** The days on which a lot stands in a place (or outdoors). */
export function spansIn(lot: LotSeason, placeId: string): readonly Span[] {
  return lot.stays.filter((stay) => stay.placeId === placeId);
}

export function standsOn(lot: LotSeason, placeId: string, day: number): boolean {
  return spansIn(lot, placeId).some(({ from, to }) => day >= from && day <= to);
}

/** Runs cut to the spans: what falls outside is left out. */
export function runsWithin(runs: readonly Run[], spans: readonly Span[]): Run[] {
  return spans.flatMap(({ from, to }) =>
    runs
      .map((run) => ({ ...run, fromDay: Math.max(run.fromDay, from), toDay: Math.min(run.toDay, to + 1) }))
      .filter((run) => run.toDay > run.fromDay),
  );
}

/** A lot carried in or out at an edge of its ribbon, and where from or to. */
export interface Cut {
  readonly x: number;
  readonly way: 'in' | 'out';
  readonly otherId: string;
  /** Room beside the cut in which the lot does not stand here [px]. */
  readonly room: number;
}

/** The cuts of a lot's ribbon in a place; none on the season's first and last day, where nobody carries. */
export function cutsOf(lot: LotSeason, placeId: string, width: number): Cut[] {
  const { stays } = lot;
  return stays.flatMap((stay, index) => {
    if (stay.placeId !== placeId) return [];
    const [before, after] = [stays[index - 1], stays[index + 1]];
    const gap = (span: Span) => dayX(span.to - span.from + 1, width);
    const cuts: Cut[] = [];
    if (before)
      cuts.push({ x: dayX(stay.from, width), way: 'in', otherId: before.placeId, room: gap(before) });
    if (after)
      cuts.push({ x: dayX(stay.to + 1, width), way: 'out', otherId: after.placeId, room: gap(after) });
    return cuts;
  });
}

/** A small arrow with its tip 1 px from the cut (in), or its foot there (out), in the middle of `height` [px]. */
export function arrow({ x, way }: Pick<Cut, 'x' | 'way'>, height: number): string {
  const middle = height / 2;
  const tip = way === 'in' ? x - 1 : x + 10;
  return `M${(tip - 9).toFixed(1)} ${middle}H${(tip - 1).toFixed(1)}M${(tip - 4).toFixed(1)} ${middle - 3.5}L${tip.toFixed(1)} ${middle}L${(tip - 4).toFixed(1)} ${middle + 3.5}`;
}
