import { describe, expect, it } from 'vitest';
import { daylight } from '../../core/sun/index.ts';
import { expectClose } from '../sun/errors.ts';

/** US Naval Observatory, 2026, UTC (as kept in suncalc's test fixtures): place, date, civil begin, rise, set, civil end. */
const usno = `
Stockholm 59.329 18.068 Europe/Stockholm 03-20 04:09 04:50 17:02 17:43
Stockholm 59.329 18.068 Europe/Stockholm 06-21 23:59 01:31 20:08 21:40
Stockholm 59.329 18.068 Europe/Stockholm 12-21 06:48 07:43 13:48 14:44
Kyiv 50.455 30.521 Europe/Kyiv 03-20 03:29 04:01 16:11 16:43
Kyiv 50.455 30.521 Europe/Kyiv 06-21 01:01 01:46 18:13 18:59
Kyiv 50.455 30.521 Europe/Kyiv 09-23 03:13 03:45 15:54 16:27
Kyiv 50.455 30.521 Europe/Kyiv 12-21 05:17 05:56 13:56 14:35
Istanbul 41.014 28.950 Europe/Istanbul 06-21 01:58 02:32 17:40 18:14
Istanbul 41.014 28.950 Europe/Istanbul 12-21 04:54 05:26 14:39 15:10
Bogota 4.610 -74.082 America/Bogota 06-21 10:24 10:47 23:10 23:33
Bogota 4.610 -74.082 America/Bogota 12-21 10:36 10:59 22:50 23:13
Lima -12.043 -77.028 America/Lima 12-21 10:18 10:41 23:31 23:55
BuenosAires -34.613 -58.377 America/Argentina/Buenos_Aires 06-21 10:32 11:00 20:50 21:18
BuenosAires -34.613 -58.377 America/Argentina/Buenos_Aires 12-21 08:08 08:37 23:06 23:36
Melbourne -37.814 144.963 Australia/Melbourne 06-21 21:06 21:36 07:08 07:38
Melbourne -37.814 144.963 Australia/Melbourne 12-21 18:23 18:55 09:42 10:13
Ushuaia -54.811 -68.315 America/Argentina/Ushuaia 06-21 12:14 12:59 20:11 20:57
Ushuaia -54.811 -68.315 America/Argentina/Ushuaia 12-21 06:54 07:51 01:11 02:08
Reykjavik 64.135 -21.895 Atlantic/Reykjavik 12-21 10:03 11:22 15:29 16:49
`;

const minutes = (clock: string): number => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));
const around = (from: string, to: string): number => ((minutes(to) - minutes(from) + 1440) % 1440) / 60;

describe('US Naval Observatory 2026', () => {
  it('day length with and without civil twilight (printed to the minute at both ends)', () => {
    const day: [number, number][] = [];
    const civil: [number, number][] = [];
    for (const line of usno.trim().split('\n')) {
      const [, latitude, longitude, timeZone, date, begin, rise, set, end] = line.split(' ');
      const site = { latitude: Number(latitude), longitude: Number(longitude), elevation: 0, timeZone };
      const light = daylight(`2026-${date}`, site);
      day.push([light.hours * 60, around(rise, set) * 60]);
      civil.push([light.civilHours * 60, around(begin, end) * 60]);
    }
    expectClose('sunrise to sunset [min]', day, { mean: 0.3, max: 0.6 });
    expectClose('civil dawn to dusk [min]', civil, { mean: 0.35, max: 1.1 });
  });

  it('Reykjavík at midsummer: sunset after midnight belongs to the day; civil twilight all night', () => {
    const light = daylight('2026-06-21', {
      latitude: 64.135,
      longitude: -21.895,
      elevation: 0,
      timeZone: 'Atlantic/Reykjavik',
    });
    expect(Math.abs((light.sunriseMs as number) - Date.UTC(2026, 5, 21, 2, 55)) / 60_000).toBeLessThan(1.5);
    expect(Math.abs((light.sunsetMs as number) - Date.UTC(2026, 5, 22, 0, 3)) / 60_000).toBeLessThan(1.5);
    expect(light.civilHours).toBe(24);
  });
});

describe('day length on 21 June 2019 at 90° W, published to the minute', () => {
  it('by latitude', () => {
    const table: Record<number, number> = {
      0: 12.1167,
      10: 12.7167,
      20: 13.35,
      30: 14.0833,
      40: 15.0167,
      50: 16.3667,
      51: 16.55,
      52: 16.7333,
      53: 16.9333,
      54: 17.15,
      55: 17.3833,
      56: 17.6167,
      57: 17.8833,
      58: 18.1833,
      60: 18.8667,
      65: 22.0333,
    };
    const pairs = Object.entries(table).map(([latitude, hours]): [number, number] => {
      const site = { latitude: Number(latitude), longitude: -90, elevation: 0, timeZone: 'Etc/GMT+6' };
      return [daylight('2019-06-21', site).hours * 60, hours * 60];
    });
    expectClose('hours [min]', pairs, { mean: 0.25, max: 0.6 });
  });

  it('London 2015 and Wellington 2020 from almanacs', () => {
    const london = { latitude: 51.5, longitude: -0.1333, elevation: 0, timeZone: 'Europe/London' };
    const rows: [string, string, string, string, string][] = [
      ['2015-12-01', '07:04', '07:43', '15:55', '16:34'],
      ['2015-12-25', '07:25', '08:05', '15:55', '16:36'],
      ['2015-12-12', '07:16', '07:56', '15:51', '16:31'],
      ['2019-08-29', '04:32', '05:08', '18:54', '19:30'],
    ];
    const pairs: [number, number][] = [];
    for (const [date, begin, rise, set, end] of rows) {
      const light = daylight(date, london);
      const since = (ms: number | null) => ((ms as number) - Date.parse(date)) / 60_000;
      pairs.push([since(light.sunriseMs), minutes(rise)], [since(light.sunsetMs), minutes(set)]);
      pairs.push([light.civilHours * 60, around(begin, end) * 60]);
    }
    expectClose('London [min]', pairs, { mean: 0.4, max: 0.9 });
    const wellington = daylight('2020-02-11', {
      latitude: -41.33,
      longitude: 174.767,
      elevation: 0,
      timeZone: 'Pacific/Auckland',
    });
    // NZDT is UTC+13: 06:38:42 and 20:31:00.
    expect(
      Math.abs((wellington.sunriseMs as number) - Date.UTC(2020, 1, 10, 17, 38, 42)) / 1000,
    ).toBeLessThan(60);
    expect(Math.abs((wellington.sunsetMs as number) - Date.UTC(2020, 1, 11, 7, 31, 0)) / 1000).toBeLessThan(
      60,
    );
  });
});
