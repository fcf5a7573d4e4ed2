import { readPhotometricFile } from '../../../core/index.ts';
import { bytesOf } from '../files.ts';
import { readOptions } from '../options.ts';
import { RefusedInput } from '../outcome.ts';
import { serialise } from '../serialise.ts';
import type { World } from '../world.ts';

const mostBytes = 100_000_000;

/** `photometry FILE`: a lamp's photometric file (IES LM-63) as a plan keeps it, with its lumens and what was done to it. */
export function photometry(words: readonly string[], world: World): void {
  const given = readOptions(words, {}, ['FILE']);
  const [file] = given.positionals;
  const reading = readPhotometricFile(bytesOf(world, file, mostBytes));
  if (!reading.ok) {
    const problems = reading.problems.map(({ line, message }) => ({ path: `line ${line}`, message }));
    throw new RefusedInput(`${file} cannot be used.`, problems);
  }
  world.out(serialise(reading.file));
}
