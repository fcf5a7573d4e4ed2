import { describe, expect, it } from 'vitest';
import { daylightSeries } from '../../core/light/index.ts';
import { horizonPasses, skyViewCut, skylineShare } from '../../core/sun/index.ts';
import { house, samplePlace, windowBay } from '../fabric/sample-places.ts';
import { evenSky, moment, nothing } from './moment.ts';
import { sampleYear, sum } from './sample-year.ts';

const ring = (elevation: number, passes: number) =>
  [0, 90, 180, 270].map((azimuth) => ({ azimuth, elevation, passes }));
const open = samplePlace({
  ...nothing,
  shape: { kind: 'even-span', length: 4, width: 2.5, eavesHeight: 1.5, ridgeHeight: 2.3, azimuth: 160 },
});

describe('skylines that let light through', () => {
  it('a point’s share holds up to the next point clockwise, right round', () => {
    const profile = [
      { azimuth: 90, elevation: 10, passes: 0.5 },
      { azimuth: 200, elevation: 20, passes: 0 },
    ];
    expect(horizonPasses(profile, 90)).toBe(0.5);
    expect(horizonPasses(profile, 199)).toBe(0.5);
    expect(horizonPasses(profile, 200)).toBe(0);
    expect(horizonPasses(profile, 30)).toBe(0);
    expect(skylineShare(profile, 5, 120)).toBe(0.5);
    expect(skylineShare(profile, 5, 300)).toBe(0);
    expect(skylineShare(profile, 30, 300)).toBe(1);
    expect(skylineShare(profile, -1, 120)).toBe(0);
    expect(skylineShare([], 1, 0)).toBe(1);
  });

  it('hides sin² e of an even sky from the level, less what comes through (derived, exact)', () => {
    const whole = skyViewCut(ring(30, 0), { tilt: 0, azimuth: 0 });
    expect(skyViewCut(ring(30, 0.4), { tilt: 0, azimuth: 0 })).toBeCloseTo(0.6 * whole, 12);
  });

  it.each([0, 0.3, 1])('with the sun behind trees that pass %d the beam is that share of it', (passes) => {
    const site = { albedo: 0, horizon: ring(40, passes) };
    const light = daylightSeries(open, site, moment(180, 24, 500, 0));
    expect(light.benchSolar[0]).toBeCloseTo(passes * 500 * Math.sin((24 * Math.PI) / 180), 9);
  });

  it.each([0, 0.3, 1])('and the even sky loses (1 − passes) sin² e: trees that pass %d', (passes) => {
    const site = { albedo: 0, horizon: ring(40, passes) };
    const light = daylightSeries(open, site, evenSky(100));
    const expected = 1 - (1 - passes) * Math.sin((40 * Math.PI) / 180) ** 2;
    // The table's rows of 3° are weighted at their middles.
    expect(Math.abs(light.benchSolar[0] / 100 - expected)).toBeLessThan(0.002);
  });

  it('a place’s own skyline comes before the site’s, an empty one too', () => {
    const year = sampleYear(40);
    const hills = { albedo: 0.2, horizon: ring(30, 0) };
    const bySite = daylightSeries(house, hills, year).benchPhotons;
    expect(
      daylightSeries({ ...house, horizon: ring(30, 0) }, { albedo: 0.2, horizon: [] }, year).benchPhotons,
    ).toEqual(bySite);
    const free = daylightSeries({ ...house, horizon: [] }, hills, year).benchPhotons;
    expect(free).toEqual(daylightSeries(house, { albedo: 0.2, horizon: [] }, year).benchPhotons);
    expect(sum(bySite)).toBeLessThan(0.8 * sum(free));
  });

  it('trees that pass all change nothing but the sky’s brightness by rounding', () => {
    const year = sampleYear(20);
    for (const place of [house, windowBay]) {
      const level = daylightSeries(place, { albedo: 0.2, horizon: [] }, year);
      const trees = daylightSeries(place, { albedo: 0.2, horizon: ring(25, 1) }, year);
      expect(Math.abs(sum(trees.benchSolar) / sum(level.benchSolar) - 1)).toBeLessThan(1e-12);
    }
  });
});
