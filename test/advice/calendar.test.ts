import { describe, expect, it } from 'vitest';
import {
  calendarOf,
  judgeLot,
  outdoors,
  planNumbers,
  seasonSetting,
  temperatureResponse,
} from '../../core/index.ts';
import type { CalendarTask, LotSeason, SeasonResult, TaskKind } from '../../core/index.ts';
import { everywhere, lotOf, ofKind, ring, weatherOf } from './calendar-seasons.ts';

const days = 365;
/** Days from `from` on, going around the ring. */
const daysFrom = (from: number, count: number) => Array.from({ length: count }, (_, k) => ring(from + k));
const resting = new Set([2, 3, 4, 5]);
const [growing, cold] = [0, 2];

const standsOn = (lot: LotSeason, day: number) =>
  lot.stays.find(({ from, to }) => ring(day) >= from && ring(day) <= to)?.placeId;
const meanAhead = (values: Float64Array, day: number) =>
  daysFrom(day + 1, 7).reduce((sum, of) => sum + values[of] / 7, 0);

/** What the engine's series are in the season; null for what a season does not carry day by day. */
function seriesValue(lot: LotSeason, season: SeasonResult, series: string, day: number): number | null {
  switch (series) {
    case 'mean of day and night':
      return lot.rememberedLeaf[ring(day)];
    case 'daily light':
      return lot.rememberedLight[ring(day)];
    case 'mean of the day itself':
      return lot.lived.leafMean[ring(day)];
    case 'moisture left in the mix':
      return lot.waterIndex[ring(day)];
    case 'mean of day and night over the week ahead':
      return meanAhead(lot.lived.leafMean, day);
    case 'temperature of pots, day and night':
      return lot.lived.potMean[ring(day)];
    case 'least leaf temperature of the day':
      return lot.lived.leafLeast[ring(day)];
    case 'highest leaf temperature of the day':
      return lot.lived.leafMost[ring(day)];
    case 'light of the day':
      return lot.lived.dailyLight[ring(day)];
    case 'least leaf temperature of the night outdoors':
      return season.outdoors.lived.leafLeast[ring(day)];
    default:
      return null;
  }
}

/** Days within which a task follows the change of state that it names; others are on the day itself. */
const lag: Partial<Record<TaskKind, number>> = { 'stop-water': 14, 'water-sparingly': 14, 'water-again': 14 };

/** Nights are named on the day before them. */
const nightAfter: readonly TaskKind[] = ['last-safe-night', 'bring-in'];

describe.each(everywhere)('the calendar of %s', (_name, make) => {
  it('belongs to the season: its lots, places and days, each id once, in order', () => {
    const at = make();
    const { season, tasks } = at;
    const places = new Set([outdoors, ...season.plan.places.map(({ id }) => id)]);
    expect(tasks.length).toBeGreaterThan(0);
    expect(new Set(tasks.map(({ id }) => id)).size).toBe(tasks.length);
    tasks.forEach((task, index) => {
      const lot = lotOf(at, task);
      expect(task.id).toMatch(new RegExp(`^${lot.lotId}-${task.kind}-[1-9]\\d*$`));
      expect(places).toContain(task.placeId);
      expect(task.placeId).toBe(standsOn(lot, task.from));
      expect(task.from >= 0 && task.from < days, task.id).toBe(true);
      if (task.to !== null) expect(task.to >= task.from && task.to < task.from + days, task.id).toBe(true);
      expect(task.from).toBeGreaterThanOrEqual(tasks[index - 1]?.from ?? 0);
      expect(task.words).toMatch(/^[A-Z].*[.]$/);
      expect(task.because).toMatch(/^[A-Z].*[.]$/);
    });
  });

  it('gives each day its date in the civil calendar, counted from the season’s first day', () => {
    const { season, tasks } = make();
    const dateOf = (day: number) =>
      new Date(Date.UTC(2025, 0, 1 + ring(season.startDay + day))).toISOString().slice(5, 10);
    expect(dateOf(0)).toBe(season.startDate.slice(5));
    for (const { id, from, to, on, until } of tasks) {
      expect([on, until], id).toEqual([dateOf(from), to === null ? null : dateOf(to)]);
    }
  });

  it('names figures that are in the season’s series on the day, on the right side of the threshold', () => {
    const at = make();
    let recomputed = 0;
    for (const task of at.tasks) {
      const { series, value, threshold, way } = task.crossing;
      const turn = lotOf(at, task).transitions.find(({ crossing }) => crossing === task.crossing);
      // Advice that lasts may begin some days after the change of state that brings it.
      if (turn !== undefined) expect(ring(task.from - turn.day), task.id).toBeLessThan(lag[task.kind] ?? 1);
      const day = turn?.day ?? task.from + (nightAfter.includes(task.kind) ? 1 : 0);
      const found = seriesValue(lotOf(at, task), at.season, series, day);
      if (way === 'fell below') expect(value, task.id).toBeLessThan(threshold);
      if (way === 'rose above') expect(value, task.id).toBeGreaterThanOrEqual(threshold);
      if (found === null) continue;
      recomputed += 1;
      expect(value, `${task.id}: ${series}`).toBeCloseTo(found, 9);
      expect(task.because, task.id).toContain(written(value, task.crossing.unit));
    }
    // The rest are counts of days, dates of the plan, doses of heat and remembered highs.
    expect(recomputed).toBeGreaterThan(at.tasks.length / 3);
  });

  /** A figure with the digits at which it stands in the sentence. */
  const written = (value: number, unit: string) =>
    value
      .toFixed(unit === 'share' ? 2 : 1)
      .replace('-', '−')
      .slice(0, -1);

  it('begins and ends rests where the state does', () => {
    const at = make();
    for (const task of ofKind(at, 'rest-begins')) {
      const { state } = lotOf(at, task);
      expect([resting.has(state[task.from]), resting.has(state[ring(task.from - 1)])]).toEqual([true, false]);
      // Three weeks lie before it in which it did not rest for a fortnight.
      expect(daysFrom(task.from - 21, 21).filter((day) => resting.has(state[day])).length).toBeLessThan(14);
    }
    for (const task of ofKind(at, 'rest-ends')) {
      const { state } = lotOf(at, task);
      expect([resting.has(state[task.from]), resting.has(state[ring(task.from - 1)])]).toEqual([false, true]);
      expect(daysFrom(task.from, 21).filter((day) => resting.has(state[day])).length).toBeLessThan(14);
    }
  });

  it('tells every lasting rest', () => {
    const at = make();
    for (const lot of at.season.lots) {
      const rests = (day: number) => resting.has(lot.state[ring(day)]);
      const begun = at.tasks.filter(({ lotId, kind }) => lotId === lot.lotId && kind === 'rest-begins');
      for (const { day, to } of lot.transitions) {
        if (!resting.has(to) || !daysFrom(day, 14).every(rests)) continue;
        if (daysFrom(day - 21, 21).some(rests)) continue;
        expect(
          begun.map(({ from }) => from),
          `${lot.lotId} ${day}`,
        ).toContain(day);
      }
    }
  });

  it('ties a rest from cold to the mean at which growth falls to 45 %, crossed within three weeks', () => {
    const at = make();
    for (const task of ofKind(at, 'rest-begins')) {
      const lot = lotOf(at, task);
      if (lot.state[task.from] !== cold || task.crossing.series !== 'mean of day and night') continue;
      const { threshold } = task.crossing;
      expect(temperatureResponse(planNumbers(at.season.plan, lot.groupId), threshold)).toBeCloseTo(0.45, 3);
      const above = daysFrom(task.from - 21, 21).filter((day) => lot.rememberedLeaf[day] >= threshold);
      expect(above.length, task.id).toBeGreaterThan(0);
    }
  });

  it('changes water where the season’s advice changes, and for a fortnight at least', () => {
    const at = make();
    const wanted: Partial<Record<TaskKind, number>> = {
      'stop-water': 2,
      'water-sparingly': 1,
      'water-again': 0,
    };
    for (const task of ofKind(at, 'stop-water', 'water-sparingly', 'water-again')) {
      const lot = lotOf(at, task);
      const code = wanted[task.kind] as number;
      const planned = at.season.plan.lots.find(({ id }) => id === lot.lotId);
      expect(planned?.watering, task.id).toBe('by-season');
      const dryMonths = planNumbers(at.season.plan, lot.groupId).dryFromMonth !== null;
      // Groups with dry months: what the plant is given tells, not only what its state advises.
      const advice = (day: number) =>
        !dryMonths
          ? lot.watering[day]
          : lot.waterIndex[day] < 1
            ? 2
            : lot.state[day] === 5
              ? 0
              : lot.watering[day];
      expect(advice(task.from), task.id).toBe(code);
      expect(advice(ring(task.from - 1)), task.id).not.toBe(code);
      const same = daysFrom(task.from, 14).filter((day) => advice(day) === code).length;
      expect(same, task.id).toBeGreaterThanOrEqual(7);
    }
  });

  it('leaves no lot wet by its own word for long where the advice is to hold', () => {
    const at = make();
    for (const lot of at.season.lots) {
      const planned = at.season.plan.lots.find(({ id }) => id === lot.lotId);
      if (planned?.watering !== 'by-season') continue;
      const own = at.tasks.filter(
        ({ lotId, kind }) =>
          lotId === lot.lotId && ['stop-water', 'water-sparingly', 'water-again'].includes(kind),
      );
      const held = (day: number) => lot.watering[ring(day)] === 2;
      for (let day = 0; day < days; day++) {
        if (held(day - 1) || !daysFrom(day, 14).every(held)) continue;
        const before = own.filter(({ from }) => from <= day).at(-1) ?? own.at(-1);
        expect(before?.kind, `${lot.lotId} ${day}`).toBe('stop-water');
      }
    }
  });

  it('feeds after a fortnight of growth, and stops with it or four weeks before a rest', () => {
    const at = make();
    for (const task of ofKind(at, 'feed')) {
      const { state } = lotOf(at, task);
      expect(state[ring(task.from - 14)], task.id).toBe(growing);
      expect(state[ring(task.from - 15)], task.id).not.toBe(growing);
    }
    for (const task of ofKind(at, 'stop-feeding')) {
      const { state } = lotOf(at, task);
      const ends = state[task.from] !== growing && state[ring(task.from - 1)] === growing;
      const restAhead = resting.has(state[ring(task.from + 28)]) && !resting.has(state[ring(task.from + 27)]);
      expect(ends || restAhead, task.id).toBe(true);
      if (!ends) expect(state[ring(task.from - 1)], task.id).toBe(growing);
    }
  });

  it('opens and closes repotting windows with the season’s repotting days', () => {
    const at = make();
    for (const task of ofKind(at, 'repot')) {
      const { repot } = lotOf(at, task);
      const to = task.to as number;
      expect([repot[task.from], repot[ring(task.from - 1)]], task.id).toEqual([1, 0]);
      expect([repot[ring(to)], repot[ring(to + 1)]], task.id).toEqual([1, 0]);
      expect(to - task.from + 1, task.id).toBeGreaterThanOrEqual(21);
      const bad = daysFrom(task.from, to - task.from + 1).filter((day) => repot[day] === 0);
      for (const day of bad)
        expect(
          daysFrom(day, 15).some((of) => repot[of] === 1),
          task.id,
        ).toBe(true);
    }
  });

  it('parts safe nights from unsafe ones by 2 K over the limit the lot would have outdoors', () => {
    const at = make();
    const { plan } = at.season;
    const setting = seasonSetting(plan, weatherOf(plan));
    const { leafLeast } = at.season.outdoors.lived;
    const own = ofKind(at, 'last-safe-night', 'first-safe-night');
    for (const lotId of new Set(own.map((task) => task.lotId))) {
      const lot = plan.lots.find(({ id }) => id === lotId) as (typeof plan.lots)[number];
      const out = judgeLot(setting, { ...lot, place: outdoors, moves: [] });
      const safe = (day: number) => leafLeast[ring(day)] >= out.coldLimit[ring(day)] + 2;
      const [last, first] = ['last-safe-night', 'first-safe-night'].map((kind) =>
        own.find((task) => task.lotId === lotId && task.kind === kind),
      ) as [CalendarTask, CalendarTask];
      expect([safe(last.from), safe(last.from + 1)], last.id).toEqual([true, false]);
      expect([safe(first.from), safe(first.from - 1)], first.id).toEqual([true, false]);
      expect(last.crossing.threshold).toBeCloseTo(out.coldLimit[ring(last.from + 1)] + 2, 9);
      expect(first.crossing.threshold).toBeCloseTo(out.coldLimit[first.from] + 2, 9);
      for (const day of daysFrom(first.from, ring(last.from - first.from))) expect(safe(day)).toBe(true);
    }
    const stand = at.season.lots.filter(({ stays }) => stays.some(({ placeId }) => placeId === outdoors));
    for (const task of own) expect(stand.map(({ lotId }) => lotId)).toContain(task.lotId);
  });

  it('says to bring in the day before the season hurts what stands outdoors', () => {
    const at = make();
    for (const task of ofKind(at, 'bring-in')) {
      const lot = lotOf(at, task);
      const night = ring(task.from + 1);
      expect(standsOn(lot, night), task.id).toBe(outdoors);
      expect(lot.frostDose[night], task.id).toBeGreaterThan(0);
      expect(task.crossing.threshold).toBeCloseTo(lot.coldLimit[night], 9);
    }
    for (const task of ofKind(at, 'put-out')) {
      const lot = lotOf(at, task);
      expect(
        daysFrom(task.from, 15).some((day) => standsOn(lot, day) === outdoors),
        task.id,
      ).toBe(false);
    }
  });

  it('carries each lot where the plan has it, and no other', () => {
    const at = make();
    for (const lot of at.season.lots) {
      const own = ofKind(at, 'carry').filter(({ lotId }) => lotId === lot.lotId);
      const changes = daysFrom(0, days).filter((day) => standsOn(lot, day) !== standsOn(lot, day - 1));
      expect(
        own.map(({ from }) => from),
        lot.lotId,
      ).toEqual(changes);
    }
  });

  it('expects flowers in the windows of the season', () => {
    const at = make();
    for (const lot of at.season.lots) {
      const own = ofKind(at, 'flowers').filter(({ lotId }) => lotId === lot.lotId);
      const { window } = lot.flowering;
      expect(own.length, lot.lotId).toBe(window === null ? 0 : 1);
      if (window === null) continue;
      const later = own[0].nextSeason ? days : 0;
      expect([own[0].from + later, (own[0].to as number) + later]).toEqual([window.from, window.to]);
    }
  });

  it('names the first day of each harm that is done, and none that is not', () => {
    const at = make();
    for (const lot of at.season.lots) {
      const first = (doses: Float64Array) => doses.findIndex((dose) => dose > 0.05);
      // What it carries at the end of a day: the day's own chill and what is left of the days before (ten days' constant).
      const { chillDose } = planNumbers(at.season.plan, lot.groupId);
      let load = 0;
      const chilled = (dose: number) => {
        load = load * Math.exp(-1 / 10) + dose;
        return chillDose !== null && load >= chillDose;
      };
      const wanted = [
        first(lot.frostDose),
        // A leaf burns with a kelvin-hour, and bleaches with a week of too much light.
        lot.heatDose.reduce((sum, dose) => sum + dose, 0) >= 1 ? first(lot.heatDose) : -1,
        lot.scorchDose.filter((dose) => dose > 0.05).length >= 7 ? first(lot.scorchDose) : -1,
        first(lot.wetColdDose),
        first(lot.declineDose),
        lot.chillDose.findIndex(chilled),
      ].filter((day) => day >= 0);
      const own = ofKind(at, 'harm').filter(({ lotId }) => lotId === lot.lotId);
      expect(own.map(({ from }) => from).sort((a, b) => a - b)).toEqual(wanted.sort((a, b) => a - b));
    }
  });

  it('is the same for the same season', () => {
    const { season, tasks } = make();
    expect(calendarOf(season)).toEqual(tasks);
  });
});
