/**
 * One node against its exponential: T(t) = T∞ + (T0 − T∞)·exp(−t/τ), τ = C/G.
 *
 * The step is implicit Euler, of first order: one step of length h multiplies the excess by 1/(1 + h/τ), not by
 * exp(−h/τ). So two things are shown: that each step is this factor to rounding, and that the steps run to the
 * exponential as they get shorter. The latter is read by Richardson's extrapolation of four step lengths (errors in
 * h, h², h³ removed), which comes to the exponential within 1e-6 of the excess only where nothing but the step's
 * length is wrong.
 */
import { describe, expect, it } from 'vitest';
import { AIR } from '../../core/heat/nodes.ts';
import { emptyDrive, initialState, stepHeat } from '../../core/heat/index.ts';
import { heater, oneNode } from './hand-made.ts';

const capacity = 36_000;
const conductance = 5;
const timeConstant = capacity / conductance;
const room = 4;
const start = 20;

function airAfter(seconds: number, steps: number, network = oneNode(capacity, conductance)): number {
  const state = initialState(network, start, 0.004);
  const drive = emptyDrive(network, seconds / steps);
  drive.room = room;
  for (let step = 0; step < steps; step++) stepHeat(network, state, drive);
  return state.temperature[AIR];
}

/** Removes the errors in h, h² and h³ from values at h, h/2, h/4 and h/8. */
function extrapolated(values: readonly number[]): number {
  let row = [...values];
  for (let order = 1; row.length > 1; order++) {
    const factor = 2 ** order;
    row = row.slice(1).map((finer, index) => (factor * finer - row[index]) / (factor - 1));
  }
  return row[0];
}

describe('one node', () => {
  it('each step is the factor 1/(1 + h/τ) of implicit Euler, to rounding', () => {
    for (const steps of [1, 3, 16, 96]) {
      const seconds = 86_400;
      const expected = room + (start - room) / (1 + seconds / steps / timeConstant) ** steps;
      expect(Math.abs(airAfter(seconds, steps) - expected)).toBeLessThan(1e-12);
    }
  });

  it.each([0.25, 1, 3])(
    'goes to its exponential within 1e-6 of the excess after %d time constants',
    (count) => {
      const seconds = count * timeConstant;
      const values = [32, 64, 128, 256].map((steps) => airAfter(seconds, steps));
      const expected = room + (start - room) * Math.exp(-count);
      expect(Math.abs(extrapolated(values) - expected) / (start - room)).toBeLessThan(1e-6);
    },
  );

  it('is of first order: half the step, half the error', () => {
    const expected = room + (start - room) * Math.exp(-1);
    const error = (steps: number) => Math.abs(airAfter(timeConstant, steps) - expected);
    expect(error(64) / error(128)).toBeCloseTo(2, 1);
  });

  it('five drums (4.36 MJ K⁻¹) behind 100 W K⁻¹ and 10 K warmer keep 3.71 K after 12 h (RC decay, derived)', () => {
    const values = [32, 64, 128, 256].map((steps) => airAfter(12 * 3600, steps, oneNode(4.36e6, 100)));
    expect(((extrapolated(values) - room) / (start - room)) * 10).toBeCloseTo(3.71, 2);
  });

  it('a heater that is strong enough holds its set point with the steady power G·ΔT', () => {
    const network = oneNode(capacity, conductance, { heaters: [heater(1000, 12)] });
    const state = initialState(network, 12, 0.004);
    const drive = emptyDrive(network, 900);
    drive.room = room;
    for (let step = 0; step < 10; step++) stepHeat(network, state, drive);
    expect(state.temperature[AIR]).toBeCloseTo(12, 10);
    expect(state.heaterPower[0]).toBeCloseTo(conductance * (12 - room), 9);
    expect(state.short).toBe(false);
  });

  it('a heater that is too weak runs at its power, says so, and ends at T∞ + P/G', () => {
    const network = oneNode(capacity, conductance, { heaters: [heater(15, 12)] });
    const state = initialState(network, 12, 0.004);
    const drive = emptyDrive(network, 1e13);
    drive.room = room;
    for (let step = 0; step < 3; step++) stepHeat(network, state, drive);
    expect(state.heaterPower[0]).toBe(15);
    expect(state.short).toBe(true);
    expect(state.temperature[AIR]).toBeCloseTo(room + 15 / conductance, 8);
  });

  it('without power no heater gives heat', () => {
    const network = oneNode(capacity, conductance, { heaters: [heater(1000, 12)] });
    const state = initialState(network, 5, 0.004);
    const drive = emptyDrive(network, 900);
    drive.powered = false;
    stepHeat(network, state, drive);
    expect(state.heaterPower[0]).toBe(0);
  });
});
