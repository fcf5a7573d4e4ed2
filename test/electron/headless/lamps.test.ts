import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { terminal } from './terminal.ts';

const lambertian = readFileSync(
  new URL('../../light/photometric/lambertian-2002.ies', import.meta.url),
  'latin1',
);
const files = {
  'plan.json': terminal(['demo']).out,
  'lamp.ies': lambertian,
  'cut.ies': lambertian.slice(0, lambertian.length - 60),
};

function result(words: readonly string[]) {
  const ran = terminal(words, files);
  expect(ran.notes).toBe('');
  expect(ran.code).toBe(0);
  return JSON.parse(ran.out);
}

describe('lamps in the terminal', () => {
  it('compares at equal light', () => {
    const { view, options } = result(['lamps', 'plan.json', '--view', 'equal-light']);
    expect(view).toBe('equal-light');
    const [first, second] = options as { dailyLight: number; scale: number }[];
    expect(second.dailyLight / first.dailyLight).toBeCloseTo(1, 6);
    expect(second.scale).not.toBe(1);
  });

  it('refuses a view nobody knows as wrong use', () => {
    const ran = terminal(['lamps', 'plan.json', '--view', 'brightest'], files);
    expect(ran.code).toBe(2);
    expect(ran.notes).toContain('expected as-given or equal-light or equal-watts, got brightest');
  });

  it('lays the hours of a lamp elsewhere, and refuses a lamp that is not there', () => {
    const { hours, placings, now } = result([
      'hours',
      'plan.json',
      '--place',
      'bright-tent',
      '--lamp',
      'panel',
    ]);
    expect(hours).toBe(12);
    expect(placings.length).toBeGreaterThan(10);
    expect(now.saves).toBe(0);
    const ran = terminal(['hours', 'plan.json', '--place', 'bright-tent', '--lamp', 'sun'], files);
    expect(ran.code).toBe(1);
    expect(ran.notes).toContain('has no lamp sun; it has panel');
  });

  it('reads a photometric file and names the line of one that is cut short', () => {
    const file = result(['photometry', 'lamp.ies']);
    // I = 318.31 cos θ is a Lambertian source of 1000 lm (Φ = π I₀).
    expect(file.lumens / 1000).toBeCloseTo(1, 2);
    const ran = terminal(['photometry', 'cut.ies'], files);
    expect(ran.code).toBe(1);
    expect(ran.notes).toMatch(/line \d+: expected/);
  });
});
