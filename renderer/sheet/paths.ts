import { area, line } from 'd3';
import { daysInSeason, endDayOf, firstDayOf, weeksInSeason } from './time.ts';

/** Where a day or the middle of a week stands on a sheet `width` wide [px]. */
export const dayX = (day: number, width: number) => (day / daysInSeason) * width;
const weekX = (week: number, width: number) => dayX((firstDayOf(week) + endDayOf(week)) / 2, width);
type Scale = (value: number) => number;

/** The weeks' ends are drawn out to the sheet's edges, so that the band fills it. */
function xs(width: number): number[] {
  const points = Array.from({ length: weeksInSeason }, (_, week) => weekX(week, width));
  points[0] = 0;
  points[weeksInSeason - 1] = width;
  return points;
}

export function linePath(values: Float64Array, width: number, y: Scale): string {
  const x = xs(width);
  return (
    line<number>(
      (_, index) => x[index],
      (value) => y(value),
    ).digits(1)(values) ?? ''
  );
}

export function bandPath(low: Float64Array, high: Float64Array, width: number, y: Scale): string {
  const x = xs(width);
  const band = area<number>(
    (_, index) => x[index],
    (value) => y(value),
    (_, index) => y(high[index]),
  );
  return band.digits(1)(low) ?? '';
}

/** One bar a week from `base` up by `values`, all in one path. */
export function barsPath(base: Float64Array | null, values: Float64Array, width: number, y: Scale): string {
  const bar = Math.max(1, width / weeksInSeason - 1.5);
  let path = '';
  for (let week = 0; week < weeksInSeason; week += 1) {
    const from = base ? base[week] : 0;
    const [bottom, top] = [y(from), y(from + values[week])];
    if (bottom - top < 0.25) continue;
    const left = dayX(firstDayOf(week), width) + 0.75;
    path += `M${left.toFixed(1)} ${bottom.toFixed(1)}V${top.toFixed(1)}h${bar.toFixed(1)}V${bottom.toFixed(1)}z`;
  }
  return path;
}

/** The tops of weekly bars as one stepped line. */
export function stepsPath(values: Float64Array, width: number, y: Scale): string {
  let path = '';
  for (let week = 0; week < weeksInSeason; week += 1) {
    const [left, right] = [dayX(firstDayOf(week), width), dayX(endDayOf(week), width)];
    path += `${week === 0 ? 'M' : 'L'}${left.toFixed(1)} ${y(values[week]).toFixed(1)}H${right.toFixed(1)}`;
  }
  return path;
}

export interface Run {
  readonly state: number;
  readonly fromDay: number;
  /** One past the last day. */
  readonly toDay: number;
}

export function runsOf(states: Uint8Array): Run[] {
  const runs: Run[] = [];
  let fromDay = 0;
  for (let day = 1; day <= states.length; day += 1) {
    if (day < states.length && states[day] === states[fromDay]) continue;
    runs.push({ state: states[fromDay], fromDay, toDay: day });
    fromDay = day;
  }
  return runs;
}

/** One path a state, with all its runs as boxes of `height`. */
export function ribbonPaths(
  runs: readonly Run[],
  width: number,
  height: number,
): { state: number; path: string }[] {
  const paths = new Map<number, string>();
  for (const run of runs) {
    const [left, right] = [dayX(run.fromDay, width), dayX(run.toDay, width)];
    const box = `M${left.toFixed(1)} 0H${right.toFixed(1)}V${height}H${left.toFixed(1)}z`;
    paths.set(run.state, (paths.get(run.state) ?? '') + box);
  }
  return [...paths].map(([state, path]) => ({ state, path }));
}
