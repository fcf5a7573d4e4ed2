/** The skyline as the user draws it: its points, the ways of the sun over it, the hours of sun that are left. */
import { describe, expect, test } from 'vitest';
import { demonstrationPlan, horizonElevation, parsePlan } from '../../core/index.ts';
import {
  darkestDay,
  sightings,
  sunDays,
  sunHours,
  sunWay,
  wholeHours,
} from '../../renderer/place/site/skyline-sun.ts';
import { directionWords, skylineView, topOf, wayPath } from '../../renderer/place/site/skyline-view.ts';
import {
  added,
  freeDirection,
  heightAngle,
  mostPoints,
  moved,
  stretches,
  things,
  withThing,
} from '../../renderer/place/site/skyline.ts';
import type { Skyline } from '../../renderer/place/site/skyline.ts';

const site = demonstrationPlan.site;
const wall = (elevation: number, passes = 0): Skyline => [{ azimuth: 180, elevation, passes }];
const point = (azimuth: number, elevation: number, passes = 0) => ({ azimuth, elevation, passes });

describe('points', () => {
  test('the first comes down to either side; later ones stand by themselves and pass light as what was there', () => {
    const first = added([], 5, 20);
    expect(first?.points).toEqual([point(5, 20), point(20, 0), point(350, 0)]);
    expect(first?.index).toBe(0);
    const trees = [point(100, 10, 0.5), point(200, 0)];
    expect(added(trees, 150.2, 12.3)).toEqual({
      index: 1,
      points: [trees[0], point(150, 12.5, 0.5), trees[1]],
    });
  });

  test('none is added upon another, nor beyond the most', () => {
    expect(added([point(100, 10)], 100.1, 30)).toBeNull();
    const full = Array.from({ length: mostPoints }, (_, index) => point(5 * index, 1));
    expect(added(full, 2.5, 10)).toBeNull();
    expect(withThing(full.slice(1), 'house', 182)).not.toBeNull();
    expect(withThing(full, 'house', 182)?.length).toBeLessThanOrEqual(mostPoints);
  });

  test('dragging one keeps it between its neighbours, over the ground and under the zenith', () => {
    const three = [point(90, 5), point(180, 10), point(270, 5)];
    expect(moved(three, 1, 300, 95)[1]).toEqual(point(269.5, 89));
    expect(moved(three, 1, 20, -4)[1]).toEqual(point(90.5, 0));
    expect(moved(three, 0, -30, 7)[0]).toEqual(point(0, 7));
    expect(moved(three, 2, 400, 7)[2]).toEqual(point(359.5, 7));
    expect(moved(three, 1, 170, 12)).toEqual([three[0], point(170, 12), three[2]]);
  });

  test.each(['house', 'trees'] as const)('%s put in stands up there and nowhere else', (kind) => {
    for (const middle of [180, 0, 5, 355]) {
      const skyline = withThing([], kind, middle) ?? [];
      const { half, elevation } = things[kind];
      expect(horizonElevation(skyline, middle)).toBe(elevation);
      expect(horizonElevation(skyline, middle + half + 1)).toBe(0);
      expect(horizonElevation(skyline, middle - half - 1)).toBe(0);
      const reading = parsePlan({ ...demonstrationPlan, site: { ...site, horizon: skyline } });
      expect(reading.ok).toBe(true);
    }
  });

  test('a tall thing put before a low one hides it; a low one put before a tall one changes no height', () => {
    expect(horizonElevation(withThing(wall(8), 'house', 180) ?? [], 180)).toBe(14);
    expect(horizonElevation(withThing(wall(40), 'house', 180) ?? [], 180)).toBe(40);
  });

  test('a second thing finds a place beside the first', () => {
    const house = withThing([], 'house', 180) ?? [];
    const direction = freeDirection(house, 'trees', 180);
    expect(direction).not.toBe(180);
    const both = withThing(house, 'trees', direction) ?? [];
    expect(both.length).toBe(8);
    expect([horizonElevation(both, 180), horizonElevation(both, direction)]).toEqual([14, 20]);
  });

  test('height and distance make the angle', () => {
    expect(heightAngle(10, 10)).toBe(45);
    expect(heightAngle(0, 5)).toBe(0);
    expect(heightAngle(300, 0.1)).toBe(89);
  });

  test('the drawing cuts the circle where other light passes and leaves out open ground', () => {
    const skyline = [point(100, 10, 0.5), point(140, 10, 0), point(180, 0, 0)];
    const parts = stretches(skyline, 0);
    expect(parts.map(({ passes }) => passes)).toEqual([0, 0.5, 0, 0]);
    expect(
      stretches([point(100, 0), point(140, 10), point(180, 0)], 0).map(({ corners }) => corners),
    ).toEqual([
      [
        [100, 0],
        [140, 10],
      ],
      [
        [140, 10],
        [180, 0],
      ],
    ]);
  });
});

describe('the sun', () => {
  const december = sunWay(site, '12-21');

  test('stands at 54.1° N as high at noon as the latitude says, and shines as long as the almanac', () => {
    // Noon height 90 − 54.1 − 23.44 = 12.46°, lifted by 0.07° in the air; daylight of a level horizon 7.3 h.
    const top = Math.max(...december.moments.map(({ elevation }) => elevation));
    expect(top).toBeGreaterThan(12.45);
    expect(top).toBeLessThan(12.65);
    expect(sunHours([], december).all).toBeCloseTo(7.27, 1);
    expect(sunHours([], sunWay(site, '06-21')).all).toBeCloseTo(17.13, 1);
  });

  test('is hidden by a wall all round that is higher, and by half of it from one side', () => {
    expect(sunHours(wall(13), december)).toMatchObject({ clear: 0, through: 0 });
    const east = [point(0, 60), point(180, 60), point(180.5, 0), point(359.5, 0)];
    const { all, clear } = sunHours(east, december);
    expect(clear / all).toBeCloseTo(0.5, 1);
    expect(sunHours(wall(0), december)).toEqual(sunHours([], december));
  });

  test('comes through trees, and the three shares of the day add up', () => {
    const low = sunHours(wall(8, 0.5), december);
    expect(low.through).toBeGreaterThan(1);
    expect(low.clear + low.through).toBeCloseTo(low.all, 9);
    expect(sunHours(wall(8), december)).toMatchObject({ clear: low.clear, through: 0 });
  });

  test('a higher skyline never leaves more of it', () => {
    for (const day of sunDays) {
      const left = [0, 5, 10, 20, 40, 80].map((height) => sunHours(wall(height), sunWay(site, day)).clear);
      expect(left).toEqual([...left].sort((a, b) => b - a));
    }
  });

  test('its way is cut where it goes in and comes out, without a gap', () => {
    const gate = [point(170, 0), point(171, 30), point(189, 30), point(190, 0)];
    const parts = sightings(gate, december);
    expect(parts.map(({ sight }) => sight)).toEqual(['clear', 'hidden', 'clear']);
    expect(parts[1].moments[0]).toBe(parts[0].moments.at(-1));
  });

  test('has whole hours by the clock of the site', () => {
    expect(wholeHours(december).map(({ hour }) => hour)).toEqual([9, 10, 11, 12, 13, 14, 15, 16]);
    const summer = wholeHours(sunWay(site, '06-21')).map(({ hour }) => hour);
    expect([summer[0], summer.at(-1)]).toEqual([5, 22]);
  });

  test('the darkest day is that of the hemisphere; beyond the circle it has no sun', () => {
    expect([darkestDay(54), darkestDay(-35)]).toEqual(['12-21', '06-21']);
    expect(sunHours([], sunWay({ ...site, latitude: 70 }, '12-21'))).toEqual({
      all: 0,
      clear: 0,
      through: 0,
    });
    expect(sunHours([], sunWay({ ...site, latitude: 70 }, '06-21')).all).toBeCloseTo(24, 9);
  });
});

describe('the panorama', () => {
  const ways = (latitude: number) => sunDays.map((day) => sunWay({ ...site, latitude }, day));

  test.each([54, -35, 0, 78])(
    'at latitude %i has all of the sun in it and the noon sun in the middle',
    (latitude) => {
      const top = topOf([], ways(latitude));
      const view = skylineView(800, 280, latitude, top);
      for (const { moments } of ways(latitude))
        for (const { azimuth, elevation } of moments) {
          expect(elevation).toBeLessThanOrEqual(top);
          expect(view.x(azimuth)).toBeGreaterThanOrEqual(30);
          expect(view.x(azimuth)).toBeLessThanOrEqual(790);
        }
      expect(view.x(latitude >= 0 ? 180 : 0)).toBeCloseTo(410, 9);
    },
  );

  test('what is under the pointer is what is drawn there', () => {
    for (const latitude of [54, -35]) {
      const view = skylineView(800, 280, latitude, 70);
      for (const azimuth of [0, 10, 179, 180, 181, 350])
        expect(view.azimuthAt(view.x(azimuth))).toBeCloseTo(azimuth, 9);
      expect(view.elevationAt(view.y(33))).toBeCloseTo(33, 9);
      expect([view.elevationAt(-50), view.elevationAt(400)]).toEqual([70, 0]);
    }
  });

  test('a noon sun in the north, seen from a northern site in the tropics, is drawn in two runs', () => {
    const view = skylineView(800, 280, 10, 90);
    const path = wayPath(view, sunWay({ ...site, latitude: 10 }, '06-21').moments);
    const runs = path.split('M').slice(1);
    expect(runs.length).toBe(2);
    for (const run of runs) {
      const xs = [...run.matchAll(/(?:^|L)([\d.]+),/g)].map((match) => Number(match[1]));
      expect(Math.max(...xs) - Math.min(...xs)).toBeLessThan(200);
    }
  });

  test('directions in words', () => {
    expect([directionWords(140), directionWords(359.5), directionWords(180)]).toEqual([
      'south-east, 140°',
      'north, 359.5°',
      'south, 180°',
    ]);
  });
});
