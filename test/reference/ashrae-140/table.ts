/** A table of figures against their published ranges, printed where the environment sets SHOW_ERRORS. */
import { afterAll } from 'vitest';
import { outside } from './figures.ts';
import type { Range } from './figures.ts';

/** Collects figures while a file's tests run and prints them at its end where they were asked for. */
export function tableOf(title: string, digits: number) {
  const rows: string[] = [];
  const word = (value: number) => value.toFixed(digits).padStart(9);
  afterAll(() => {
    if (process.env.SHOW_ERRORS) console.info([title, ...rows].join('\n'));
  });
  return (name: string, value: number, range: Range): number => {
    const miss = outside(value, range);
    const judged = miss === 0 ? 'inside' : word(miss);
    rows.push(`${name.padEnd(34)}${word(value)}  ${word(range[0])} …${word(range[1])}  ${judged}`);
    return miss;
  };
}
