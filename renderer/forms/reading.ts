import { fieldText, fieldUnit, parseQuantity } from '../state/units.ts';
import type { QuantityReading, UnitPreferences } from '../state/units.ts';

/** What a field accepts, in the engine's unit of that field. */
export interface FieldRange {
  readonly unit: string;
  readonly minimum: number;
  readonly maximum: number;
  readonly integer?: boolean;
}

/** The range in the user's own unit: `from 0.5 to 60 m`. */
export function rangeWords(range: FieldRange, preferences: UnitPreferences): string {
  const digits = (value: number) => (value !== 0 && Math.abs(value) < 0.1 ? 4 : 2);
  const text = (value: number) => fieldText(value, range.unit, preferences, digits(value)).replace('-', '−');
  const unit = fieldUnit(range.unit, preferences);
  const kind = range.integer ? 'a whole number ' : '';
  return `${kind}from ${text(range.minimum)} to ${text(range.maximum)}${unit === '' ? '' : ` ${unit}`}`;
}

/** Reads typed text; refuses what is no number, carries a unit that does not fit, or lies outside the range. */
export function readField(text: string, range: FieldRange, preferences: UnitPreferences): QuantityReading {
  const reading = parseQuantity(text, range.unit, preferences);
  const allowed = rangeWords(range, preferences);
  if (!reading.ok) return { ok: false, reason: `${capital(reading.reason)}. Give ${allowed}.` };
  const { value } = reading;
  if (!(Number.isFinite(value) && value >= range.minimum - 1e-9 && value <= range.maximum + 1e-9)) {
    const side = value < range.minimum ? 'little' : 'much';
    return { ok: false, reason: `“${text.trim()}” is too ${side}. Give ${allowed}.` };
  }
  if (range.integer && !Number.isInteger(value)) {
    return { ok: false, reason: `“${text.trim()}” is not whole. Give ${allowed}.` };
  }
  return { ok: true, value: Math.min(range.maximum, Math.max(range.minimum, value)) };
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
