import type { MeterReading } from '../../core/index.ts';
import type { TextReading } from '../forms/text.ts';

export type MeterUnit = MeterReading['unit'];

/** What may stand behind a figure on a meter's face, and its factor to the unit kept. */
const suffixes: Record<string, readonly [MeterUnit, number]> = {
  lux: ['lux', 1],
  lx: ['lux', 1],
  klux: ['lux', 1000],
  klx: ['lux', 1000],
  fc: ['foot-candle', 1],
  'foot-candle': ['foot-candle', 1],
  'foot-candles': ['foot-candle', 1],
  footcandles: ['foot-candle', 1],
  µmol: ['ppfd', 1],
  umol: ['ppfd', 1],
  ppfd: ['ppfd', 1],
};

/** Highest figure a meter is believed; full sun is 130,000 lux. */
const most = 200_000;

export interface Typed {
  readonly value: number;
  /** Null where no unit was typed. */
  readonly unit: MeterUnit | null;
}

/** `400`, `400 lux`, `1.2 klux`, `37 fc` or `7 µmol`; a reason in words where it is none of them. */
export function readTyped(text: string): Typed | string {
  const typed = text.trim().replaceAll('\u00a0', ' ').replaceAll('μ', 'µ');
  const match = /^(\d+(?:[.,]\d+)?|[.,]\d+)\s*(\D.*)?$/.exec(typed.replace(/(\d)[ ,](?=\d{3}(?!\d))/g, '$1'));
  if (!match) return `“${text.trim()}” is not a reading. Give a figure such as 400 lux.`;
  const suffix = (match[2] ?? '').trim().toLowerCase();
  const known = suffix === '' ? null : suffixes[suffix];
  if (known === undefined) return `The unit “${suffix}” is not known here; use lux, fc or µmol.`;
  const value = Number(match[1].replace(',', '.')) * (known?.[1] ?? 1);
  if (!(value <= most)) return `“${text.trim()}” is more than full sun. Look again at the figure.`;
  return { value, unit: known?.[0] ?? null };
}

/** The same as a field reads text. */
export function readReading(text: string): TextReading {
  const typed = readTyped(text);
  return typeof typed === 'string' ? { ok: false, reason: typed } : { ok: true, value: text.trim() };
}
