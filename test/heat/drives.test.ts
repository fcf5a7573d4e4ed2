/** Laws of a single step under any weather, clock and light. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  AIR,
  buildNetwork,
  emptyDrive,
  initialState,
  saturationRatio,
  stepHeat,
} from '../../core/heat/index.ts';
import type { Drive, HeatState, Network } from '../../core/heat/index.ts';
import { bareHouse, planOf, southWindow, tent } from '../support/plans.ts';
import { heater, lossOf } from './hand-made.ts';

const heaters = [heater(800, 9), heater(60, 12, { mat: true })];

function networkOf(place: unknown): Network {
  const plan = planOf(place);
  return { ...buildNetwork(plan.places[0], plan.site, 101325), heaters };
}

const fleece = { covering: 'fleece-30', layers: 1, laidWhen: 'night', below: 2 };
const networks = [
  bareHouse,
  { ...bareHouse, covering: 'polythene', fleece, water: [{ name: 'Barrel', litres: 200, count: 1 }] },
  { ...bareHouse, lining: 'bubble-lining', secondSkin: { covering: 'polythene', gap: 0.03 } },
  tent([{ watts: 75 }]),
  southWindow,
].map(networkOf);

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const drives = fc.record({
  which: fc.integer({ min: 0, max: networks.length - 1 }),
  start: number(-5, 30),
  outdoor: number(-30, 35),
  below: number(0, 30),
  wind: number(0, 20),
  room: number(5, 25),
  sun: number(0, 600),
  lamp: number(0, 200),
  night: fc.boolean(),
  fleeceLaid: fc.boolean(),
  wetness: number(0, 1),
});

type Case = typeof drives extends fc.Arbitrary<infer T> ? T : never;

function run(c: Case, colder = 0, steps = 8): { network: Network; drive: Drive; state: HeatState } {
  const network = networks[c.which];
  const drive = emptyDrive(network, 900);
  drive.outdoor = c.outdoor - colder;
  drive.sky = c.outdoor - c.below - colder;
  drive.deepGround = 8;
  drive.wind = c.wind;
  drive.room = c.room;
  drive.humidity = 0.8 * saturationRatio(drive.outdoor, network.pressure);
  drive.roomHumidity = 0.5 * saturationRatio(c.room, network.pressure);
  drive.sunOnSurface.fill(c.sun);
  drive.sunLeaf = c.sun * 0.3;
  drive.sunPots = c.sun * 0.3;
  drive.lampAir = c.lamp;
  drive.night = c.night;
  drive.fleeceLaid = c.fleeceLaid && network.fixedFleece !== network.fixed;
  drive.wetness = c.wetness;
  const state = initialState(network, c.start, 0.7 * saturationRatio(c.start, network.pressure));
  for (let step = 0; step < steps; step++) stepHeat(network, state, drive);
  return { network, drive, state };
}

describe('a step of any place', () => {
  it('gives finite numbers, heater power between nothing and what is there, air humidity between dry and saturated', () => {
    fc.assert(
      fc.property(drives, (c) => {
        const { network, state } = run(c);
        expect([...state.temperature, ...state.face, ...state.surfaceHeat].every(Number.isFinite)).toBe(true);
        heaters.forEach((each, h) => {
          expect(state.heaterPower[h]).toBeGreaterThanOrEqual(0);
          expect(state.heaterPower[h]).toBeLessThanOrEqual(each.power);
        });
        expect(state.humidity).toBeGreaterThan(0);
        const saturated = saturationRatio(state.temperature[AIR], network.pressure);
        expect(state.humidity).toBeLessThanOrEqual(saturated * (1 + 1e-12));
      }),
    );
  });

  it('closes its energy: what comes in, less what goes out, is stored, to 1e-9 of what is exchanged', () => {
    fc.assert(
      fc.property(drives, (c) => {
        const { network, drive, state } = run(c, 0, 7);
        const [before, layers] = [state.temperature.slice(), state.layer.slice()];
        stepHeat(network, state, drive);
        let stored = 0;
        let moved = 0;
        const store = (capacity: number, kelvin: number) => {
          stored += (capacity * kelvin) / drive.seconds;
          moved += Math.abs(capacity * kelvin) / drive.seconds;
        };
        for (let i = 0; i < network.size; i++) store(network.capacity[i], state.temperature[i] - before[i]);
        network.layerCapacity.forEach((capacity, c) => store(capacity, state.layer[c] - layers[c]));
        const sun = drive.sunLeaf + drive.sunPots;
        const gains = sun + drive.lampAir + state.heaterPower[0] + state.heaterPower[1];
        const lost = lossOf(state);
        for (let i = 0; i < network.surfaceCount; i++) moved += Math.abs(state.surfaceHeat[i]);
        expect(Math.abs(gains - lost - stored) / (gains + Math.abs(lost) + moved)).toBeLessThan(1e-9);
      }),
    );
  });

  it('never needs less heat where air outside and sky are colder', () => {
    fc.assert(
      fc.property(drives, number(0.1, 10), (c, colder) => {
        // Two hours: the films follow a step behind and start at a made-up face.
        const warm = run(c).state;
        const cold = run(c, colder).state;
        const both = (state: HeatState) => state.heaterPower[0] + state.heaterPower[1];
        expect(both(cold)).toBeGreaterThanOrEqual(both(warm) - 1e-9);
      }),
    );
  });

  it('is the same whatever was run before', () => {
    fc.assert(
      fc.property(drives, (c) => {
        const first = run(c).state;
        run({ ...c, outdoor: -20, start: 25 });
        expect(run(c).state).toEqual(first);
      }),
      { numRuns: 20 },
    );
  });
});
