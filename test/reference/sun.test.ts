import { describe, expect, it } from 'vitest';
import {
  daylight,
  extraterrestrialNormalOfDay,
  irradianceOnPlane,
  julianDay,
  solarCoordinates,
  solarNoon,
  sunPosition,
} from '../../core/sun/index.ts';
import { expectClose } from '../sun/errors.ts';

const golden = {
  latitude: 39.742476,
  longitude: -105.1786,
  elevation: 1830.14,
  pressure: 82000,
  temperature: 11,
};

describe('NREL Solar Position Algorithm (Reda & Andreas, NREL/TP-560-34302, rev. January 2008)', () => {
  it('table A5.1: 2003-10-17 12:30:30 UTC−7, and the day after', () => {
    const at = Date.UTC(2003, 9, 17, 19, 30, 30);
    const sun = sunPosition(at, golden);
    const next = sunPosition(at + 86_400_000, golden);
    expectClose(
      'zenith and azimuth [degrees]',
      [
        [sun.apparentZenith, 50.111622],
        [sun.azimuth, 194.340241],
        [90 - sun.zenith, 39.872046],
        [sun.declination, -9.31434],
        [next.apparentZenith, 50.47826],
        [next.azimuth, 194.311132],
      ],
      { mean: 0.00025, max: 0.0004 },
    );
    expect(Math.abs(sun.equationOfTime - 14.64)).toBeLessThan(0.005);
    expect(Math.abs(solarCoordinates(at).distance - 0.9965422974)).toBeLessThan(0.0001);
    // Slope 30°, surface azimuth rotation −10° from south, east negative: it faces 170°.
    const plane = irradianceOnPlane({ tilt: 30, azimuth: 170 }, sun, {
      globalHorizontal: 0,
      beamNormal: 1,
      diffuseHorizontal: 0,
    });
    expect(Math.abs(plane.incidence - 25.187)).toBeLessThan(0.001);
  });

  it('table A4.1: Julian days', () => {
    const table: [number, number][] = [
      [Date.UTC(2000, 0, 1, 12), 2451545],
      [Date.UTC(1999, 0, 1), 2451179.5],
      [Date.UTC(1987, 0, 27), 2446822.5],
      [Date.UTC(1987, 5, 19, 12), 2446966],
      [Date.UTC(1988, 0, 27), 2447187.5],
      [Date.UTC(1988, 5, 19, 12), 2447332],
      [Date.UTC(1900, 0, 1), 2415020.5],
    ];
    for (const [at, day] of table) expect(julianDay(at)).toBe(day);
  });

  it('table A2.1 and further runs of the algorithm: sunrise, transit, sunset', () => {
    // The algorithm lists events by UT date: at Golden in summer and autumn its sunset (after 0h UT) is that of the
    // local day before, so it is compared with that day's. Greenwich meridian in UT; Golden in UTC−7; 40° N 80° W in UTC−5 (the last as quoted in pvlib's tests).
    const rows: [string, number, number, string, string, string, string | null][] = [
      ['1994-01-02', 35, 0, 'UTC', '07:08:12.8', '16:59:55.9', null],
      ['1996-07-05', -35, 0, 'UTC', '07:08:15.4', '17:01:04.5', '12:04:36'],
      ['2004-12-04', -35, 0, 'UTC', '04:38:57.1', '19:02:02.5', '11:50:22'],
      ['2015-01-02', 39.742476, -105.1786, 'Etc/GMT+7', '07:21:55', '16:47:43', '12:04:45'],
      ['2015-08-02', 39.742476, -105.1786, 'Etc/GMT+7', '05:00:27', '19:13:58', '12:06:58'],
      ['2000-01-01', 40, -80, 'Etc/GMT+5', '07:41:51', '17:05:04', '12:23:23'],
      ['2003-10-17', 39.742476, -105.1786, 'Etc/GMT+7', '06:12:43', '17:20:19', null],
    ];
    const pairs: [number, number][] = [];
    for (const [date, latitude, longitude, timeZone, rise, set, transit] of rows) {
      const hours = timeZone === 'UTC' ? 0 : -Number(timeZone.slice(8));
      const instant = (clock: string) => {
        const [h, m, s] = clock.split(':').map(Number);
        return (Date.parse(date) + ((h - hours) * 3600 + m * 60 + s) * 1000) / 1000;
      };
      const light = daylight(date, { latitude, longitude, elevation: 0, timeZone });
      pairs.push([(light.sunriseMs as number) / 1000, instant(rise)]);
      const utDay = Math.floor(instant(set) / 86_400) === Date.parse(date) / 86_400_000;
      const evening = utDay ? date : new Date(Date.parse(date) - 86_400_000).toISOString().slice(0, 10);
      const sunset = daylight(evening, { latitude, longitude, elevation: 0, timeZone }).sunsetMs as number;
      pairs.push([sunset / 1000, instant(set) - (utDay ? 0 : 86_400)]);
      if (transit !== null)
        pairs.push([solarNoon(instant(transit) * 1000, longitude) / 1000, instant(transit)]);
    }
    expectClose('instant [s]', pairs, { mean: 0.8, max: 1.7 });
  });

  it('earth–sun distance and extraterrestrial radiation', () => {
    const distance = (date: string) => solarCoordinates(Date.parse(date)).distance;
    expectClose(
      'distance [AU]',
      [
        // Midnight UTC−7, as the check values were computed for (from memory).
        [distance('2015-01-02T07:00Z'), 0.983289204601],
        [distance('2015-08-02T07:00Z'), 1.01486146446],
      ],
      { mean: 0.00001, max: 0.000012 },
    );
    // 26 October 2016 by the algorithm with 1366.1 W m⁻² (pvlib's test): 1382.493.
    const scaled = (sunPosition(Date.UTC(2016, 9, 26), golden).extraterrestrialNormal * 1366.1) / 1361;
    expect(Math.abs(scaled - 1382.493)).toBeLessThan(0.1);
    expect(Math.abs(extraterrestrialNormalOfDay(300, 1366.1) - 1383.636)).toBeLessThan(1);
  });
});

describe('Meeus, Astronomical Algorithms, 2nd ed.', () => {
  // 25.a is the short method, itself 0.0007° and 0.0013° from 25.b, the full one (198.378179°, −7.783817° from memory).
  it('examples 25.a, 25.b and 28.b: 1992-10-13 0h TD', () => {
    // The instant is in dynamical time, 59 s ahead of UT then.
    const sun = solarCoordinates(Date.UTC(1992, 9, 13) - 59_000);
    expectClose(
      'right ascension, declination [degrees]',
      [
        [sun.rightAscension, 198.38083],
        [sun.declination, -7.78507],
      ],
      { mean: 0.0025, max: 0.0035 },
    );
    expectClose(
      'the same by the full method [degrees]',
      [
        [sun.rightAscension, 198.378179],
        [sun.declination, -7.783817],
      ],
      { mean: 0.0005, max: 0.0008 },
    );
    expect(Math.abs(sun.equationOfTime - 13.712)).toBeLessThan(0.01);
  });

  it('example 12.a: sidereal time of 1987-04-10 0h UT (mean 197.693195°, nutation −3.79″·cos ε)', () => {
    const sun = solarCoordinates(Date.UTC(1987, 3, 10));
    expect(Math.abs(sun.siderealTime - 197.692229)).toBeLessThan(0.0003);
  });
});

describe('positions as the NOAA calculator gives them (seen in other programs’ tests)', () => {
  it('altitude and azimuth', () => {
    const rows: [number, number, number, number, number][] = [
      [40.72, -74.02, Date.UTC(2017, 8, 15, 16), 50.35, 159.72],
      [40.72, -74.02, Date.UTC(2017, 2, 21, 14, 30), 36.9, 129.23],
      [-33.87, 151.22, Date.UTC(2017, 10, 15, 1), 72.26, 32.37],
      [-33.87, 151.22, Date.UTC(2019, 5, 20, 23), 18.99, 42.54],
      [28.61, 77.22, Date.UTC(2001, 5, 21, 13, 11), 7.41, 292.76],
    ];
    // The first three were given without a year; 2017 is the year other rows of that file use.
    const pairs = rows.flatMap(([latitude, longitude, at, altitude, azimuth]): [number, number][] => {
      const sun = sunPosition(at, { latitude, longitude, elevation: 0 });
      return [
        [90 - sun.apparentZenith, altitude],
        [sun.azimuth, azimuth],
      ];
    });
    expectClose('altitude and azimuth [degrees]', pairs, { mean: 0.007, max: 0.03 });
  });
});
