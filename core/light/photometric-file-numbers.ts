/** Why a photometric file was refused: the line, counted from 1, and what was expected there. */
export interface FileProblem {
  readonly line: number;
  readonly message: string;
}

/** Leaves the reading of a file at its first fault. */
export class Refusal extends Error {
  readonly problem: FileProblem;

  constructor(line: number, message: string) {
    super(message);
    this.problem = { line, message };
  }
}

/** Longest word taken for a number [characters]. */
const longestNumber = 40;

const numberForm = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/** What a message shows of a word that is no number. */
const shown = (word: string) => (word.length > 20 ? `${word.slice(0, 20)}…` : word);

/** Numbers of a file one after another, over line ends, spaces and commas, each with its line. */
export class NumberReader {
  private readonly lines: readonly string[];
  /** Index of the line read now; the words of it and the next of them. */
  private at: number;
  private words: readonly string[] = [];
  private next = 0;

  constructor(lines: readonly string[], from: number) {
    this.lines = lines;
    this.at = from - 1;
    this.line = from;
  }

  /** Line of the number read last, counted from 1. */
  line: number;

  /** The next word, or null at the end of the file. */
  private word(): string | null {
    while (this.next >= this.words.length) {
      this.at++;
      if (this.at >= this.lines.length) return null;
      this.words = this.lines[this.at].split(/[\s,]+/).filter((word) => word !== '');
      this.next = 0;
    }
    this.line = this.at + 1;
    return this.words[this.next++];
  }

  number(what: string): number {
    const word = this.word();
    if (word === null) throw new Refusal(this.line, `expected ${what}, got the end of the file`);
    const value = word.length <= longestNumber && numberForm.test(word) ? Number(word) : NaN;
    if (!Number.isFinite(value)) throw new Refusal(this.line, `expected ${what}, got “${shown(word)}”`);
    return value;
  }

  whole(what: string, least: number, most: number): number {
    const value = this.number(what);
    if (!Number.isInteger(value) || value < least || value > most)
      throw new Refusal(
        this.line,
        `expected ${what} as a whole number from ${least} to ${most}, got ${value}`,
      );
    return value;
  }

  positive(what: string): number {
    const value = this.number(what);
    if (!(value > 0)) throw new Refusal(this.line, `expected ${what} above 0, got ${value}`);
    return value;
  }

  /** `count` numbers, each above the last where they are to rise. */
  list(what: string, count: number, rising: boolean): number[] {
    const values: number[] = [];
    for (let k = 0; k < count; k++) {
      const value = this.number(`${what} ${k + 1} of ${count}`);
      if (rising && k > 0 && !(value > values[k - 1]))
        throw new Refusal(this.line, `expected rising ${what}s, got ${value} after ${values[k - 1]}`);
      values.push(value);
    }
    return values;
  }

  /** Refuses what is left over, but for the end mark of old files. */
  end(): void {
    const word = this.word();
    if (word !== null && word !== '\u001a')
      throw new Refusal(
        this.line,
        `expected the end of the file after the last candela, got “${shown(word)}”`,
      );
  }
}
