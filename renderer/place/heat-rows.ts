import type { HeatAmount, HeatBalance, HeatPart } from '../../core/index.ts';
import { formatNumber } from '../state/units.ts';

/** A line of the heat account: a positive amount in, out or into store [kWh]. */
export interface HeatRow {
  /** Name of the part whose working it opens; null for what is too small to stand alone. */
  readonly part: string | null;
  readonly name: string;
  readonly kind: HeatPart['kind'];
  readonly kwh: number;
  /** Share of all that comes in or goes out on its side, 0–1. */
  readonly share: number;
}

export interface HeatAccount {
  readonly into: readonly HeatRow[];
  readonly out: readonly HeatRow[];
}

/** Below this share of the largest line, a line joins the rest. */
const restShare = 0.01;

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** What the store does stands on the side where it counts: heat it gives back comes in, heat it takes up goes out. */
const nameOf = ({ kind, name, kwh }: HeatAmount) =>
  kind === 'storage' ? (kwh > 0 ? 'Taken into store' : 'Given back from store') : capital(name);

/** The lines of one side; one that would be written as nought, under `least`, is left out. */
function side(amounts: readonly HeatAmount[], sign: 1 | -1, least: number): HeatRow[] {
  const mine = amounts.filter(({ kwh }) => sign * kwh > 0);
  const sum = mine.reduce((total, { kwh }) => total + Math.abs(kwh), 0);
  const rows = mine
    .map((amount) => ({
      part: amount.name as string | null,
      name: nameOf(amount),
      kind: amount.kind,
      kwh: Math.abs(amount.kwh),
      share: Math.abs(amount.kwh) / sum,
    }))
    .sort((a, b) => b.kwh - a.kwh);
  const small = rows.filter((row) => row.kwh < restShare * rows[0].kwh);
  if (small.length < 2) return rows.filter((row) => row.kwh >= least);
  const kwh = small.reduce((total, row) => total + row.kwh, 0);
  const rest: HeatRow = { part: null, name: 'The rest', kind: 'storage', kwh, share: kwh / sum };
  return [...rows.slice(0, rows.length - small.length), rest].filter((row) => row.kwh >= least);
}

/** Where the heat comes from and where it goes, largest first. */
export function heatAccount(balance: HeatBalance): HeatAccount {
  const least = 0.5 * 10 ** -accountDigits(balance);
  return { into: side(balance.amounts, -1, least), out: side(balance.amounts, 1, least) };
}

/** Decimals in which all lines of an account are written, so that what is read adds up. */
export function accountDigits({ into, out }: HeatBalance): number {
  const most = Math.max(into, out);
  return most < 1 ? 2 : most < 100 ? 1 : 0;
}

/** Share of the heat exchanged that may be lost to rounding before the account says that it does not add up. */
const leftShare = 0.005;

export function addsUp({ into, out, stored, left }: HeatBalance): boolean {
  return Math.abs(left) <= leftShare * Math.max(into, out, Math.abs(stored), 0.02);
}

/** `5.0 kWh in + 8.0 from store = 13.0 out`, and whether that is so. */
export function sumWords(balance: HeatBalance): string {
  const figure = (kwh: number) => formatNumber(kwh, accountDigits(balance));
  const { into, out, stored, left } = balance;
  const sum =
    stored < 0
      ? `${figure(into)} in + ${figure(-stored)} from store = ${figure(out)} kWh out`
      : `${figure(into)} in = ${figure(out)} out + ${figure(stored)} kWh into store`;
  return addsUp(balance)
    ? `${sum}. In and out match.`
    : `${sum}. ${figure(Math.abs(left))} kWh is not accounted for.`;
}
