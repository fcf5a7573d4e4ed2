import type { Spectrum } from './spectrum.ts';

/** A spectral table read from text, or what is wrong with it, line by line; line 0 means the table as a whole. */
export type SpectrumText =
  | { readonly ok: true; readonly spectrum: Spectrum }
  | { readonly ok: false; readonly problems: readonly { readonly line: number; readonly message: string }[] };

/** Most lines a table may have: half-nanometre steps from 200 to 2,700 nm. */
const mostLines = 5000;

/**
 * Reads a spectral table: a line for each wavelength [nm] with its light behind it, parted by blanks, tabs, commas or
 * semicolons; a decimal comma is read where a semicolon, blank or tab parts the columns. Lines of words before the
 * first numbers, and empty ones, are passed over.
 */
export function readSpectrum(text: string, of: Spectrum['of']): SpectrumText {
  const lines = text.split(/\r\n|\r|\n/);
  if (lines.length > mostLines) return refused(0, `expected at most ${mostLines} lines, got ${lines.length}`);
  const wavelengths: number[] = [];
  const values: number[] = [];
  const problems: { line: number; message: string }[] = [];
  lines.forEach((line, i) => {
    const cells = cellsOf(line);
    const [wavelength, value] = cells.map(Number);
    if (cells.length === 0 || (wavelengths.length === 0 && !(wavelength >= 0))) return;
    const message = problemOf(line, cells.length, wavelength, value, wavelengths.at(-1) ?? 0);
    if (message !== null) problems.push({ line: i + 1, message });
    else {
      wavelengths.push(wavelength);
      values.push(value);
    }
  });
  if (problems.length > 0) return { ok: false, problems: problems.slice(0, 10) };
  if (wavelengths.length < 2) return refused(0, 'expected two lines or more of wavelength and light');
  const lit = wavelengths.some(
    (nm, i) => i > 0 && nm > 400 && wavelengths[i - 1] < 700 && values[i - 1] + values[i] > 0,
  );
  return lit
    ? { ok: true, spectrum: { wavelengths, values, of } }
    : refused(0, 'expected light between 400 and 700 nm, got none');
}

function refused(line: number, message: string): SpectrumText {
  return { ok: false, problems: [{ line, message }] };
}

function cellsOf(line: string): string[] {
  const trimmed = line.replace(/^\uFEFF/, '').trim();
  if (trimmed === '') return [];
  const parted = /[;\t ]/.test(trimmed.replace(/,\s+/g, ','));
  const cells = parted && !/\d\.\d/.test(trimmed) ? trimmed.replace(/(\d),(\d)/g, '$1.$2') : trimmed;
  return cells.split(/\s*[;,\t]\s*|\s+/).filter((cell) => cell !== '');
}

function problemOf(
  line: string,
  cells: number,
  wavelength: number,
  value: number,
  before: number,
): string | null {
  const got = line.trim().slice(0, 40);
  if (cells < 2 || !Number.isFinite(wavelength) || !Number.isFinite(value)) {
    return `expected a wavelength and its light, got '${got}'`;
  }
  if (!(wavelength > before && wavelength < 1e6))
    return `expected rising wavelengths in nm, got ${wavelength} after ${before}`;
  return value >= 0 ? null : `expected light of 0 or more, got ${value}`;
}
