import { describe, expect, it } from 'vitest';
import { regionOf } from '../../renderer/state/preferences.svelte.ts';
import {
  fieldText,
  fieldUnit,
  formatHours,
  formatMoney,
  formatNumber,
  formatTemperature,
  formatTemperatureChange,
  luxPerMicromoleDaylight,
  parseQuantity,
} from '../../renderer/state/units.ts';

const metric = { temperature: 'C', length: 'm' } as const;
const customary = { temperature: 'F', length: 'ft' } as const;

function value(text: string, unit: string, preferences: typeof metric | typeof customary = metric): number {
  const reading = parseQuantity(text, unit, preferences);
  if (!reading.ok) throw new Error(reading.reason);
  return reading.value;
}

describe('the region of a language', () => {
  it.each([
    ['en-GB', 'GB'],
    ['de', 'DE'],
    ['en-US@posix', ''],
    ['', ''],
  ])('%o is %o', (language, region) => expect(regionOf(language)).toBe(region));
});

describe('reading what is typed', () => {
  it.each([
    ['68F', '°C', 20],
    ['68 °F', '°C', 20],
    ['-4', '°C', -4],
    ['−4', '°C', -4],
    ['2ft', 'm', 0.6096],
    [`2'6"`, 'm', 0.762],
    ['2 ft 6', 'm', 0.762],
    ['40 cm', 'm', 0.4],
    ['1,5', 'm', 1.5],
    ['.5', 'm', 0.5],
    ['1.2 kW', 'W', 1200],
    ['10 sqft', 'm²', 0.9290304],
    ['30 min', 'h', 0.5],
    ['5.5 mol', 'mol m⁻² d⁻¹', 5.5],
    ['9 °F', 'K', 5],
  ])('%s in a field of %s', (text, unit, expected) => {
    expect(value(text, unit)).toBeCloseTo(expected, 9);
  });

  it('takes lux as daylight where a photon flux is asked', () => {
    expect(value('400 lux', 'µmol m⁻² s⁻¹')).toBeCloseTo(400 / luxPerMicromoleDaylight, 9);
  });

  it('takes a bare number in the preferred unit', () => {
    expect(value('68', '°C', customary)).toBeCloseTo(20, 9);
    expect(value('10', 'm', customary)).toBeCloseTo(3.048, 9);
    expect(value('10 m', 'm', customary)).toBe(10);
    expect(value('75', 'W', customary)).toBe(75);
  });

  it.each(['', 'warm', '3 4', '12 parsecs', '1e9x', 'NaN', '--3'])('refuses %o with a reason', (text) => {
    const reading = parseQuantity(text, 'm', metric);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.reason.length).toBeGreaterThan(5);
  });

  it('gives back what was read, in either preference', () => {
    for (const preferences of [metric, customary])
      for (const [number, unit] of [
        [-6.5, '°C'],
        [2.4, 'm'],
        [3.3, 'm²'],
        [4, 'K'],
        [120, 'K h'],
        [250, 'W'],
      ] as const)
        expect(value(fieldText(number, unit, preferences, 6), unit, preferences)).toBeCloseTo(number, 5);
  });
});

describe('showing figures', () => {
  it('says differences of temperature in degrees, as growers do', () => {
    expect(fieldUnit('K', metric)).toBe('°C');
    expect(fieldUnit('K h', customary)).toBe('°F\u00a0h');
    expect(fieldText(10, 'K h', customary)).toBe('18');
  });

  it('never shows a negative nought', () => {
    expect(formatNumber(-0.04, 1)).toBe('0.0');
    expect(formatTemperatureChange(-0.01, metric)).toBe('0.0\u00a0°C');
    expect(formatMoney(-0.001, 'EUR')).not.toContain('−');
    expect(formatHours(-0.001)).toBe('0\u00a0h');
  });

  it('converts temperatures as points and as differences', () => {
    expect(formatTemperature(-40, customary)).toBe('−40\u00a0°F');
    expect(formatTemperatureChange(5, customary)).toBe('+9.0\u00a0°F');
  });

  it('writes hours with their minutes', () => {
    expect(formatHours(14.5)).toBe('14\u00a0h\u00a030');
    expect(formatHours(10)).toBe('10\u00a0h');
  });
});
