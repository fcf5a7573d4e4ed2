/**
 * A year of each weather file for every group, outdoors, in an unheated house, at a window and in a lamp-lit tent: no
 * state flickers, and every date is borne out by the figures of its crossing.
 */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import {
  createSeasonCache,
  judgeLot,
  planNumbers,
  plantGroups,
  plantStates,
  readEpwBytes,
  seasonSetting,
} from '../../core/index.ts';
import type { Lot, LotSeason, Plan, SeasonSetting } from '../../core/index.ts';
import { settleDays } from '../../core/plants/index.ts';
import { bareHouse, planOf, southWindow, tent } from '../support/plans.ts';
import { describeWithData } from '../support/shared-data.ts';

const files = [
  'sand-point-55N.epw',
  'quillayute-48N.epw',
  'international-falls-49N.epw',
  'san-francisco-38N.epw',
  'las-vegas-36N.epw',
  'pvgis-45N-8E.epw',
  'denver-standard140.epw',
];
const one = planOf(bareHouse, [{ group: 'echeveria' }]);
const plan: Plan = {
  ...one,
  places: [...one.places, ...planOf(southWindow).places, ...planOf(tent([{ watts: 30 }])).places],
};
const [pattern] = plan.lots as [Lot];
const waterings = ['by-season', 'watered', 'dry'] as const;

/** Every group in every place, watered in each way. */
function* judged(setting: SeasonSetting): Generator<LotSeason> {
  for (const place of [...plan.places.map(({ id }) => id), 'outdoors']) {
    for (const { id } of plantGroups) {
      for (const watering of waterings) yield judgeLot(setting, { ...pattern, group: id, place, watering });
    }
  }
}

interface Run {
  readonly state: number;
  readonly from: number;
  readonly days: number;
}

/** Runs of one state, without the first and the last, which the year cuts. */
function wholeRuns({ state }: LotSeason): Run[] {
  const runs: Run[] = [];
  let from = 0;
  for (let day = 1; day <= state.length; day += 1) {
    if (day < state.length && state[day] === state[from]) continue;
    runs.push({ state: state[from] as number, from, days: day - from });
    from = day;
  }
  return runs.slice(1, -1);
}

const codeOf = (id: string) => plantStates.findIndex((state) => state.id === id);

for (const name of files) {
  describeWithData(`weather/${name}`, `plants through ${name}`, (file) => {
    const reading = readEpwBytes(readFileSync(file));
    if (!reading.ok) throw new Error(reading.problems.map((each) => each.message).join('\n'));
    const setting = seasonSetting(plan, reading.weather, createSeasonCache());
    const lots = [...judged(setting)];

    it('no state is shorter than the group settles, but for one that a freezing day ends', () => {
      const short = lots.flatMap((lot) => {
        const least = settleDays(planNumbers(plan, lot.groupId));
        return wholeRuns(lot)
          .filter(({ from, days }) => {
            const freezes = (lot.lived.leafMean[from + days] as number) <= 0;
            return days < least && !(freezes && lot.state[from + days] === codeOf('resting-cold'));
          })
          .map((run) => ({ group: lot.groupId, place: lot.placeId, least, ...run }));
      });
      expect(short).toEqual([]);
      expect(lots.reduce((sum, lot) => sum + wholeRuns(lot).length, 0)).toBeGreaterThan(200);
    });

    it('no group changes its state more often than tomato seedlings at a window do, 21 times a year', () => {
      for (const { groupId, placeId, transitions } of lots) {
        expect(transitions.length, `${groupId} in ${placeId}`).toBeLessThanOrEqual(21);
      }
    });

    it('every change names a crossing that its figures bear out', () => {
      for (const lot of lots) {
        for (const { day, from, to, because, crossing } of lot.transitions) {
          const { value, threshold, way } = crossing;
          const told = `${lot.groupId} in ${lot.placeId}, day ${day}, ${from} to ${to}: ${because}`;
          if (way === 'fell below') expect(value, told).toBeLessThanOrEqual(threshold);
          else if (way === 'rose above') expect(value, told).toBeGreaterThanOrEqual(threshold);
          else expect(Math.abs(value - threshold), told).toBeLessThan(0.5);
          expect(because).toContain(crossing.series);
        }
      }
    });
  });
}
