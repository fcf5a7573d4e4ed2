import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  beginCertainty,
  createSeasonCache,
  demonstrationPlan,
  growCertainty,
  lotOf,
  outdoors,
  plantStates,
  runSeason,
  weatherFromPlan,
  weatherFromNormals,
  weeklyStates,
  wintersOf,
} from '../../core/index.ts';
import type { Certainty, CertaintyOptions, Lot, LotCertainty, Plan, WeatherYear } from '../../core/index.ts';
import type { PlantResult } from '../../core/index.ts';
import { lotFrom } from '../../core/advice/certainty-run.ts';
import { statesByWeek } from '../../core/advice/certainty-sample.ts';
import { placeOn } from '../../core/season/index.ts';

const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
const echeveria = lotOf({ id: 'one', name: 'One', group: 'echeveria', place: outdoors, area: 1 });
const agave = lotOf({ id: 'two', name: 'Two', group: 'agave', place: outdoors, area: 1 });

/** Lots in the open alone: no place to heat, so that a winter costs a twentieth of a second. */
function open(...lots: Lot[]): Plan {
  return { ...demonstrationPlan, places: [], lots };
}

function grown(plan: Plan, most: number, options: CertaintyOptions = {}): Certainty {
  return growCertainty(plan, weather, { most, ...options });
}

/** The shown winter over and over. */
const sameWinter = { origin: 'the shown one', count: null, winter: () => weather };

const shownStates = (plan: Plan, lotId: string) => {
  const lot = runSeason(plan, weather).lots.find((each) => each.lotId === lotId);
  return weeklyStates(lot as unknown as PlantResult).map(({ state }) => state);
};

const lotIn = (certainty: Certainty, lotId: string) =>
  certainty.lots.find((lot) => lot.lotId === lotId) as LotCertainty;

describe('certainty', () => {
  const plan = open(echeveria, agave);
  const five = grown(plan, 5, { draws: 8 });

  it('gives the same for the same seed, and other samples for another', () => {
    expect(grown(plan, 5, { draws: 8 })).toEqual(five);
    expect(grown(plan, 5, { draws: 8, seed: 1 }).lots).not.toEqual(five.lots);
  });
  it('gives a lot the same whatever stands beside it', () => {
    const other = grown(open(agave, { ...echeveria, id: 'three', group: 'aloe' }, echeveria), 5, {
      draws: 8,
    });
    for (const { id } of [echeveria, agave]) expect(lotIn(other, id)).toEqual(lotIn(five, id));
  });
  it('gives lots that are alike but for name and number the same', () => {
    const twin = { ...echeveria, id: 'twin', name: 'Twin', plants: 12, area: 0.3 };
    const { lots } = grown(open(echeveria, twin), 2);
    expect({ ...lots[1], lotId: 'one' }).toEqual(lots[0]);
  });
  it('shares all samples out among the states of every week; what agrees is the share of the state shown', () => {
    for (const { lotId, shares, agree, halfWidth, harm, restsAtAll } of five.lots) {
      const shown = shownStates(plan, lotId);
      expect(agree.length).toBe(53);
      shown.forEach((state, week) => {
        const ofWeek = shares.subarray(week * plantStates.length, (week + 1) * plantStates.length);
        expect(ofWeek.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 12);
        expect(agree[week]).toBeCloseTo(ofWeek[state], 12);
      });
      expect(Math.max(...halfWidth)).toBeLessThanOrEqual(five.halfWidth);
      for (const share of [...Object.values(harm), restsAtAll]) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }
    }
    expect(five).toMatchObject({ winters: 5, draws: 8, enough: false, origin: 'drawn from the climate' });
  });
  it('says when rest begins, the early before the late, inside the season', () => {
    const { restBegins, restsAtAll } = lotIn(five, 'one');
    // An echeveria in the open rests from cold in every winter of the demonstration's site, from October on.
    expect(restsAtAll).toBeGreaterThan(0.9);
    const [early, usual, late] = restBegins as [number, number, number];
    expect(early).toBeGreaterThan(45);
    expect(usual).toBeGreaterThanOrEqual(early);
    expect(late).toBeGreaterThan(early);
    expect(late).toBeLessThan(150);
  });

  it('keeps winters and thresholds apart', () => {
    const byWinter = grown(open(echeveria), 5, { spread: 0 }).lots[0];
    expect(byWinter.agreeByThreshold.every((share) => share === 1)).toBe(true);
    expect(byWinter.agree).toEqual(byWinter.agreeByWinter);
    expect(byWinter.agree.some((share) => share < 1)).toBe(true);
    const byThreshold = grown(open(echeveria), 3, { winters: sameWinter }).lots[0];
    expect(byThreshold.agreeByWinter.every((share) => share === 1)).toBe(true);
    byThreshold.agree.forEach((share, week) =>
      expect(share).toBeCloseTo(byThreshold.agreeByThreshold[week], 12),
    );
    expect(byThreshold.agree.some((share) => share < 1)).toBe(true);
  });
  it('is of one mind where nothing can vary, yet claims no certainty', () => {
    const { lots, halfWidth } = grown(open(echeveria), 3, { winters: sameWinter, spread: 0 });
    expect(lots[0].agree.every((share) => share === 1)).toBe(true);
    expect(halfWidth).toBeGreaterThan(0.3);
  });
  it('is of one mind on a dim tent in a warm room, whatever the winter', () => {
    const spare = demonstrationPlan.lots.find(({ id }) => id === 'spare-echeverias') as Lot;
    const places = demonstrationPlan.places.filter(({ id }) => id === spare.place);
    const { lots } = grown({ ...demonstrationPlan, places, lots: [spare] }, 3);
    expect(Math.min(...lots[0].agree)).toBeGreaterThan(0.95);
  });

  it('holds the share of many winters within its half-width, 95 times of 100', { timeout: 120_000 }, () => {
    const [blocks, size] = [5, 10];
    const winters = wintersOf(null, weather, demonstrationPlan.site);
    const parts = Array.from({ length: blocks }, (_, block) => {
      const from = 1 + block * size;
      const own = { ...winters, winter: (index: number) => winters.winter(from + index) };
      return grown(open(echeveria), size, { winters: own, seed: block, draws: 8 }).lots[0];
    });
    const whole = parts[0].agree.map((_, week) =>
      parts.reduce((sum, part) => sum + part.agree[week] / blocks, 0),
    );
    let held = 0;
    for (const { agree, halfWidth } of parts)
      agree.forEach((share, week) => (held += Math.abs(share - whole[week]) <= halfWidth[week] ? 1 : 0));
    // Reached 0.985 (the whole holds the part, so more than 0.95); with draws taken for winters it would be 0.936.
    expect(held / (blocks * whole.length)).toBeGreaterThan(0.96);
  });
  it('grows narrower with the winters', () => {
    const run = beginCertainty(open(echeveria), weather, { most: 24 });
    expect(run.now).toMatchObject({ winters: 0, halfWidth: 1, enough: false });
    const widths: Float64Array[] = [];
    while (!run.done) widths.push(run.grow().lots[0].halfWidth);
    expect(widths.length).toBe(24);
    // A week that comes to differ grows wider with the winter that shows it, but never back over thrice the winters.
    widths[23].forEach((width, week) => expect(width).toBeLessThan(widths[7][week]));
  });
  it('leaves a lot that is sure enough alone, and ends when all are', { timeout: 120_000 }, () => {
    const warm = { ...echeveria, id: 'warm' };
    const told: Certainty[] = [];
    const alike = { winters: sameWinter, spread: 0, draws: 1, most: 90 };
    const done = growCertainty(open(warm), weather, { ...alike, onGrow: (piece) => void told.push(piece) });
    expect(done).toMatchObject({ winters: 73, enough: true });
    expect(done.lots[0].winters).toBe(73);
    expect(told.map(({ winters }) => winters)).toEqual(told.map((_, index) => index + 1));
  });
  it('ends before the next winter when it is cancelled', () => {
    let told = 0;
    const part = growCertainty(open(echeveria), weather, {
      onGrow: () => (told += 1),
      cancelled: () => told >= 2,
    });
    expect(part.winters).toBe(2);
    expect(part.enough).toBe(false);
  });
  it('takes the shown season from the cache and puts no other winter into it', () => {
    const cache = createSeasonCache();
    const shown = open(echeveria);
    runSeason(shown, weather, cache);
    const before = [cache.lots.size, cache.places.size, cache.climates.size, cache.years.size];
    grown(shown, 2, { cache });
    expect([cache.lots.size, cache.places.size, cache.climates.size, cache.years.size]).toEqual(before);
  });
  it('compares the same days of the year where the season’s first day follows the weather, as in the tropics', () => {
    // Cool from January to May, warm from July to November; June and December decide which month winter begins in.
    const year = (december: number, june: number) => {
      const means = [6, 6, 6, 6, 6, june, 22, 22, 22, 22, 22, december];
      const months = means.map((mean) => ({ meanMinimum: mean - 4, meanMaximum: mean + 4 }));
      return weatherFromNormals({ months, typicalLow: 0, rareLow: -1 }, site, 7);
    };
    const site = { ...demonstrationPlan.site, latitude: 10, timeZone: 'UTC', longitude: 0 };
    const there: Plan = { ...open(echeveria), site };
    const [shown, other] = [year(13, 15), year(15, 13)];
    const startDays = [shown, other].map((each) => runSeason(there, each).startDay);
    expect(startDays[1] - startDays[0]).toBe(31);
    const winters = { ...sameWinter, winter: () => other };
    const [{ agreeByWinter, restBegins }] = growCertainty(there, shown, {
      winters,
      spread: 0,
      draws: 1,
      most: 1,
    }).lots;
    // Reached 50 of 53 weeks; counted from each first day it would be 43.
    expect(agreeByWinter.reduce((sum, share) => sum + share, 0)).toBeGreaterThan(48);
    const { state } = runSeason(there, shown).lots[0];
    expect(Math.abs((restBegins as readonly number[])[0] - state.indexOf(2))).toBeLessThan(14);
  });
  it('says where its winters come from', () => {
    const climate = { kind: 'file' as const, weatherId: 'a', name: 'a.epw' };
    const { origin } = beginCertainty({ ...open(), climate }, weather).now;
    expect(origin).toBe('drawn from the months of the file');
  });
  it('has nothing to be unsure of where there are no plants', () => {
    expect(grown(open(), 5)).toMatchObject({ winters: 0, halfWidth: 0, enough: true, lots: [] });
  });
  it('has the state of the week as the weekly states have it', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 1, maxLength: 60 }), (days) => {
        const state = Uint8Array.from(days);
        const none = new Float64Array(days.length);
        const result = { state, limiting: state, growthIndex: none, marginKelvin: none, marginLight: none };
        const weeks = weeklyStates(result as unknown as PlantResult);
        expect([...statesByWeek(state)]).toEqual(weeks.map((week) => week.state));
      }),
    );
  });
});

describe('a lot in a winter whose season begins on another day', () => {
  it('stands on each date of the year where it does in the shown season', () => {
    const move = (on: string, to: string) => ({ on, to });
    const courses = [
      [move('10-20', 'lean-to'), move('04-25', outdoors)],
      [move('10-20', 'lean-to')],
      [move('08-01', 'tunnel'), move('01-15', 'lean-to')],
      [],
    ];
    const ring = (day: number) => ((day % 365) + 365) % 365;
    for (const moves of courses)
      for (const shown of [212, 31, 120])
        for (const start of [212, 31, 0, 304, 334]) {
          const lot = { ...agave, moves };
          const there = lotFrom(lot, shown, start);
          for (let date = 0; date < 365; date += 1)
            expect(placeOn(there, start, ring(date - start)), `${shown} ${start} ${date}`).toBe(
              placeOn(lot, shown, ring(date - shown)),
            );
        }
  });
});
