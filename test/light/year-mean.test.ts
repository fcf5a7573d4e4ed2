import { describe, expect, it } from 'vitest';
import { demonstrationPlan, weatherFromPlan } from '../../core/index.ts';
import type { WeatherYear } from '../../core/index.ts';
import { daylightSeries, sharedSkySeries } from '../../core/light/index.ts';
import { prepareSiteYear } from '../../core/season/index.ts';
import { house, tunnel } from '../fabric/sample-places.ts';
import { sum } from './sample-year.ts';

const year = prepareSiteYear(demonstrationPlan, weatherFromPlan(demonstrationPlan) as WeatherYear, 'mean');
const sky = sharedSkySeries(year.steps);
const outdoors = sky.global.reduce((total, global, j) => total + global * sky.photonsPerJoule[j], 0);
const site = { albedo: 0.2, horizon: [] };

// Acta Horticulturae 170:10 (abstract): a house's transmittance for a diffuse source is its mean over a year, however
// it is turned. The engine comes to both by different ways, rays of each hour's sun and the integral over the sky.
describe('a house’s year and its share of an even sky', () => {
  it.each(
    [house, tunnel].flatMap((place) =>
      [90, 135, 180, 225].map((azimuth) => [place.shape.kind, azimuth, place] as const),
    ),
  )('%s turned to %d°: the same within half a hundredth', (_kind, azimuth, place) => {
    const turned = { ...place, shape: { ...place.shape, azimuth } } as typeof place;
    const light = daylightSeries(turned, site, year.steps);
    expect(Math.abs(sum(light.benchPhotons) / outdoors / light.skyPhotons - 1)).toBeLessThan(0.005);
  });
});
