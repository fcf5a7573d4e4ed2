import { describe, expect, it } from 'vitest';
import { daylightSeries } from '../../core/light/index.ts';
import { beamBounce, revealBounce, revealReflectance, sideShare } from '../../core/light/window-bounce.ts';
import type { Place } from '../../core/plan/schema.ts';
import { samplePlace } from '../fabric/sample-places.ts';
import { moment, nothing } from './moment.ts';
import { sampleYear, sum } from './sample-year.ts';

type Vector = readonly [number, number, number];
interface Patch {
  readonly at: Vector;
  readonly facing: Vector;
  readonly area: number;
}
const bayOf = (reveal: number, distance: number, depth: number) =>
  ({ kind: 'window-bay', width: 1.2, height: 1.1, reveal, distance, depth, azimuth: 180 }) as const;
type Bay = ReturnType<typeof bayOf>;

const n = 14;
/** Patches of a rectangle from a corner along two edges. */
function patches(corner: Vector, u: Vector, v: Vector, facing: Vector): Patch[] {
  const area = (Math.hypot(...u) * Math.hypot(...v)) / n ** 2;
  return Array.from({ length: n * n }, (_, k) => {
    const [i, j] = [((k % n) + 0.5) / n, (Math.floor(k / n) + 0.5) / n];
    const at = [0, 1, 2].map((axis) => corner[axis] + i * u[axis] + j * v[axis]) as unknown as Vector;
    return { at, facing, area };
  });
}

/** Share of light leaving a patch that meets another. */
function between(from: Patch, to: Patch): number {
  const r = [0, 1, 2].map((axis) => to.at[axis] - from.at[axis]);
  const square = r[0] ** 2 + r[1] ** 2 + r[2] ** 2;
  const out = r[0] * from.facing[0] + r[1] * from.facing[1] + r[2] * from.facing[2];
  const into = -(r[0] * to.facing[0] + r[1] * to.facing[1] + r[2] * to.facing[2]);
  return out > 0 && into > 0 ? (out * into * to.area) / (Math.PI * square ** 2) : 0;
}

/** The first bounce patch by patch: what the pane and the plants have of light on the patches, [W m⁻²]. */
function summed(bay: Bay, lightOn: (patch: Patch) => number, sides: readonly Patch[]) {
  const { width, height, distance, depth } = bay;
  const pane = patches([0, 0, 0], [0, width, 0], [0, 0, height], [-1, 0, 0]);
  const plants = patches([distance, 0, 0], [depth - distance, 0, 0], [0, width, 0], [0, 0, 1]);
  let [onPane, onPlants] = [0, 0];
  for (const side of sides) {
    const thrown = revealReflectance * lightOn(side) * side.area;
    if (thrown === 0) continue;
    for (const patch of pane) onPane += thrown * between(side, patch);
    for (const patch of plants) onPlants += thrown * between(side, patch);
  }
  return { pane: onPane / (width * height), plants: onPlants / (width * (depth - distance)) };
}

const sidesOf = ({ width, height, reveal }: Bay) => ({
  upright: [
    ...patches([0, 0, 0], [-reveal, 0, 0], [0, 0, height], [0, 1, 0]),
    ...patches([0, width, 0], [-reveal, 0, 0], [0, 0, height], [0, -1, 0]),
  ],
  lintel: patches([0, 0, height], [-reveal, 0, 0], [0, width, 0], [0, 0, -1]),
  sill: patches([0, 0, 0], [-reveal, 0, 0], [0, width, 0], [0, 0, 1]),
});

describe('what the sides of a reveal throw back', () => {
  // The engine spreads the light evenly over each lit side; patch by patch it is brighter towards the outside. The sums
  // over 14 × 14 patches err by some hundredths themselves where two faces meet.
  it.each([
    [0.2, 0, 0.4],
    [0.2, 0.3, 0.7],
    [0.5, 0, 1],
  ])(
    'of even light, a reveal of %d m, plants from %d to %d m: a sum over patches',
    (reveal, distance, depth) => {
      const bay = bayOf(reveal, distance, depth);
      const opening = patches([-reveal, 0, 0], [0, bay.width, 0], [0, 0, bay.height], [1, 0, 0]);
      const even = (patch: Patch) => opening.reduce((total, each) => total + between(patch, each), 0);
      const { upright, lintel, sill } = sidesOf(bay);
      const model = revealBounce(bay);
      const all = summed(bay, even, [...upright, ...lintel, ...sill]);
      expect(Math.abs(model.pane / all.pane - 1)).toBeLessThan(0.09);
      expect(Math.abs(model.plants / summed(bay, even, upright).plants - 1)).toBeLessThan(0.06);
      expect(Math.abs(model.lintel / summed(bay, even, lintel).plants - 1)).toBeLessThan(0.07);
    },
  );

  it.each([
    [0.05, 0.03],
    [0.3, 0.2],
    [0.9, 0.2],
    [1.5, 0.2],
  ])('of a beam that moves %d m aside and %d m down: a sum over patches', (aside, down) => {
    const bay = bayOf(0.2, 0, 0.4);
    const way: Vector = [1, -aside / bay.reveal, -down / bay.reveal];
    const lit = ({ at, facing }: Patch) => {
      const back = at[0] + bay.reveal;
      const [y, z] = [at[1] - back * way[1], at[2] - back * way[2]];
      if (!(y >= 0 && y <= bay.width && z >= 0 && z <= bay.height)) return 0;
      return Math.max(0, -(way[0] * facing[0] + way[1] * facing[1] + way[2] * facing[2]));
    };
    const { upright, lintel, sill } = sidesOf(bay);
    const model = { pane: 0, plants: 0 };
    beamBounce(bay, aside, down, model);
    const all = summed(bay, lit, [...upright, ...lintel, ...sill]);
    expect(Math.abs(model.pane / all.pane - 1)).toBeLessThan(0.09);
    expect(Math.abs(model.plants / summed(bay, lit, upright).plants - 1)).toBeLessThan(0.09);
  });

  it('all of the beam is lit pane or side: the shares close', () => {
    for (const a of [0, 0.2, 1, 1.7, 4])
      for (const b of [0, 0.1, 0.9, 1, 3]) {
        const pane = Math.max(0, 1 - a) * Math.max(0, 1 - b);
        expect(pane + sideShare(a, b) + sideShare(b, a)).toBeCloseTo(1, 12);
      }
  });

  it('never lets more in than the opening without a reveal has, at any hour, and gives less the deeper it is', () => {
    const year = sampleYear(10);
    const site = { albedo: 0.3, horizon: [] };
    const place = (reveal: number): Place =>
      samplePlace({
        ...nothing,
        growingArea: 0.3,
        room: { kind: 'constant', temperature: 18 },
        shape: { ...bayOf(reveal, 0, 0.4) },
      });
    const lights = [0, 0.1, 0.3, 1].map((reveal) => daylightSeries(place(reveal), site, year));
    for (let i = 1; i < lights.length; i++) {
      const [less, more] = [lights[i], lights[i - 1]];
      for (let k = 0; k < year.n; k++)
        if (!(less.transmittedSolar[k] <= more.transmittedSolar[k] * (1 + 1e-12)))
          throw new Error(`expected less light behind a deeper reveal, got more at step ${k}`);
      expect(sum(less.benchPhotons)).toBeLessThan(sum(more.benchPhotons));
      expect(sum(less.insideSolar)).toBeLessThanOrEqual(sum(less.transmittedSolar));
    }
  });

  it('reaches the plants as the sun stands: nothing off the sill outside, which they do not see', () => {
    const site = { albedo: 0, horizon: [] };
    const bare = (azimuth: number) =>
      daylightSeries(
        samplePlace({ ...nothing, room: { kind: 'constant', temperature: 18 }, shape: bayOf(1, 0, 0.4) }),
        site,
        moment(azimuth, 60, 500, 0),
      ).benchSolar[0];
    expect(bare(180)).toBe(0);
    expect(bare(216)).toBeGreaterThan(0);
  });
});
