import { describe, expect, it } from 'vitest';
import { buildNetwork, emptyDrive, initialState, saturationRatio, stepHeat } from '../../core/heat/index.ts';
import { LEAF } from '../../core/heat/nodes.ts';
import { bareHouse, planOf } from '../support/plans.ts';

/** Dew point [°C] of a humidity ratio at sea level, by bisection on Magnus' saturation pressure (Alduchov & Eskridge 1996). */
function dewPoint(ratio: number): number {
  const vapour = (ratio * 101325) / (0.621945 + ratio);
  let [low, high] = [-60, 60];
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (610.94 * Math.exp((17.625 * middle) / (middle + 243.04)) < vapour) low = middle;
    else high = middle;
  }
  return low;
}

const plan = planOf({
  ...bareHouse,
  covering: 'polythene',
  door: { area: 2, height: 2, from: '00:00', to: '23:59' },
});
const network = buildNetwork(plan.places[0], plan.site, 101325);

/** Quarter hours of a night, door open, from 10 °C under a sky colder than the air by so much [K], in air of a humidity 0–1. */
function night(colder: number, humidity: number) {
  const start = 0.00763 * humidity;
  const state = initialState(network, 10, start);
  const drive = emptyDrive(network, 900);
  drive.outdoor = 6;
  drive.sky = 6 - colder;
  drive.wind = 0.5;
  drive.doorOpen = true;
  drive.deepGround = 9;
  drive.humidity = 0.00579 * humidity;
  drive.wetness = 0;
  const steps: { wet: boolean; below: number; heat: number }[] = [];
  for (let step = 0; step < 40; step++) {
    stepHeat(network, state, drive);
    const leaf = state.temperature[LEAF];
    const below = dewPoint(state.humidity) - leaf;
    steps.push({ wet: state.leafWet, below, heat: state.leafCondensation });
  }
  return steps;
}

describe('dew on leaves', () => {
  it('lies exactly in those steps in which the leaf is below the dew point of its air, and only then gives heat', () => {
    const all = [
      [25, 0.98],
      [25, 0.9],
      [10, 0.95],
      [0, 0.6],
    ].flatMap(([colder, humidity]) => night(colder, humidity));
    for (const { wet, below, heat } of all) {
      if (Math.abs(below) > 1e-6) expect(wet).toBe(below > 0);
      expect(heat > 0).toBe(wet);
    }
    expect(all.some((step) => step.wet)).toBe(true);
    expect(all.some((step) => !step.wet)).toBe(true);
  });

  it('comes under a clear sky where damp air comes in, and not in dry air nor under a cloudy sky in fair air', () => {
    const wet = (colder: number, humidity: number) =>
      night(colder, humidity).filter((step) => step.wet).length;
    expect(wet(25, 0.98)).toBeGreaterThan(4);
    expect(wet(25, 0.3)).toBe(0);
    expect(wet(0, 0.6)).toBe(0);
  });
});

/** Largest change of the leaf from one quarter of an hour to the next at the end of a long foggy night with the door open [K]. */
function lastSwing(outdoor: number, airSpeed: number | null): number {
  const circulation = airSpeed === null ? null : { watts: 20, airSpeed, runs: 'always' };
  const own = planOf({ ...plan.places[0], circulation });
  const stirred = buildNetwork(own.places[0], own.site, 101325);
  const state = initialState(stirred, outdoor, 0.9 * saturationRatio(outdoor, 101325));
  const drive = emptyDrive(stirred, 900);
  drive.outdoor = drive.deepGround = outdoor;
  drive.sky = outdoor - 25;
  drive.wind = 0.5;
  drive.humidity = saturationRatio(outdoor, 101325);
  drive.doorOpen = true;
  drive.wetness = 0.12;
  let [before, swing] = [outdoor, 0];
  for (let step = 0; step < 60; step++) {
    stepHeat(stirred, state, drive);
    if (step >= 52) swing = Math.max(swing, Math.abs(state.temperature[LEAF] - before));
    before = state.temperature[LEAF];
  }
  return swing;
}

describe('dew through a long night settles', () => {
  it.each([
    [6, null],
    [12, null],
    [6, 0.8],
    [12, 0.8],
  ])('at %d °C, air stirred at %s m/s: the leaf stands within 0.02 K a step', (outdoor, airSpeed) => {
    expect(lastSwing(outdoor, airSpeed)).toBeLessThan(0.02);
  });

  // Known fault: the heat of dew enters a step late; where the air is warm and stirred it overshoots, and dew comes and
  // goes from step to step (0.87 K at 18 °C and 0.8 m/s, 0.1 K at 18 °C in still air).
  it.each([
    [18, null],
    [18, 0.8],
  ])('at %d °C, air stirred at %s m/s: the leaf stands within 0.02 K a step', (outdoor, airSpeed) => {
    expect(lastSwing(outdoor, airSpeed)).toBeLessThan(0.02);
  });
});
