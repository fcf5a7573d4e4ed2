import { describe, expect, it, test } from 'vitest';
import { demonstrationPlan, readMeter, runSeason, weatherFromPlan } from '../../core/index.ts';
import { between, mol, range, sureness } from '../../renderer/meters/figures.ts';
import { MeterDesk } from '../../renderer/meters/meter-desk.svelte.ts';
import { modelLight, seasonDay } from '../../renderer/meters/model.ts';
import { readReading, readTyped } from '../../renderer/meters/reading-text.ts';
import { verdictOf, wantsOf } from '../../renderer/meters/wants.ts';

const desk = (placeId: string | null = null) => new MeterDesk(() => demonstrationPlan, '12-21', placeId);

describe('a reading as typed', () => {
  it.each([
    ['400', { value: 400, unit: null }],
    ['400 lux', { value: 400, unit: 'lux' }],
    ['1.2 klux', { value: 1200, unit: 'lux' }],
    ['1,2 klx', { value: 1200, unit: 'lux' }],
    ['1,200 lux', { value: 1200, unit: 'lux' }],
    ['12 500', { value: 12500, unit: null }],
    ['37 fc', { value: 37, unit: 'foot-candle' }],
    ['7 μmol', { value: 7, unit: 'ppfd' }],
  ])('%s', (text, expected) => expect(readTyped(text)).toEqual(expected));

  it('is refused with the reason', () => {
    expect(readTyped('bright')).toMatch(/not a reading/);
    expect(readTyped('-4 lux')).toMatch(/not a reading/);
    expect(readTyped('4 W')).toMatch(/unit “w” is not known/);
    expect(readReading('900 klux')).toEqual({
      ok: false,
      reason: '“900 klux” is more than full sun. Look again at the figure.',
    });
  });
});

describe('the desk', () => {
  it('takes the unit typed with the figure and answers as the engine does', () => {
    const meter = desk('window');
    meter.type('37 fc');
    expect([meter.value, meter.unit]).toEqual([37, 'foot-candle']);
    expect(meter.result).toEqual(readMeter(meter.reading, demonstrationPlan.site));
    // 37 foot-candles are 398 lux, 7.4 µmol of daylight at 54 lux each (Thimijan & Heins 1983).
    expect(meter.result.ppfd.value).toBeCloseTo(7.375, 2);
    meter.type('nothing');
    expect(meter.value).toBe(37);
  });

  it('takes the light of the place: a window by its facing, a tent by its lamp', () => {
    const meter = desk('window');
    expect([meter.kind, meter.where, meter.facing]).toEqual(['daylight', 'sill', 175]);
    expect(meter.lots.map((lot) => lot.id)).toEqual(['haworthias', 'window-echeverias']);
    meter.choosePlace('bright-tent');
    expect([meter.kind, meter.technology, meter.hours]).toEqual(['lamp', 'led-white', 12]);
    meter.choosePlace('lean-to');
    expect([meter.kind, meter.where]).toEqual(['daylight', 'under glass']);
    meter.choosePlace(null);
    expect(meter.lots.length).toBe(demonstrationPlan.lots.length);
  });

  it('adds lamp hours up over the day’s light', () => {
    const meter = desk('bright-tent');
    meter.type('6800 lux');
    // 6,800 lux of white LED are 100 µmol at 68 lux each; in 12 h 4.32 mol.
    expect(meter.result.dailyLight?.value).toBeCloseTo(4.32, 6);
  });
});

test('the model’s fortnight round a date is that of the season, over its ends too', () => {
  const weather = weatherFromPlan(demonstrationPlan);
  if (weather === null) throw new Error('expected weather of the plan, got none');
  const season = runSeason(demonstrationPlan, weather);
  const tent = season.places.find(({ placeId }) => placeId === 'bright-tent');
  const window = season.places.find(({ placeId }) => placeId === 'window');
  if (!tent || !window) throw new Error('expected seasons of tent and window');
  expect(seasonDay(season, '08-01')).toBe(0);
  expect(seasonDay(season, '12-21')).toBe(142);
  expect(seasonDay(season, '07-31')).toBe(364);
  const days = window.daily.daylight.slice(135, 150);
  const around = modelLight(window, 'daylight', 142);
  expect(around.mean).toBeCloseTo(days.reduce((sum, day) => sum + day, 0) / 15, 9);
  expect([around.least, around.most]).toEqual([Math.min(...days), Math.max(...days)]);
  expect(modelLight(window, 'daylight', 0).mean).toBeGreaterThan(around.mean);
  expect(modelLight(tent, 'lamp', 142).least).toBeGreaterThan(0);
});

describe('the answer in words', () => {
  const wants = { name: 'Echeverias', least: 6, good: 10, goodHigh: 20, most: 30 };
  it.each([
    [{ value: 0.2, low: 0.1, high: 0.4 }, /^Too little even at best: Echeverias want 10 to 20\smol/],
    [{ value: 4, low: 2, high: 8 }, /^Little:/],
    [{ value: 8, low: 7, high: 9 }, /^Enough to stay compact, less than good/],
    [{ value: 14, low: 11, high: 18 }, /^Good/],
    [{ value: 14, low: 5, high: 32 }, /^This reading cannot settle it/],
    [{ value: 25, low: 22, high: 29 }, /^More than it needs/],
    [{ value: 40, low: 33, high: 50 }, /^Too much even at worst/],
  ])('%o', (band, words) => expect(verdictOf(wants, band)).toMatch(words));

  it('takes the numbers of the lot’s group with the user’s edits', () => {
    const [lot] = demonstrationPlan.lots;
    const edited = { ...demonstrationPlan, groupEdits: { [lot.group]: { lightMost: 44 } } };
    expect(wantsOf(edited, lot)?.most).toBe(44);
    expect(wantsOf({ ...edited, lots: [] }, { ...lot, group: 'unheard-of' })).toBeNull();
  });

  it('writes figures as they bear', () => {
    expect([mol(0.142), mol(2.71), mol(19.6)]).toEqual(['0.14\u00a0mol', '2.7\u00a0mol', '20\u00a0mol']);
    expect(between({ value: 0.2, low: 0.05, high: 0.424 })).toBe('0.05 and 0.42\u00a0mol');
    expect(range({ value: 0.2, low: 0.05, high: 2.31 })).toBe('0.05 to 2.3\u00a0mol');
    expect([sureness(0.15), sureness(2), sureness(1.42)]).toEqual([
      '15\u00a0% more or less',
      '3 times more or less',
      '2.4 times more or less',
    ]);
  });
});
