import { existsSync, readFileSync } from 'node:fs';
import { getTimes } from 'suncalc';
import { describe, expect, it } from 'vitest';
import {
  demonstrationPlan,
  hardinessRatings,
  hardinessZone,
  ratingFor,
  readEpwBytes,
  runSeason,
  siteCard,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Plan, SiteCard } from '../../core/index.ts';
import { cardYear } from '../../core/advice/site-card-years.ts';
import {
  dublinDays,
  dublinNormals,
  dublinSite,
  meanOf,
  quantileOf,
  wintersOfDays,
} from '../weather/dublin.ts';

function cardOf(plan: Plan): SiteCard {
  const weather = weatherFromPlan(plan);
  if (weather === null) throw new Error('expected typed normals');
  return siteCard(plan, weather);
}

interface Means {
  readonly meanMinimum: number;
  readonly meanMaximum: number;
  readonly globalRadiation?: number | null;
  readonly sunshineHours?: number | null;
}

/** The demonstration on another site and climate, without a frost hollow. */
function planAt(
  site: { latitude: number; longitude: number; elevation?: number; timeZone: string },
  months: readonly Means[],
  lows: { typicalLow: number; rareLow: number },
): Plan {
  const empty = { globalRadiation: null, sunshineHours: null, wind: null };
  return {
    ...demonstrationPlan,
    site: { ...demonstrationPlan.site, elevation: 50, ...site, frostHollow: 0, horizon: [] },
    climate: {
      kind: 'normals',
      months: months.map((month) => ({ ...empty, ...month })),
      typicalLow: lows.typicalLow,
      rareLow: lows.rareLow,
      seed: 1,
    },
  };
}

/** Days from 1 July to a day written `MM-DD`. */
function sinceJuly(monthDay: string | null): number {
  if (monthDay === null) throw new Error('expected a day, got null');
  const days = (Date.parse(`2025-${monthDay}`) - Date.parse('2025-07-01')) / 86_400_000;
  return (days + 365) % 365;
}

const days = dublinDays();

describe.skipIf(days === null)(
  'the card of Dublin Airport against its own days (../shared/data/climate)',
  () => {
    const real = (days ?? []).filter(({ year }) => year >= 1991 && year <= 2020);
    const normals = dublinNormals(real);
    const card = cardOf(planAt(dublinSite, normals.months, normals));
    const winters = wintersOfDays(real);
    const frosts = winters.map((winter) =>
      winter.flatMap(({ least, month, day }) =>
        least <= 0
          ? [sinceJuly(`${String(month + 1).padStart(2, '0')}-${String(day).padStart(2, '0')}`)]
          : [],
      ),
    );

    it('first and last frost: the middle year, and one in ten', () => {
      const first = frosts.map((each) => each[0]);
      const last = frosts.map((each) => each[each.length - 1]);
      const early = (values: number[]) => quantileOf(values, 0.1);
      const late = (values: number[]) =>
        -quantileOf(
          values.map((value) => -value),
          0.1,
        );
      // Dates differ from year to year by two to three weeks; thirty of them give their middle to within four days.
      expect(Math.abs(sinceJuly(card.firstFrost.median) - quantileOf(first, 0.5))).toBeLessThanOrEqual(14);
      expect(Math.abs(sinceJuly(card.firstFrost.oneInTen) - early(first))).toBeLessThanOrEqual(14);
      expect(Math.abs(sinceJuly(card.lastFrost.median) - quantileOf(last, 0.5))).toBeLessThanOrEqual(10);
      expect(Math.abs(sinceJuly(card.lastFrost.oneInTen) - late(last))).toBeLessThanOrEqual(10);
      const free = frosts.map((each) => 364 - each[each.length - 1] + each[0]);
      expect(Math.abs(card.frostFreeDays - quantileOf(free, 0.5))).toBeLessThanOrEqual(20);
    });

    it('yearly low, zone and rating', () => {
      const lows = winters.map((winter) => Math.min(...winter.map(({ least }) => least)));
      expect(Math.abs(card.meanMinimum - meanOf(lows))).toBeLessThan(0.8);
      expect(Math.abs(card.tenthMinimum - quantileOf(lows, 0.1))).toBeLessThan(1);
      expect(card.zone).toBe(hardinessZone(meanOf(lows)));
      expect(card.rating).toBe('H4');
    });

    it('frost days and growing degrees', () => {
      expect(Math.abs(card.frostDays - meanOf(frosts.map(({ length }) => length)))).toBeLessThan(6);
      const degrees = (base: number) =>
        winters.reduce(
          (sum, winter) =>
            sum +
            winter.reduce((total, { least, most }) => total + Math.max(0, (least + most) / 2 - base), 0),
          0,
        ) / winters.length;
      // Drawn days reach into one another's nights: their means come out some tenths of a kelvin lower.
      expect(Math.abs(card.growingDegrees5 / degrees(5) - 1)).toBeLessThan(0.08);
      expect(Math.abs(card.growingDegrees10 / degrees(10) - 1)).toBeLessThan(0.12);
      expect(card.hotDays).toBeLessThan(1);
    });

    it('daily light by month: that measured there at 2.02 mol for a megajoule, to an eighth', () => {
      normals.months.forEach(({ globalRadiation }, month) => {
        const measured = 2.02 * (globalRadiation ?? NaN);
        expect(Math.abs(card.months[month].light / measured - 1)).toBeLessThan(0.12);
      });
    });
  },
);

const stations = '../shared/data/climate/uk-stations-normals-1991-2020.csv';

describe.skipIf(!existsSync(stations))(
  'frost days of six stations from their months (../shared/data/climate)',
  () => {
    const rows = (existsSync(stations) ? readFileSync(stations, 'utf8') : '')
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => line.split(','));
    const names = ['armagh', 'braemar', 'camborne', 'heathrow', 'lerwick', 'oxford'];

    it('are about those observed, with the lows of the winter estimated from the coldest month alone', () => {
      const pairs = names.map((name) => {
        const here = rows.filter(([station]) => station === name);
        const months = here.map((cells) => ({
          meanMinimum: Number(cells[5]),
          meanMaximum: Number(cells[4]),
          sunshineHours: Number(cells[8]) / 30.4,
        }));
        const coldest = Math.min(...months.map(({ meanMinimum }) => meanMinimum));
        const typicalLow = coldest - 8 - 0.35 * Math.max(0, -coldest);
        const site = {
          latitude: Number(here[0][1]),
          longitude: Number(here[0][2]),
          timeZone: 'Europe/London',
        };
        const card = cardOf(planAt(site, months, { typicalLow, rareLow: typicalLow - 4 }));
        return [card.frostDays, here.reduce((sum, cells) => sum + Number(cells[6]), 0)];
      });
      const off = pairs.map(([drawn, observed]) => Math.abs(drawn - observed));
      // Armagh 34 drawn to 35 observed, Braemar 117 to 101, Heathrow 25 to 27, Lerwick 39 to 29.
      expect(pairs).toHaveLength(6);
      expect(meanOf(off)).toBeLessThan(7);
      expect(Math.max(...off)).toBeLessThan(17);
    });
  },
);

describe('zones and ratings', () => {
  it('zones change where the map’s legend has them', () => {
    // USDA Plant Hardiness Zone Map 2012, legend: lower edge of each zone [°F] and as printed beside it [°C].
    const legend: readonly (readonly [string, number, number])[] = [
      ['1b', -55, -48.3],
      ['2a', -50, -45.6],
      ['3a', -40, -40],
      ['4a', -30, -34.4],
      ['5a', -20, -28.9],
      ['6a', -10, -23.3],
      ['7a', 0, -17.8],
      ['7b', 5, -15],
      ['8a', 10, -12.2],
      ['8b', 15, -9.4],
      ['9a', 20, -6.7],
      ['9b', 25, -3.9],
      ['10a', 30, -1.1],
      ['10b', 35, 1.7],
      ['11a', 40, 4.4],
      ['12a', 50, 10],
      ['13a', 60, 15.6],
      ['13b', 65, 18.3],
    ];
    for (const [zone, fahrenheit, celsius] of legend) {
      expect(hardinessZone((fahrenheit - 32) / 1.8)).toBe(zone);
      expect(hardinessZone((fahrenheit - 32.1) / 1.8)).not.toBe(zone);
      expect((fahrenheit - 32) / 1.8).toBeCloseTo(celsius, 1);
    }
    expect(hardinessZone(-60)).toBe('1a');
    expect(hardinessZone(25)).toBe('13b');
    expect(() => hardinessZone(NaN)).toThrow('expected a temperature, got NaN');
  });

  it('ratings hold the temperatures of their bands', () => {
    // RHS hardiness ratings 2012: bands of the temperature plants stand [°C].
    const bands: readonly (readonly [string, number])[] = [
      ['H1a', 15.1],
      ['H1b', 15],
      ['H1b', 10],
      ['H1c', 9.9],
      ['H1c', 5],
      ['H2', 4.9],
      ['H2', 1],
      ['H3', 0.9],
      ['H3', -5],
      ['H4', -5.1],
      ['H4', -10],
      ['H5', -10.1],
      ['H5', -15],
      ['H6', -15.1],
      ['H6', -20],
      ['H7', -20.1],
    ];
    for (const [rating, temperature] of bands) expect(ratingFor(temperature).id).toBe(rating);
    expect(hardinessRatings.map(({ id }) => id)).toEqual([...new Set(bands.map(([id]) => id))]);
    expect(() => ratingFor(NaN)).toThrow('got NaN');
  });
});

describe('the card of the demonstration', () => {
  const card = cardOf(demonstrationPlan);

  it('is the same when asked again, and whole', () => {
    expect(cardOf(demonstrationPlan)).toEqual(card);
    expect(card.years).toBe(30);
    expect(card.origin).toBe('drawn from the climate');
    for (const value of [card.meanMinimum, card.frostDays, card.chillHours, card.growingDegrees5]) {
      expect(Number.isFinite(value)).toBe(true);
    }
    expect(card.tenthMinimum).toBeLessThan(card.meanMinimum);
    expect(card.growingDegrees10).toBeLessThan(card.growingDegrees5);
    expect(card.winter).toEqual({
      from: '10-01',
      to: '03-31',
      words: 'October to March, as everywhere north of the tropics',
    });
  });

  it('day lengths are those of suncalc to two minutes', () => {
    const { latitude, longitude } = demonstrationPlan.site;
    card.months.forEach(({ dayLength }, month) => {
      const { sunrise, sunset } = getTimes(new Date(Date.UTC(2025, month, 15, 12)), latitude, longitude);
      if (sunrise === null || sunset === null) throw new Error('expected a sunrise and a sunset');
      expect(Math.abs(dayLength - (sunset.getTime() - sunrise.getTime()) / 3_600_000)).toBeLessThan(2 / 60);
    });
  });

  it('a frost hollow makes clear nights colder, lengthens the frosts and is told', () => {
    const inHollow = (frostHollow: number) =>
      cardOf({ ...demonstrationPlan, site: { ...demonstrationPlan.site, frostHollow } });
    const [level, hollow] = [inHollow(0), inHollow(4)];
    expect([level.frostHollow, hollow.frostHollow]).toEqual([0, 4]);
    expect(hollow.meanMinimum).toBeLessThan(level.meanMinimum - 1);
    expect(hollow.meanMinimum).toBeGreaterThan(level.meanMinimum - 4);
    expect(hollow.frostDays).toBeGreaterThan(level.frostDays + 5);
    expect(hollow.frostFreeDays).toBeLessThan(level.frostFreeDays);
    hollow.months.forEach((month, k) => expect(month.most).toBeCloseTo(level.months[k].most, 0));
  });

  it('its coldest night is that of plants outdoors in the season, hollow and all', () => {
    const plan = {
      ...demonstrationPlan,
      places: [],
      lots: [],
      site: { ...demonstrationPlan.site, frostHollow: 4 },
    };
    const weather = weatherFromPlan(plan);
    if (weather === null) throw new Error('expected typed normals');
    const { outdoor } = runSeason(plan, weather);
    const { minimum } = cardYear(weather, 4, new Uint8Array(365));
    expect(minimum).toBeLessThan(Math.min(...weather.dryBulb) - 1);
    // A season's step lies within the hour, the card reads the hour's end.
    expect(Math.abs(minimum - Math.min(...outdoor.least))).toBeLessThan(0.4);
  });

  it('moves with the climate: three kelvin warmer, a milder zone, later frost, more growing, fewer frosts', () => {
    const { climate } = demonstrationPlan;
    if (climate.kind !== 'normals') throw new Error('expected typed normals');
    const warmer = cardOf({
      ...demonstrationPlan,
      climate: {
        ...climate,
        months: climate.months.map((month) => ({
          ...month,
          meanMinimum: month.meanMinimum + 3,
          meanMaximum: month.meanMaximum + 3,
        })),
        typicalLow: climate.typicalLow + 3,
        rareLow: climate.rareLow + 3,
      },
    });
    expect(warmer.meanMinimum - card.meanMinimum).toBeCloseTo(3, 1);
    expect(sinceJuly(warmer.firstFrost.median)).toBeGreaterThan(sinceJuly(card.firstFrost.median));
    expect(sinceJuly(warmer.lastFrost.median)).toBeLessThan(sinceJuly(card.lastFrost.median));
    expect(warmer.growingDegrees5).toBeGreaterThan(card.growingDegrees5 + 600);
    expect(warmer.frostDays).toBeLessThan(card.frostDays);
  });
});

describe('other skies', () => {
  const flat = (meanMinimum: number, meanMaximum: number): Means[] =>
    Array.from({ length: 12 }, () => ({ meanMinimum, meanMaximum, globalRadiation: 18 }));

  it('without frost: no dates, the year frost-free', () => {
    const site = { latitude: 1, longitude: 37, timeZone: 'Africa/Nairobi' };
    const card = cardOf(planAt(site, flat(20, 29), { typicalLow: 16, rareLow: 14.5 }));
    expect(card.firstFrost).toEqual({ median: null, oneInTen: null });
    expect(card.lastFrost).toEqual({ median: null, oneInTen: null });
    expect([card.frostFreeDays, card.frostDays, card.chillHours]).toEqual([365, 0, 0]);
    expect(card.zone).toMatch(/^1[23][ab]$/);
    expect(card.winter.words).toContain('all months here are alike');
  });

  it('south of the equator the first frost falls in its own autumn, half a year from the north’s', () => {
    const { climate, site } = demonstrationPlan;
    if (climate.kind !== 'normals') throw new Error('expected typed normals');
    const turned = [...climate.months.slice(6), ...climate.months.slice(0, 6)];
    const there = { latitude: -site.latitude, longitude: 170, timeZone: 'Pacific/Auckland' };
    const card = cardOf(planAt(there, turned, climate));
    expect(card.firstFrost.median).toMatch(/^0[45]-/);
    expect(card.lastFrost.median).toMatch(/^(09|1[01])-/);
    expect([card.winter.from, card.winter.to]).toEqual(['04-01', '09-30']);
    expect(card.months[5].dayLength).toBeLessThan(9);
  });

  it('where most years have no frost, one in ten may', () => {
    const months = flat(14, 22).map((month, k) => {
      const swing = 7 * Math.cos((2 * Math.PI * k) / 12);
      return { ...month, meanMinimum: month.meanMinimum - swing, meanMaximum: month.meanMaximum - swing };
    });
    const site = { latitude: 36, longitude: -6, timeZone: 'Europe/Madrid' };
    const card = cardOf(planAt(site, months, { typicalLow: 2.5, rareLow: -1.5 }));
    expect(card.firstFrost.median).toBeNull();
    expect(card.firstFrost.oneInTen).not.toBeNull();
    expect(card.lastFrost.oneInTen).not.toBeNull();
    expect(card.frostFreeDays).toBe(365);
  });

  const file = '../shared/data/weather/international-falls-49N.epw';
  it.skipIf(!existsSync(file))('a file of a far cold city: its own zone, sun and months', () => {
    const reading = readEpwBytes(readFileSync(file));
    if (!reading.ok) throw new Error('expected a weather file');
    const plan: Plan = {
      ...demonstrationPlan,
      site: { ...demonstrationPlan.site, frostHollow: 0 },
      climate: { kind: 'file', weatherId: 'falls', name: 'International Falls' },
    };
    const card = siteCard(plan, reading.weather);
    expect(card.origin).toBe('drawn from the months of the file');
    // Its typical year’s least is −35.6 °C: zone 3b, from −37.2 to −34.4 °C.
    expect(card.zone).toBe('3b');
    expect(card.rating).toBe('H7');
    const { latitude, longitude } = reading.weather;
    const { sunrise, sunset } = getTimes(new Date(Date.UTC(2025, 11, 15, 18)), latitude, longitude);
    if (sunrise === null || sunset === null) throw new Error('expected a sunrise and a sunset');
    const hours = (sunset.getTime() - sunrise.getTime()) / 3_600_000;
    expect(Math.abs(card.months[11].dayLength - hours)).toBeLessThan(2 / 60);
    const frosts = [...Array(365).keys()].filter(
      (day) => Math.min(...reading.weather.dryBulb.subarray(day * 24, day * 24 + 24)) <= 0,
    );
    expect(Math.abs(card.frostDays - frosts.length)).toBeLessThan(15);
  });
});
