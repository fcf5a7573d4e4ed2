import { describe, expect, it } from 'vitest';
import {
  readEpw,
  readEpwBytes,
  readTmy3,
  type WeatherReading,
  type WeatherYear,
} from '../../core/weather/index.ts';
import { epwRow, epwText } from './epw-rows.ts';

function good(reading: WeatherReading): WeatherYear {
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.weather;
}

function problems(text: string): string {
  const reading = readEpw(text);
  if (reading.ok) throw new Error('expected problems');
  return reading.problems.map(({ line, message }) => `${line}: ${message}`).join('\n');
}

const set =
  (index: number, value: string, when: (row: number) => boolean) => (fields: string[], row: number) =>
    when(row) ? fields.with(index, value) : fields;

describe('EPW files that are read', () => {
  it('a plain file, with its header', () => {
    const weather = good(readEpw(epwText()));
    expect(weather).toMatchObject({
      name: 'Testham, IRL',
      origin: 'epw',
      latitude: 53,
      longitude: -7.5,
      elevation: 80,
    });
    expect(weather.startMs).toBe(Date.UTC(2025, 0, 1));
    expect(weather.dryBulb[0]).toBe(8);
    expect(weather.cloudCover[0]).toBe(0.5);
    expect(weather.skyLongWave[0]).toBe(300);
    expect(weather.notes).toEqual([]);
  });

  it('CRLF, a byte-order mark, Latin-1 and UTF-8 names, minute 0', () => {
    const text = epwText(set(4, '0', () => true))
      .replaceAll('\n', '\r\n')
      .replace('Testham', 'Gévora');
    expect(good(readEpwBytes(new Uint8Array(Buffer.from(text, 'latin1')))).name).toBe('Gévora, IRL');
    expect(good(readEpwBytes(new Uint8Array(Buffer.from(`\uFEFF${text}`, 'utf8')))).name).toBe('Gévora, IRL');
  });

  it('8,784 rows: 29 February is left out with a note', () => {
    const extra = Array.from({ length: 24 }, (_, k) =>
      epwRow(2, 29, k + 1)
        .with(6, '40')
        .join(','),
    );
    const lines = epwText().split('\n');
    lines.splice(8 + 59 * 24, 0, ...extra);
    const weather = good(readEpw(lines.join('\n')));
    expect(Math.max(...weather.dryBulb)).toBe(8);
    expect(weather.notes.join()).toContain('29 February (24 hours)');
  });

  it('rows in another order: a year that begins in July', () => {
    const lines = epwText((fields, row) => fields.with(6, String(row % 30)))
      .trim()
      .split('\n');
    const turned = [...lines.slice(0, 8), ...lines.slice(8 + 181 * 24), ...lines.slice(8, 8 + 181 * 24)];
    expect(good(readEpw(turned.join('\n'))).dryBulb).toEqual(good(readEpw(lines.join('\n'))).dryBulb);
  });

  it('missing codes field by field', () => {
    const text = epwText((fields, row) => {
      let out = fields;
      if (row >= 100 && row < 104) out = out.with(6, '99.9');
      if (row === 200) out = out.with(7, '99.9');
      if (row === 300) out = out.with(7, '99.9').with(8, '999');
      if (row === 400) out = out.with(9, '999999');
      if (row === 500) out = out.with(12, '9999');
      if (row === 600) out = out.with(21, '999');
      if (row === 700) out = out.with(22, '99').with(23, '99');
      if (row === 800) out = out.with(23, '99').with(22, '10');
      return out;
    });
    const weather = good(readEpw(text));
    expect(weather.dryBulb[102]).toBeCloseTo(8, 12);
    expect(weather.dewPoint[200]).toBeCloseTo(4.95, 1);
    expect(weather.dewPoint[300]).toBeCloseTo(5, 12);
    expect(weather.pressure[400]).toBeGreaterThan(100000);
    expect([...weather.skyLongWaveFrom.subarray(499, 502)]).toEqual([0, 1, 0]);
    expect(weather.skyLongWave[500]).toBeGreaterThan(250);
    expect(weather.windSpeed[600]).toBe(3);
    expect(weather.cloudCover[700]).toBeGreaterThanOrEqual(0);
    expect(weather.cloudCover[800]).toBe(1);
    // One note each for temperature, dew point computed and filled, pressure, wind, cloud and long-wave.
    expect(weather.notes.length).toBe(7);
  });

  it('global alone is split, beam and diffuse alone are summed, and a short gap follows the clear sky', () => {
    const split = good(readEpw(epwText((fields) => fields.with(14, '9999').with(15, '9999'))));
    expect(split.diffuseHorizontal[12 + 24 * 180]).toBeGreaterThan(90);
    const summed = good(readEpw(epwText(set(13, '9999', () => true))));
    expect(summed.globalHorizontal[12 + 24 * 180]).toBeGreaterThan(90);
    const gap = good(readEpw(epwText(set(13, '9999', (row) => row === 12 + 24 * 180))));
    expect(gap.globalHorizontal[12 + 24 * 180]).toBeGreaterThan(60);
    const allOut = (fields: string[], row: number) =>
      row === 12 + 24 * 180 ? fields.with(13, '9999').with(14, '9999').with(15, '9999') : fields;
    const filled = good(readEpw(epwText(allOut)));
    expect(Math.abs(filled.globalHorizontal[12 + 24 * 180] - 100)).toBeLessThan(10);
  });
});

describe('EPW files that are refused, each with a line', () => {
  it('no EPW at all, nothing, rubbish', () => {
    expect(problems('')).toContain('expected eight header lines');
    expect(problems('x\n'.repeat(9000))).toBe('1: expected an EPW file beginning with LOCATION, got “x”');
    expect(problems('x'.repeat(10_000_000))).toContain('expected eight header lines');
    expect(problems('\n'.repeat(100) + 'x\n'.repeat(60_000))).toContain('too many lines');
  });

  it('cut in half', () => {
    const text = epwText();
    expect(problems(text.slice(0, text.length / 2))).toMatch(/fields|hours are missing/);
    const lines = text.split('\n').slice(0, 8 + 4380);
    expect(problems(lines.join('\n'))).toBe(
      '4388: 4380 hours are missing, from 2 July, hour 13, after this line',
    );
  });

  it('letters in a number field', () => {
    expect(problems(epwText(set(6, '8,x'.slice(2), (row) => row === 10)))).toBe(
      '19: expected a number for dry-bulb temperature, got “x”',
    );
    expect(problems(epwText(set(21, '3.0abc', (row) => row === 0)))).toContain(
      '9: expected a number for wind speed',
    );
    expect(problems(epwText(set(2, 'ten', (row) => row === 3)))).toContain(
      '12: expected month, day and hour',
    );
    expect(problems(epwText(set(13, '0x10', (row) => row === 3)))).toContain(
      '12: expected a number for global',
    );
  });

  it('an hour missing, an hour doubled, an hour that is none', () => {
    expect(problems(epwText((fields, row) => (row === 50 ? null : fields)))).toBe(
      '58: 3 January, hour 3 is missing, after this line',
    );
    const lines = epwText().split('\n');
    lines.splice(20, 0, lines[19]);
    expect(problems(lines.join('\n'))).toBe('21: 1 January, hour 12 is given twice, first on line 20');
    expect(problems(epwText(set(3, '0', (row) => row === 0)))).toContain(
      '9: expected an hour 1 to 24, got 0',
    );
    expect(problems(epwText(set(1, '13', (row) => row === 0)))).toContain(
      '9: expected a month 1 to 12, got 13',
    );
  });

  it('numbers no weather has', () => {
    expect(problems(epwText(set(6, '-120', (row) => row === 0)))).toContain(
      '9: expected dry-bulb temperature from -90 to 70',
    );
    expect(problems(epwText(set(13, '-5', (row) => row === 0)))).toContain(
      '9: expected global horizontal radiation',
    );
    expect(problems(epwText(set(9, '1003', (row) => row === 0)))).toContain('9: expected pressure');
  });

  it('gaps longer than six hours, columns that are all missing, many records an hour, a header without a place', () => {
    expect(problems(epwText(set(6, '99.9', (row) => row >= 30 && row < 40)))).toBe(
      '39: 10 hours of air temperature are missing from 2 January, hour 7; at most 6 are filled',
    );
    expect(problems(epwText(set(21, '999', () => true)))).toContain('the file gives no wind speed');
    expect(problems(epwText().replace('DATA PERIODS,1,1', 'DATA PERIODS,1,4'))).toContain(
      '8: expected one record an hour',
    );
    expect(problems(epwText().replace('53.0', 'north'))).toContain(
      '1: expected latitude from -90 to 90, got “north”',
    );
  });

  it('never more than twenty problems', () => {
    expect(problems(epwText(set(6, '?', () => true))).split('\n').length).toBeLessThanOrEqual(20);
  });
});

describe('TMY3 files that are refused', () => {
  it('with a line', () => {
    const reading = readTmy3('000001,"TESTHAM",XX,0.0,53.0,-7.5,80\nDate,Time\n01/01/1999,01:00\n');
    expect(reading.ok).toBe(false);
    if (!reading.ok)
      expect(reading.problems[0]).toEqual({ line: 2, message: 'expected a column headed Date (MM/DD/YYYY)' });
    const noPlace = readTmy3('rubbish\nrubbish\nrubbish');
    if (!noPlace.ok) expect(noPlace.problems[0].line).toBe(1);
    expect(noPlace.ok).toBe(false);
  });
});
