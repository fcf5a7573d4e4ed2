import { describe, expect, test } from 'vitest';
import { readDay, dayWords } from '../../../renderer/forms/days.ts';
import { readSeries, seriesFacts } from '../../../renderer/place/form/series.ts';

const values = (text: string, unit: 'C' | 'F' = 'C') => {
  const reading = readSeries(text, unit);
  if (!reading.ok) throw new Error(reading.reason);
  return reading.values;
};
const reason = (text: string) => {
  const reading = readSeries(text, 'C');
  if (reading.ok) throw new Error(`expected a refusal, got ${reading.values.join(' ')}`);
  return reading.reason;
};

describe('a measured series', () => {
  test.each([
    ['one a line', '1\n2.5\n-3', [1, 2.5, -3]],
    ['decimal comma', '12,5\r\n13,0\r\n', [12.5, 13]],
    ['comma-separated with points', 'date,t\n2024-01-01 00:00,12.5\n2024-01-01 01:00,−3', [12.5, -3]],
    ['semicolons with commas', '01.01.2024 00:00;60;12,5\n01.01.2024 01:00;61;11', [12.5, 11]],
    ['tabs, quotes and a unit', '"a"\t"7.5 °C"\n"b"\t"8°C"', [7.5, 8]],
    ['blanks', '00:00  4\n01:00  5', [4, 5]],
    ['a mark at the start of the file', '\ufeff4\n5', [4, 5]],
  ])('is read: %s', (_, text, expected) => expect(values(text)).toEqual(expected));

  test('in °F is kept in °C', () => expect(values('50\n32', 'F')).toEqual([10, 0]));

  test('refuses rubbish with the line', () => {
    expect(reason('1\nNA\n3')).toBe('Line 2, “NA”, does not end with a number.');
    expect(reason('1\n\n3')).toBe('Line 2 is empty. A missing hour would shift all that follow.');
    expect(reason('1\n2;\n3')).toMatch(/^Line 2, “2;”,/);
    expect(reason('1\n999')).toMatch(/^Line 2, “999”, is no temperature of a room/);
    expect(reason('heading\nheading')).toMatch(/^Line 2/);
    expect(reason('heading')).toMatch(/no temperature under it/);
    expect(reason('  \n ')).toBe('There is no temperature in it.');
    expect(reason('1\n'.repeat(35137))).toMatch(/35137 temperatures; at most 35136/);
  });

  test('tells its days, least and most', () => {
    const facts = seriesFacts({ from: '10-01', stepHours: 1, values: [3, -2, ...Array<number>(47).fill(9)] });
    expect(facts).toEqual({ count: 49, days: 49 / 24, to: '10-03', least: -2, most: 9 });
  });
});

describe('a day of the year', () => {
  test.each([
    ['1 December', '12-01'],
    ['Dec 1', '12-01'],
    ['24. Dec', '12-24'],
    ['02-29', '02-29'],
    ['3 mar', '03-03'],
  ])('is read from %s', (text, value) => {
    expect(readDay(text)).toEqual({ ok: true, value });
    expect(readDay(dayWords(value))).toEqual({ ok: true, value });
  });
  test.each(['30 Feb', '0 May', '13-01', 'Christmas', '', '1 xyz', '12'])('is not read from “%s”', (text) =>
    expect(readDay(text).ok).toBe(false),
  );
});
