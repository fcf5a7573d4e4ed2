import type { Option } from './option.ts';

/** What all fields of a row share: `key` of the value they change and how they are called. */
interface Common<T> {
  readonly key: keyof T & string;
  readonly label: string;
  readonly hint?: string;
  /** What the change is called in the list of changes, where the label does not do. */
  readonly words?: string;
  /** Whether the field has a meaning with these values; left out, it always has. */
  readonly shown?: (values: T) => boolean;
}

export interface NumberField<T> extends Common<T> {
  readonly kind: 'number';
  readonly unit: string;
  readonly minimum: number;
  readonly maximum: number;
  readonly integer?: boolean;
  readonly digits?: number;
  /** What is shown is the value times this: 100 for a share in per cent, 1000 for metres in millimetres. */
  readonly factor?: number;
  /** May be left empty, which keeps null. */
  readonly empty?: boolean;
  readonly refuse?: (value: number, values: T) => string | null;
}

export interface ChoiceField<T> extends Common<T> {
  readonly kind: 'choice';
  readonly options: readonly Option[];
}

export interface TextField<T> extends Common<T> {
  readonly kind: 'text';
  readonly longest: number;
  readonly width: string;
}

export interface PlainField<T> extends Common<T> {
  readonly kind: 'clock' | 'day' | 'tick';
  /** A day that may be left empty, which keeps null. */
  readonly empty?: boolean;
  readonly refuse?: (value: string, values: T) => string | null;
}

/** One field of a row, as data. A choice of `''` stands for null. */
export type Field<T> = NumberField<T> | ChoiceField<T> | TextField<T> | PlainField<T>;

type Key<T> = keyof T & string;
type More<F> = Partial<Omit<F, 'kind' | 'key' | 'label' | 'unit' | 'minimum' | 'maximum' | 'options'>>;

export function number<T>(
  key: Key<T>,
  label: string,
  unit: string,
  range: readonly [minimum: number, maximum: number],
  more: More<NumberField<T>> = {},
): NumberField<T> {
  return { kind: 'number', key, label, unit, minimum: range[0], maximum: range[1], ...more };
}

/** A share 0–1 shown in per cent; the range is in per cent too. */
export function share<T>(
  key: Key<T>,
  label: string,
  range: readonly [minimum: number, maximum: number],
  more: More<NumberField<T>> = {},
): NumberField<T> {
  return number(key, label, '%', range, { digits: 1, ...more, factor: 100 });
}

/** A thickness [m] shown in millimetres; the range is in millimetres too. */
export function thickness<T>(
  key: Key<T>,
  range: readonly [minimum: number, maximum: number],
  label = 'Thickness',
): NumberField<T> {
  return number(key, label, 'mm', range, { factor: 1000 });
}

export function choice<T>(
  key: Key<T>,
  label: string,
  options: readonly Option[],
  more: More<ChoiceField<T>> = {},
): ChoiceField<T> {
  return { kind: 'choice', key, label, options, ...more };
}

export function plain<T>(
  kind: PlainField<T>['kind'],
  key: Key<T>,
  label: string,
  more: More<PlainField<T>> = {},
): PlainField<T> {
  return { kind, key, label, ...more };
}

/** The name of a thing in a list of things. */
export function named<T>(key: Key<T>, label = 'Name', width = '10rem'): TextField<T> {
  return { kind: 'text', key, label, width, longest: 60 };
}
