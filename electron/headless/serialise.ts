/** Significant digits kept of series; single figures are written in full. */
const seriesDigits = 6;

/** A number that is not finite, or a value JSON would lose, at a path of the result. */
export class NotSerialisable extends Error {}

/**
 * The result as JSON text. Every number is checked finite first, since JSON would turn NaN and infinities
 * into null; typed arrays become arrays of numbers rounded to six significant digits. The same value gives
 * the same bytes.
 */
export function serialise(value: unknown): string {
  return `${JSON.stringify(plain(value, ''))}\n`;
}

/** A finite number rounded to the digits of a series. */
export function rounded(value: number, path: string): number {
  return Number(finite(value, path).toPrecision(seriesDigits));
}

function finite(value: number, path: string): number {
  if (!Number.isFinite(value)) throw new NotSerialisable(`expected a finite number at ${path}, got ${value}`);
  return value;
}

function plain(value: unknown, path: string): unknown {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'number') return finite(value, path);
  if (Array.isArray(value)) return value.map((item, index) => plain(item, `${path}[${index}]`));
  if (isSeries(value)) return Array.from(value, (item, index) => rounded(item, `${path}[${index}]`));
  if (typeof value === 'object' && isPlainObject(value)) {
    const entries = Object.entries(value).filter(([, item]) => item !== undefined);
    return Object.fromEntries(
      entries.map(([key, item]) => [key, plain(item, path === '' ? key : `${path}.${key}`)]),
    );
  }
  throw new NotSerialisable(`expected a JSON value at ${path || 'the top'}, got ${describe(value)}`);
}

type Series =
  Float64Array | Float32Array | Uint8Array | Int8Array | Uint16Array | Int16Array | Uint32Array | Int32Array;

function isSeries(value: unknown): value is Series {
  return (
    ArrayBuffer.isView(value) &&
    !(value instanceof DataView) &&
    !(value instanceof BigInt64Array) &&
    !(value instanceof BigUint64Array)
  );
}

function isPlainObject(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}

const describe = (value: unknown) =>
  typeof value === 'object' ? (value?.constructor?.name ?? 'an object') : typeof value;
