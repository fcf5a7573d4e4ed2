/** Doors, vents and fans against balances made by hand on one node. */
import { describe, expect, it } from 'vitest';
import { emptyDrive, initialState, stepHeat } from '../../core/heat/index.ts';
import type { Drive, Network } from '../../core/heat/index.ts';
import { AIR } from '../../core/heat/nodes.ts';
import { heater, oneNode } from './hand-made.ts';

/** Heat a cubic metre of dry air holds at a temperature [J m⁻³ K⁻¹]: ideal gas, 287.055 and 1006 J kg⁻¹ K⁻¹. */
const airStore = (celsius: number) => (101325 / (287.055 * (celsius + 273.15))) * 1006;

/** The steady state of a network at 2 °C outdoors in a wind of 4 m s⁻¹, room at 12 °C. */
function steady(network: Network, change: (drive: Drive) => void = () => {}) {
  const state = initialState(network, 12, 0.003);
  const drive = emptyDrive(network, 1e13);
  drive.outdoor = 2;
  drive.wind = 4;
  drive.room = 12;
  change(drive);
  for (let step = 0; step < 80; step++) stepHeat(network, state, drive);
  return { state, air: state.temperature[AIR], power: state.heaterPower[0] };
}

const held = (changes: Partial<Network>) =>
  oneNode(36_000, 50, { windShare: 0.5, heaters: [heater(1e6, 12)], ...changes });

describe('a door', () => {
  // EN 15242:2007, 6.5.1: 1800 A √(0.01 + 0.001 v² + 0.0035 H ΔT) m³ h⁻¹; 1.6 m², 2 m high, 2 m/s felt, 10 K:
  // 1800 · 1.6 · √(0.01 + 0.004 + 0.07) = 834.7 m³ h⁻¹ (worked by hand).
  const door = { area: 1.6, height: 2 };

  it('open exchanges what EN 15242 says for one opening, closed nothing', () => {
    const open = steady(held({ door }), (drive) => (drive.doorOpen = true));
    expect(open.power / ((834.7 / 3600) * airStore(12) * 10)).toBeCloseTo(1, 4);
    expect(open.state.airHeat).toBeCloseTo(open.power, 6);
    expect(steady(held({ door })).power).toBeCloseTo(0, 9);
  });

  it('adds to the gaps: one air change an hour of 20 m³ beside it', () => {
    const gaps = { door, leakage: 1, leakageClosed: 1, volume: 20 };
    const [open, closed] = [true, false].map((each) =>
      steady(held(gaps), (drive) => (drive.doorOpen = each)),
    );
    const door834 = (834.7 / 3600) * airStore(12) * 10;
    expect((open.power - closed.power) / door834).toBeCloseTo(1, 4);
    expect(closed.power).toBeGreaterThan(20);
  });

  it('of a place in a room opens to the room', () => {
    const network = held({ door, leakageFromRoom: true, windShare: 0 });
    expect(steady(network, (drive) => (drive.doorOpen = true)).power).toBeCloseTo(0, 6);
  });
});

describe('vents', () => {
  /** A place that loses 5 W K⁻¹ to 12 °C and is given so many watts. */
  const warmed = (vents: Network['vents'], watts: number) => {
    const network = oneNode(36_000, 5, { windShare: 0.5, vents });
    return { network, ...steady(network, (drive) => (drive.lampAir = watts)) };
  };

  /** Flow fully open [m³ s⁻¹]: stack and oblique wind in quadrature, half the area in and half out (ASHRAE ch. 16). */
  const flow = (area: number, height: number, difference: number) =>
    Math.hypot(0.6 * (area / 2) * Math.sqrt((2 * 9.81 * height * difference) / 290), 0.25 * (area / 2) * 2);

  const roof = { area: 0.3, height: 0.8, openAt: 16, band: 5 };
  const side = { area: 0.1, height: 0.4, openAt: 24, band: 4 };

  it('one vent stands where its band says, and the balance of the air closes', () => {
    const { state, air } = warmed([roof], 900);
    expect(air).toBeGreaterThan(16);
    expect(state.vent).toBeCloseTo((air - 16) / 5, 6);
    const carried = state.vent * flow(0.3, 0.8, air - 2) * airStore(air) * (air - 2);
    expect((carried + 5 * (air - 12)) / 900).toBeCloseTo(1, 6);
  });

  it('of two positions only the one opens whose temperature is reached; the other changes nothing', () => {
    const [one, both] = [warmed([roof], 900), warmed([roof, side], 900)];
    expect(both.air).toBe(one.air);
    expect(both.air).toBeLessThan(24);
    expect(both.state.vent).toBeCloseTo((one.state.vent * 0.3) / 0.4, 12);
  });

  it('both wide open carry the sum of both', () => {
    const { state, air } = warmed([roof, side], 9000);
    expect(state.vent).toBeCloseTo(1, 12);
    const carried = (flow(0.3, 0.8, air - 2) + flow(0.1, 0.4, air - 2)) * airStore(air) * (air - 2);
    expect((carried + 5 * (air - 12)) / 9000).toBeCloseTo(1, 6);
  });

  it('of a place below every opening temperature stay shut', () => {
    expect(warmed([roof, side], 10).state.vent).toBe(0);
  });

  const half = { ...roof, area: 0.15 };

  it('cut in two they never cool the air below their opening temperature, nor less than whole', () => {
    const { air, state } = warmed([half, half], 900);
    expect(air).toBeGreaterThan(16);
    expect(air).toBeLessThanOrEqual(warmed([roof], 900).air);
    const carried = state.vent * flow(0.3, 0.8, air - 2) * airStore(air) * (air - 2);
    expect((carried + 5 * (air - 12)) / 900).toBeCloseTo(1, 6);
  });

  // Known fault: vents are opened one after the other, the first as if it were alone; the air ends 1.2 K too cool here
  // (0.24 K in the bare house), and wider open than its band says.
  it('cut in two they are as one', () => {
    expect(warmed([half, half], 900).air).toBeCloseTo(warmed([roof], 900).air, 3);
  });
});

describe('a fan', () => {
  const fan = { flow: 60, onAt: 20, band: 3, watts: 5, leastSpeed: 0.3, fromRoom: false };
  const most = (air: number) => (60 / 3600) * airStore(air);

  it('never falls below its least speed: what it draws then has to be warmed', () => {
    const { state, power } = steady(held({ fan }));
    expect(state.fan).toBeCloseTo(0.3, 12);
    expect(power / (0.3 * most(12) * 10)).toBeCloseTo(1, 9);
    expect(steady(held({ fan: { ...fan, leastSpeed: 0 } })).power).toBeCloseTo(0, 9);
  });

  it('runs faster with warmth, within its band, up to full speed', () => {
    const at = (watts: number) =>
      steady(oneNode(36_000, 1, { windShare: 0.5, fan }), (drive) => (drive.lampAir = watts));
    const speeds = [0, 150, 400, 2000].map((watts) => {
      const { state, air } = at(watts);
      const expected = 0.3 + 0.7 * Math.min(1, Math.max(0, (air - 20) / 3));
      expect(state.fan).toBeCloseTo(expected, 6);
      expect((state.fan * most(air) * (air - 2) + (air - 12)) / (watts + 1e-9)).toBeCloseTo(
        watts > 0 ? 1 : 0,
        5,
      );
      return state.fan;
    });
    expect(speeds[0]).toBeCloseTo(0.3, 12);
    expect(speeds.at(-1)).toBe(1);
  });

  it('draws from the room where it is told to', () => {
    const { power } = steady(held({ fan: { ...fan, fromRoom: true } }));
    expect(power).toBeCloseTo(0, 9);
  });

  it('stands still in a power cut, its least speed too', () => {
    const { state } = steady(held({ fan }), (drive) => (drive.powered = false));
    expect(state.fan).toBe(0);
  });
});
