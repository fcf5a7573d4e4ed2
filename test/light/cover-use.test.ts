import { describe, expect, it } from 'vitest';
import { demonstrationPlan, weatherFromPlan } from '../../core/index.ts';
import type { Place, WeatherYear } from '../../core/index.ts';
import {
  coverTransmittance,
  diffuseTransmittance,
  dirtLoss,
  photonsPerJouleOfSky,
  photonsPerSolarJoule,
  wetCoverLoss,
} from '../../core/light/index.ts';
import { covering, coverings, coveringsFor } from '../../core/plan/coverings.ts';
import { placeLight, prepareSiteYear } from '../../core/season/index.ts';
import { groundAlbedo, placeCover } from '../../core/season/place-cover.ts';
import { house, leanTo, windowBay } from '../fabric/sample-places.ts';
import { sum } from './sample-year.ts';

const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
const year = prepareSiteYear(demonstrationPlan, weather, 'cover');
const perDay = 1440 / year.clock.stepMinutes;
/** Daily light of a day of the year (0 = 1 January) [mol m⁻²]. */
const day = (photons: Float64Array, index: number) =>
  sum(photons.subarray(index * perDay, (index + 1) * perDay)) * year.clock.stepMinutes * 60e-6;
const bare = placeLight(house, year);

describe('shade cloth', () => {
  const shadeCloth = { covering: 'shade-50', from: '05-01', to: '08-31' };
  const shaded = placeLight({ ...house, shadeCloth }, year);

  it.each([30, 50, 60])('of %d %% passes the rest at every angle', (percent) => {
    const cloth = covering(`shade-${percent}`);
    for (const angle of [0, 45, 80])
      expect(coverTransmittance(angle, cloth)).toBeCloseTo(1 - percent / 100, 12);
    expect(diffuseTransmittance(cloth, 'par')).toBeCloseTo(1 - percent / 100, 12);
  });

  it('halves the light from its first day to its last, and no other day', () => {
    const [first, last] = [120, 242];
    for (const index of [0, first - 1, last + 1, 364])
      expect(day(shaded.benchPhotons, index)).toBe(day(bare.benchPhotons, index));
    for (const index of [first, 180, last])
      expect(day(shaded.benchPhotons, index)).toBeCloseTo(day(bare.benchPhotons, index) / 2, 9);
  });

  it('shades the cover itself, but not a brick base, and what is taken up inside', () => {
    const noon = 180 * perDay + perDay / 2;
    let covers = 0;
    bare.sunOnSurface.forEach((sun, i) => {
      const ratio = shaded.sunOnSurface[i][noon] / sun[noon];
      expect([0.5, 1]).toContain(ratio);
      if (ratio === 0.5) covers++;
    });
    expect(covers).toBeGreaterThan(3);
    expect(shaded.sunFloor[noon]).toBeCloseTo(bare.sunFloor[noon] / 2, 9);
  });

  it('may lie over the turn of the year', () => {
    const winter = placeCover(
      { ...house, shadeCloth: { ...shadeCloth, from: '12-30', to: '01-02' } },
      year,
    ).shade;
    const days = Array.from({ length: 365 }, (_, index) => winter?.[index * perDay]);
    expect(days.flatMap((share, index) => (share === 0.5 ? [index] : []))).toEqual([0, 1, 363, 364]);
  });
});

describe('dirt', () => {
  it('starts at nothing after washing and comes back to within a hundredth of its share in a year', () => {
    expect(dirtLoss(0, 0.1)).toBe(0);
    expect(dirtLoss(75, 0.1)).toBeCloseTo(0.1 * (1 - Math.exp(-1)), 12);
    expect(dirtLoss(364, 0.1)).toBeGreaterThan(0.099);
    expect(dirtLoss(364, 0.1)).toBeLessThan(0.1);
    expect(() => dirtLoss(NaN, 0.1)).toThrow('expected days');
  });

  it('washing in October gives the winter back what dirt took', () => {
    const dirty = { ...house, dirtShare: 0.15 };
    const washed: Place = { ...dirty, cleanedOn: '10-01' };
    const [a, b] = [placeLight(dirty, year), placeLight(washed, year)];
    const gain = (index: number) => day(b.benchPhotons, index) / day(a.benchPhotons, index);
    expect(gain(273)).toBeCloseTo(1 / 0.85, 9);
    expect(gain(354)).toBeCloseTo((1 - 0.15 * (1 - Math.exp(-81 / 75))) / 0.85, 9);
    expect(gain(272)).toBeLessThan(1.002);
    expect(a.sunOnSurface).toEqual(b.sunOnSurface);
  });

  it('nothing set, nothing changed', () => {
    expect(placeCover(house, year)).toEqual({
      groundAlbedo: null,
      shade: null,
      dirt: null,
      sheerDrawn: null,
    });
  });
});

describe('drops on the cover', () => {
  it('take three points of glass’s hemispherical light, more of plastic’s, none of cloth’s and walls’', () => {
    const glass = covering('glass-3');
    // A measuring protocol for wet covers found −3 points hemispherical on clear greenhouse glass.
    const points = wetCoverLoss(glass) * diffuseTransmittance(glass, 'par');
    expect(Math.abs(points - 0.03)).toBeLessThan(0.001);
    expect(wetCoverLoss(covering('low-e-double-glass'))).toBe(wetCoverLoss(glass));
    expect(wetCoverLoss(covering('polythene'))).toBeGreaterThan(wetCoverLoss(glass));
    expect(wetCoverLoss(covering('twin-wall-10'))).toBe(wetCoverLoss(covering('polythene')));
    for (const id of ['brick-215', 'fleece-17', 'open', 'shade-50', 'bubble-lining'])
      expect(wetCoverLoss(covering(id))).toBe(0);
  });
});

describe('sheer curtains', () => {
  it('are drawn by the site’s civil clock', () => {
    const sheer = { covering: 'sheer-voile', from: '10:00', to: '16:00' };
    const { sheerDrawn } = placeCover({ ...windowBay, sheer }, year);
    const drawn = placeLight({ ...windowBay, sheer }, year).benchPhotons;
    const free = placeLight(windowBay, year).benchPhotons;
    let hours = 0;
    for (let k = 180 * perDay; k < 181 * perDay; k++) {
      const civil = year.clock.civil[k];
      expect(sheerDrawn?.[k]).toBe(civil >= 600 && civil < 960 ? 1 : 0);
      if (sheerDrawn?.[k] === 1) hours += year.clock.stepMinutes / 60;
      if (sheerDrawn?.[k] === 1) expect(drawn[k]).toBeLessThan(free[k]);
      else expect(drawn[k]).toBe(free[k]);
    }
    expect(hours).toBe(6);
  });

  it('are two in the catalogue, and shade cloths three', () => {
    expect(coveringsFor('sheer').map(({ id }) => id)).toEqual(['sheer-net', 'sheer-voile']);
    expect(coveringsFor('shade').map(({ id }) => id)).toEqual(['shade-30', 'shade-50', 'shade-60']);
    expect(coverings.length).toBe(new Set(coverings.map(({ id }) => id)).size);
  });
});

describe('snow on the ground', () => {
  const site = { ...demonstrationPlan.site, snow: { depth: 0.2, from: '12-01', to: '02-28' } };
  const white = prepareSiteYear({ ...demonstrationPlan, site }, weather, 'snow');

  it('brightens the ground to 0.65 while it lies, and not a day after it has melted', () => {
    const albedo = groundAlbedo(white) as Float64Array;
    expect(Math.max(...albedo)).toBeCloseTo(0.65, 12);
    expect(Math.min(...albedo)).toBe(0.2);
    expect(albedo[200 * perDay]).toBe(0.2);
    expect(groundAlbedo(year)).toBe(null);
  });

  it('lights upright glass and back walls from below, and never takes light', () => {
    const [plain, snowy] = [placeLight(leanTo, year), placeLight(leanTo, white)];
    const total = (series: readonly Float64Array[]) => series.reduce((all, each) => all + sum(each), 0);
    expect(total(snowy.sunOnSurface)).toBeGreaterThan(1.005 * total(plain.sunOnSurface));
    expect(sum(snowy.benchPhotons)).toBeGreaterThan(sum(plain.benchPhotons));
    for (let k = 0; k < year.clock.n; k++)
      if (snowy.benchPhotons[k] < plain.benchPhotons[k])
        throw new Error(`expected no less light at step ${k}`);
  });
});

describe('photons per joule of sunlight', () => {
  // Hourly means at Athalassa, Cyprus: 1.878 clear to 2.197 overcast (Jacovides et al. 2004); a later study, of which a page
  // without its title was seen: 1.971 to 2.099. The model must lie between the two at both ends.
  it('rises under cloud between the two published series', () => {
    expect(photonsPerJouleOfSky(0.8)).toBeGreaterThan(1.878);
    expect(photonsPerJouleOfSky(0.8)).toBeLessThan(1.971);
    expect(photonsPerJouleOfSky(0.05)).toBeGreaterThan(2.099);
    expect(photonsPerJouleOfSky(0.05)).toBeLessThan(2.197);
    for (let clearness = 0; clearness < 1; clearness += 0.05)
      expect(photonsPerJouleOfSky(clearness + 0.05)).toBeLessThanOrEqual(photonsPerJouleOfSky(clearness));
    // A sky half way between is the mean sky of the one-figure conversion.
    expect(Math.abs(photonsPerJouleOfSky(0.5) / photonsPerSolarJoule - 1)).toBeLessThan(0.005);
    expect(() => photonsPerJouleOfSky(NaN)).toThrow('expected a clearness index');
  });
});
