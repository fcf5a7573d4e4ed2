import { describe, expect, it } from 'vitest';
import { mouldRules } from '../../core/index.ts';
import type { MouldRule } from '../../core/index.ts';
import { MouldCount } from '../../core/season/mould.ts';

/** Air [°C], humidity 0–1 and dew on the leaf. */
type Step = readonly [air: number, humidity: number, wet?: boolean];

const hours = (count: number, step: Step): Step[] => Array<Step>(count * 4).fill(step);

/** Hours of quarter-hour steps that count. */
function counted(id: MouldRule['id'], steps: readonly Step[]): number {
  const rule = mouldRules.find((each) => each.id === id);
  if (rule === undefined) throw new Error(`expected rule ${id}, got none`);
  const count = new MouldCount(rule, 0.25);
  return steps.filter(([air, humidity, wet]) => count.step(air, humidity, wet ?? false)).length / 4;
}

/** A made-up night: three fair hours, ten at 90 %, two at 95 % with dew on the leaves for the last, then dry. */
const night = (air: number): Step[] => [
  ...hours(3, [air, 0.7]),
  ...hours(10, [air, 0.9]),
  ...hours(1, [air, 0.95]),
  ...hours(1, [air, 0.95, true]),
  ...hours(4, [air, 0.6]),
];

describe('hours at risk of grey mould', () => {
  it.each([
    // 85 %: twelve wet hours, four past the eighth. 93 %: two wet hours, none past. Wet leaves: one hour, none past.
    ['wet-85', 15, 4],
    ['wet-93', 15, 0],
    ['wet-night', 15, 0],
    // Too cold for all but wet leaves, too warm for all.
    ['wet-85', 10, 0],
    ['wet-85', 25, 0],
  ] as const)('%s on a made-up damp night at %d °C: %d h', (id, air, expected) => {
    expect(counted(id, night(air))).toBe(expected);
  });

  it.each([
    // Dew on the leaf all night, twelve hours: four past the eighth, five past the seventh.
    ['wet-85', 15, 4],
    ['wet-93', 15, 4],
    ['wet-night', 15, 5],
    ['wet-night', 10, 5],
    ['wet-93', 10, 0],
    ['wet-night', 22, 0],
    ['wet-93', 22, 4],
  ] as const)('%s on a night of dew at %d °C: %d h', (id, air, expected) => {
    expect(counted(id, hours(12, [air, 0.8, true]))).toBe(expected);
  });

  it('a dry quarter of an hour begins the count anew', () => {
    const dry: Step[] = [[15, 0.5]];
    for (const { id } of mouldRules) {
      const wet = hours(6, [15, 1, true]);
      expect(counted(id, [...wet, ...dry, ...wet])).toBe(0);
      expect(counted(id, [...wet, ...wet])).toBeGreaterThan(0);
    }
  });

  it('saturated air counts as wet by every rule', () => {
    for (const { id, after } of mouldRules) expect(counted(id, hours(12, [15, 1]))).toBe(12 - after);
  });
});
