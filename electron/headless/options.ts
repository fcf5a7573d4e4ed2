import { parseArgs } from 'node:util';
import type { ParseArgsConfig } from 'node:util';
import { WrongUse } from './outcome.ts';

type OptionKinds = NonNullable<ParseArgsConfig['options']>;

export interface Given {
  readonly positionals: readonly string[];
  readonly values: Readonly<Record<string, string | boolean | undefined>>;
}

/** Reads a verb's words; unknown options and a wrong number of files are wrong use. */
export function readOptions(words: readonly string[], options: OptionKinds, files: readonly string[]): Given {
  let given: Given;
  try {
    given = parseArgs({ args: joinNegative(words), options, allowPositionals: true, strict: true }) as Given;
  } catch (error) {
    throw new WrongUse((error as Error).message);
  }
  if (given.positionals.length !== files.length) {
    const wanted = files.length === 0 ? 'no file' : files.join(' ');
    throw new WrongUse(
      `expected ${wanted}, got ${given.positionals.length === 0 ? 'nothing' : given.positionals.join(' ')}`,
    );
  }
  return given;
}

/** `--low -6` as `--low=-6`: the parser would take the number for an option. */
function joinNegative(words: readonly string[]): string[] {
  const joined: string[] = [];
  for (const word of words) {
    const last = joined.at(-1);
    if (/^-[\d.]/.test(word) && last !== undefined && /^--[a-z-]+$/.test(last))
      joined[joined.length - 1] = `${last}=${word}`;
    else joined.push(word);
  }
  return joined;
}

/** The option's number within its range; null where it was not given. */
export function numberOption(given: Given, name: string, least: number, most: number): number | null {
  const text = given.values[name];
  if (text === undefined) return null;
  const value = typeof text === 'string' && text.trim() !== '' ? Number(text) : NaN;
  if (!(value >= least && value <= most)) {
    throw new WrongUse(`--${name}: expected a number from ${least} to ${most}, got ${String(text)}`);
  }
  return value;
}

export function neededNumber(given: Given, name: string, least: number, most: number): number {
  const value = numberOption(given, name, least, most);
  if (value === null) throw new WrongUse(`--${name} is needed`);
  return value;
}

export function textOption(given: Given, name: string): string | null {
  const value = given.values[name];
  return typeof value === 'string' ? value : null;
}

export function neededText(given: Given, name: string): string {
  const value = textOption(given, name);
  if (value === null) throw new WrongUse(`--${name} is needed`);
  return value;
}
