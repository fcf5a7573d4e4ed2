import { NumberReader, Refusal } from './photometric-file-numbers.ts';

/** What stands before the numbers of an IES LM-63 file. */
export interface FileHead {
  /** Year of the layout. */
  readonly year: 1986 | 1991 | 1995 | 2002 | 2019;
  readonly keywords: Readonly<Record<string, string>>;
  /** First label line of a file of 1986, which has no keywords. */
  readonly label: string;
  /** Share of the light at which the lamp burns hung level, from the tilt table; 1 where there is none. */
  readonly tiltFactor: number;
  readonly tilted: boolean;
  readonly numbers: NumberReader;
}

/** Longest keyword taken for one [characters]. */
const longestKeyword = 40;

/** Most angles of a tilt table. */
const mostTilts = 361;

/** Year by the first line; a file of 1986 has none and begins with its labels. */
function yearOf(first: string): FileHead['year'] {
  const name = first.trim().toUpperCase();
  if (/LM-63-(2019|19|2020)/.test(name)) return 2019;
  if (/LM-63-(2002|02)/.test(name)) return 2002;
  if (/LM-63-(1995|95)/.test(name)) return 1995;
  return name.startsWith('IESNA91') || /LM-63-(1991|91)/.test(name) ? 1991 : 1986;
}

/** Reads layout, keywords and tilt; throws a `Refusal` with the line where it cannot. */
export function readHead(lines: readonly string[]): FileHead {
  const year = yearOf(lines[0] ?? '');
  const tiltAt = lines.findIndex((line) => /^\s*TILT\s*=/i.test(line));
  if (tiltAt < 0)
    throw new Refusal(Math.max(1, lines.length), 'expected a line TILT=NONE or TILT=INCLUDE, found none');
  const from = year === 1986 ? 0 : 1;
  const labels = lines.slice(from, tiltAt);
  const numbers = new NumberReader(lines, tiltAt + 1);
  const tilt = lines[tiltAt].slice(lines[tiltAt].indexOf('=') + 1).trim();
  const head = {
    year,
    keywords: keywordsOf(labels),
    label: labels.find((line) => line.trim() !== '' && !line.trim().startsWith('['))?.trim() ?? '',
    numbers,
  };
  if (/^none$/i.test(tilt)) return { ...head, tiltFactor: 1, tilted: false };
  if (/^include$/i.test(tilt)) return { ...head, tiltFactor: levelFactor(numbers), tilted: true };
  throw new Refusal(
    tiltAt + 1,
    `expected TILT=NONE or TILT=INCLUDE, got TILT=${tilt.slice(0, 60)}: a tilt table in a file of its own is not read`,
  );
}

/** Keywords in square brackets; `[MORE]` carries the last one on. */
function keywordsOf(labels: readonly string[]): Readonly<Record<string, string>> {
  const found = new Map<string, string>();
  let last = '';
  for (const line of labels) {
    const plain = line.trim();
    const close = plain.indexOf(']');
    if (!plain.startsWith('[') || close < 2 || close > longestKeyword) continue;
    const key = plain.slice(1, close).trim().toUpperCase();
    const value = plain.slice(close + 1).trim();
    if (key === 'MORE' && last !== '') found.set(last, `${found.get(last) ?? ''} ${value}`.trim());
    else {
      last = key;
      found.set(key, value);
    }
  }
  return Object.fromEntries(found);
}

/** The tilt table's factor for a fitting hung level (0°); it tells how much a lamp gives in other burning positions. */
function levelFactor(numbers: NumberReader): number {
  numbers.whole('lamp-to-luminaire geometry', 1, 3);
  const count = numbers.whole('number of tilt angles', 1, mostTilts);
  const angles = numbers.list('tilt angle', count, true);
  const factors = numbers.list('tilt factor', count, false);
  const above = angles.findIndex((angle) => angle >= 0);
  const reached = above === 0 ? angles[0] === 0 : above > 0;
  const factor = !reached ? NaN : above === 0 ? factors[0] : between(angles, factors, above);
  if (!(factor > 0))
    throw new Refusal(numbers.line, 'expected a tilt table with a factor above 0 at 0°, got none');
  return factor;
}

/** Factor at 0° between two angles of the table, the upper at index `above`. */
function between(angles: readonly number[], factors: readonly number[], above: number): number {
  const share = -angles[above - 1] / (angles[above] - angles[above - 1]);
  return factors[above - 1] + share * (factors[above] - factors[above - 1]);
}
