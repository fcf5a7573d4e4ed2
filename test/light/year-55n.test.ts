import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demonstrationPlan, parsePlan, readEpwBytes, weatherFromPlan } from '../../core/index.ts';
import type { Place, Plan, WeatherYear } from '../../core/index.ts';
import { daylightSeries, sharedSkySeries, windowStripFactor } from '../../core/light/index.ts';
import { placeLight, prepareSiteYear } from '../../core/season/index.ts';
import type { SiteYear } from '../../core/season/index.ts';
import { describeWithData } from '../support/shared-data.ts';
import { evenSky } from './moment.ts';
import { sum } from './sample-year.ts';

const monthStarts = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/** Mean daily light of each month [mol m⁻² d⁻¹]. */
function months(photons: Float64Array, year: SiteYear): number[] {
  const perDay = 1440 / year.clock.stepMinutes;
  return monthStarts.slice(0, 12).map((from, month) => {
    const days = photons.subarray(from * perDay, monthStarts[month + 1] * perDay);
    return (sum(days) * year.clock.stepMinutes * 60e-6) / (monthStarts[month + 1] - from);
  });
}

/** Photons outdoors on the level [µmol m⁻² s⁻¹]. */
function outdoors(year: SiteYear): Float64Array {
  const photons = new Float64Array(year.steps.n);
  const sky = sharedSkySeries(year.steps);
  sky.index.forEach((k, j) => (photons[k] = sky.global[j] * sky.photonsPerJoule[j]));
  return photons;
}

/** The demonstration's places with a sill of strips further and further from the pane. */
const depths = [0, 0.3, 0.6, 0.9, 1.2];
function withStrips(): Plan {
  const window = demonstrationPlan.places.find(({ id }) => id === 'window');
  if (window === undefined || window.shape.kind !== 'window-bay')
    throw new Error('expected the window of the demonstration');
  const { shape } = window;
  const strips = depths.map((distance, index) => ({
    ...window,
    id: `strip-${index}`,
    growingArea: 0.2,
    shape: { ...shape, distance, depth: distance + 0.15, reveal: 0 },
  }));
  const reading = parsePlan({ ...demonstrationPlan, places: [...demonstrationPlan.places, ...strips] });
  if (!reading.ok)
    throw new Error(reading.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  return reading.plan;
}

/** What must hold of a year at 55° N, whatever its weather. */
function holds(plan: Plan, weather: WeatherYear): void {
  const year = prepareSiteYear(plan, weather, '55');
  const out = outdoors(year);
  const outside = months(out, year);
  const lights = new Map(plan.places.map((place) => [place.id, placeLight(place, year).benchPhotons]));
  const of = (id: string) => lights.get(id) as Float64Array;
  const share = (id: string) => sum(of(id)) / sum(out);

  it('outdoors: least in December, most by midsummer, 3–4.5 and 25–40 mol m⁻² d⁻¹', () => {
    expect(outside.indexOf(Math.min(...outside))).toBe(11);
    expect([5, 6]).toContain(outside.indexOf(Math.max(...outside)));
    expect(outside[11]).toBeGreaterThan(3);
    expect(outside[11]).toBeLessThan(4.5);
    expect(Math.max(...outside)).toBeGreaterThan(25);
    expect(Math.max(...outside)).toBeLessThan(40);
    // 2.0 to 2.1 photons a joule over the year, December included.
    expect(Math.abs(sum(out) / sum(year.steps.globalHorizontal) - 2.05)).toBeLessThan(0.05);
  });

  it.each([...lights.keys()])('%s: no light at night; in the plan’s own places least in December', (id) => {
    const photons = of(id);
    for (let k = 0; k < photons.length; k++) {
      if (!(photons[k] >= 0)) throw new Error(`expected light at step ${k}, got ${photons[k]}`);
      if (year.clock.sunUp[k] === 0 && year.steps.globalHorizontal[k] === 0 && photons[k] > 0)
        throw new Error(`expected night at step ${k}, got ${photons[k]}`);
    }
    // A metre behind a south window the high sun of June does not come in and December is not the darkest month.
    if (id.startsWith('strip')) return;
    const monthly = months(photons, year);
    expect(Math.min(...monthly)).toBe(monthly[11]);
  });

  // House total 50–70 % of outdoors (from memory; no published value found). The demonstration's houses are lightly
  // framed (0.10 and 0.06) and dry here: glass and film pass 0.85 and 0.81 of an even sky's photons before that.
  it('a lean-to and a tunnel keep a half to three quarters, tents none, the window sill far less', () => {
    for (const id of ['lean-to', 'tunnel']) {
      expect(share(id)).toBeGreaterThan(0.5);
      expect(share(id)).toBeLessThan(0.75);
    }
    expect(share('bright-tent')).toBe(0);
    expect(share('dim-tent')).toBe(0);
    expect(share('window')).toBeGreaterThan(0.25);
    expect(share('window')).toBeLessThan(0.36);
  });

  it('the sill darkens with depth, under dull December skies as the pane’s factor does', () => {
    const shares = depths.map((_, index) => share(`strip-${index}`));
    for (let i = 1; i < shares.length; i++) expect(shares[i]).toBeLessThan(0.95 * shares[i - 1]);
    // December steps without beam. Under an even sky a strip has the pane's factor times frame and dirt (0.73 × 0.95) times
    // what glass passes at the angles it sees the sky by: 0.71 of photons at the pane to 0.89 a metre in. The dull sky
    // itself is brighter towards the low sun (Perez et al. 1990), by 4 to 21 % for a window that faces it.
    const perDay = 1440 / year.clock.stepMinutes;
    const dull = (photons: Float64Array) => {
      let total = 0;
      for (let k = 334 * perDay; k < year.steps.n; k++) if (year.steps.beamNormal[k] < 1) total += photons[k];
      return total;
    };
    depths.forEach((from, index) => {
      const strip = plan.places.find(({ id }) => id === `strip-${index}`) as Place;
      const even = daylightSeries(strip, year.site, evenSky(1)).skyPhotons;
      const passed = even / windowStripFactor(strip, from, from + 0.15) / (0.73 * 0.95);
      expect(passed).toBeGreaterThan(0.7);
      expect(passed).toBeLessThan(0.89);
      const towardsSun = dull(of(strip.id)) / dull(out) / even;
      expect(towardsSun).toBeGreaterThan(1.03);
      expect(towardsSun).toBeLessThan(1.21);
    });
  });
}

describe('a year of daylight at 55° N, normals of the demonstration plan', () => {
  const plan = { ...withStrips(), site: { ...demonstrationPlan.site, latitude: 55 } };
  holds(plan, weatherFromPlan(plan) as WeatherYear);
});

describeWithData(
  'weather/sand-point-55N.epw',
  'a year of daylight at 55° N, a measured maritime year',
  (file) => {
    const reading = readEpwBytes(readFileSync(file));
    if (!reading.ok) throw new Error('expected a readable weather file');
    holds(withStrips(), reading.weather);
  },
);
