/** A span of days in the season's ring: `to` may lie beyond the last day where it goes on into the next season. */
export interface RingSpan {
  readonly from: number;
  readonly to: number;
}

/** A day of the ring of `count` days. */
export const ringDay = (day: number, count: number) => ((day % count) + count) % count;

/**
 * Runs of days for which `holds`, the season taken as a ring (its last day is followed by its first). Breaks of up to
 * `bridge` days are no end of a run; runs shorter than `least` days are left out. Nothing where it holds on every day
 * or on none: what never changes has no date.
 */
export function ringSpans(
  count: number,
  bridge: number,
  least: number,
  holds: (day: number) => boolean,
): RingSpan[] {
  const runs = rawRuns(count, holds);
  if (runs.length === 0) return [];
  const joined: { from: number; to: number }[] = [];
  for (const run of runs) {
    const last = joined.at(-1);
    if (last !== undefined && run.from - last.to - 1 <= bridge) last.to = run.to;
    else joined.push({ ...run });
  }
  const [first, last] = [joined[0], joined[joined.length - 1]];
  const around = first.from + count - last.to - 1 <= bridge;
  if (around && joined.length === 1) return [];
  if (around) {
    joined.shift();
    last.to = first.to + count;
  }
  return joined.filter(({ from, to }) => to - from + 1 >= least).sort((a, b) => a.from - b.from);
}

/** Runs as they are, in order; one that goes around the ring begins at its true first day. */
function rawRuns(count: number, holds: (day: number) => boolean): RingSpan[] {
  let start = 0;
  while (start < count && holds(start)) start += 1;
  if (start === count) return [];
  const runs: { from: number; to: number }[] = [];
  for (let day = start; day < start + count; day++) {
    if (!holds(day % count)) continue;
    const last = runs.at(-1);
    if (last !== undefined && last.to === day - 1) last.to = day;
    else runs.push({ from: day, to: day });
  }
  return runs
    .map(({ from, to }) => {
      const turn = from >= count ? count : 0;
      return { from: from - turn, to: to - turn };
    })
    .sort((a, b) => a.from - b.from);
}
