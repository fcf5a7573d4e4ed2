import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMeter, readMeterOverDay, sumOfReadings } from '../../core/light/meter.ts';
import { isoDay } from '../../core/light/meter-day.ts';
import type { DaylightReading, MeterReading, MeterResult } from '../../core/light/meter-reading.ts';
import { lampTechnologies } from '../../core/plan/lamps.ts';
import type { Site } from '../../core/plan/site.ts';

const dublin: Site = { latitude: 53.4, longitude: -6.2, elevation: 60, timeZone: 'Europe/Dublin' };
const tromso: Site = { latitude: 69.65, longitude: 18.95, elevation: 10, timeZone: 'Europe/Oslo' };

const lamp = (part: Partial<MeterReading> = {}, technology = 'hps-magnetic', hours = 12): MeterReading => ({
  value: 8200,
  unit: 'lux',
  meter: 'good',
  light: { kind: 'lamp', technology, hours },
  ...part,
});
const noon: DaylightReading = {
  kind: 'daylight',
  day: '12-21',
  time: '12:30',
  sky: 'clear',
  where: 'outdoors',
};
const day = (light: Partial<DaylightReading> = {}, part: Partial<MeterReading> = {}): MeterReading => ({
  value: 10000,
  unit: 'lux',
  meter: 'good',
  ...part,
  light: { ...noon, ...light },
});

describe('a reading under lamps', () => {
  it('8,200 lux of sodium are 100 µmol, and 4.32 mol in 12 h', () => {
    const result = readMeter(lamp(), dublin);
    expect(result.ppfd.value).toBeCloseTo(100, 9);
    expect(result.dailyLight!.value).toBeCloseTo(4.32, 9);
    expect(result).toMatchObject({ refused: null, skies: null, share: null, cautions: [] });
  });
  // Foot-candle: 1 / 0.3048² lux exactly; 500 of them under sodium ÷ 7.6 are 65.8 µmol (Runkle), 65.6 exactly by 82.
  it('500 foot-candles of sodium are 65.6 µmol', () => {
    const result = readMeter(lamp({ value: 500, unit: 'foot-candle' }), dublin);
    expect(Math.abs(result.ppfd.value - 500 / 0.3048 ** 2 / 82)).toBeLessThan(1e-9);
    expect(Math.abs(result.ppfd.value / 65.8 - 1)).toBeLessThan(0.003);
  });
  it('a reading in µmol is itself, for every lamp, and needs no conversion', () => {
    for (const { id } of lampTechnologies) {
      const result = readMeter(lamp({ value: 210, unit: 'ppfd', meter: 'quantum' }, id, 14), dublin);
      expect(result.ppfd.value).toBe(210);
      expect(result.dailyLight!.value).toBeCloseTo(210 * 14 * 0.0036, 9);
      expect(result.errors.map((one) => one.id)).not.toContain('conversion');
    }
  });
  it('its band is the root of the sum of squares of what it lists, largest first', () => {
    const { errors, ppfd } = readMeter(lamp({ meter: 'cheap' }), dublin);
    const shares = errors.map((one) => one.share);
    expect([...shares].sort((a, b) => b - a)).toEqual(shares);
    const all = Math.hypot(...shares);
    expect(ppfd.high / ppfd.value).toBeCloseTo(1 + all, 9);
    expect(ppfd.value / ppfd.low).toBeCloseTo(1 + all, 9);
  });
  it('a better meter gives a narrower band, and lux of red and blue light the widest, with a caution', () => {
    const width = (reading: MeterReading) => {
      const { ppfd } = readMeter(reading, dublin);
      return ppfd.high / ppfd.low;
    };
    expect(width(lamp({ meter: 'good' }))).toBeLessThan(width(lamp({ meter: 'cheap' })));
    for (const { id } of lampTechnologies.filter((one) => one.id !== 'led-red-blue')) {
      expect(width(lamp({}, 'led-red-blue'))).toBeGreaterThan(width(lamp({}, id)));
    }
    expect(readMeter(lamp({}, 'led-red-blue'), dublin).cautions).toHaveLength(1);
    expect(readMeter(lamp({ unit: 'ppfd' }, 'led-red-blue'), dublin).cautions).toEqual([]);
  });
});

describe('a reading of daylight', () => {
  it('10,800 lux of daylight are 200 µmol', () => {
    expect(readMeter(day({}, { value: 10800 }), dublin).ppfd.value).toBeCloseTo(200, 9);
  });
  it('gives the day under the sky it was read in, and what the other skies would make of the spot', () => {
    const result = readMeter(day(), dublin);
    expect(result.dailyLight).toEqual(result.skies!.clear);
    expect(result.skies!.broken.value).toBeLessThan(result.skies!.clear.value);
    expect(result.skies!.overcast.value).toBeLessThan(result.skies!.broken.value);
    // Krochmann & Seidl's overcast sky at 13° of elevation gives 0.35 to 0.45 of a clear one in December.
    const ratio = result.skies!.overcast.value / result.skies!.clear.value;
    expect(ratio).toBeGreaterThan(0.25);
    expect(ratio).toBeLessThan(0.5);
  });
  it('tells the share of the light outdoors: half the light, half the share', () => {
    const open = readMeter(day(), dublin).share!;
    const shaded = readMeter(day({}, { value: 5000 }), dublin).share!;
    expect(shaded / open).toBeCloseTo(0.5, 9);
    expect(open).toBeGreaterThan(0.5);
    expect(open).toBeLessThan(1.5);
  });
  it('is surer under glass than on a sill, surer with the window’s facing than without, and surest under grey sky indoors', () => {
    const width = (light: Partial<DaylightReading>) => {
      const { dailyLight } = readMeter(day(light), dublin);
      return dailyLight!.high / dailyLight!.low;
    };
    expect(width({ where: 'outdoors' })).toBeLessThan(width({ where: 'under glass' }));
    expect(width({ where: 'under glass' })).toBeLessThan(width({ where: 'sill', facing: 180 }));
    expect(width({ where: 'sill', facing: 180 })).toBeLessThan(width({ where: 'sill' }));
    expect(readMeter(day({ where: 'sill' }), dublin).cautions).toHaveLength(1);
  });
  it('at an east window the morning’s sun makes less of the day than the same light at a south window’s noon', () => {
    const east = { where: 'sill', facing: 90, day: '03-20', time: '09:00' } as const;
    const south = { where: 'sill', facing: 180, day: '03-20', time: '12:30' } as const;
    const ratio = (light: Partial<DaylightReading>) => readMeter(day(light), dublin).dailyLight!.value;
    expect(ratio(east)).toBeLessThan(ratio(south));
    // At noon the east sill has lost its sun: the same light then stands for a far brighter morning.
    expect(ratio({ ...east, time: '13:30' })).toBeGreaterThan(1.5 * ratio(east));
  });
  it('doubts a reading brighter than the sky', () => {
    const { cautions } = readMeter(day({}, { value: 60000 }), dublin);
    expect(cautions).toHaveLength(1);
    expect(cautions[0]).toContain('More light than the sky gives at that hour');
  });
  it('asks for more than one reading under cloud', () => {
    const { cautions } = readMeter(day({ sky: 'overcast' }, { value: 4000 }), dublin);
    expect(cautions).toEqual(['Under cloud take three readings or more, hours apart.']);
  });
  it('takes the day as MM-DD or as a day of the year from 0', () => {
    expect(isoDay(0)).toBe('2025-01-01');
    expect(isoDay(364)).toBe('2025-12-31');
    expect(isoDay(354)).toBe(isoDay('12-21'));
    expect(isoDay('02-29')).toBe('2025-03-01');
    for (let n = 0; n < 365; n++) {
      expect(Date.parse(isoDay(n))).toBe(Date.UTC(2025, 0, 1) + n * 86_400_000);
    }
    expect(readMeter(day({ day: 354 }), dublin)).toEqual(readMeter(day(), dublin));
  });
});

describe('readings over a day', () => {
  const three = (sky: DaylightReading['sky'] = 'overcast') =>
    [
      ['10:30', 3000],
      ['12:30', 4500],
      ['14:30', 2500],
    ].map(([time, value]) => day({ sky, time: time as string }, { value: value as number }));

  it('one is the same as a reading by itself', () => {
    for (const reading of three())
      expect(readMeterOverDay([reading], dublin)).toEqual(readMeter(reading, dublin));
  });
  it('lie within what they give one by one, in a narrower band, and no longer ask for more', () => {
    const alone = three().map((reading) => readMeter(reading, dublin));
    const all = readMeterOverDay(three(), dublin);
    const values = alone.map((one) => one.dailyLight!.value);
    expect(all.dailyLight!.value).toBeGreaterThan(Math.min(...values));
    expect(all.dailyLight!.value).toBeLessThan(Math.max(...values));
    expect(all.cautions).toEqual([]);
    for (const { dailyLight } of alone) {
      expect(all.dailyLight!.high / all.dailyLight!.low).toBeLessThan(dailyLight!.high / dailyLight!.low);
    }
    expect(all.ppfd.value).toBeCloseTo(10000 / 3 / 54, 9);
  });
  it('are refused as a whole where one of them says too little', () => {
    const late = day({ sky: 'overcast', time: '16:30' });
    expect(readMeterOverDay([...three(), late], dublin)).toMatchObject({ dailyLight: null });
  });
  it('are of one day, sky and spot, and of daylight', () => {
    const [one] = three();
    expect(() => readMeterOverDay([], dublin)).toThrow('expected one reading or more, got none');
    expect(() => readMeterOverDay([one, lamp()], dublin)).toThrow(
      'expected readings of daylight, got one of lamps',
    );
    expect(() => readMeterOverDay([one, day({ sky: 'clear' })], dublin)).toThrow(
      'expected readings of one sky, got overcast and clear',
    );
    expect(() => readMeterOverDay([one, day({ sky: 'overcast', day: '12-20' })], dublin)).toThrow('one day');
  });
});

describe('daylight that cannot be told', () => {
  const refusal = (reading: MeterReading, site: Site): string => {
    const result = readMeter(reading, site);
    expect(result).toMatchObject({ dailyLight: null, skies: null, share: null });
    expect(result.ppfd.value).toBeGreaterThan(0);
    expect(result.errors.length).toBeGreaterThan(0);
    return result.refused!;
  };
  it('a low sun says too little', () => {
    expect(refusal(day({ time: '09:15' }), dublin)).toMatch(/^At 09:15 the sun stands \d\.\d° high/);
    expect(refusal(day({ time: '17:30' }), dublin)).toMatch(/^At 17:30 the sun is down/);
  });
  it('polar night has no daylight, and says so at every hour', () => {
    for (const time of ['00:00', '09:00', '12:00', '23:59']) {
      expect(refusal(day({ time }), tromso)).toBe(
        'The sun does not rise here on that day: there is no daylight to sum, only twilight.',
      );
    }
  });
  it('a sun that stays low all day says so', () => {
    expect(refusal(day({ day: '01-25' }), tromso)).toContain('stays under 5° here all that day');
  });
  it('the midnight sun has a day with no end', () => {
    const result = readMeter(day({ day: '06-21', time: '00:45' }, { value: 3000 }), {
      ...tromso,
      latitude: 78,
    });
    expect(result.refused).toBeNull();
    expect(result.dailyLight!.value).toBeGreaterThan(0);
  });
  it('lamps are read at any hour of the polar night', () => {
    expect(readMeter(lamp(), tromso).dailyLight!.value).toBeCloseTo(4.32, 9);
  });
});

describe('wrong use', () => {
  it.each([
    [lamp({ value: NaN }), 'expected a reading of 0 to 10,000,000, got NaN'],
    [lamp({ value: -1 }), 'expected a reading of 0 to 10,000,000, got -1'],
    [lamp({}, 'candle'), 'expected a lamp technology of the catalogue, got candle'],
    [lamp({}, 'led-white', 25), 'expected hours of 0 to 24, got 25'],
    [lamp({}, 'led-white', NaN), 'expected hours of 0 to 24, got NaN'],
    [day({ day: 365 }), 'expected a day 0 to 364, got 365'],
    [day({ day: '13-01' }), 'expected a day as MM-DD, got 13-01'],
    [day({ day: '02-30' }), 'expected a date'],
    [day({ time: '25:00' }), 'expected a time as HH:MM from 00:00 to 23:59, got 25:00'],
    [day({ where: 'sill', facing: NaN }), 'expected a facing of 0 to 360 degrees, got NaN'],
  ])('%j is refused', (reading, words) => {
    expect(() => readMeter(reading, dublin)).toThrow(words);
  });
});

describe('readings taken apart', () => {
  it('add up: the lamps by night and the daylight with the lamps off', () => {
    const [one, two] = [readMeter(lamp(), dublin), readMeter(day(), dublin)];
    const sum = sumOfReadings([one, two])!;
    expect(sum.value).toBeCloseTo(one.dailyLight!.value + two.dailyLight!.value, 9);
    expect(sum.high).toBeLessThan(one.dailyLight!.high + two.dailyLight!.high);
    expect(sum.low).toBeGreaterThan(one.dailyLight!.low + two.dailyLight!.low);
    expect(sumOfReadings([one])).toMatchObject({ value: one.dailyLight!.value });
  });
  it('do not where one of them could not be told', () => {
    expect(sumOfReadings([readMeter(lamp(), dublin), readMeter(day({ time: '20:00' }), dublin)])).toBeNull();
  });
});

describe('any reading', () => {
  const skies = fc.constantFrom('clear', 'broken', 'overcast' as const);
  const daylightReading = fc.record({
    kind: fc.constant('daylight' as const),
    day: fc.integer({ min: 0, max: 364 }),
    time: fc
      .integer({ min: 0, max: 1439 })
      .map((m) => `${String(Math.floor(m / 60)).padStart(2, '0')}:${String(m % 60).padStart(2, '0')}`),
    sky: skies,
    where: fc.constantFrom('outdoors', 'under glass', 'sill' as const),
    facing: fc.option(fc.integer({ min: 0, max: 360 })),
  });
  const lampReading = fc.record({
    kind: fc.constant('lamp' as const),
    technology: fc.constantFrom(...lampTechnologies.map((one) => one.id)),
    hours: fc.double({ min: 0, max: 24, noNaN: true }),
  });
  const readings = fc.record({
    value: fc.double({ min: 0, max: 2e5, noNaN: true }),
    unit: fc.constantFrom('lux', 'foot-candle', 'ppfd' as const),
    meter: fc.constantFrom('cheap', 'good', 'quantum' as const),
    light: fc.oneof(daylightReading, lampReading),
  }) as fc.Arbitrary<MeterReading>;
  const sites = fc.record({
    latitude: fc.double({ min: -90, max: 90, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    elevation: fc.double({ min: -400, max: 4000, noNaN: true }),
    timeZone: fc.constantFrom('UTC', 'Europe/Dublin', 'Pacific/Auckland', 'America/Denver'),
  });

  const bands = (result: MeterResult) =>
    [result.ppfd, result.dailyLight, ...Object.values(result.skies ?? {})].filter((band) => band !== null);

  it('gives figures, low to high in order, or says why not', () => {
    fc.assert(
      fc.property(readings, sites, (reading, site) => {
        const result = readMeter(reading, site);
        for (const { value, low, high } of bands(result)) {
          expect(Number.isFinite(low) && Number.isFinite(value) && Number.isFinite(high)).toBe(true);
          expect(low).toBeGreaterThanOrEqual(0);
          expect(low).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(high);
        }
        expect(result.dailyLight === null).toBe(result.refused !== null);
        if (result.share !== null) expect(Number.isFinite(result.share)).toBe(true);
        for (const { share, words } of result.errors) {
          expect(share).toBeGreaterThan(0);
          expect(words.length).toBeGreaterThan(5);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('a higher reading never means less light', () => {
    fc.assert(
      fc.property(readings, sites, fc.double({ min: 1, max: 3, noNaN: true }), (reading, site, more) => {
        const [one, two] = [
          readMeter(reading, site),
          readMeter({ ...reading, value: reading.value * more }, site),
        ];
        const [less, greater] = [bands(one), bands(two)];
        expect(greater).toHaveLength(less.length);
        less.forEach((band, i) => {
          for (const end of ['low', 'value', 'high'] as const) {
            expect(greater[i][end]).toBeGreaterThanOrEqual(band[end]);
          }
        });
      }),
      { numRuns: 40 },
    );
  });
});
