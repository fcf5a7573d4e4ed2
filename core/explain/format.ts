import type { ExplainInput } from './subject.ts';

/** A number to three significant digits, or as many as it has before the point. */
export function round(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`expected a finite number, got ${value}`);
  const size = Math.abs(value);
  if (size === 0) return '0';
  if (size >= 100) return value.toFixed(0);
  return size >= 10 ? value.toFixed(1) : value.toFixed(2);
}

export function input(name: string, value: number | string, unit: string, origin: string): ExplainInput {
  return { name, value: typeof value === 'number' ? round(value) : value, unit, origin };
}
