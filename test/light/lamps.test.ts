import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import type { Lamp } from '../../core/plan/equipment.ts';
import { lampOf } from '../../core/plan/parts.ts';
import { lampField, lampLight, lampPhotons, lampPpfd, lampWatts } from '../../core/light/index.ts';
import { house, shelf, tent } from '../fabric/sample-places.ts';

const lamp: Lamp = lampOf({
  id: 'lamp',
  name: 'Lamp',
  technology: 'led-white',
  watts: 75,
  efficacy: 2.7,
  count: 1,
  height: 0.45,
  length: 0.45,
  width: 0.45,
  on: '08:00',
  off: '20:00',
});

describe('light field of lamps', () => {
  it('loses no photon: on plants, in walls and past the area add up to what is emitted, to 1e-6', () => {
    const size = fc.double({ min: 0.3, max: 3, noNaN: true });
    const reflectance = fc.double({ min: 0, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(
        size,
        size,
        size,
        size,
        reflectance,
        reflectance,
        fc.integer({ min: 1, max: 9 }),
        (length, width, height, face, walls, floor, count) => {
          const field = lampField(
            { length, width },
            height,
            { length: face, width: face / 2, photonFlux: 500, count },
            { walls, ceiling: walls, floor },
            { cells: [4, 4] },
          );
          expect(Math.abs(field.absorbed + field.inWalls + field.lost - 500)).toBeLessThan(5e-4);
          expect(field.least).toBeLessThanOrEqual(field.average * 1.0001);
          expect(field.lost).toBeGreaterThanOrEqual(-1e-9);
        },
      ),
      { numRuns: 60, seed: 11 },
    );
  });

  it('its map adds up to what falls on the level, within 0.5 %', () => {
    const field = lampField(
      { length: 0.8, width: 0.8 },
      0.3,
      { length: 0.45, width: 0.45, photonFlux: 200 },
      { walls: 0.88, ceiling: 0.88, floor: 0.08 },
      { cells: [32, 32] },
    );
    const mean = field.map.reduce((a, b) => a + b, 0) / field.map.length;
    expect(Math.abs((mean * 0.64) / (200 * field.utilisation) - 1)).toBeLessThan(0.005);
    expect(Math.abs(field.average / mean - 1)).toBeLessThan(0.005);
  });

  it('is even about both middles for a lamp in the middle', () => {
    const field = lampField(
      { length: 1.2, width: 0.8 },
      0.4,
      { length: 0.6, width: 0.3, photonFlux: 200 },
      { walls: 0.5, ceiling: 0.5, floor: 0.1 },
      { cells: [8, 6] },
    );
    for (let r = 0; r < 6; r++) {
      for (let c = 0; c < 8; c++) {
        expect(field.map[r * 8 + c]).toBeCloseTo(field.map[(5 - r) * 8 + (7 - c)], 9);
      }
    }
  });

  it('more lamps spread over the same area are more even', () => {
    const evenness = (count: number) =>
      lampField(
        { length: 1.2, width: 1.2 },
        0.4,
        { length: 0.3, width: 0.3, photonFlux: 400, count },
        { walls: 0.8, ceiling: 0.8, floor: 0.1 },
      ).evenness;
    expect(evenness(4)).toBeGreaterThan(evenness(1));
  });

  it('refuses an area that is none', () => {
    expect(() =>
      lampField(
        { length: 0, width: 1 },
        1,
        { length: 1, width: 1, photonFlux: 1 },
        { walls: 0, ceiling: 0, floor: 0 },
      ),
    ).toThrow('expected length above 0, got 0');
    expect(() =>
      lampField(
        { length: 1, width: 1 },
        NaN,
        { length: 1, width: 1, photonFlux: 1 },
        { walls: 0, ceiling: 0, floor: 0 },
      ),
    ).toThrow('expected height above 0, got NaN');
  });
});

describe('a lamp in a place', () => {
  it('photons are watts × efficacy × count × dimming', () => {
    expect(lampPhotons({ ...lamp, count: 2, dimming: 0.5 })).toBeCloseTo(75 * 2.7, 9);
  });

  it('never gives less light for more of anything that should give more', () => {
    const light = (parts: Partial<Lamp>) => lampPpfd(tent, { ...lamp, ...parts });
    expect(light({ watts: 80 })).toBeGreaterThan(light({}));
    expect(light({ count: 2 })).toBeGreaterThan(light({}));
    expect(light({ dimming: 0.6 })).toBeLessThan(light({}));
    expect(light({ height: 0.9 })).toBeLessThan(light({}));
  });

  it('bright walls of a tent help, an open shelf loses light at its sides', () => {
    expect(lampPpfd(tent, { ...lamp })).toBeGreaterThan(
      lampPpfd({ ...tent, wallReflectance: 0.2 }, { ...lamp }),
    );
    const onShelf = lampLight(shelf, lamp);
    expect(onShelf.inWalls + onShelf.lost).toBeGreaterThan(0.3 * onShelf.emitted);
    expect(lampPpfd({ ...shelf, wallReflectance: 0.98 }, { ...lamp })).toBe(lampPpfd(shelf, { ...lamp }));
  });

  it('shares its light out over stacked benches', () => {
    const once = lampLight({ ...tent, growingArea: 0.64 }, lamp);
    const twice = lampLight({ ...tent, growingArea: 1.28 }, lamp);
    expect(twice.average).toBeCloseTo(once.average / 2, 9);
  });

  it('gives 75 W in a tent of 0.64 m² several mol a day and 300 W of T5 about the same (common practice, no source)', () => {
    const led = lampPpfd(tent, { ...lamp });
    const t5 = lampPpfd(tent, {
      ...lamp,
      technology: 't5-fluorescent',
      watts: 300,
      efficacy: 0.8,
      length: 0.6,
      width: 0.5,
    });
    expect(led * 12 * 0.0036).toBeGreaterThan(8);
    expect(t5 / led).toBeGreaterThan(0.8);
    expect(t5 / led).toBeLessThan(1.3);
  });

  it('draws less when dimmed, a filament hardly and a discharge lamp little', () => {
    const watts = (technology: string) => lampWatts({ ...lamp, technology, dimming: 0.5 }) / 75;
    expect(watts('led-white')).toBeCloseTo(0.51, 6);
    expect(watts('hps-magnetic')).toBeGreaterThan(watts('t5-fluorescent'));
    expect(watts('incandescent')).toBeGreaterThan(watts('hps-magnetic'));
    expect(lampWatts(lamp)).toBeCloseTo(75, 9);
  });

  it('keeps the answer for the same pair and follows a changed place', () => {
    const mine = { ...lamp };
    const first = lampPpfd(tent, mine);
    expect(lampPpfd(tent, mine)).toBe(first);
    expect(lampPpfd({ ...tent, wallReflectance: 0.1 }, mine)).toBeLessThan(first);
    expect(lampPpfd(house, mine)).toBeLessThan(first);
  });
});
