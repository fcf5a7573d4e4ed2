import { describe, expect, it } from 'vitest';
import { calendarOf, demonstrationPlan } from '../../core/index.ts';
import type { LotSeason, TaskKind } from '../../core/index.ts';
import { colder, demonstration, judged, lotOf, ofKind, ring, weatherOf } from './calendar-seasons.ts';
import type { Judged } from './calendar-seasons.ts';

const [cold, heat] = [2, 3];
const days = 365;

describe('flowers of next summer', () => {
  it('have the same dates a year later', () => {
    const { season } = demonstration();
    const lot = season.lots.find(({ lotId }) => lotId === 'lemons') as LotSeason;
    const flowersIn = (from: number, to: number) =>
      calendarOf({
        ...season,
        lots: [{ ...lot, flowering: { ...lot.flowering, window: { from, to } } }],
      }).find(({ kind }) => kind === 'flowers');
    expect(flowersIn(364, 380)).toMatchObject({
      from: 364,
      to: 380,
      on: '07-31',
      until: '08-16',
      nextSeason: false,
    });
    expect(flowersIn(365, 380)).toMatchObject({
      from: 0,
      to: 15,
      on: '08-01',
      until: '08-16',
      nextSeason: true,
    });
  });
});

describe('the calendar and the weather', () => {
  const colderSeason = () => {
    const at = judged('colder', demonstrationPlan, colder(weatherOf(demonstrationPlan), 3));
    return at;
  };

  it('moves rest from cold and the last safe night earlier, and the first safe night later, when every hour is 3 K colder', () => {
    const usual = demonstration();
    const cool = colderSeason();
    /** Days since the season began of a lot's first rest from cold in the winter half-year. */
    const restOf = (at: Judged, lotId: string) =>
      ofKind(at, 'rest-begins').find(
        (task) => task.lotId === lotId && lotOf(at, task).state[task.from] === cold,
      )?.from;
    const compared = usual.season.lots.filter(({ lotId }) => restOf(usual, lotId) !== undefined);
    expect(compared.length).toBeGreaterThanOrEqual(5);
    for (const { lotId } of compared)
      expect(restOf(cool, lotId), lotId).toBeLessThan(restOf(usual, lotId) ?? 0);
    const night = (at: Judged, kind: TaskKind) =>
      ofKind(at, kind).find(({ lotId }) => lotId === 'step-agave')?.from;
    expect(night(cool, 'last-safe-night')).toBeLessThan(night(usual, 'last-safe-night') ?? 0);
    expect(night(cool, 'first-safe-night')).toBeGreaterThan(night(usual, 'first-safe-night') ?? days);
  });

  it('has a number of tasks that a grower can go through', () => {
    const { season, tasks } = demonstration();
    expect(tasks.length).toBeGreaterThan(season.lots.length);
    // 87 for twelve lots; seventeen for the one with most.
    expect(tasks.length).toBeLessThanOrEqual(100);
    for (const { lotId } of season.lots)
      expect(tasks.filter((task) => task.lotId === lotId).length, lotId).toBeLessThanOrEqual(18);
  });

  it('gives plants that rest in summer their water back in autumn', () => {
    const at = demonstration();
    const own = at.tasks.filter(({ lotId }) => lotId === 'conophytums');
    expect(own.find(({ kind }) => kind === 'stop-water')?.on).toBe('05-01');
    expect(own.find(({ kind }) => kind === 'water-again')?.on).toBe('08-01');
    const hot = at.season.lots.filter(({ state }) => state.includes(heat));
    expect(hot.length).toBeGreaterThan(0);
    for (const lot of hot) {
      const ends = ofKind(at, 'rest-ends').filter(({ lotId }) => lotId === lot.lotId);
      const after = ends.filter(({ from }) => lot.state[ring(from - 1)] === heat);
      for (const { from } of after) {
        const water = ofKind(at, 'water-again').filter(({ lotId }) => lotId === lot.lotId);
        expect(
          water.some((task) => ring(task.from - from) < 60),
          lot.lotId,
        ).toBe(true);
      }
    }
  });
});
