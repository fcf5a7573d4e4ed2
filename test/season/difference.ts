/**
 * Where two results differ first, as a path with both values; null where they are the same to the last bit.
 * Much quicker on long typed arrays than a matcher, and its message is one line.
 */
export function firstDifference(a: unknown, b: unknown, path = 'result'): string | null {
  if (Object.is(a, b)) return null;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) {
    return `${path}: ${String(a)} and ${String(b)}`;
  }
  const left = a as Record<string, unknown>;
  const right = b as Record<string, unknown>;
  if (ArrayBuffer.isView(a) && ArrayBuffer.isView(b)) {
    const [one, other] = [a as Float64Array, b as Float64Array];
    if (one.length !== other.length) return `${path}: lengths ${one.length} and ${other.length}`;
    const at = one.findIndex((value, index) => !Object.is(value, other[index]));
    return at < 0 ? null : `${path}[${at}]: ${one[at]} and ${other[at]}`;
  }
  for (const key of new Set([...Object.keys(left), ...Object.keys(right)])) {
    const difference = firstDifference(left[key], right[key], `${path}.${key}`);
    if (difference !== null) return difference;
  }
  return null;
}

/** Path of the first number that is not finite; null where every one is. */
export function firstNotFinite(value: unknown, path = 'result'): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${path}: ${value}`;
  if (ArrayBuffer.isView(value)) {
    const values = value as Float64Array;
    const at = values.findIndex((each) => !Number.isFinite(each));
    return at < 0 ? null : `${path}[${at}]: ${values[at]}`;
  }
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, each] of Object.entries(value)) {
    const found = firstNotFinite(each, `${path}.${key}`);
    if (found !== null) return found;
  }
  return null;
}
