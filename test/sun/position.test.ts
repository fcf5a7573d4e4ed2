import { describe, expect, it } from 'vitest';
import { getPosition, getTimes } from 'suncalc';
import { daylight, deltaT, julianDay, separation, sunPosition } from '../../core/sun/index.ts';
import { expectClose } from './errors.ts';
import { independentPositions } from './independent-positions.ts';

const sites = [
  { latitude: 54, longitude: -7, elevation: 60, timeZone: 'Europe/Dublin' },
  { latitude: 38.7, longitude: -9.1, elevation: 0, timeZone: 'Europe/Lisbon' },
  { latitude: -41.3, longitude: 174.8, elevation: 10, timeZone: 'Pacific/Auckland' },
  { latitude: 1.3, longitude: 103.8, elevation: 0, timeZone: 'Asia/Singapore' },
];

describe('position of the sun', () => {
  it('agrees with an independent computation from 1950 to 2100', () => {
    const pairs = independentPositions.map(([at, latitude, longitude, elevation, azimuth]) => {
      const sun = sunPosition(Date.parse(at), { latitude, longitude, elevation: 0 });
      return [separation(90 - sun.zenith, sun.azimuth, elevation, azimuth), 0] as const;
    });
    expect(pairs.length).toBe(52);
    expectClose('direction [degrees]', pairs, { mean: 0.0012, max: 0.003 });
  });

  it('agrees with suncalc, a short algorithm by other authors', () => {
    const pairs: [number, number][] = [];
    for (const site of sites) {
      for (let day = 0; day < 365; day += 13) {
        const at = Date.UTC(2027, 0, 1) + day * 86_400_000 + (day % 24) * 3_600_000;
        const other = getPosition(new Date(at), site.latitude, site.longitude);
        const ours = sunPosition(at, site);
        if (other.altitude < 1) continue;
        pairs.push([separation(90 - ours.apparentZenith, ours.azimuth, other.altitude, other.azimuth), 0]);
      }
    }
    expectClose('direction [degrees]', pairs, { mean: 0.006, max: 0.01 });
  });

  it('keeps azimuth and zenith in range and the refraction small and upward', () => {
    for (let k = 0; k < 400; k++) {
      const at = Date.UTC(1950, 0, 1) + k * 137.3 * 86_400_000;
      const sun = sunPosition(at, {
        latitude: -90 + ((k * 7) % 181),
        longitude: -180 + ((k * 31) % 361),
        elevation: 0,
      });
      expect(sun.azimuth).toBeGreaterThanOrEqual(0);
      expect(sun.azimuth).toBeLessThan(360);
      expect(Math.abs(sun.declination)).toBeLessThan(23.46);
      const lift = sun.zenith - sun.apparentZenith;
      expect(lift).toBeGreaterThanOrEqual(-0.0002);
      expect(lift).toBeLessThan(0.75);
      expect(sun.extraterrestrialNormal).toBeGreaterThan(1315);
      expect(sun.extraterrestrialNormal).toBeLessThan(1409);
    }
  });

  it('refuses what is no place or instant', () => {
    const place = { latitude: 54, longitude: -7, elevation: 0 };
    expect(() => sunPosition(NaN, place)).toThrow('expected a finite instant');
    expect(() => sunPosition(0, { ...place, latitude: 91 })).toThrow('expected latitude');
    expect(() => sunPosition(0, { ...place, longitude: NaN })).toThrow('expected longitude');
    expect(() => sunPosition(0, { ...place, elevation: 1e5 })).toThrow('expected elevation');
  });

  it('knows ΔT as measured (Astronomical Almanac, from memory: 29.15 s in 1950, 63.83 in 2000, 69.36 in 2020)', () => {
    const at = (year: number) => deltaT(Date.UTC(year, 0, 1));
    expect(at(1950)).toBeCloseTo(29.15, 0);
    expect(at(2000)).toBeCloseTo(63.83, 1);
    expect(Math.abs(at(2020) - 69.36)).toBeLessThan(2.5);
    expect(julianDay(Date.UTC(2000, 0, 1, 12))).toBe(2451545);
  });
});

describe('light of a date', () => {
  it('agrees with suncalc on sunrise and sunset', () => {
    const pairs: [number, number][] = [];
    for (const site of sites) {
      for (let day = 0; day < 365; day += 9) {
        const dateISO = new Date(Date.UTC(2027, 0, 1) + day * 86_400_000).toISOString().slice(0, 10);
        const ours = daylight(dateISO, site);
        const other = getTimes(
          new Date(((ours.sunriseMs as number) + (ours.sunsetMs as number)) / 2),
          site.latitude,
          site.longitude,
        );
        pairs.push([(ours.sunriseMs as number) / 60_000, Number(other.sunrise) / 60_000]);
        pairs.push([(ours.sunsetMs as number) / 60_000, Number(other.sunset) / 60_000]);
      }
    }
    expectClose('instant [min]', pairs, { mean: 0.025, max: 0.06 });
  });

  it('gives 24 and 0 hours in polar day and night, and null instants', () => {
    const site = { latitude: 78.2, longitude: 15.6, elevation: 0, timeZone: 'Arctic/Longyearbyen' };
    expect(daylight('2025-06-21', site)).toEqual({
      sunriseMs: null,
      sunsetMs: null,
      hours: 24,
      civilHours: 24,
    });
    expect(daylight('2025-12-21', site)).toEqual({
      sunriseMs: null,
      sunsetMs: null,
      hours: 0,
      civilHours: 0,
    });
  });

  it('is of the civil date, clock changes and far zones included', () => {
    for (const site of [
      ...sites,
      { latitude: -17, longitude: -179.9, elevation: 0, timeZone: 'Pacific/Fiji' },
    ]) {
      for (const dateISO of ['2025-03-30', '2025-10-26', '2025-04-06', '2025-12-31']) {
        const light = daylight(dateISO, site);
        const noon = ((light.sunriseMs as number) + (light.sunsetMs as number)) / 2;
        const shown = new Intl.DateTimeFormat('sv-SE', {
          timeZone: site.timeZone,
          dateStyle: 'short',
        }).format(noon);
        expect(shown).toBe(dateISO);
      }
    }
  });

  it('has civil twilight at both ends, and refuses a date that is none', () => {
    const light = daylight('2025-12-21', sites[0]);
    expect(light.hours).toBeGreaterThan(7.3);
    expect(light.hours).toBeLessThan(7.5);
    expect(light.civilHours - light.hours).toBeGreaterThan(1.3);
    expect(() => daylight('2025-02-29', sites[0])).toThrow('expected a date');
    expect(() => daylight('21/12/2025', sites[0])).toThrow('expected a date');
  });
});
