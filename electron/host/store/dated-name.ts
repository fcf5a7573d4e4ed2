/** A file name that carries what it is and when it was made [UTC], safe on every file system. */
export function datedName(what: string, nowMs: number): string {
  const stamp = new Date(nowMs).toISOString().replace(/[:.]/g, '-');
  return `winterbench-${what}-${stamp}.sqlite`;
}
