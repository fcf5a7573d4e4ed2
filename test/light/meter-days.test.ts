import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { civilInstant, haurwitz, readEpwBytes, sunPosition } from '../../core/index.ts';
import { openSky, skyDay } from '../../core/light/meter-day.ts';
import { bandOf, dayError } from '../../core/light/meter-errors.ts';
import { readMeter, readMeterOverDay } from '../../core/light/meter.ts';
import type { DaylightReading, MeterPlace, MeterReading, SkyState } from '../../core/light/meter-reading.ts';
import type { Site } from '../../core/plan/site.ts';
import { describeWithData } from '../support/shared-data.ts';

const clock = (minutes: number) =>
  `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
const at = (day: string, time: string, sky: SkyState, where: MeterPlace = 'outdoors'): DaylightReading => ({
  kind: 'daylight',
  day,
  time,
  sky,
  where,
});
const reading = (
  value: number,
  day: string,
  time: string,
  sky: SkyState,
  where: MeterPlace = 'outdoors',
): MeterReading => ({
  value,
  unit: 'ppfd',
  meter: 'quantum',
  light: at(day, time, sky, where),
});

// Days made by models other than the calculator's own: cloudless light by Haurwitz 1945, 2.02 µmol/J; overcast as a
// quarter of that (Kasten & Czeplak 1980 at eight eighths), 2.15 µmol/J under cloud (between 2.02 and the 2.3 of an
// ecology package's default).
describe('a day made from another sky comes back from any hour of it', () => {
  const sites: (Site & { name: string })[] = [
    { name: 'on the equator', latitude: 0, longitude: 37, elevation: 0, timeZone: 'Africa/Nairobi' },
    { name: '34° S', latitude: -34, longitude: 18.5, elevation: 40, timeZone: 'Africa/Johannesburg' },
    { name: '45° N', latitude: 45, longitude: 8, elevation: 200, timeZone: 'Europe/Rome' },
    { name: '55° N', latitude: 55, longitude: -4, elevation: 50, timeZone: 'Europe/London' },
    { name: '63° N', latitude: 63, longitude: 10, elevation: 20, timeZone: 'Europe/Oslo' },
  ];
  const days = ['01-25', '03-20', '06-21', '10-15', '12-21'];
  const photons: Readonly<Record<'clear' | 'overcast', (zenith: number) => number>> = {
    clear: (zenith) => 2.02 * haurwitz(zenith),
    overcast: (zenith) => 2.15 * 0.25 * haurwitz(zenith),
  };

  for (const site of sites) {
    for (const sky of ['clear', 'overcast'] as const) {
      it(`${sky}, ${site.name}`, () => {
        let [told, refused] = [0, 0];
        for (const day of days) {
          const at = (minute: number) =>
            photons[sky](
              sunPosition(civilInstant(`2025-${day}`, minute, site.timeZone), site).apparentZenith,
            );
          let sum = 0;
          for (let minute = 0; minute < 1440; minute += 2) sum += (at(minute) * 120) / 1e6;
          for (let minute = 7 * 60; minute <= 17 * 60; minute += 60) {
            const result = readMeter(reading(at(minute), day, clock(minute), sky), site);
            if (result.refused !== null) {
              refused++;
              continue;
            }
            told++;
            expect(sum, `${day} ${clock(minute)}`).toBeGreaterThan(result.dailyLight!.low);
            expect(sum, `${day} ${clock(minute)}`).toBeLessThan(result.dailyLight!.high);
          }
        }
        expect(told).toBeGreaterThan(25);
        expect(told + refused).toBe(55);
      });
    }
  }
});

interface Held {
  readonly sky: SkyState;
  readonly held: boolean;
}

/** The sky of a whole day by its light as a share of a clear one's. */
function skyOf(share: number, overcast: number): SkyState {
  if (share > 0.9) return 'clear';
  return share < 1.25 * overcast ? 'overcast' : 'broken';
}

/** Whether the day's sum lies within the sky's own error of one reading; the sensor is the same for both, so its errors cancel. */
function holds(value: number, day: string, time: string, site: Site, sum: number): Held | null {
  const model = skyDay(at(day, time, 'clear'), site, openSky(site));
  if (!(model.elevation >= 5 && value > 0)) return null;
  const sky = skyOf(sum / model.sum.clear, model.sum.overcast / model.sum.clear);
  const { low, high } = bandOf((value * model.sum[sky]) / model.now[sky], dayError(sky, model.elevation));
  return { sky, held: sum >= low && sum <= high };
}

/** Share of readings that hold their day, by sky. */
function shareHeld(all: readonly Held[], sky: SkyState): number {
  const of = all.filter((one) => one.sky === sky);
  expect(of.length).toBeGreaterThan(50);
  return of.filter((one) => one.held).length / of.length;
}

// The errors of a day were set on this file, so its shares say what they were set to: nine of ten.
describeWithData(
  'measured/glasshouse-52N-winter/weather.csv',
  '5-minute readings outdoors at 52° N',
  (file) => {
    const site: Site = { latitude: 52, longitude: 4.5, elevation: 0, timeZone: 'Europe/Amsterdam' };
    const days = new Map<string, { minute: number; ppfd: number }[]>();
    for (const line of readFileSync(file, 'utf8').trim().split('\n').slice(1)) {
      const cells = line.split(',');
      const [month, day, hour, minute] = /^(\d+)\/(\d+)\/2022 (\d+):(\d+)$/
        .exec(cells[0])!
        .slice(1)
        .map(Number);
      const key = `${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
      days.set(key, [...(days.get(key) ?? []), { minute: hour * 60 + minute, ppfd: Number(cells[8]) }]);
    }
    const all: Held[] = [];
    for (const [day, rows] of days) {
      if (rows.length < 285) continue;
      const sum = rows.reduce((total, row) => total + (row.ppfd * 300) / 1e6, 0);
      for (let minute = 9 * 60; minute <= 17 * 60; minute += 60) {
        const row = rows.find((one) => Math.abs(one.minute - minute) <= 5);
        const one = row === undefined ? null : holds(row.ppfd, day, clock(row.minute), site, sum);
        if (one !== null) all.push(one);
      }
    }

    it.each(['clear', 'broken', 'overcast'] as const)(
      '%s days: about nine readings of ten hold the day',
      (sky) => {
        const share = shareHeld(all, sky);
        expect(share).toBeGreaterThan(0.87);
        expect(share).toBeLessThan(0.97);
      },
    );

    // Not fitted: that the error falls with the root of the number is only checked to leave the band wide enough.
    it('three readings hours apart hold the day nine times of ten in their narrower band', () => {
      let [held, told] = [0, 0];
      for (const [day, rows] of days) {
        if (rows.length < 285) continue;
        const sum = rows.reduce((total, row) => total + (row.ppfd * 300) / 1e6, 0);
        const model = skyDay(at(day, '12:45', 'clear'), site, openSky(site));
        const sky = skyOf(sum / model.sum.clear, model.sum.overcast / model.sum.clear);
        const taken = [630, 765, 900].map((minute) => {
          const row = rows.find((one) => Math.abs(one.minute - minute) <= 5)!;
          return reading(row.ppfd, day, clock(row.minute), sky);
        });
        const { low, high } = readMeterOverDay(taken, site).dailyLight!;
        told++;
        if (sum >= low && sum <= high) held++;
      }
      expect(told).toBeGreaterThan(40);
      expect(held / told).toBeGreaterThan(0.9);
    });
  },
);

// Hours of typical years nobody fitted anything to; an hour's mean is steadier than a reading.
describe('hours of other places', () => {
  for (const name of ['sand-point-55N', 'international-falls-49N', 'las-vegas-36N']) {
    describeWithData(`weather/${name}.epw`, name, (file) => {
      it('hold their own day nine times of ten under every sky that comes often', () => {
        const read = readEpwBytes(readFileSync(file));
        if (!read.ok) throw new Error(read.problems[0].message);
        const { weather } = read;
        const site: Site = {
          latitude: weather.latitude,
          longitude: weather.longitude,
          elevation: weather.elevation,
          timeZone: `Etc/GMT+${-weather.utcOffsetHours}`,
        };
        const all: Held[] = [];
        for (let day = 2; day < 365; day += 4) {
          const hours = weather.globalHorizontal.subarray(day * 24, day * 24 + 24);
          const sum = hours.reduce((total, value) => total + (2.02 * value * 3600) / 1e6, 0);
          const date = new Date(Date.UTC(2025, 0, 1 + day)).toISOString().slice(5, 10);
          for (let hour = 8; hour < 17; hour += 2) {
            const one = holds(2.02 * hours[hour], date, clock(hour * 60 + 30), site, sum);
            if (one !== null) all.push(one);
          }
        }
        const often = (['clear', 'broken', 'overcast'] as const).filter(
          (sky) => all.filter((one) => one.sky === sky).length > 50,
        );
        expect(often.length).toBeGreaterThanOrEqual(2);
        for (const sky of often) expect(shareHeld(all, sky), sky).toBeGreaterThan(0.87);
      });
    });
  }
});
