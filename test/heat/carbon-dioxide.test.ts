/** Carbon dioxide and vapour of a burner in a closed place against an exponential made by hand. */
import { describe, expect, it } from 'vitest';
import { emptyDrive, initialState, stepHeat } from '../../core/heat/index.ts';
import type { HeaterNumbers } from '../../core/heat/network.ts';
import { paraffinCarbonDioxide, propaneCarbonDioxide, propaneVapour } from '../../core/plan/fuels.ts';
import { heater, oneNode } from './hand-made.ts';

const volume = 20;
const air = 20;
const power = 600;

/**
 * A closed place of 20 m³ at 20 °C against 0 °C and 3 m/s outdoors, where leakage is what the plan says: `changes` an
 * hour. Air so heavy that its temperature stands; a burner that always burns.
 */
function after(hours: number, steps: number, burner: Partial<HeaterNumbers>, changes: number) {
  const network = oneNode(1e15, 0, {
    volume,
    leakage: changes,
    leakageClosed: changes,
    windShare: 1,
    heaters: [heater(power, 90, { fuel: 'propane', ...burner })],
  });
  const state = initialState(network, air, 0.002);
  const drive = emptyDrive(network, (hours * 3600) / steps);
  drive.wind = 3;
  drive.humidity = 0.002;
  for (let step = 0; step < steps; step++) stepHeat(network, state, drive);
  return state;
}

/** Errors in the first, second and third power of the step removed (Richardson). */
function extrapolated(of: (steps: number) => number): number {
  let row = [32, 64, 128, 256].map(of);
  for (let order = 1; row.length > 1; order++) {
    row = row.slice(1).map((finer, i) => (2 ** order * finer - row[i]) / (2 ** order - 1));
  }
  return row[0];
}

/** Parts per million by volume that so many kilograms of gas a second end at in a flow of air [m³ s⁻¹]: ideal gas, 8.314 J mol⁻¹ K⁻¹. */
const partsIn = (kilograms: number, flow: number) =>
  (1e6 * ((kilograms / 0.04401) * 8.314 * (air + 273.15))) / 101325 / flow;

describe('a flueless burner in a closed place', () => {
  it.each([
    ['propane', propaneCarbonDioxide, 0.5, 1],
    ['propane', propaneCarbonDioxide, 0.5, 6],
    ['paraffin', paraffinCarbonDioxide, 1.5, 2],
  ])('%s: carbon dioxide goes to its exponential, within 0.1 %% (%#)', (_, carbonDioxide, changes, hours) => {
    const ends = partsIn(power * carbonDioxide, (changes * volume) / 3600);
    const expected = 420 + ends * (1 - Math.exp(-changes * hours));
    const reached = extrapolated((steps) => after(hours, steps, { carbonDioxide }, changes).carbonDioxide);
    // The program's molar mass of air and gas constant are rounded otherwise: 0.02 %.
    expect(Math.abs((reached - 420) / (expected - 420) - 1)).toBeLessThan(1e-3);
    expect(reached).toBeGreaterThan(2000);
  });

  it('in a place sealed shut rises by what is burnt: 1 kWh of propane in 20 m³ to about 6800 ppm', () => {
    const state = after(1 / 0.6, 100, { carbonDioxide: propaneCarbonDioxide }, 0);
    // 233 g in 20 m³ at 20 °C (derived): 5.294 mol · 0.02406 m³ mol⁻¹ / 20 m³.
    const expected = 420 + (1e6 * ((0.233 / 0.04401) * 0.024055)) / 20;
    expect(Math.abs(state.carbonDioxide / expected - 1)).toBeLessThan(1e-3);
    expect(expected).toBeGreaterThan(6700);
    expect(expected).toBeLessThan(6900);
  });

  it('its vapour goes the same way', () => {
    const changes = 1;
    const density = 101325 / (287.055 * 293.15);
    const ends = (power * propaneVapour) / ((changes * volume * density) / 3600);
    const expected = 0.002 + ends * (1 - Math.exp(-1));
    const reached = extrapolated((steps) => after(1, steps, { vapour: propaneVapour }, changes).humidity);
    expect(Math.abs((reached - 0.002) / (expected - 0.002) - 1)).toBeLessThan(1e-3);
  });

  it('goes back to the open air’s 420 ppm once it is out', () => {
    const network = oneNode(1e15, 0, { volume, leakage: 1, leakageClosed: 1, windShare: 1 });
    const state = initialState(network, air, 0.002);
    state.carbonDioxide = 4000;
    const drive = emptyDrive(network, 60);
    drive.wind = 3;
    for (let minute = 0; minute < 60; minute++) stepHeat(network, state, drive);
    expect(state.carbonDioxide).toBeCloseTo(420 + 3580 * (1 + 1 / 60) ** -60, 6);
  });
});
