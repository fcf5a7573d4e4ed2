import { endDayOf, firstDayOf, weeksInSeason } from './time.ts';

type Fold = (values: ArrayLike<number>, from: number, to: number) => number;

const meanOf: Fold = (values, from, to) => {
  let sum = 0;
  for (let day = from; day < to; day += 1) sum += values[day];
  return sum / (to - from);
};
const leastOf: Fold = (values, from, to) => {
  let least = values[from];
  for (let day = from + 1; day < to; day += 1) if (values[day] < least) least = values[day];
  return least;
};
const mostOf: Fold = (values, from, to) => {
  let most = values[from];
  for (let day = from + 1; day < to; day += 1) if (values[day] > most) most = values[day];
  return most;
};

function weekly(values: ArrayLike<number>, fold: Fold): Float64Array {
  const weeks = new Float64Array(weeksInSeason);
  for (let week = 0; week < weeksInSeason; week += 1)
    weeks[week] = fold(values, firstDayOf(week), endDayOf(week));
  return weeks;
}

export const weeklyMean = (values: ArrayLike<number>) => weekly(values, meanOf);
export const weeklyLeast = (values: ArrayLike<number>) => weekly(values, leastOf);
export const weeklyMost = (values: ArrayLike<number>) => weekly(values, mostOf);
export const weeklySum = (values: ArrayLike<number>) =>
  weekly(values, (all, from, to) => meanOf(all, from, to) * (to - from));

/** Mean, least and most of one week. */
export function weekFigures(values: ArrayLike<number>, week: number) {
  const [from, to] = [firstDayOf(week), endDayOf(week)];
  return { mean: meanOf(values, from, to), least: leastOf(values, from, to), most: mostOf(values, from, to) };
}

/** The state that most days of a week have; on a tie the later one, as samples are counted. */
export function mainCode(codes: ArrayLike<number>, from: number, to: number): number {
  const counts: number[] = [];
  let main = codes[from];
  for (let day = from; day < to; day += 1) {
    counts[codes[day]] = (counts[codes[day]] ?? 0) + 1;
    if (counts[codes[day]] >= (counts[main] ?? 0)) main = codes[day];
  }
  return main;
}
