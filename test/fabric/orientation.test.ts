import { describe, expect, it } from 'vitest';
import { normalOf, orientationOf, surfacesOf, toPlace, toWorld, windOf } from '../../core/fabric/index.ts';
import { tunnel } from './sample-places.ts';

describe('frames and winds', () => {
  it('the front looks along its azimuth, the far end a quarter turn clockwise from it', () => {
    for (const front of [0, 37, 90, 170, 300]) {
      expect(orientationOf([-1, 0, 0], front).azimuth).toBeCloseTo(front, 9);
      expect(orientationOf([0, 1, 0], front).azimuth).toBeCloseTo((front + 90) % 360, 9);
      expect(orientationOf([0, 0, 2], front)).toMatchObject({ tilt: 0, azimuth: 0 });
    }
  });

  it('a tunnel facing 170° has ends at 80° and 260°', () => {
    const ends = surfacesOf(tunnel).surfaces.filter((surface) => surface.part === 'end');
    expect(ends.map((surface) => Math.round(surface.azimuth * 1e6) / 1e6).sort((a, b) => a - b)).toEqual([
      80, 260,
    ]);
  });

  it('to the world and back is where it was', () => {
    const there = toWorld([0.3, -0.5, 0.81], 123);
    const back = toPlace(there, 123);
    [0.3, -0.5, 0.81].forEach((part, i) => expect(back[i]).toBeCloseTo(part, 12));
  });

  it('normal of a tilt and azimuth, and the same again', () => {
    const [east, north, up] = normalOf(35, 250);
    expect(Math.hypot(east, north, up)).toBeCloseTo(1, 12);
    expect(up).toBeCloseTo(Math.cos((35 * Math.PI) / 180), 12);
    expect((Math.atan2(east, north) * 180) / Math.PI + 360).toBeCloseTo(250, 9);
  });

  it.each([
    [0, 'north'],
    [350, 'north'],
    [46, 'north-east'],
    [180, 'south'],
    [-80, 'west'],
  ])('%d° is %s', (azimuth, wind) => expect(windOf(azimuth)).toBe(wind));
});
