/** A name every file system takes: letters and digits of any script, the rest as single hyphens. */
export function fileNameOf(name: string, otherwise: string): string {
  const plain = name
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return plain.slice(0, 60) || otherwise;
}
