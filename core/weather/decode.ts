/**
 * Text from bytes: UTF-8 where they are valid UTF-8 (a byte-order mark is dropped), else Latin-1. By hand, because
 * the engine uses neither Node's nor the browser's decoder.
 */
export function decodeText(bytes: Uint8Array): string {
  return decodeUtf8(bytes) ?? decodeLatin1(bytes);
}

const chunk = 8192;

function decodeLatin1(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let k = 0; k < bytes.length; k += chunk)
    parts.push(String.fromCharCode(...bytes.subarray(k, k + chunk)));
  return parts.join('');
}

/** Null where the bytes are not UTF-8 (RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF). */
function decodeUtf8(bytes: Uint8Array): string | null {
  const parts: string[] = [];
  let units: number[] = [];
  let k = bytes.length >= 3 && bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  while (k < bytes.length) {
    const first = bytes[k];
    const length = sequenceLength(first);
    if (length === 0 || k + length > bytes.length) return null;
    const point = codePoint(bytes, k, length);
    if (point === null) return null;
    k += length;
    if (point >= 0x10000)
      units.push(0xd800 + ((point - 0x10000) >> 10), 0xdc00 + ((point - 0x10000) & 0x3ff));
    else units.push(point);
    if (units.length >= chunk) {
      parts.push(String.fromCharCode(...units));
      units = [];
    }
  }
  parts.push(String.fromCharCode(...units));
  return parts.join('');
}

function sequenceLength(first: number): number {
  if (first < 0x80) return 1;
  if (first >= 0xc2 && first < 0xe0) return 2;
  if (first >= 0xe0 && first < 0xf0) return 3;
  if (first >= 0xf0 && first < 0xf5) return 4;
  return 0;
}

/** Least code point a sequence of 1–4 bytes may carry, and the bits its first byte gives. */
const leastPoint = [0, 0, 0x80, 0x800, 0x10000];
const firstBits = [0, 0x7f, 0x1f, 0x0f, 0x07];

function codePoint(bytes: Uint8Array, at: number, length: number): number | null {
  let point = bytes[at] & firstBits[length];
  for (let i = 1; i < length; i++) {
    const next = bytes[at + i];
    if ((next & 0xc0) !== 0x80) return null;
    point = (point << 6) | (next & 0x3f);
  }
  const surrogate = point >= 0xd800 && point < 0xe000;
  return point < leastPoint[length] || surrogate || point > 0x10ffff ? null : point;
}
