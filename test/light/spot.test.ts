/** Light at a part of the growing area, of lamps and of the sky. */
import { describe, expect, it } from 'vitest';
import {
  createSeasonCache,
  demonstrationPlan,
  judgeLot,
  lampLight,
  lotOf,
  placeField,
  seasonSetting,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Place, Spot, WeatherYear } from '../../core/index.ts';
import { daylightSeries, spotDaylight, spotLampShare } from '../../core/light/index.ts';
import { prepareSiteYear } from '../../core/season/index.ts';
import { planOf, southWindow, tent } from '../support/plans.ts';

const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
const year = prepareSiteYear(demonstrationPlan, weather, 'spot');
const spot = (part: Partial<Spot>): Spot => ({ across: 'all', along: 'all', level: 'all', ...part });
const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
const placeOf = (description: object): Place => planOf(description).places[0];

describe('lamps', () => {
  const small = placeOf(tent([{ length: 0.2, width: 0.2 }]));
  const share = (part: Partial<Spot>, place = small) => spotLampShare(place, place.lamps[0], spot(part));

  it('give all of the area their mean, and thirds of equal size add up to it', () => {
    expect(share({})).toBeCloseTo(1, 9);
    const thirds = (['front', 'middle', 'back'] as const).map((across) => share({ across }));
    expect((thirds[0] + thirds[1] + thirds[2]) / 3).toBeCloseTo(1, 9);
    expect((share({ along: 'middle' }) + 2 * share({ along: 'ends' })) / 3).toBeCloseTo(1, 9);
  });

  it('are brighter under the lamp than at the edges', () => {
    expect(share({ across: 'middle', along: 'middle' })).toBeGreaterThan(1.1);
    expect(share({ across: 'front', along: 'ends' })).toBeLessThan(0.95);
    expect(share({ across: 'front' })).toBeCloseTo(share({ across: 'back' }), 6);
  });

  it('the brightest ninth agrees with the map the field gives', () => {
    const { map, average } = placeField(small, { cells: [15, 15] }).levels[0];
    let light = 0;
    for (let row = 5; row < 10; row++)
      for (let column = 5; column < 10; column++) light += map[row * 15 + column];
    expect(share({ across: 'middle', along: 'middle' })).toBeCloseTo(light / 25 / average, 9);
    expect(lampLight(small, small.lamps[0]).average / average).toBeCloseTo(1, 2);
  });

  it('over the upper shelf light that shelf, and a level that is not there is the one that is', () => {
    const upperShelf = { height: 0.6, plants: 0.1, length: 0.7, width: 0.3, side: 'back' };
    const shelf = placeOf(tent([{ shelf: 'upper', height: 0.3 }], { upperShelf }));
    expect(share({ level: 'upper' }, shelf)).toBeGreaterThan(1.3);
    expect(share({ level: 'lower' }, shelf)).toBeLessThan(0.7);
    expect(share({ level: 'upper' })).toBeCloseTo(1, 9);
  });
});

describe('the sky', () => {
  const light = (place: Place, part: Partial<Spot>) =>
    sum(spotDaylight(place, year.site, year.steps, {}, spot(part)));

  it('thirds of a window sill add up to the whole of it within 1 %, the front brightest', () => {
    const window = placeOf(southWindow);
    const whole = sum(daylightSeries(window, year.site, year.steps).benchPhotons);
    const [front, middle, back] = (['front', 'middle', 'back'] as const).map((across) =>
      light(window, { across }),
    );
    expect(Math.abs((front + middle + back) / 3 / whole - 1)).toBeLessThan(0.01);
    expect(front).toBeGreaterThan(1.02 * middle);
    expect(middle).toBeGreaterThan(1.02 * back);
  });

  it('the middle and the ends of a lean-to add up to the whole of it within 1 %', () => {
    const leanTo = demonstrationPlan.places.find(({ id }) => id === 'lean-to')!;
    const whole = sum(daylightSeries(leanTo, year.site, year.steps).benchPhotons);
    const mean = (light(leanTo, { along: 'middle' }) + 2 * light(leanTo, { along: 'ends' })) / 3;
    expect(Math.abs(mean / whole - 1)).toBeLessThan(0.01);
    expect(light(leanTo, { across: 'front' })).toBeGreaterThan(light(leanTo, { across: 'back' }));
  });

  it('an upper shelf at the back has more of it than the bench in its shade, whose front has the most', () => {
    const leanTo = demonstrationPlan.places.find(({ id }) => id === 'lean-to')!;
    const upperShelf = { height: 0.6, plants: 0.1, length: 2, width: 0.6, side: 'back' as const };
    const shelf = { ...leanTo, upperShelf };
    const [front, under] = (['front', 'back'] as const).map((across) =>
      light(shelf, { level: 'lower', across }),
    );
    const upper = light(shelf, { level: 'upper' });
    // Reached 1.16: low sun comes in under the boards.
    expect(upper).toBeGreaterThan(1.1 * under);
    expect(front).toBeGreaterThan(upper);
  });
});

describe('a lot at the front', () => {
  it('lives in the light of its spot, lamps and sky, under wet glass and fleece as all do', () => {
    const setting = seasonSetting(demonstrationPlan, weather, createSeasonCache());
    const lot = (part: Partial<Spot>, place: string) =>
      judgeLot(setting, lotOf({ id: 'a', name: 'A', group: 'echeveria', place, area: 0.1, spot: spot(part) }))
        .lived;
    const [front, back, whole] = [{ across: 'front' }, { across: 'back' }, {}].map((part) =>
      lot(part as Partial<Spot>, 'window'),
    );
    expect(sum(front.dailyLight)).toBeGreaterThan(1.05 * sum(back.dailyLight));
    expect(sum(whole.dailyLight)).toBeGreaterThan(sum(back.dailyLight));
    expect(front.leafMean).toBe(back.leafMean);
    const [middle, ends] = (['middle', 'ends'] as const).map((along) => lot({ along }, 'bright-tent'));
    const tentWhole = lot({}, 'bright-tent');
    expect((sum(middle.dailyLight) + 2 * sum(ends.dailyLight)) / 3).toBeCloseTo(sum(tentWhole.dailyLight), 0);
  });
});
