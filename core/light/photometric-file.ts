import type { Photometry } from '../plan/lamp.ts';
import type { CandelaTable } from './beam.ts';
import { zonalLumens } from './beam.ts';
import type { FileHead } from './photometric-file-head.ts';
import { readHead } from './photometric-file-head.ts';
import type { FileProblem } from './photometric-file-numbers.ts';
import { Refusal } from './photometric-file-numbers.ts';
import { thinned, typeB, typeC } from './photometric-file-planes.ts';

/** What a photometric file says of a fitting. */
export interface PhotometricFile {
  readonly photometry: Photometry;
  /** How the file gives directions; type B is brought to type C. */
  readonly type: 'C' | 'B';
  /** Lumens of the fitting by zonal sum of its candela. */
  readonly lumens: number;
  /** Lumens of its bare lamps together as rated; null where the fitting was measured as a whole. */
  readonly ratedLumens: number | null;
  readonly watts: number;
  /** Size of the luminous opening [m]; 0 for a point. */
  readonly lengthMetres: number;
  readonly widthMetres: number;
  readonly keywords: Readonly<Record<string, string>>;
  /** What was done to the file's numbers, in words. */
  readonly notes: readonly string[];
}

export type PhotometricReading =
  | { readonly ok: true; readonly file: PhotometricFile }
  | { readonly ok: false; readonly problems: readonly FileProblem[] };

/** Longest file read [bytes or characters]: 721 planes of 361 angles with room to spare. */
export const mostFileLength = 4_000_000;

/** Most angles one way, quarter degrees all round. */
const mostAngles = 1441;

/** A distribution with less light than this is none [lm]. */
const leastLumens = 0.001;

/** Candela a plan can hold (`photometrySchema`). */
const mostBrightness = 1e8;

/**
 * Reads a photometric file of the IES LM-63 layouts of 1986, 1991, 1995, 2002 and 2019. Any input gives an answer:
 * the file, or the line and reason it was refused for. Bytes are read as Latin-1.
 */
export function readPhotometricFile(text: string | Uint8Array): PhotometricReading {
  if (text.length > mostFileLength) {
    const message = `expected at most ${mostFileLength / 1e6} MB, got ${(text.length / 1e6).toFixed(1)} MB`;
    return { ok: false, problems: [{ line: 1, message }] };
  }
  const lines = plainText(text).split(/\r\n|\r|\n/);
  try {
    return { ok: true, file: readLines(lines) };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: [error.problem] };
    throw error;
  }
}

function plainText(text: string | Uint8Array): string {
  if (typeof text === 'string') return text.replace(/^\uFEFF/, '');
  const pieces: string[] = [];
  for (let k = 0; k < text.length; k += 8192) pieces.push(String.fromCharCode(...text.subarray(k, k + 8192)));
  return pieces.join('').replace(/^\u00EF\u00BB\u00BF/, '');
}

function readLines(lines: readonly string[]): PhotometricFile {
  const head = readHead(lines);
  const { numbers } = head;
  const lamps = numbers.whole('number of lamps', 1, 1000);
  const lumensPerLamp = numbers.number('lumens per lamp');
  const absolute = lumensPerLamp < 0;
  if (!(lumensPerLamp > 0) && lumensPerLamp !== -1)
    throw new Refusal(
      numbers.line,
      `expected lumens per lamp above 0, or −1 for absolute photometry, got ${lumensPerLamp}`,
    );
  const multiplier = numbers.positive('candela multiplier');
  const rows = numbers.whole('number of vertical angles', 2, mostAngles);
  const count = numbers.whole('number of horizontal angles', 1, mostAngles);
  const type = typeOf(head);
  const metres = numbers.whole('unit (1 feet, 2 metres)', 1, 2) === 1 ? 0.3048 : 1;
  const width = Math.abs(numbers.number('width')) * metres;
  const length = Math.abs(numbers.number('length')) * metres;
  numbers.number('height');
  const ballast = numbers.positive('ballast factor');
  const second = numbers.number('ballast-lamp factor or the number kept for it');
  const watts = numbers.number('input watts');
  if (!(watts >= 0)) throw new Refusal(numbers.line, `expected input watts of at least 0, got ${watts}`);
  const lampFactor = head.year <= 1991 && second > 0 ? second : 1;
  const scale = multiplier * ballast * lampFactor * head.tiltFactor;
  const { given, line } = readCandela(head, rows, count, scale);
  const whole = type === 'C' ? typeC(given, line) : typeB(given, line);
  const kept = thinned(whole);
  const lumens = zonalLumens(whole);
  if (!(lumens >= leastLumens))
    throw new Refusal(numbers.line, `expected light of at least ${leastLumens} lm, got ${lumens}`);
  return {
    photometry: { name: nameOf(head), ...copied(kept) },
    type,
    lumens,
    ratedLumens: absolute ? null : lamps * lumensPerLamp,
    watts,
    lengthMetres: length,
    widthMetres: width,
    keywords: head.keywords,
    notes: notesOf(head, { type, given, whole, kept, scale, absolute, lampFactor }),
  };
}

const copied = ({ vertical, planes, candela }: CandelaTable) => ({
  vertical: [...vertical],
  planes: [...planes],
  candela: [...candela],
});

function typeOf({ numbers }: FileHead): 'C' | 'B' {
  const type = numbers.whole('photometric type (1 C, 2 B, 3 A)', 1, 3);
  if (type === 3)
    throw new Refusal(
      numbers.line,
      'type A photometry is not read: it is measured about a beam aimed at the horizon, not straight down',
    );
  return type === 1 ? 'C' : 'B';
}

/** Angles and candela, scaled; the line is that of the horizontal angles. */
function readCandela(
  { numbers }: FileHead,
  rows: number,
  count: number,
  scale: number,
): { given: CandelaTable; line: number } {
  const vertical = numbers.list('vertical angle', rows, true);
  const planes = numbers.list('horizontal angle', count, true);
  const { line } = numbers;
  const candela: number[] = [];
  for (let k = 0; k < rows * count; k++) {
    const value = numbers.number(`candela ${k + 1} of ${rows * count}`);
    if (!(value >= 0)) throw new Refusal(numbers.line, `expected candela of at least 0, got ${value}`);
    if (!(value * scale <= mostBrightness))
      throw new Refusal(numbers.line, `expected at most ${mostBrightness} cd, got ${value * scale}`);
    candela.push(value * scale);
  }
  numbers.end();
  return { given: { vertical, planes, candela }, line };
}

/** The fitting's name from its keywords, as a plan can keep it. */
function nameOf({ keywords, label }: FileHead): string {
  const found = [keywords.LUMINAIRE, keywords.LUMCAT, keywords.TEST, label].find(
    (each) => (each ?? '').trim() !== '',
  );
  const plain = (found ?? '').replace(/[\u0000-\u001f\u007f]+/g, ' ').trim();
  return plain === '' ? 'Photometric file' : plain.slice(0, 120).trim();
}

interface Done {
  readonly type: 'C' | 'B';
  readonly given: CandelaTable;
  readonly whole: CandelaTable;
  readonly kept: CandelaTable;
  readonly scale: number;
  readonly absolute: boolean;
  readonly lampFactor: number;
}

function notesOf(head: FileHead, { type, given, whole, kept, scale, absolute, lampFactor }: Done): string[] {
  const notes = [`IES LM-63 of ${head.year}, type ${type}, ${absolute ? 'absolute' : 'relative'} photometry`];
  if (scale !== 1)
    notes.push(`candela multiplied by ${Number(scale.toPrecision(4))} (multiplier, ballast and tilt)`);
  if (lampFactor !== 1) notes.push('the ballast-lamp factor of the older layout is applied');
  if (head.tilted) notes.push(`tilt table: the factor at 0°, ${head.tiltFactor}, is applied (hung level)`);
  if (type === 'B')
    notes.push('type B brought to type C direction by direction; its planes’ axis lies along plane 0');
  const top = given.vertical[given.vertical.length - 1];
  if (top !== 90 && top !== 180) notes.push(`no light is taken beyond ${top}° from straight down`);
  if (kept !== whole) {
    const share = 100 * (zonalLumens(kept) / zonalLumens(whole) - 1);
    notes.push(
      `thinned from ${whole.planes.length} planes of ${whole.vertical.length} angles to ${kept.planes.length} of ${kept.vertical.length}; its light changes by ${share.toFixed(2)} %`,
    );
  }
  return notes;
}
