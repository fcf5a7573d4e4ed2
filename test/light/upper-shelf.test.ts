import { describe, expect, it } from 'vitest';
import { daylightSeries } from '../../core/light/index.ts';
import { parallelFactor } from '../../core/light/rectangles.ts';
import { stripFactor } from '../../core/light/window-factor.ts';
import type { Place } from '../../core/plan/schema.ts';
import { coldFrame, house, leanTo, samplePlace, tunnel, windowBay } from '../fabric/sample-places.ts';
import { evenSky, moment, nothing } from './moment.ts';
import { sampleYear, sum } from './sample-year.ts';

const site = { albedo: 0, horizon: [] };
const degree = Math.PI / 180;
/** A house without a cover: 4 × 2.5 m, plants on the floor. */
const open = (shelf: object | null, growingArea = 12) =>
  samplePlace({
    ...nothing,
    growingArea,
    standing: 'ground',
    shape: { kind: 'even-span', length: 4, width: 2.5, eavesHeight: 2, ridgeHeight: 2.6, azimuth: 180 },
    upperShelf: shelf,
  });
const shelf = { height: 0.6, plants: 0.2, length: 2, width: 0.8, side: 'middle' };
const on = 2 * 0.8;

/** The mean of both levels, from what each has, by the plants' areas. */
const mean = (lower: number, upper: number, growingArea = 12) =>
  ((growingArea - on) * lower + on * upper) / growingArea;

describe('plants under and on an upper shelf, in a house with nothing in its frame', () => {
  const beam = (place: Place, azimuth: number, elevation: number) =>
    daylightSeries(place, site, moment(azimuth, elevation, 500, 0)).benchSolar[0] /
    (500 * Math.sin(elevation * degree));

  it('the sun high: the boards’ whole shadow lies on the plants below, those above have all of it', () => {
    expect(beam(open(shelf), 180, 60)).toBeCloseTo(mean(1 - on / 10, 1), 9);
    expect(beam(open(null), 180, 60)).toBeCloseTo(1, 9);
  });

  it('the sun lower, the shelf at the back: a part of the shadow is thrown past them', () => {
    const back = open({ ...shelf, side: 'back' });
    const past = 0.6 / Math.tan(60 * degree);
    expect(beam(back, 180, 60)).toBeCloseTo(mean(1 - ((0.8 - past) * 2) / 10, 1), 9);
    // From the side, along the length: the shadow moves by as much and stays on the bench.
    expect(beam(back, 270, 60)).toBeCloseTo(mean(1 - on / 10, 1), 9);
    // At the front the whole of it is thrown on to the bench.
    expect(beam(open({ ...shelf, side: 'front' }), 180, 60)).toBeCloseTo(mean(1 - on / 10, 1), 9);
  });

  it('an even sky: those below lose the boards’ configuration factor, those above nothing', () => {
    const bench = { x1: 0, x2: 2.5, y1: 0, y2: 4 };
    const boards = { x1: 0.85, x2: 1.65, y1: 1, y2: 3 };
    const light = daylightSeries(open(shelf), site, evenSky(100));
    const expected = mean(1 - parallelFactor(bench, boards, 0.6), 1);
    // Steps of direction of 6° × 3°.
    expect(Math.abs(light.benchSolar[0] / 100 / expected - 1)).toBeLessThan(0.001);
    expect(light.skySolar).toBeCloseTo(light.benchSolar[0] / 100, 12);
  });

  it('by how much they grow on: the more stand below, the nearer their light', () => {
    const below = 1 - on / 10;
    expect(beam(open(shelf, 4), 180, 60)).toBeCloseTo(mean(below, 1, 4), 9);
    expect(beam(open(shelf, 40), 180, 60)).toBeCloseTo(mean(below, 1, 40), 9);
  });
});

describe('an upper shelf before a window', () => {
  const bay = (upperShelf: object | null, parts: object = nothing) =>
    samplePlace({
      growingArea: 0.9,
      room: { kind: 'constant', temperature: 18 },
      shape: { kind: 'window-bay', width: 1.2, height: 1.4, depth: 0.4, azimuth: 180 },
      upperShelf,
      ...parts,
    });
  const boards = { height: 0.5, plants: 0.1, length: 1.2, width: 0.4, side: 'front' };

  it('as long and deep as the sill: below the sky comes by the pane under it, above by the pane over it', () => {
    const { benchSolar } = daylightSeries(bay(boards), site, evenSky(100));
    const [whole, lower, upper] = [1.4, 0.5, 0.8].map((height) => stripFactor(1.2, height, 0, 0.4));
    // Below, what comes over the boards lands beyond the sill but for what passes their ends: none, they are as long.
    const both = (lower * 0.42 + upper * 0.48) / 0.9;
    expect(Math.abs(benchSolar[0] / (100 * both) - 1)).toBeLessThan(0.005);
    expect(lower).toBeLessThan(whole);
  });

  it('a sheer curtain is shared out the same way', () => {
    const sheer = { covering: 'sheer-net', from: '00:00', to: '24:00' };
    const steps = moment(180, 20, 600, 60);
    const drawn = { sheerDrawn: Uint8Array.of(1) };
    // What goes straight through the net's holes (0.42) is the sun's own light without it.
    const light = (shelfThere: object | null) =>
      daylightSeries(bay(shelfThere, { ...nothing, sheer }), site, steps, drawn).benchSolar[0] -
      0.42 * daylightSeries(bay(shelfThere), site, steps).benchSolar[0];
    const [whole, lower, upper] = [1.4, 0.5, 0.8].map((height) => stripFactor(1.2, height, 0, 0.4));
    const both = (lower * 0.42 + upper * 0.48) / 0.9;
    expect(Math.abs(light(boards) / light(null) / (both / whole) - 1)).toBeLessThan(0.005);
  });
});

describe('an upper shelf over a year', () => {
  const year = sampleYear(20);
  it.each([house, leanTo, tunnel, coldFrame, windowBay].map((place) => [place.shape.kind, place] as const))(
    '%s: light is shared, not made; no more is kept inside than enters',
    (_kind, place) => {
      const low = place.shape.kind === 'cold-frame';
      const small = place.growingArea < 1;
      const upperShelf = low
        ? ({ height: 0.1, plants: 0.05, length: 0.5, width: 0.3, side: 'back' } as const)
        : ({
            height: 0.4,
            plants: 0.1,
            length: small ? 1 : 2,
            width: small ? 0.2 : 0.8,
            side: 'back',
          } as const);
      const bare = daylightSeries(place, site, year);
      const light = daylightSeries({ ...place, upperShelf }, site, year);
      for (let k = 0; k < year.n; k++) {
        if (!(light.benchSolar[k] >= 0 && light.insideSolar[k] <= light.transmittedSolar[k] + 1e-9))
          throw new Error(`expected no more kept than enters at step ${k}`);
      }
      expect(light.transmittedSolar).toEqual(bare.transmittedSolar);
      const ratio = sum(light.benchPhotons) / sum(bare.benchPhotons);
      expect(ratio).toBeGreaterThan(0.8);
      expect(ratio).toBeLessThan(1.15);
    },
  );
});
