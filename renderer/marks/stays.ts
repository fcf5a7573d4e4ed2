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

/** A lot carried in or out at an edge of its ribbon. */
export interface Cut {
  readonly x: number;
  readonly way: 'in' | 'out';
}

/** A stretch in which a lot stands elsewhere [px], with where that is. */
export interface Gap {
  readonly left: number;
  readonly right: number;
  readonly cuts: readonly Cut[];
  readonly otherId: string;
}

/** The stretches of a lot's ribbon in a place in which it stands elsewhere, with the arrows at their ends. */
export function gapsOf(lot: LotSeason, placeId: string, width: number): Gap[] {
  const { stays } = lot;
  return stays.flatMap((stay, index): Gap[] => {
    if (stay.placeId === placeId) return [];
    const [left, right] = [dayX(stay.from, width), dayX(stay.to + 1, width)];
    const cuts: Cut[] = [];
    if (stays[index - 1]?.placeId === placeId) cuts.push({ x: left, way: 'out' });
    if (stays[index + 1]?.placeId === placeId) cuts.push({ x: right, way: 'in' });
    return cuts.length === 0 ? [] : [{ left, right, cuts, otherId: stay.placeId }];
  });
}

/** A small arrow with its tip 1 px from the cut (in), or its foot there (out), in the middle of `height` [px]. */
export function arrow({ x, way }: Cut, height: number): string {
  const middle = height / 2;
  const tip = way === 'in' ? x - 1 : x + 10;
  return `M${(tip - 9).toFixed(1)} ${middle}H${(tip - 1).toFixed(1)}M${(tip - 4).toFixed(1)} ${middle - 3.5}L${tip.toFixed(1)} ${middle}L${(tip - 4).toFixed(1)} ${middle + 3.5}`;
}
