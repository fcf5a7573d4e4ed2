/** Thresholds of grey mould as published, which disagree, and the count of hours by them. */
import { describe, expect, it } from 'vitest';
import { mouldRule, mouldRules } from '../../core/index.ts';
import { MouldCount } from '../../core/season/mould.ts';

const fahrenheit = (value: number) => (value - 32) / 1.8;

describe('the rules as their sources have them', () => {
  it('horticultural page: film of water 8–12 h, 93 % or more, 12–24 °C', () => {
    expect(mouldRule('wet-93')).toMatchObject({ humidity: 0.93, from: 12, to: 24, after: 8 });
  });

  it('extension text: film of water 8–12 h, 85 % or more, 55–75 °F', () => {
    const rule = mouldRule('wet-85');
    expect(rule.humidity).toBe(0.85);
    expect(rule.from).toBeCloseTo(fahrenheit(55), 1);
    expect(rule.to).toBeCloseTo(fahrenheit(75), 1);
    expect(rule.after).toBe(8);
  });

  it('Yunis et al. 1994: foliage wet more than 7 h, 9–21 °C', () => {
    expect(mouldRule('wet-night')).toMatchObject({ humidity: 1, from: 9, to: 21, after: 7 });
  });

  it('INRAE’s best air for the mould, 17–23 °C and 95 %, and its 12–24 °C lie inside the first two', () => {
    for (const id of ['wet-93', 'wet-85'] as const) {
      const { humidity, from, to } = mouldRule(id);
      expect(humidity).toBeLessThanOrEqual(0.95);
      expect(from).toBeLessThan(17);
      expect(to).toBeGreaterThan(23);
    }
  });
});

/** Hours counted over spells of [hours, air °C, relative humidity, leaf wet], by quarter hours. */
function hours(id: (typeof mouldRules)[number]['id'], spells: [number, number, number, boolean][]): number {
  const count = new MouldCount(mouldRule(id), 0.25);
  let sum = 0;
  for (const [length, air, humidity, wet] of spells) {
    for (let quarter = 0; quarter < 4 * length; quarter++) if (count.step(air, humidity, wet)) sum += 0.25;
  }
  return sum;
}

describe('hours at risk', () => {
  it('wet for less than four hours is a dry day (disease model), by every rule', () => {
    for (const { id } of mouldRules) expect(hours(id, [[3.75, 15, 1, true]]), id).toBe(0);
  });

  it('twelve hours on end count from the eighth hour, or the seventh', () => {
    expect(hours('wet-93', [[12, 15, 0.95, false]])).toBe(4);
    expect(hours('wet-85', [[12, 15, 0.95, false]])).toBe(4);
    expect(hours('wet-night', [[12, 15, 0.95, true]])).toBe(5);
  });

  it('a trap: two wet spells with a dry hour between are not one', () => {
    const spell: [number, number, number, boolean] = [6, 15, 1, true];
    expect(hours('wet-93', [spell, [1, 15, 0.6, false], spell])).toBe(0);
    expect(hours('wet-93', [spell, spell])).toBe(4);
  });

  it('90 % is risk by one rule and none by another; so is a wet night of 10 °C', () => {
    expect(hours('wet-85', [[12, 15, 0.9, false]])).toBe(4);
    expect(hours('wet-93', [[12, 15, 0.9, false]])).toBe(0);
    expect(hours('wet-night', [[12, 10, 0.9, true]])).toBe(5);
    expect(hours('wet-93', [[12, 10, 0.9, true]])).toBe(0);
  });
});
