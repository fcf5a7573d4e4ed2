/**
 * Facts of the trade as whole-plan checks. Source of all of them: common practice, no source.
 * The scenario is made up: a site near 54° N with a climate of its own; the first test holds its outdoor figures.
 */
import { describe, expect, it } from 'vitest';
import {
  compareLamps,
  createSeasonCache,
  daylight,
  plantStates,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Lot, LotSeason, Plan, SeasonResult } from '../../core/index.ts';
import { bareHouse, deepWinter, planOf as planWith, southWindow, tent } from '../support/plans.ts';

const cache = createSeasonCache();
const state = (id: string) => plantStates.findIndex((each) => each.id === id);

const planOf = (place: unknown, lots: readonly Partial<Lot>[] = []) =>
  planWith(place, lots, { climate: deepWinter });

function season(plan: Plan): SeasonResult {
  const weather = weatherFromPlan(plan);
  if (weather === null) throw new Error('expected typed normals');
  return runSeason(plan, weather, cache);
}

/** Deep winter: 1 December to 15 February, as day indices of the season. */
const from = 122;
const to = 198;

function days(lot: LotSeason, ...ids: string[]): number {
  const codes = ids.map(state);
  let count = 0;
  for (let day = from; day <= to; day++) if (codes.includes(lot.state[day])) count += 1;
  return count / (to - from + 1);
}

function mean(values: Float64Array): number {
  return values.subarray(from, to + 1).reduce((sum, value) => sum + value, 0) / (to - from + 1);
}

const three = ['aeonium', 'echeveria', 'crassula'].map((group) => ({ group, name: group }));

/** Highest and lowest outdoor air of each day from 1 December to 15 February [°C], of the year that normals give. */
function outdoorDays() {
  const weather = weatherFromPlan(planOf(bareHouse));
  if (weather === null) throw new Error('expected typed normals');
  const { dryBulb } = weather;
  const ordinals = [...Array(31).keys()].map((day) => 334 + day).concat([...Array(46).keys()]);
  const hoursOf = (day: number) => dryBulb.slice(24 * day, 24 * day + 24);
  return {
    highs: ordinals.map((day) => Math.max(...hoursOf(day))),
    lows: ordinals.map((day) => Math.min(...hoursOf(day))),
  };
}

describe('in deep winter near 54° N (common practice, no source)', () => {
  it('outdoors is near 8 °C by day, with a few lows near −5 and none below −10', () => {
    const { highs, lows } = outdoorDays();
    const meanHigh = highs.reduce((sum, high) => sum + high, 0) / highs.length;
    const coldest = Math.min(...lows);
    expect(meanHigh).toBeGreaterThan(7);
    expect(meanHigh).toBeLessThan(9);
    // Reached: mean of the highs 7.9 °C, coldest night −7.0 °C, four nights below −5 °C.
    expect(coldest).toBeLessThan(-5);
    expect(coldest).toBeGreaterThan(-10);
    const cold = lows.filter((low) => low < -5).length;
    expect(cold).toBeGreaterThan(1);
    expect(cold).toBeLessThan(8);
  });

  const bright = season(planOf(tent([{ watts: 75 }]), three));
  const dim = season(planOf(tent([{ watts: 29, efficacy: 1.8 }]), three));

  it('a 75 W modern LED over a small tent in a warm room keeps aeoniums, echeverias and crassulas growing', () => {
    for (const lot of bright.places[0].lots) expect(days(lot, 'growing'), lot.groupId).toBe(1);
  });

  it('a 28–30 W lamp over a like tent leaves them warm but not growing: resting from dark or stretching', () => {
    for (const lot of dim.places[0].lots) {
      expect(days(lot, 'growing', 'slow'), lot.groupId).toBe(0);
      expect(days(lot, 'resting-dim', 'stretching'), lot.groupId).toBe(1);
    }
    expect(mean(dim.places[0].daily.airDay)).toBeGreaterThan(17);
  });

  it('the dimmer tent is a few kelvin cooler by day than the brighter', () => {
    const difference = mean(bright.places[0].daily.airDay) - mean(dim.places[0].daily.airDay);
    expect(difference).toBeGreaterThan(1.5);
    expect(difference).toBeLessThan(5);
  });

  it('an unheated house lets everything rest from cold and wants no water', () => {
    const lots = ['echeveria', 'aeonium', 'crassula', 'desert-cacti', 'pelargonium'].map((group) => ({
      group,
      name: group,
    }));
    const house = season(planOf(bareHouse, lots)).places[0];
    for (const lot of house.lots) {
      // Reached 0.96 at the least, aeoniums in a mild spell. In made-up winters whose highs average above 9 °C, milder
      // than the trade's, aeoniums are slow rather than at rest for up to four days in ten.
      expect(days(lot, 'resting-cold'), lot.groupId).toBeGreaterThan(0.9);
      const watered = lot.watering.subarray(from, to + 1).filter((code) => code === 0).length;
      expect(watered, lot.groupId).toBe(0);
    }
  });

  it('an unheated house is a frost danger to tender groups in the rare night, and less so under fleece', () => {
    const lots = [
      { group: 'crassula', name: 'Jade' },
      { group: 'pelargonium', name: 'Pelargoniums' },
    ];
    const bare = season(planOf(bareHouse, lots)).places[0];
    const fleece = { covering: 'fleece-30', layers: 2, laidWhen: 'cold-night', below: 2 };
    const covered = season(planOf({ ...bareHouse, fleece }, lots)).places[0];
    bare.lots.forEach((lot, index) => {
      expect(lot.harm.frostHours, lot.groupId).toBeGreaterThan(0);
      expect(covered.lots[index].harm.frost, lot.groupId).toBeLessThan(lot.harm.frost);
    });
    for (const lot of bare.lots) {
      // Reached 27 days of the year for jades: clear nights, not a whole winter (a frost counts from the first hour a leaf
      // is below its limit). With the wind's film as measured at glass, not ISO's twice larger one, an unheated house
      // on a clear still night ends at or below the air outdoors, as it is known to do.
      const frostDays = lot.frostDose.filter((dose) => dose > 0).length;
      expect(frostDays, lot.groupId).toBeGreaterThan(0);
      expect(frostDays, lot.groupId).toBeLessThan(32);
    }
  });

  it('a south window of single glass is warm by day, cool at night, too dim for echeverias, while haworthias hold', () => {
    const lots = [
      { group: 'echeveria', name: 'Echeverias' },
      { group: 'haworthia', name: 'Haworthias' },
    ];
    const place = season(planOf(southWindow, lots)).places[0];
    expect(mean(place.daily.airMost)).toBeGreaterThan(15);
    expect(mean(place.daily.airLeast)).toBeLessThan(13);
    const [echeveria, haworthia] = place.lots;
    expect(days(echeveria, 'stretching')).toBeGreaterThan(0.9);
    // Reached 0: they stand still on 94 of 100 days and are slow on the rest.
    expect(days(haworthia, 'stretching')).toBeLessThan(0.2);
  });

  it('75 W of good LED gives about the light of 300 W of T5 fluorescent: a factor of 2.5 to 4.5 in watts', () => {
    const plan = planOf(tent([{}]));
    const weather = weatherFromPlan(plan);
    if (weather === null) throw new Error('expected typed normals');
    const lamps = plan.places[0].lamps;
    const [led, fluorescent] = compareLamps(
      [
        { name: 'LED', lamps },
        { name: 'T5', lamps: [{ ...lamps[0], technology: 't5-fluorescent', watts: 300, efficacy: 0.8 }] },
      ],
      { plan, weather, placeId: 'tent', cache },
    );
    const factor = ((fluorescent.watts / led.watts) * led.average) / fluorescent.average;
    expect(factor).toBeGreaterThan(2.5);
    expect(factor).toBeLessThan(4.5);
  });

  it('the mid-winter day is 7.3 to 9 h long', () => {
    const site = { latitude: 54, longitude: -7, elevation: 50, timeZone: 'Europe/Dublin' };
    for (const date of ['2025-12-01', '2025-12-21', '2026-01-31']) {
      const { hours } = daylight(date, site);
      expect(hours).toBeGreaterThan(7.2);
      expect(hours).toBeLessThan(9);
    }
    expect(daylight('2025-12-21', site).hours).toBeGreaterThan(7.3);
  });
});

/**
 * Plants in a well-lit, well-aired tent in a room of `day` and `night` [°C], lamps on as long as the room's day, watered:
 * what they do is the temperature's doing. The lamp warms the air, so `air` is read from the result [°C, daytime mean].
 */
function heldAt(group: string, day: number, night: number) {
  const room = { kind: 'schedule', day, night, dayFrom: '07:00', dayTo: '19:00' };
  const place = tent([{ watts: 75 }], { room, leakage: 60 });
  const [result] = season(planOf(place, [{ group, name: group, watering: 'watered' }])).places;
  return { lot: result.lots[0], air: mean(result.daily.airDay) };
}

describe('warmth (daytime air; common practice, no source)', () => {
  it('echeverias are comfortable inside 15–35 °C, hardly grow above about 30, and rest when it stays above 35', () => {
    const mild = heldAt('echeveria', 21.5, 18);
    const warm = heldAt('echeveria', 30.5, 18);
    const hot = heldAt('echeveria', 35, 18);
    // 24.4 with a fixed 2.5 W m⁻² K⁻¹ at the tent's inner face; free convection there is weaker, the tent warmer.
    expect(mild.air).toBeCloseTo(25, 0);
    expect(days(mild.lot, 'growing')).toBe(1);
    // At 33 °C closed up: slow, not at rest, and less growth than at 24.
    expect(Math.abs(warm.air - 33.5)).toBeLessThan(0.5);
    expect(days(warm.lot, 'slow')).toBe(1);
    expect(mean(warm.lot.growthIndex)).toBeLessThan(mean(mild.lot.growthIndex));
    expect(hot.air).toBeGreaterThan(37);
    expect(hot.air).toBeLessThan(38.5);
    expect(days(hot.lot, 'resting-heat')).toBe(1);
    expect(days(heldAt('echeveria', 13, 12).lot, 'growing')).toBe(1);
  });

  it('echeverias stay open below about 29 °C of daytime air, at rest only above 34', () => {
    for (let room = 24; room <= 36; room += 1) {
      const { lot, air } = heldAt('echeveria', room, 18);
      if (air < 29) expect(days(lot, 'growing'), `${air} °C`).toBe(1);
      if (air > 31 && air < 34) expect(days(lot, 'slow'), `${air} °C`).toBe(1);
      if (air < 34) expect(days(lot, 'resting-heat'), `${air} °C`).toBe(0);
      if (air > 36) expect(days(lot, 'resting-heat'), `${air} °C`).toBe(1);
    }
  });

  it('aeoniums grow inside 5–25 °C and rest in heat some kelvin of daytime air before echeverias do', () => {
    expect(days(heldAt('aeonium', 13, 10).lot, 'growing')).toBe(1);
    const restsFrom = (group: string) => {
      for (let room = 20; room <= 36; room += 1) {
        const { lot, air } = heldAt(group, room, 18);
        if (days(lot, 'resting-heat') > 0.5) return air;
      }
      return Number.POSITIVE_INFINITY;
    };
    const aeonium = restsFrom('aeonium');
    // The upper end of comfort is 25 °C; reached 30.6 against 35.4.
    expect(aeonium).toBeGreaterThan(25);
    expect(aeonium).toBeLessThan(32);
    expect(restsFrom('echeveria') - aeonium).toBeGreaterThan(3);
  });

  it('aeoniums at 8 °C by day are slow, not at rest; below freezing they rest whatever their winter habit', () => {
    for (const [roomDay, roomNight] of [
      [5, 5],
      [6, 4.5],
    ]) {
      const cool = heldAt('aeonium', roomDay, roomNight);
      expect(cool.air).toBeGreaterThan(8);
      expect(cool.air).toBeLessThan(10);
      expect(days(cool.lot, 'slow'), `${cool.air} °C`).toBe(1);
    }
    const room = { kind: 'constant', temperature: -3 };
    const place = tent([{ watts: 20 }], { room, leakage: 60 });
    const lot = season(planOf(place, [{ group: 'aeonium', name: 'Aeoniums' }])).places[0].lots[0];
    expect(days(lot, 'resting-cold')).toBe(1);
  });

  it('a safe cold rest is a few degrees above freezing: resting, unharmed', () => {
    const room = { kind: 'constant', temperature: 4.5 };
    const place = tent([{ watts: 20 }], { room, leakage: 60 });
    for (const group of ['echeveria', 'crassula', 'desert-cacti', 'pelargonium']) {
      const lot = season(planOf(place, [{ group, name: group }])).places[0].lots[0];
      expect(days(lot, 'resting-cold'), group).toBe(1);
      expect(lot.harm.frostHours, group).toBe(0);
    }
  });
});
