import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { screenOf } from '../../core/index.ts';
import { surfacesOf } from '../../core/fabric/index.ts';
import type { Enclosure, Surface } from '../../core/fabric/index.ts';
import {
  coldFrame,
  house,
  leanTo,
  listed,
  samplePlace,
  shelf,
  solidPlaces,
  tent,
  tunnel,
  windowBay,
} from './sample-places.ts';

const named = (enclosure: Enclosure, name: string): Surface => {
  const found = enclosure.surfaces.find((surface) => surface.name === name);
  if (found === undefined)
    throw new Error(`expected ${name}, got ${enclosure.surfaces.map((each) => each.name).join(', ')}`);
  return found;
};

describe('surfaces by hand', () => {
  it('even-span 4 × 2.5 m, eaves 1.5, ridge 2.3, base wall 0.6', () => {
    const e = surfacesOf(house);
    expect(named(e, 'south roof').area).toBeCloseTo(4 * Math.hypot(1.25, 0.8), 12);
    expect(named(e, 'south roof').tilt).toBeCloseTo((Math.atan2(0.8, 1.25) * 180) / Math.PI, 10);
    expect(named(e, 'north roof').azimuth).toBeCloseTo(0, 10);
    expect(named(e, 'south side').area).toBeCloseTo(4 * 0.9, 12);
    // Pentagon 2.5 × 1.5 + ½ × 2.5 × 0.8, less the base wall 2.5 × 0.6.
    expect(named(e, 'east gable').area).toBeCloseTo(3.75 + 1 - 1.5, 12);
    expect(named(e, 'east gable').azimuth).toBeCloseTo(90, 10);
    expect(named(e, 'west base wall').area).toBeCloseTo(1.5, 12);
    expect(named(e, 'west base wall').transparent).toBe(false);
    expect(e.volume).toBeCloseTo(4 * (3.75 + 1), 12);
    expect(e.floorArea).toBe(10);
    expect(e.perimeter).toBe(13);
  });

  it('lean-to 4 × 2 m, eaves 1.6, ridge 2.5 against 0.3 m of brick with a room behind', () => {
    const e = surfacesOf(leanTo);
    expect(named(e, 'south roof').area).toBeCloseTo(4 * Math.hypot(2, 0.9), 12);
    expect(named(e, 'east gable').area).toBeCloseTo(2 * ((1.6 + 2.5) / 2), 12);
    const wall = named(e, 'wall');
    expect(wall.area).toBeCloseTo(10, 12);
    expect(wall.behind).toBe('room');
    expect(wall.resistanceOpen).toBeCloseTo(0.3 / 0.77, 12);
    expect(wall.heatCapacity).toBeCloseTo(0.3 * 1700 * 800, 6);
    expect(e.volume).toBeCloseTo(4 * 4.1, 12);
    expect(e.perimeter).toBe(8);
  });

  it('tunnel: facets come within 2 % of the half ellipse and lie inside it', () => {
    const e = surfacesOf(tunnel);
    const ellipse = (Math.PI / 2) * 1.5 * 2.1 * 5;
    expect(e.volume / ellipse).toBeLessThan(1);
    expect(e.volume / ellipse).toBeGreaterThan(0.98);
    expect(e.surfaces.filter((each) => each.part === 'roof').length).toBeGreaterThanOrEqual(8);
    expect(named(e, 'east end').area).toBeCloseTo(e.volume / 5, 10);
    expect(named(e, 'south roof 1').azimuth).toBeCloseTo(170, 8);
  });

  it('cold frame: sloping light and trapezoid ends', () => {
    const e = surfacesOf(coldFrame);
    expect(named(e, 'south light').area).toBeCloseTo(1.2 * Math.hypot(0.8, 0.15), 12);
    expect(named(e, 'east end').area).toBeCloseTo(0.8 * 0.325, 12);
    expect(e.volume).toBeCloseTo(1.2 * 0.8 * 0.325, 12);
  });

  it('tent, shelf and window bay stand in the room; only the pane sees the outdoors', () => {
    expect(surfacesOf(tent).surfaces.every((each) => each.behind === 'room' && !each.transparent)).toBe(true);
    expect(surfacesOf(shelf).surfaces.every((each) => each.covering.id === 'open')).toBe(true);
    const bay = surfacesOf(windowBay);
    expect(bay.surfaces.filter((each) => each.behind === 'outdoors').map((each) => each.name)).toEqual([
      'south pane',
    ]);
    expect(named(bay, 'south pane').area).toBeCloseTo(1.56, 12);
    expect(named(bay, 'open side').azimuth).toBeCloseTo(0, 8);
    expect([surfacesOf(tent), surfacesOf(shelf), bay].map((each) => each.perimeter)).toEqual([0, 0, 0]);
  });

  it('a hand-made list is taken as it stands', () => {
    const e = surfacesOf(listed);
    expect(e.surfaces.map((each) => each.name)).toEqual(['front', 'left', 'right', 'back', 'top']);
    expect([e.floorArea, e.volume]).toEqual([4, 8]);
    expect(named(e, 'back').transparent).toBe(false);
    expect(named(e, 'top').skyView).toBe(1);
    expect(named(e, 'front').groundView).toBeCloseTo(0.5, 12);
  });
});

/** Σ area × normal with the floor, in m²: a closed body has none left. */
function leftOver(enclosure: Enclosure): number {
  const sum = [0, 0, -enclosure.floorArea];
  for (const { area, normal } of enclosure.surfaces) normal.forEach((part, i) => (sum[i] += area * part));
  return Math.hypot(...sum);
}

describe('every shape is closed', () => {
  it.each(solidPlaces.map((place) => [place.shape.kind, place] as const))('%s', (_kind, place) => {
    expect(leftOver(surfacesOf(place))).toBeLessThan(1e-9);
  });

  it('whatever its size, bearing and base wall', () => {
    const size = fc.double({ min: 0.5, max: 12, noNaN: true });
    const tall = fc.double({ min: 1, max: 12, noNaN: true });
    const bearing = fc.double({ min: 0, max: 360, noNaN: true });
    fc.assert(
      fc.property(
        size,
        size,
        tall,
        bearing,
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        (length, width, height, azimuth, base) => {
          for (const shape of [
            {
              kind: 'even-span',
              length,
              width,
              eavesHeight: height / 2,
              ridgeHeight: (height * 2) / 3,
              azimuth,
            },
            { kind: 'tunnel', length, width, height: height / 2, azimuth },
          ]) {
            const place = samplePlace({ shape, baseWall: { height: base, covering: 'brick-102' } });
            const e = surfacesOf(place);
            expect(leftOver(e)).toBeLessThan(1e-8 * (1 + e.floorArea));
            expect(e.volume).toBeGreaterThan(0);
          }
        },
      ),
      { numRuns: 60, seed: 7 },
    );
  });

  it('a base wall takes from the cover just what it adds', () => {
    const bare = surfacesOf({ ...house, baseWall: null });
    const walled = surfacesOf(house);
    const total = (e: Enclosure) => e.surfaces.reduce((sum, each) => sum + each.area, 0);
    expect(total(walled)).toBeCloseTo(total(bare), 10);
    expect(walled.volume).toBe(bare.volume);
  });

  it('names are used once', () => {
    for (const place of solidPlaces) {
      const names = surfacesOf(place).surfaces.map((each) => each.name);
      expect(new Set(names).size).toBe(names.length);
    }
  });
});

describe('lining and screen', () => {
  const lined = surfacesOf({
    ...house,
    lining: 'bubble-lining',
    screen: screenOf({ covering: 'aluminised-screen', closedWhen: 'night' }),
  });
  const bare = surfacesOf(house);

  it('a lining adds resistance and holds back long-wave on clear covers only', () => {
    expect(named(lined, 'south roof').resistanceOpen).toBeGreaterThan(
      named(bare, 'south roof').resistanceOpen + 0.05,
    );
    expect(named(lined, 'south base wall').resistanceOpen).toBe(
      named(bare, 'south base wall').resistanceOpen,
    );
    const film = surfacesOf({ ...tunnel, lining: 'bubble-lining' });
    expect(named(film, 'east end').longWaveOpen).toBeLessThan(0.55 * 0.3);
  });

  it('a screen counts when closed only, and closes air off in part', () => {
    const roof = named(lined, 'south roof');
    expect(roof.resistanceClosed).toBeGreaterThan(roof.resistanceOpen);
    expect(roof.emissivityInsideClosed).toBeLessThan(roof.emissivityInsideOpen);
    expect(lined.airShareClosed).toBeLessThan(lined.airShareOpen);
    expect(named(bare, 'south roof').resistanceClosed).toBe(named(bare, 'south roof').resistanceOpen);
    expect([bare.airShareOpen, bare.airShareClosed]).toEqual([1, 1]);
  });
});
