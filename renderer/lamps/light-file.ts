import type { Lamp, PhotometricFile } from '../../core/index.ts';

/** What of a photometric file a lamp can take. */
export type LightFileRead = Pick<PhotometricFile, 'photometry' | 'watts' | 'lengthMetres' | 'widthMetres'>;

const within = (value: number, least: number, most: number) => value >= least && value <= most;

/**
 * What a lamp takes from a photometric file: its beam always; the light, watts and size of its face where the file
 * has them within what a lamp of a plan may have. A round face has no width of its own in such a file.
 */
export function partOfFile(file: LightFileRead, takeLight: boolean): Partial<Lamp> {
  const part: Partial<Lamp> = { beam: { kind: 'file', photometry: file.photometry, turned: 0 } };
  const length = Math.abs(file.lengthMetres);
  const width = Math.abs(file.widthMetres);
  if (within(length, 0.01, 3)) part.length = length;
  if (within(width, 0.01, 3)) part.width = width;
  if (!takeLight) return part;
  if (within(file.watts, 0.5, 5000)) part.watts = file.watts;
  return { ...part, light: { kind: 'file', luxPerMicromole: null } };
}

/** The lamp with an even beam again; light summed from the file goes with it. */
export function withoutFile(lamp: Lamp): Partial<Lamp> {
  return lamp.light.kind === 'file'
    ? { beam: { kind: 'even' }, light: { kind: 'efficacy' } }
    : { beam: { kind: 'even' } };
}
