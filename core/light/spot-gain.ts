import type { Spot } from '../plan/schema.ts';
import type { Polygon } from '../fabric/index.ts';
import type { HorizonPoint } from '../sun/index.ts';
import type { DirectionalGain } from './gain.ts';
import { directionalGain } from './gain.ts';
import type { Opening } from './openings.ts';
import { receiverOf } from './shadow.ts';
import type { ShelfOver } from './upper-shelf.ts';
import { weighed } from './upper-shelf.ts';

/** The whole growing area. */
export const wholeSpot: Spot = { across: 'all', along: 'all', level: 'all' };

/** From and to of a third, as shares; of all, the whole. */
const shares: Record<string, readonly [number, number]> = {
  all: [0, 1],
  front: [0, 1 / 3],
  middle: [1 / 3, 2 / 3],
  back: [2 / 3, 1],
};

/** Rectangles of a level (facing up, x across from the front, y along) that belong to a spot: one, or both ends. */
export function partsOf(level: Polygon, { across, along }: Spot): Polygon[] {
  const [x1, x2] = [Math.min(...level.map(([x]) => x)), Math.max(...level.map(([x]) => x))];
  const [y1, y2] = [Math.min(...level.map(([, y]) => y)), Math.max(...level.map(([, y]) => y))];
  const z = level[0][2];
  const [from, to] = shares[across].map((share) => x1 + share * (x2 - x1));
  const spans: readonly (readonly [number, number])[] =
    along === 'ends' ? [shares.front, shares.back] : [shares[along]];
  return spans.map(([a, b]) => {
    const [near, far] = [y1 + a * (y2 - y1), y1 + b * (y2 - y1)];
    return [
      [from, near, z],
      [to, near, z],
      [to, far, z],
      [from, far, z],
    ];
  });
}

/** Gain of a part of the growing area; of both levels, where it takes in both, the mean by area. */
export function spotGain(
  bench: Polygon,
  shelf: ShelfOver | null,
  spot: Spot,
  openings: readonly Opening[],
  front: number,
  horizon: readonly HorizonPoint[],
): DirectionalGain {
  const meanOf = (level: Polygon, over: { boards?: Polygon; above?: number }) => {
    const gains = partsOf(level, spot).map((part) =>
      directionalGain(receiverOf(part), openings, front, horizon, over),
    );
    return gains.length === 1 ? gains[0] : weighed(gains[0], 0.5, gains[1], 0.5);
  };
  if (shelf === null) return meanOf(bench, {});
  const lower = () => meanOf(bench, { boards: shelf.boards });
  const upper = () => meanOf(shelf.level, { above: shelf.level[0][2] });
  if (spot.level === 'lower') return lower();
  if (spot.level === 'upper') return upper();
  const share = shelf.above / (shelf.above + shelf.below);
  return weighed(lower(), 1 - share, upper(), share);
}
