import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ringSpans } from '../../core/advice/calendar-ring.ts';
import { lastingAdvice } from '../../core/advice/calendar-water.ts';
import { crossingWords, monthDayOf } from '../../core/advice/calendar-words.ts';

/** `.` and `x` a day each. */
const spans = (drawn: string, bridge = 0, least = 1) =>
  ringSpans(drawn.length, bridge, least, (day) => drawn[day] === 'x').map(({ from, to }) => [from, to]);

describe('spans of the season’s ring', () => {
  it('finds runs, also over the end of the season', () => {
    expect(spans('..xxx..x.')).toEqual([
      [2, 4],
      [7, 7],
    ]);
    expect(spans('xx..xx')).toEqual([[4, 7]]);
    expect(spans('x....')).toEqual([[0, 0]]);
  });

  it('has none where nothing changes', () => {
    expect(spans('xxxxx')).toEqual([]);
    expect(spans('.....')).toEqual([]);
  });

  it('passes over breaks, also over the end, and leaves short runs out', () => {
    expect(spans('.xx.xx....', 1)).toEqual([[1, 5]]);
    expect(spans('.xx..xx...', 1)).toEqual([
      [1, 2],
      [5, 6],
    ]);
    expect(spans('.x.....xx.', 2)).toEqual([[7, 11]]);
    expect(spans('.x.....xx.', 2, 6)).toEqual([]);
    expect(spans('xx.xx', 1)).toEqual([]);
  });

  it('covers each day that holds once, begins and ends on such days, and bridges no more than asked', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { minLength: 1, maxLength: 40 }), fc.nat(6), (days, bridge) => {
        const count = days.length;
        const found = ringSpans(count, bridge, 1, (day) => days[day]);
        const covered = new Array<number>(count).fill(0);
        for (const { from, to } of found) {
          expect(from >= 0 && from < count && to >= from && to < from + count).toBe(true);
          expect([days[from], days[to % count]]).toEqual([true, true]);
          let gap = 0;
          for (let day = from; day <= to; day++) {
            covered[day % count] += 1;
            gap = days[day % count] ? 0 : gap + 1;
            expect(gap).toBeLessThanOrEqual(bridge);
          }
        }
        expect(Math.max(...covered)).toBeLessThanOrEqual(1);
        if (found.length > 0) days.forEach((holds, day) => expect(holds && covered[day] === 0).toBe(false));
        for (const [k, { to }] of found.entries()) {
          const next = found[(k + 1) % found.length].from + (k + 1 === found.length ? count : 0);
          expect(next - to - 1).toBeGreaterThan(bridge);
        }
      }),
    );
  });
});

describe('advice that lasts', () => {
  const advice = (...runs: [code: number, days: number][]) =>
    Uint8Array.from(runs.flatMap(([code, days]) => new Array<number>(days).fill(code)));
  const changes = (...runs: [code: number, days: number][]) =>
    lastingAdvice(advice(...runs)).map((span) => [span.from, span.advice]);

  it('changes where it changes for a fortnight', () => {
    expect(changes([0, 100], [1, 20], [2, 100], [1, 14], [0, 131])).toEqual([
      [100, 1],
      [120, 2],
      [220, 1],
      [234, 0],
    ]);
  });

  it('passes over a fortnight less a day, and a week of wetter advice between drier', () => {
    expect(changes([0, 100], [1, 13], [0, 252])).toEqual([]);
    expect(changes([0, 100], [2, 40], [0, 7], [2, 40], [0, 178])).toEqual([
      [100, 2],
      [187, 0],
    ]);
    expect(changes([0, 100], [2, 40], [0, 14], [2, 40], [0, 171])).toHaveLength(4);
    expect(changes([0, 40], [2, 6], [1, 6], [2, 6], [1, 6], [2, 6], [0, 295])).toEqual([
      [40, 2],
      [70, 0],
    ]);
  });

  it('has nothing to tell where one advice holds all year', () => {
    for (const code of [0, 1, 2]) expect(changes([code, 365])).toEqual([]);
  });

  it('goes around the end of the season', () => {
    expect(changes([2, 30], [0, 300], [2, 35])).toEqual([
      [30, 0],
      [330, 2],
    ]);
  });
});

describe('words of a crossing', () => {
  const crossing = { series: 'mean of day and night', unit: '°C', way: 'fell below' } as const;
  it('name the series, the way, the threshold and the value', () => {
    expect(crossingWords({ ...crossing, value: 6.94, threshold: 7.13 })).toBe(
      'Mean of day and night fell below 7.1 °C: 6.9 °C.',
    );
    expect(crossingWords({ ...crossing, value: -4.21, threshold: -3.9 })).toContain('−3.9 °C: −4.2 °C');
  });
  it('take more digits where fewer would not tell them apart', () => {
    expect(crossingWords({ ...crossing, value: 7.11, threshold: 7.13 })).toContain('7.13 °C: 7.11 °C');
  });
  it('say of a count that it was reached', () => {
    const chill = {
      series: 'chill below 12 °C',
      unit: 'K h',
      way: 'reached',
      value: 512,
      threshold: 500,
    } as const;
    expect(crossingWords(chill)).toBe('Chill below 12 °C reached 500 degree-hours.');
  });
});

describe('days of the civil calendar', () => {
  it('are counted from the season’s first day, the new year passed, without a 29 February', () => {
    expect(monthDayOf(0, 212)).toBe('08-01');
    expect(monthDayOf(152, 212)).toBe('12-31');
    expect(monthDayOf(153, 212)).toBe('01-01');
    expect([monthDayOf(211, 212), monthDayOf(212, 212)]).toEqual(['02-28', '03-01']);
    expect([monthDayOf(364, 212), monthDayOf(365, 212), monthDayOf(-1, 0)]).toEqual([
      '07-31',
      '08-01',
      '12-31',
    ]);
    expect([monthDayOf(0, 31), monthDayOf(364, 31)]).toEqual(['02-01', '01-31']);
  });
});
