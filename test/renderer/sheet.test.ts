import { describe, expect, it } from 'vitest';
import { demonstrationPlan, plantStates, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { LotCertainty, LotSeason } from '../../core/index.ts';
import { doseOf, harmKinds, notch } from '../../renderer/marks/notches.ts';
import { barsPath, ribbonPaths, runsOf } from '../../renderer/sheet/paths.ts';
import {
  endDayOf,
  firstDayOf,
  formatDays,
  monthsOf,
  weekOf,
  weeksInSeason,
} from '../../renderer/sheet/time.ts';
import { cellWords } from '../../renderer/sheet/table-cell.ts';
import { verdict } from '../../renderer/sheet/words.ts';
import { mainCode, weeklyLeast, weeklyMean, weeklyMost, weeklySum } from '../../renderer/sheet/weekly.ts';

const days = Float64Array.from({ length: 365 }, (_, day) => day);

describe('weeks of the season', () => {
  it('take every day once', () => {
    let next = 0;
    for (let week = 0; week < weeksInSeason; week += 1) {
      expect(firstDayOf(week)).toBe(next);
      for (let day = next; day < endDayOf(week); day += 1) expect(weekOf(day)).toBe(week);
      next = endDayOf(week);
    }
    expect(next).toBe(365);
  });

  it('fold a daily series by mean, least, most and sum', () => {
    expect([weeklyMean(days)[1], weeklyLeast(days)[1], weeklyMost(days)[1], weeklySum(days)[1]]).toEqual([
      10, 7, 13, 70,
    ]);
    expect([weeklyMost(days)[51], weeklySum(days)[51]]).toEqual([364, 8 * 360.5]);
  });

  it('are in the state most of their days have', () => {
    expect(mainCode([2, 2, 0, 0, 0, 1, 1], 0, 7)).toBe(0);
    expect(mainCode([5, 3, 3], 0, 1)).toBe(5);
    expect(mainCode([2, 2, 2, 0, 0, 0, 1], 0, 7)).toBe(0);
  });

  it('make months of the civil calendar', () => {
    const months = monthsOf('2025-08-01');
    expect(months.map((month) => month.toDay - month.fromDay)).toEqual([
      31, 30, 31, 30, 31, 31, 28, 31, 30, 31, 30, 31,
    ]);
  });

  it('are said as days where they are few', () => {
    expect([formatDays(1), formatDays(-3), formatDays(13), formatDays(15)]).toEqual([
      '1 day',
      '3 days',
      '13 days',
      '2 weeks',
    ]);
  });
});

describe('ribbons', () => {
  const states = new Uint8Array(365).fill(2, 100, 200).fill(6, 364);

  it('have one run a spell and no day left out', () => {
    const runs = runsOf(states);
    expect(runs.map((run) => [run.state, run.fromDay, run.toDay])).toEqual([
      [0, 0, 100],
      [2, 100, 200],
      [0, 200, 364],
      [6, 364, 365],
    ]);
  });

  it('are drawn with one path a state', () => {
    const paths = ribbonPaths(runsOf(states), 365, 10);
    expect(paths.map((each) => each.state)).toEqual([0, 2, 6]);
    expect(paths[0].path).toBe('M0.0 0H100.0V10H0.0zM200.0 0H364.0V10H200.0z');
  });
});

describe('light bars', () => {
  it('stand on what is below them and leave out weeks without light', () => {
    const sun = new Float64Array(weeksInSeason).fill(4);
    const lamp = new Float64Array(weeksInSeason).fill(0);
    lamp[0] = 3;
    const path = barsPath(sun, lamp, 365, (value) => 100 - value * 10);
    expect(path.match(/M/g)).toHaveLength(1);
    expect(path).toMatch(/^M0\.8 60\.0V30\.0/);
  });
});

describe('the words of a place', () => {
  const plan = {
    ...demonstrationPlan,
    places: demonstrationPlan.places.filter((place) => place.id === 'bright-tent'),
    lots: demonstrationPlan.lots
      .filter((lot) => lot.place === 'bright-tent')
      .map((lot) => (lot.id === 'echeverias' ? { ...lot, name: 'Echeveria' } : lot)),
  };
  const weather = weatherFromPlan(plan);
  if (weather === null) throw new Error('expected the demonstration plan to carry monthly normals');
  const season = runSeason(plan, weather);
  const growing = new Uint8Array(365).fill(plantStates.findIndex((state) => state.id === 'growing'));
  const wordsFor = (ids: readonly string[]) => {
    const lots = season.places[0].lots.filter((lot) => ids.includes(lot.lotId));
    const place = { ...season.places[0], lots: lots.map((lot) => ({ ...lot, state: growing })) };
    return verdict(place, plan, season).words;
  };

  it('suit the name of a genus as well as a plural', () => {
    expect(wordsFor(['echeverias'])).toBe('Echeveria will keep growing all winter.');
    expect(wordsFor(['aeoniums'])).toBe('Aeoniums will keep growing all winter.');
    expect(wordsFor(['echeverias', 'aeoniums'])).toBe('Echeveria and Aeoniums will keep growing all winter.');
  });

  it('say that nothing stands where no lot does', () => {
    expect(wordsFor([])).toBe('Nothing stands here yet.');
  });
});

describe('the notches of harm', () => {
  it('have a form each, and a dose each from a series of their own', () => {
    expect(new Set(harmKinds.map((kind) => notch(kind, 10, 17))).size).toBe(harmKinds.length);
    const names = ['frostDose', 'chillLoad', 'heatDose', 'scorchDose', 'wetColdDose', 'declineDose'];
    const lot = Object.fromEntries(names.map((name, index) => [name, new Float64Array([index])]));
    const chilled = { ...lot, chilled: new Float64Array([1]) } as unknown as LotSeason;
    expect(harmKinds.map((kind) => doseOf(chilled, kind)[0])).toEqual([0, 1, 2, 3, 4, 5]);
  });
});

describe('a cell of the table', () => {
  const none = new Float64Array(365);
  const doses = { frostDose: none, heatDose: none, scorchDose: none, wetColdDose: none, declineDose: none };
  const lot = {
    ...doses,
    chillLoad: new Float64Array(365).fill(2, 7, 14),
    chilled: new Float64Array(365).fill(1, 7, 14),
    state: new Uint8Array(365).fill(2),
    stays: [
      { placeId: 'a', from: 0, to: 99 },
      { placeId: 'outdoors', from: 100, to: 364 },
    ],
    flowering: { window: { from: 10, to: 30 } },
  } as unknown as LotSeason;
  const sure = {
    agree: new Float64Array(53).fill(0.87),
    halfWidth: new Float64Array(53).fill(0.04),
  } as LotCertainty;
  const nameOf = (id: string) => (id === 'outdoors' ? 'Outdoors' : 'Attic');

  it('has the state, how often it is so, harm and flower; or where the lot is else', () => {
    expect(cellWords(lot, 'a', 0, null, nameOf)).toBe('Resting from cold');
    expect(cellWords(lot, 'a', 1, sure, nameOf)).toBe(
      'Resting from cold, so in 87 of 100, harm from chill, in flower',
    );
    expect(cellWords(lot, 'a', 20, sure, nameOf)).toBe('outdoors');
    expect(cellWords(lot, 'outdoors', 1, sure, nameOf)).toBe('in Attic');
  });
});
