import { describe, expect, test } from 'vitest';
import { rangeWords, readField } from '../../renderer/forms/reading.ts';
import { readClock, readName } from '../../renderer/forms/text.ts';

const metric = { temperature: 'C', length: 'm' } as const;
const imperial = { temperature: 'F', length: 'ft' } as const;
const metres = { unit: 'm', minimum: 0.5, maximum: 60 };
const celsius = { unit: '°C', minimum: -20, maximum: 40 };

function value(
  text: string,
  range: Parameters<typeof readField>[1],
  units: Parameters<typeof readField>[2] = metric,
) {
  const reading = readField(text, range, units);
  if (!reading.ok) throw new Error(reading.reason);
  return reading.value;
}

function reason(
  text: string,
  range: Parameters<typeof readField>[1],
  units: Parameters<typeof readField>[2] = metric,
) {
  const reading = readField(text, range, units);
  if (reading.ok) throw new Error(`expected a refusal of ${text}, got ${reading.value}`);
  return reading.reason;
}

describe('a number field', () => {
  test('takes other units and turns them into its own', () => {
    expect(value('68F', celsius)).toBeCloseTo(20, 10);
    expect(value('2ft', metres)).toBeCloseTo(0.6096, 10);
    // 54 lux of daylight are 1 µmol m⁻² s⁻¹ (Thimijan & Heins 1983).
    expect(value('400 lux', { unit: 'µmol', minimum: 0, maximum: 3000 })).toBeCloseTo(400 / 54, 10);
  });

  test('takes a bare number in the preferred unit', () => {
    expect(value('50', celsius, imperial)).toBeCloseTo(10, 10);
    expect(value('2', metres, imperial)).toBeCloseTo(0.6096, 10);
  });

  test('refuses with the reason and the range in words', () => {
    expect(reason('900', metres)).toBe('“900” is too much. Give from 0.5 to 60 m.');
    expect(reason('0.1', metres)).toBe('“0.1” is too little. Give from 0.5 to 60 m.');
    expect(reason('wide', metres)).toBe('“wide” is not a number. Give from 0.5 to 60 m.');
    expect(reason('', metres)).toBe('A number is missing. Give from 0.5 to 60 m.');
    expect(reason('3 kg', metres)).toMatch(/^The unit “kg” does not fit here.*Give from 0.5 to 60 m\.$/);
    expect(reason('2.5', { unit: '', minimum: 1, maximum: 4, integer: true })).toBe(
      '“2.5” is not whole. Give a whole number from 1 to 4.',
    );
  });

  test('tells the range in the preferred unit', () => {
    expect(rangeWords(celsius, imperial)).toBe('from −4 to 104 °F');
    expect(reason('200', celsius, imperial)).toBe('“200” is too much. Give from −4 to 104 °F.');
  });

  test('keeps a limit that conversion has blurred', () => {
    expect(value('-4F', celsius)).toBe(-20);
    expect(value('104F', celsius)).toBe(40);
  });
});

describe('a time field', () => {
  test.each([
    ['7', '07:00'],
    ['7:30', '07:30'],
    ['19.05', '19:05'],
    ['19h', '19:00'],
    ['7:30 pm', '19:30'],
    ['12am', '00:00'],
    ['24:00', '24:00'],
  ])('reads %s as %s', (text, clock) => expect(readClock(text)).toEqual({ ok: true, value: clock }));

  test.each(['25', '24:01', '7:60', '13 pm', 'noon', ''])('refuses %s', (text) =>
    expect(readClock(text).ok).toBe(false),
  );
});

test('a name is neither empty nor longer than fits', () => {
  expect(readName('  Tent ', 60)).toEqual({ ok: true, value: 'Tent' });
  expect(readName('  ', 60).ok).toBe(false);
  expect(readName('x'.repeat(61), 60)).toEqual({
    ok: false,
    reason: 'That is 61 letters long; at most 60 fit.',
  });
});
