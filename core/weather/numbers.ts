/** A plain decimal number and nothing else; null where the text is not one. Blank text gives NaN, which means missing. */
export function plainNumber(text: string): number | null {
  const trimmed = text.trim();
  if (trimmed === '') return NaN;
  if (!/^[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?$/.test(trimmed)) return null;
  const value = Number(trimmed);
  // −0 is written by some files for a beam of nothing.
  return Number.isFinite(value) ? value + 0 : null;
}

/** Text as a message may quote it: short, on one line. */
export function quoted(text: string): string {
  const plain = text.trim().replace(/\s+/g, ' ');
  return `“${plain.length > 24 ? `${plain.slice(0, 24)}…` : plain}”`;
}
