import { describe, expect, it, test } from 'vitest';
import {
  coverTransmittance,
  covering,
  demonstrationPlan,
  runSeason,
  sectionOf,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Place } from '../../core/index.ts';
import {
  litArea,
  shareOf,
  shortestDay,
  spellsOf,
  sunAt,
  sunDay,
} from '../../renderer/place/daylight/sun-day.ts';
import { dayWords, nowWords } from '../../renderer/place/daylight/words.ts';
import { leastMonth, lightMonths } from '../../renderer/place/daylight/year-of-light.ts';
import { clothsOn } from '../../renderer/place/section/cloths.ts';
import { layoutOf } from '../../renderer/place/section/layout.ts';
import { mirrored, raysTo, sunSpots } from '../../renderer/place/section/rays.ts';
import { profileAngle } from '../../renderer/place/section/view.ts';

const { site } = demonstrationPlan;
const units = { temperature: 'C', length: 'm' } as const;
const place = (id: string, changes: Partial<Place> = {}): Place => ({
  ...(demonstrationPlan.places.find((each) => each.id === id) as Place),
  ...changes,
});
const window = place('window');
function weather() {
  const year = weatherFromPlan(demonstrationPlan);
  if (year === null) throw new Error('expected weather of the plan, got none');
  return year;
}
const midwinter = '2025-12-21';

describe('the sun over a window in December', () => {
  const day = sunDay(window, site, midwinter);

  it('rises and sets, and its light on the plants moves from west to east', () => {
    const up = day.filter((at) => at.state !== 'down');
    // 54.1° N, 7.4° W: 08:44 to 16:06 by an almanac's rule, 34′ of refraction and the sun's centre for its limb.
    expect(up[0].minutes).toBeGreaterThanOrEqual(8 * 60 + 40);
    expect(up[0].minutes).toBeLessThanOrEqual(9 * 60);
    expect(up[up.length - 1].minutes).toBeLessThanOrEqual(16 * 60 + 10);
    const middle = (minutes: number) => {
      const { patches } = sunAt(window, site, midwinter, minutes);
      const ys = patches[0].polygon.map(({ y }) => y);
      return ys.reduce((sum, y) => sum + y, 0) / ys.length;
    };
    // y runs from east to west behind a south pane; the morning sun from the south-east throws its patch westwards.
    expect(middle(600)).toBeGreaterThan(middle(750));
    expect(middle(750)).toBeGreaterThan(middle(900));
  });

  it('lets in what its glass passes at that angle', () => {
    const noon = sunAt(window, site, midwinter, 750);
    const expected = coverTransmittance(noon.patches[0].incidence, covering('glass-4'), 'par');
    expect(shareOf(noon)).toBeCloseTo(expected, 9);
    expect(litArea(noon)).toBeLessThanOrEqual(1.3 * 0.35 + 1e-9);
  });

  it('says so where the sun is down, hidden, or off the pane', () => {
    expect(nowWords(day[0], 0.45, units)).toMatch(/^At 00:00 the sun is down/);
    const hidden = { ...window, horizon: [{ azimuth: 0, elevation: 30, passes: 0 }] };
    expect(nowWords(sunAt(hidden, site, midwinter, 750), 0.45, units)).toMatch(/behind what stands around/);
    expect(dayWords(spellsOf(sunDay(hidden, site, midwinter)))).toMatch(/never shines on the plants here/);
    const north = { ...window, shape: { ...window.shape, azimuth: 0 } } as Place;
    expect(nowWords(sunAt(north, site, midwinter, 750), 0.45, units)).toMatch(/cannot shine on the plants/);
    const trees = { ...window, horizon: [{ azimuth: 0, elevation: 30, passes: 0.5 }] };
    expect(nowWords(sunAt(trees, site, midwinter, 750), 0.45, units)).toMatch(
      /50\u00a0% comes through what stands/,
    );
  });

  it('hides behind a roof in the south-east until it has passed', () => {
    const roof = [
      { azimuth: 0, elevation: 0, passes: 0 },
      { azimuth: 119.9, elevation: 0, passes: 0 },
      { azimuth: 120, elevation: 20, passes: 0 },
      { azimuth: 155, elevation: 20, passes: 0 },
      { azimuth: 155.1, elevation: 0, passes: 0 },
    ];
    const spells = spellsOf(sunDay({ ...window, horizon: roof }, site, midwinter));
    expect(spells.map(({ state }) => state)).toEqual(['down', 'skyline', 'in', 'down']);
    const passed = sunAt(window, site, midwinter, spells[1].to);
    expect(passed.azimuth).toBeGreaterThan(155);
    expect(passed.azimuth).toBeLessThan(158);
    expect(dayWords(spells)).toContain('It is behind what stands around from 08:');
  });
});

test('shade cloth and sheer curtain take light on their days and hours, over the turn of the year too', () => {
  const shade = { covering: 'fleece-17', from: '11-15', to: '02-10' } as const;
  const cloth = place('window', {
    shadeCloth: shade,
    sheer: { covering: 'fleece-17', from: '10:00', to: '15:00' },
  });
  expect(clothsOn(cloth, '12-21', '12:00').shade?.id).toBe('fleece-17');
  expect(clothsOn(cloth, '03-01', '12:00').shade).toBeNull();
  expect(clothsOn(cloth, '12-21', '09:59').sheer).toBeNull();
  const bare = shareOf(sunAt(window, site, midwinter, 570));
  const shaded = shareOf(sunAt(cloth, site, midwinter, 570));
  const both = shareOf(sunAt(cloth, site, midwinter, 750));
  expect(shaded).toBeLessThan(bare);
  expect(both).toBeLessThan(shaded);
  expect(nowWords(sunAt(cloth, site, midwinter, 750), 0.45, units)).toMatch(
    /sheer curtain spreads part of it/,
  );
});

describe('beams in the section', () => {
  const raysAt = (of: Place, elevation: number, azimuth: number) => {
    const section = sectionOf(of);
    const front = 'azimuth' in of.shape ? of.shape.azimuth : 180;
    const angle = profileAngle(elevation, azimuth, front);
    return raysTo(of, section, { elevation, azimuth }, angle, sunSpots(layoutOf(of, section), false));
  };

  it('strike the front glass of a lean-to low down and its roof high up, at the angle to each', () => {
    const house = place('lean-to');
    const low = raysAt(house, 13, 190);
    expect(low.map(({ struck }) => struck.surface)).toEqual(['south side', 'south side', 'south side']);
    expect(low[0].struck.incidence).toBeCloseTo(13, 6);
    expect(low[0].struck.comesIn).toBeCloseTo(coverTransmittance(13, covering('glass-3'), 'par'), 9);
    const high = raysAt(house, 55, 190);
    // A roof of 1 m rise on 2.1 m lies at 25.46°: a sun of 55° stands 9.54° off its normal.
    expect(high[high.length - 1].struck.surface).toBe('south roof');
    expect(high[high.length - 1].struck.incidence).toBeCloseTo(9.54, 2);
    const { comesIn, thrownBack, kept } = high[0].struck;
    expect(comesIn + thrownBack + kept).toBeCloseTo(1, 9);
  });

  it('end at a lintel where the pane stands deep in its wall', () => {
    const deep = { ...window, shape: { ...window.shape, reveal: 0.9 } } as Place;
    expect(raysAt(window, 50, 175).length).toBe(3);
    expect(raysAt(deep, 50, 175).length).toBe(0);
  });

  it('do not reach spots under the boards of an upper shelf', () => {
    const house = place('lean-to');
    const upperShelf = { height: 0.4, plants: 0.1, length: 4, width: 1, side: 'front' } as const;
    const shelved = { ...house, upperShelf };
    const section = sectionOf(shelved);
    const layout = layoutOf(shelved, section);
    const sun = { elevation: 60, azimuth: 190 };
    const spots = sunSpots(layout, false);
    expect(raysTo(house, section, sun, 60, spots).length).toBe(3);
    // Boards 0.4 m up and 1 m deep: a sun of 60° reaches 0.4 / tan 60° = 0.23 m behind their edge.
    const reached = raysTo(house, section, sun, 60, spots, { shelf: layout.shelf });
    expect(reached.map(({ target }) => target[0])).toEqual(
      spots
        .map(([x]) => x)
        .filter((x) => x - 0.4 / Math.tan(Math.PI / 3) > 1 || x < 0.4 / Math.tan(Math.PI / 3)),
    );
    expect(reached.length).toBeLessThan(3);
  });

  it('are thrown back as from a mirror', () => {
    const [x, z] = mirrored([-0.8, 0.6], [0, 1]);
    expect([x, z]).toEqual([-0.8, -0.6]);
  });
});

describe('the year of light', () => {
  const season = runSeason(demonstrationPlan, weather());
  const monthsAt = (id: string) => {
    const result = season.places.find((each) => each.placeId === id);
    if (!result) throw new Error(`expected a season of ${id}`);
    return lightMonths(season, result);
  };

  it('has twelve months whose means make up the season, least in December', () => {
    const months = monthsAt('window');
    const days = [31, 30, 31, 30, 31, 31, 28, 31, 30, 31, 30, 31];
    const sum = months.reduce((total, month, i) => total + month.daylight * days[i], 0);
    const result = season.places.find((each) => each.placeId === 'window');
    expect(sum).toBeCloseTo(result?.daily.daylight.reduce((a, b) => a + b, 0) ?? 0, 6);
    expect(leastMonth(months).longName).toBe('December');
    expect(months.every(({ share }) => share > 0 && share < 1)).toBe(true);
  });

  it('counts lamps apart', () => {
    const tent = monthsAt('bright-tent');
    expect(tent.every(({ daylight, lamps, share }) => daylight === 0 && lamps > 0 && share === 0)).toBe(true);
  });
});

test('the shortest day is in December north of the equator and in June south of it', () => {
  expect(shortestDay('2025-08-01', 54)).toBe(142);
  expect(shortestDay('2025-02-01', -34)).toBe(140);
});
