import { describe, expect, test } from 'vitest';
import { demonstrationPlan, lotOf, parsePlan } from '../../core/index.ts';
import type { Place, Shape, ShapeKind } from '../../core/index.ts';
import { freshId, freshName } from '../../renderer/place/edit.ts';
import { heightRefusal, shapeFields } from '../../renderer/place/form/ranges.ts';
import { heatAccount } from '../../renderer/place/heat-rows.ts';
import { lightFieldOf, scaleTop } from '../../renderer/place/light-field.ts';
import { newPlace, resized } from '../../renderer/place/new/defaults.ts';
import {
  chained,
  coverHeight,
  innerRange,
  inset,
  sectionThrough,
} from '../../renderer/place/section/geometry.ts';
import { layoutOf } from '../../renderer/place/section/layout.ts';
import { profileAngle, viewOf } from '../../renderer/place/section/view.ts';

const kinds = Object.keys(shapeFields) as ShapeKind[];

function problemsOf(place: Place, group = 'echeveria'): string[] {
  const lot = lotOf({ id: 'lot', name: 'Lot', group, place: place.id, area: 0.01 });
  const reading = parsePlan({ ...demonstrationPlan, places: [place], lots: [lot] });
  return reading.ok ? [] : reading.problems.map((problem) => `${problem.path}: ${problem.message}`);
}

const withSize = (place: Place, key: string, value: number): Place => ({
  ...place,
  shape: { ...place.shape, [key]: value } as Shape,
});

describe.each(kinds)('a new %s', (kind) => {
  test.each([54, -35])('at latitude %s is a sound place', (latitude) => {
    const made = newPlace(kind, latitude);
    expect(problemsOf(made.place, made.group)).toEqual([]);
    expect('azimuth' in made.place.shape ? made.place.shape.azimuth : null).toBe(
      'azimuth' in made.place.shape ? (latitude > 0 ? 180 : 0) : null,
    );
  });

  test('has fields that end where the plan ends', () => {
    const { place } = newPlace(kind, 54);
    for (const { key, minimum, maximum } of shapeFields[kind]) {
      const about = (value: number) =>
        problemsOf(withSize(place, key, value)).filter((words) =>
          words.includes(`shape.${key}: expected a number from`),
        );
      expect([key, about(minimum), about(maximum)]).toEqual([key, [], []]);
      expect([key, about(minimum - 0.001).length, about(maximum * 1.001).length]).toEqual([key, 1, 1]);
    }
  });

  test('stays sound and drawable at the ends of its sizes', () => {
    const { place, planted } = newPlace(kind, 54);
    for (const { key, minimum, maximum } of shapeFields[kind]) {
      for (const value of [minimum, maximum]) {
        if (heightRefusal(place.shape, key, value) !== null) continue;
        const next = resized(place, { ...place.shape, [key]: value } as Shape, planted);
        expect([key, value, problemsOf(next)]).toEqual([key, value, []]);
        const section = sectionThrough(next);
        const layout = layoutOf(next, section);
        const view = viewOf(next, section, true);
        const xs = layout.benches.flatMap((bench) => [view.x(bench.from), view.x(bench.to)]);
        expect(xs.every((x) => x >= 0 && x <= view.width)).toBe(true);
        expect(layout.lamps.every((lamp) => lamp.z <= section.height)).toBe(true);
      }
    }
  });
});

describe('heights that must stand in order', () => {
  const house = { eavesHeight: 1.5, ridgeHeight: 2.4 };
  test('are refused in words', () => {
    expect(heightRefusal(house, 'ridgeHeight', 1.5)).toBe('The ridge must stand above the eaves.');
    expect(heightRefusal(house, 'eavesHeight', 2.4)).toBe('The eaves must stay below the ridge.');
    expect(heightRefusal(house, 'eavesHeight', 2.3)).toBeNull();
    expect(heightRefusal({ floorArea: 4, volume: 9 }, 'volume', 400)).toMatch(/too much air/);
    expect(heightRefusal({ floorArea: 4, volume: 9 }, 'floorArea', 1000)).toMatch(/too little air/);
    expect(heightRefusal({ frontHeight: 0.3, backHeight: 0.4 }, 'frontHeight', 0.4)).toBeNull();
  });
});

describe('the cross-section', () => {
  const place = (id: string) => demonstrationPlan.places.find((each) => each.id === id) as Place;

  test('has the sizes of the shape', () => {
    const section = sectionThrough(place('lean-to'));
    expect([section.width, section.height, section.length]).toEqual([2.1, 2.6, 4.2]);
    expect(coverHeight(section, 0)).toBeCloseTo(1.6, 9);
    expect(coverHeight(section, 1.05)).toBeCloseTo(2.1, 9);
    expect(innerRange(section, 2.1).from).toBeCloseTo(1.05, 9);
  });

  test('splits the front at the base wall', () => {
    const edges = sectionThrough(place('lean-to')).edges;
    expect(
      edges.filter((edge) => edge.part === 'base wall').map((edge) => Math.abs(edge.to[1] - edge.from[1])),
    ).toEqual([0.5]);
    expect(edges.map((edge) => edge.part).sort()).toEqual(['base wall', 'roof', 'side', 'wall']);
  });

  test('joins the cover into one line and keeps its distance from it', () => {
    const edges = sectionThrough(place('lean-to')).edges.filter(
      (edge) => edge.part === 'side' || edge.part === 'roof',
    );
    const lines = chained(edges);
    expect(lines.length).toBe(1);
    const lined = inset(lines[0], 0.05, [1, 1]);
    const atRidge = lined.reduce((high, point) => (point[1] > high[1] ? point : high));
    const [[x1, z1], [x2, z2]] = [lined[1], atRidge];
    // The roof is the line z = 1.6 + x / 2.1; distance of a point (x, z) to it.
    const distance = (x: number, z: number) => Math.abs(1.6 + x / 2.1 - z) / Math.hypot(1, 1 / 2.1);
    expect(distance(x1, z1)).toBeCloseTo(0.05, 9);
    expect(distance(x2, z2)).toBeCloseTo(0.05, 9);
  });

  test('turns the noon sun into the plane of the section', () => {
    expect(profileAngle(20, 180, 180)).toBeCloseTo(20, 9);
    // tan p = tan 20° / cos 60° (Duffie & Beckman, profile angle), p = 36.05°.
    expect(profileAngle(20, 180, 120)).toBeCloseTo(36.052, 3);
    expect(profileAngle(20, 180, 0)).toBeCloseTo(160, 9);
  });
});

test('the heat account puts gains and losses apart and loses nothing', () => {
  const amounts = [
    { name: 'roof', kind: 'surface', kwh: 100 },
    { name: 'side', kind: 'surface', kwh: 0.4 },
    { name: 'gable', kind: 'surface', kwh: 0.5 },
    { name: 'sun', kind: 'sun', kwh: -90 },
    { name: 'floor', kind: 'ground', kwh: -10.9 },
  ] as const;
  const { out, into } = heatAccount({ amounts, into: 100.9, out: 100.9, stored: 0, left: 0 });
  expect(out.map((row) => row.name)).toEqual(['Roof', 'The rest']);
  expect(into.map((row) => row.name)).toEqual(['Sun', 'Floor']);
  const sum = (rows: typeof out) => rows.reduce((total, row) => total + row.kwh, 0);
  expect(sum(out) - sum(into)).toBeCloseTo(0, 9);
});

test('the light of two lamps is the light of each added up', () => {
  const tent = demonstrationPlan.places.find((each) => each.id === 'bright-tent') as Place;
  const one = lightFieldOf(tent);
  const two = lightFieldOf({ ...tent, lamps: [tent.lamps[0], { ...tent.lamps[0], id: 'second' }] });
  if (!one || !two) throw new Error('expected the light of a lit tent, got none');
  expect(one.levels.length).toBe(1);
  expect(two.levels[0].average).toBeCloseTo(2 * one.levels[0].average, 6);
  expect(two.levels[0].evenness).toBeCloseTo(one.levels[0].evenness, 9);
  expect(one.onPlants + one.inWalls + one.past).toBeCloseTo(1, 2);
  expect(lightFieldOf({ ...tent, lamps: [] })).toBeNull();
});

test('two shelves have a map each, the upper one first, on one scale of light', () => {
  const tent = demonstrationPlan.places.find((each) => each.id === 'bright-tent') as Place;
  const upperShelf = { height: 0.6, plants: 0.1, length: 0.7, width: 0.3, side: 'back' } as const;
  const above = { ...tent.lamps[0], id: 'above', shelf: 'upper', watts: 20, height: 0.25 } as const;
  const field = lightFieldOf({ ...tent, upperShelf, lamps: [tent.lamps[0], above] });
  expect(field?.levels.map((level) => level.shelf)).toEqual(['upper', 'lower']);
  const most = Math.max(...(field?.levels ?? []).map((level) => level.most));
  const top = scaleTop([field, null, lightFieldOf(tent)]);
  expect(top % 50).toBe(0);
  expect(top).toBeGreaterThanOrEqual(most);
  expect(top - 50).toBeLessThan(Math.max(most, lightFieldOf(tent)?.levels[0].most ?? 0));
});

test('new names and identifiers are free', () => {
  expect(freshName('Tent', ['Tent', 'Tent 2'])).toBe('Tent 3');
  expect(freshId('Glashaus „Süd“', [])).toBe('glashaus-su-d');
  expect(freshId('Tent', ['tent'])).toBe('tent-2');
  expect(freshId('温室', [])).toBe('item');
});
