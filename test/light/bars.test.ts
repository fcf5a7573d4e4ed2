import { describe, expect, it } from 'vitest';
import { surfacesOf } from '../../core/fabric/index.ts';
import { daylightSeries } from '../../core/light/index.ts';
import type { Place } from '../../core/plan/schema.ts';
import { coldFrame, house, leanTo, listed, samplePlace, tunnel, windowBay } from '../fabric/sample-places.ts';
import { evenSky, moment, nothing } from './moment.ts';
import { sampleYear, sum } from './sample-year.ts';

const site = { albedo: 0, horizon: [] };
const degree = Math.PI / 180;
const bars = { spacing: 0.6, depth: 0.06 };
const glazed: readonly (readonly [string, Place])[] = [
  house,
  leanTo,
  tunnel,
  coldFrame,
  windowBay,
  listed,
].map((place) => [place.shape.kind, place]);

/** Listed surfaces name their own glass. */
const withoutGlass = (shape: Place['shape']): Place['shape'] =>
  shape.kind !== 'listed'
    ? shape
    : {
        ...shape,
        surfaces: shape.surfaces.map((each) =>
          each.covering === 'glass-3' ? { ...each, covering: 'open' } : each,
        ),
      };

type Vector = readonly [number, number, number];
const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const towards = (azimuth: number, elevation: number): Vector => [
  Math.cos(elevation * degree) * Math.sin(azimuth * degree),
  Math.cos(elevation * degree) * Math.cos(azimuth * degree),
  Math.sin(elevation * degree),
];

/**
 * Share of rays towards the sun that leave a pane between drawn bars: box-shaped, `spacing` apart, of the frame's share
 * of the spacing wide and `depth` proud, running up the slope. Rays start at even steps across one spacing.
 */
function counted(normal: Vector, sun: Vector, { spacing, depth }: typeof bars, frameShare: number): number {
  // Level panes: bars from front to back, which is to the south here.
  const up: Vector = normal[2] > 1 - 1e-9 ? [0, -1, 0] : [0, 0, 1];
  const across = cross(normal, up);
  const size = Math.hypot(...across);
  const side = dot(sun, across) / size;
  const rise = dot(sun, normal);
  const half = (frameShare * spacing) / 2;
  const rays = 4000;
  let free = 0;
  for (let i = 0; i < rays; i++) {
    const start = ((i + 0.5) / rays) * spacing;
    if (start < half || start > spacing - half) continue;
    // The face of the next bar on the side the ray leans to, and how high the ray is when it comes there.
    const away = side > 0 ? spacing - half - start : start - half;
    if (side === 0 || (away / Math.abs(side)) * rise > depth) free++;
  }
  return free / rays;
}

describe('bars that stand proud of the cover', () => {
  const suns = [
    [180, 12],
    [150, 25],
    [215, 40],
    [100, 8],
    [247, 60],
  ] as const;

  it.each(glazed)('%s: what enters is what a count of rays between drawn bars lets by', (_kind, place) => {
    const frameShare = 0.08;
    const bare = { ...place, ...nothing, frameShare, bars, shape: withoutGlass(place.shape) };
    for (const [azimuth, elevation] of suns) {
      const { transmittedSolar } = daylightSeries(bare, site, moment(azimuth, elevation, 500, 0));
      const sun = towards(azimuth, elevation);
      let expected = 0;
      for (const { transparent, area, normal } of surfacesOf(bare).surfaces) {
        const cosine = dot(normal, sun);
        if (transparent && cosine > 0)
          expected += 500 * area * cosine * counted(normal, sun, bars, frameShare);
      }
      if (expected === 0) expect(transmittedSolar[0]).toBe(0);
      else expect(Math.abs(transmittedSolar[0] / expected - 1)).toBeLessThan(0.002);
    }
  });

  it('the same at the plants: a sill in the sun, every ray of it through the one pane', () => {
    const bay = samplePlace({
      ...nothing,
      room: { kind: 'constant', temperature: 18 },
      shape: { kind: 'window-bay', width: 2, height: 1.2, depth: 0.3, azimuth: 180 },
    });
    for (const [azimuth, elevation] of [
      [180, 30],
      [210, 30],
      [150, 45],
    ] as const) {
      const steps = moment(azimuth, elevation, 500, 0);
      const [flat, proud] = [bay, { ...bay, bars }].map(
        (each) => daylightSeries(each, site, steps).benchSolar[0],
      );
      // 60° and 30°, 45° are nodes of the table of directions.
      expect(proud / flat).toBeCloseTo(counted([0, -1, 0], towards(azimuth, elevation), bars, 0), 3);
    }
  });

  it('take nothing square to the pane, nor of the winter noon’s sun along them', () => {
    const square = moment(180, 0.0001, 500, 0);
    expect(daylightSeries({ ...windowBay, bars }, site, square).transmittedSolar[0]).toBeCloseTo(
      daylightSeries(windowBay, site, square).transmittedSolar[0],
      9,
    );
    const noon = moment(180, 12, 500, 0);
    for (const place of [leanTo, tunnel, coldFrame, windowBay]) {
      const turned = { ...place, shape: { ...place.shape, azimuth: 180 } } as Place;
      const [flat, proud] = [turned, { ...turned, bars }].map((each) => daylightSeries(each, site, noon));
      // Square to the front no light comes by the ends.
      expect(proud.transmittedSolar[0]).toBeCloseTo(flat.transmittedSolar[0], 9);
      expect(proud.benchSolar[0]).toBeCloseTo(flat.benchSolar[0], 9);
    }
  });

  // Hottel's crossed strings for the mouth and the foot of a channel between black slats of depth d, b apart:
  // F = (√(b² + d²) − d) ÷ b.
  it.each([0, 0.2])('of an even sky leave what crossed strings do, frame %d', (frameShare) => {
    for (const deep of [0.01, 0.06, 0.3, 0.5]) {
      const own = { spacing: 0.6, depth: deep };
      const place = { ...windowBay, ...nothing, frameShare };
      const [flat, proud] = [place, { ...place, bars: own }].map(
        (each) => daylightSeries(each, site, evenSky(100)).transmittedSolar[0],
      );
      const clear = 0.6 * (1 - frameShare);
      expect(Math.abs(proud / flat / ((Math.hypot(clear, deep) - deep) / clear) - 1)).toBeLessThan(1e-4);
    }
  });

  it('of an even sky at the plants too: under a wide low light they have it but for the edges', () => {
    const low = samplePlace({
      ...nothing,
      bars: { spacing: 0.6, depth: 0.12 },
      shape: { kind: 'cold-frame', length: 10, width: 3, frontHeight: 0.05, backHeight: 0.05, azimuth: 180 },
    });
    const { benchSolar } = daylightSeries(low, site, evenSky(100));
    // The frame's low sides and the table's steps of direction leave a hundredth.
    expect(Math.abs(benchSolar[0] / 100 - (Math.hypot(0.6, 0.12) - 0.12) / 0.6)).toBeLessThan(0.012);
  });

  it('before a drawn sheer curtain leave it as much less to spread', () => {
    const sheer = { covering: 'sheer-net', from: '00:00', to: '24:00' } as const;
    const steps = moment(200, 20, 500, 0);
    const place: Place = { ...windowBay, ...nothing, sheer };
    const [flat, proud] = [place, { ...place, bars }].map(
      (each) => daylightSeries(each, site, steps, { sheerDrawn: Uint8Array.of(1) }).benchPhotons[0],
    );
    expect(proud / flat).toBeCloseTo(counted([0, -1, 0], towards(200, 20), bars, 0), 3);
  });

  it('never give light, and take more the deeper they are', () => {
    const year = sampleYear(20);
    for (const [, place] of glazed) {
      const lightOf = (depth: number) =>
        daylightSeries({ ...place, bars: { spacing: 0.6, depth } }, site, year).benchPhotons;
      const [flat, thin, deep] = [
        daylightSeries(place, site, year).benchPhotons,
        lightOf(0.03),
        lightOf(0.3),
      ];
      for (let k = 0; k < year.n; k++) {
        expect(thin[k] <= flat[k] * (1 + 1e-12)).toBe(true);
        expect(deep[k] <= thin[k] * (1 + 1e-12)).toBe(true);
      }
      expect(sum(deep)).toBeLessThan(0.9 * sum(thin));
    }
  });
});
