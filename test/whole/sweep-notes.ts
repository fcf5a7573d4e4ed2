import { afterAll } from 'vitest';
import type { Plan } from '../../core/index.ts';

/** Seed of every sweep; a failure prints seed, path and the smallest plan found. */
export const seed = 20261125;
export const minutes = 60_000;

/** Notes the furthest each figure goes in a test file, and prints them at its end. */
export function furthest(): (name: string, value: number, plan: Plan, placeId?: string) => number {
  const reached: Record<string, { value: number; where: string }> = {};
  afterAll(() => {
    for (const [name, { value, where }] of Object.entries(reached))
      console.log(`${name}: ${value.toPrecision(4)} (${where})`);
  });
  return (name, value, plan, placeId = '') => {
    if (!(value <= (reached[name]?.value ?? -Infinity)))
      reached[name] = { value, where: `${plan.name} ${placeId}` };
    return value;
  };
}
