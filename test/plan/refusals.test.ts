/** What cannot be is refused with where and why; the sound neighbour of each case is taken. */
import { describe, expect, it } from 'vitest';
import { demonstrationPlan, parsePlan } from '../../core/index.ts';
import { aHeater, aLamp, planWith, readPlace, sound } from './places.ts';
import type { SoundName } from './places.ts';

/** A place, what makes it impossible, where that is told and how, and the nearest that is possible. */
type Case = readonly [what: string, of: SoundName, bad: object, path: string, reason: string, good: object];

const vent = (area: number, position: string) => ({ area, position, height: 0.5, openAt: 15, band: 4 });
const door = (area: number, height: number, hours = ['09:00', '17:00']) => ({
  door: { area, height, from: hours[0], to: hours[1] },
});
const shape = (of: SoundName, changes: object) => ({ shape: { ...sound[of].shape, ...changes } });
const heater = (changes: object) => ({ heaters: [{ ...aHeater, ...changes }] });
const screen = (changes: object) => ({ covering: 'woven-screen', closedWhen: 'hours', ...changes });
const listed = (surfaces: object[], changes: object = {}) => shape('listed', { surfaces, ...changes });
const pane = (area: number, tilt: number, changes: object = {}) => ({
  name: `${tilt} degrees`,
  area,
  tilt,
  azimuth: 180,
  covering: 'glass-3',
  behind: 'outdoors',
  ...changes,
});
const barrel = (litres: number, count: number) => ({ name: 'Barrel', litres, count });

// prettier-ignore
const sizes: readonly Case[] = [
  ['roof vents', 'house', { vents: [vent(7.4, 'roof')] }, 'vents.0.area', 'all of the roof (7.32 m²), got 7.4 m²', { vents: [vent(7.3, 'roof')] }],
  ['roof vents together', 'house', { vents: [vent(4, 'roof'), vent(4, 'roof')] }, 'vents.1.area', '(7.32 m²), got 8 m²', { vents: [vent(4, 'roof'), vent(3, 'roof')] }],
  ['side vents', 'house', { vents: [vent(9.1, 'side')] }, 'vents.0.area', 'all of the sides (9 m²)', { vents: [vent(9, 'side')] }],
  ['end vents', 'house', { vents: [vent(7.5, 'end')] }, 'vents.0.area', 'both ends (7.4 m²)', { vents: [vent(7.4, 'end')] }],
  ['lean-to: one slope', 'leanTo', { vents: [vent(7, 'roof')] }, 'vents.0.area', '(6.71 m²), got 7 m²', { vents: [vent(6.7, 'roof')] }],
  ['lean-to: the front alone', 'leanTo', { vents: [vent(4.6, 'side')] }, 'vents.0.area', '(4.5 m²)', { vents: [vent(4.5, 'side')] }],
  ['tunnel ends', 'tunnel', { vents: [vent(10, 'end')] }, 'vents.0.area', '(9.42 m²), got 10 m²', { vents: [vent(9.4, 'end')] }],
  ['tunnel cover', 'tunnel', { vents: [vent(28, 'roof')] }, 'vents.0.area', '(27.6 m²)', { vents: [vent(27, 'roof')] }],
  ['a frame whose light is off', 'frame', { vents: [vent(1.1, 'roof')] }, 'vents.0.area', '(0.99 m²)', { vents: [vent(0.98, 'roof')] }],
  ['a tent’s top', 'tent', { vents: [vent(0.7, 'roof')] }, 'vents.0.area', '(0.64 m²)', { vents: [vent(0.6, 'roof')] }],
  ['a window', 'window', { vents: [vent(1.5, 'side')] }, 'vents.0.area', '(1.44 m²)', { vents: [vent(1.4, 'side')] }],
  ['a listed roof', 'listed', { vents: [vent(5, 'roof')] }, 'vents.0.area', '(4 m²), got 5 m²', { vents: [vent(4, 'roof')] }],
  ['a door larger than any face', 'house', door(4.6, 2), 'door.area', '(4.5 m²), got 4.6 m²', door(4.4, 2)],
  ['a door higher than the ridge', 'house', door(1.5, 2.3), 'door.height', '(2.2 m), got 2.3 m', door(1.5, 2.2)],
  ['a tunnel’s door', 'tunnel', door(4.8, 1.9), 'door.area', '(4.71 m²)', door(4.7, 1.9)],
  ['a listed door', 'listed', door(8.5, 2), 'door.area', '(8 m²)', door(7, 2)],
  ['a base wall over the eaves', 'house', { baseWall: { height: 1.6, covering: 'brick-102' } }, 'baseWall.height', 'the eaves (1.5 m), got 1.6 m', { baseWall: { height: 1.5, covering: 'brick-102' } }],
  ['a base wall in a low tunnel', 'tunnel', { baseWall: { height: 1.1, covering: 'timber-board' } }, 'baseWall.height', 'half of the tunnel (1 m)', { baseWall: { height: 1, covering: 'timber-board' } }],
  ['a base wall over a frame', 'frame', { baseWall: { height: 0.6, covering: 'timber-board' } }, 'baseWall.height', 'back of the frame (0.5 m)', { baseWall: { height: 0.5, covering: 'timber-board' } }],
  ['eaves over the ridge', 'house', shape('house', { eavesHeight: 2.3 }), 'shape', 'ridgeHeight above eavesHeight', shape('house', { eavesHeight: 2.1 })],
  ['eaves over a lean-to’s ridge', 'leanTo', shape('leanTo', { eavesHeight: 2.5 }), 'shape', 'ridgeHeight above eavesHeight', shape('leanTo', { eavesHeight: 2.4 })],
  ['a frame higher in front', 'frame', shape('frame', { backHeight: 0.2 }), 'shape', 'backHeight at least frontHeight', shape('frame', { backHeight: 0.3 })],
  ['a frame without height', 'frame', shape('frame', { frontHeight: 0 }), 'shape.frontHeight', 'from 0.05 to 2 m, got 0', shape('frame', { frontHeight: 0.05, backHeight: 0.05 })],
  ['a tent without floor', 'tent', shape('tent', { width: 0 }), 'shape.width', 'from 0.2 to 10 m, got 0', { ...shape('tent', { width: 0.2 }), growingArea: 0.1 }],
  ['a lamp over the ridge', 'house', { lamps: [{ ...aLamp, height: 2.3 }] }, 'lamps.0.height', 'at most 2.2 m over the plants, got 2.3 m', { lamps: [{ ...aLamp, height: 2 }] }],
  ['a lamp outside the tent', 'tent', { lamps: [aLamp, { ...aLamp, id: 'm', height: 3 }] }, 'lamps.1.height', 'at most 1.6 m', { lamps: [aLamp, { ...aLamp, id: 'm', height: 1 }] }],
  ['plants on more than four tiers', 'window', { growingArea: 1.5 }, 'growingArea', '4 times the floor (0.36 m²)', { growingArea: 1.4 }],
  ['more tiers than a tent has', 'tent', { growingArea: 4 }, 'growingArea', '6 times the floor (0.64 m²) to grow on, 3.84 m²', { growingArea: 3.8 }],
  ['more water than room', 'frame', { water: [barrel(100, 2), barrel(50, 4)] }, 'water.1.litres', '(0.384 m³), got 400 litres', { water: [barrel(100, 2), barrel(50, 3)] }],
];

const walls = [pane(4, 90), pane(4, 90, { azimuth: 0 })];
// prettier-ignore
const lists: readonly Case[] = [
  ['no air', 'listed', listed([pane(9, 90)], { volume: 0 }), 'shape.volume', 'from 0.001 to 100000 m³, got 0', listed([pane(9, 90)])],
  ['a skin of air', 'listed', listed([pane(9, 90)], { volume: 0.05 }), 'shape.volume', 'at least 0.02 m high, got 0.05 m³ over 4 m²', listed([pane(9, 90)], { volume: 0.2 })],
  ['a tower of air', 'listed', listed([pane(9, 90)], { volume: 200 }), 'shape.volume', 'at most 30 m high', listed([pane(9, 90)], { volume: 20 })],
  ['a roof that leaves the floor bare', 'listed', listed([pane(3, 20)], { volume: 1 }), 'shape.surfaces', 'cover the floor (4 m²), got 3 m²', listed([pane(4.1, 20)], { volume: 1 })],
  ['more air than a sphere of it', 'listed', listed([pane(4.2, 0), ...walls]), 'shape.volume', 'at most 6.13 m³, what 16.2 m² of surfaces and floor', listed([pane(4.2, 0), ...walls, pane(8, 90, { behind: 'nothing' })])],
  ['no surfaces', 'listed', listed([]), 'shape.surfaces', 'at least one surface', listed([pane(9, 90)])],
  ['a surface without area', 'listed', listed([pane(0, 90)]), 'shape.surfaces.0.area', 'got 0', listed([pane(9, 90)])],
  ['a room that is not there', 'listed', listed([pane(9, 90, { behind: 'room' })]), 'room', 'room around this place', { ...listed([pane(9, 90, { behind: 'room' })]), room: { kind: 'constant', temperature: 15 } }],
  ['a covering and a build-up', 'listed', listed([pane(9, 90, { build: { kind: 'panes', panes: 1, thickness: 0.004, extinction: 20 } })]), 'shape.surfaces.0', 'not both', listed([pane(9, 90, { covering: null, build: { kind: 'panes', panes: 1, thickness: 0.004, extinction: 20 } })])],
  ['clear panes on the ground', 'listed', listed([pane(9, 90, { covering: null, behind: 'ground', build: { kind: 'panes', panes: 1, thickness: 0.004, extinction: 20 } })]), 'shape.surfaces.0', 'open air or a room behind', listed([pane(9, 90, { behind: 'ground', covering: 'stone-400' })])],
  ['a layer without thickness', 'listed', listed([pane(9, 90, { covering: null, build: { kind: 'layers', layers: [{ thickness: 0, conductivity: 1, density: 1, specificHeat: 1 }] } })]), 'shape.surfaces.0.build.layers.0.thickness', 'got 0', listed([pane(9, 90, { covering: null, build: { kind: 'layers', layers: [{ thickness: 0.1, conductivity: 1, density: 1, specificHeat: 1 }] } })])],
];

// prettier-ignore
const coverings: readonly Case[] = [
  ['a wall as lining', 'house', { lining: 'brick-102' }, 'lining', 'expected a lining, got brick-102, which is a wall', { lining: 'bubble-lining' }],
  ['a lining as screen', 'house', { screen: screen({ covering: 'bubble-lining' }) }, 'screen.covering', 'expected a screen', { screen: screen({}) }],
  ['glass as fleece', 'house', { fleece: { covering: 'glass-3', layers: 1, laidWhen: 'night' } }, 'fleece.covering', 'expected a fleece', { fleece: { covering: 'fleece-17', layers: 1, laidWhen: 'night' } }],
  ['a film base wall', 'house', { baseWall: { height: 0.5, covering: 'polythene' } }, 'baseWall.covering', 'expected a wall, got polythene, which is a film', { baseWall: { height: 0.5, covering: 'timber-board' } }],
  ['a screen as shady side', 'house', { shadySide: 'woven-screen' }, 'shadySide', 'expected a wall', { shadySide: 'insulated-panel' }],
  ['a fleece as second skin', 'house', { secondSkin: { covering: 'fleece-17', gap: 0.05 } }, 'secondSkin.covering', 'a film or glass or clear sheet', { secondSkin: { covering: 'polythene', gap: 0.05 } }],
  ['a house of screens', 'house', { covering: 'woven-screen' }, 'covering', 'which is a screen', { covering: 'twin-wall-10' }],
  ['a house of nothing', 'house', { covering: 'open' }, 'covering', 'which is an open side', { covering: 'polythene' }],
  ['a tunnel of lining', 'tunnel', { covering: 'bubble-lining' }, 'covering', 'which is a lining', { covering: 'fleece-60' }],
  ['a glazed shelf', 'shelf', { covering: 'glass-3' }, 'covering', 'expected an open side', {}],
  ['a window of brick', 'window', { covering: 'brick-215' }, 'covering', 'which is a wall', { covering: 'double-glass' }],
  ['a curtain of brick', 'window', { curtain: screen({ covering: 'brick-215' }) }, 'curtain.covering', 'expected a screen', { curtain: screen({}) }],
  ['an open side to the open air', 'listed', listed([pane(9, 90, { covering: 'open' })]), 'shape.surfaces.0.covering', 'which is an open side', { ...listed([pane(9, 90, { covering: 'open', behind: 'room' })]), room: { kind: 'constant', temperature: 15 } }],
  ['a covering nobody knows', 'house', { secondSkin: { covering: 'moonlight', gap: 0.05 } }, 'secondSkin.covering', 'a known covering, got moonlight', { secondSkin: null }],
  ['a curtain nobody knows', 'window', { curtain: screen({ covering: 'moonlight' }) }, 'curtain.covering', 'a known covering', { curtain: null }],
];

const fan = { flow: 100, watts: 5, onAt: 25, band: 3 };
// prettier-ignore
const equipment: readonly Case[] = [
  ['a heater without power', 'house', heater({ power: 0 }), 'heaters.0.power', 'from 1 to 100000 W, got 0', heater({ power: 1 })],
  ['a heater that cools', 'house', heater({ power: -500 }), 'heaters.0.power', 'got -500', heater({})],
  ['a heater of NaN', 'house', heater({ power: NaN }), 'heaters.0.power', 'got NaN', heater({})],
  ['a heater of null, as NaN is stored', 'house', heater({ power: null }), 'heaters.0.power', 'got null', heater({})],
  ['a heater of endless power', 'house', heater({ power: Infinity }), 'heaters.0.power', 'got Infinity', heater({ power: 100000 })],
  ['a tank on a fan heater', 'house', heater({ tank: 10 }), 'heaters.0.tank', 'runs on electricity', heater({ kind: 'paraffin', tank: 10 })],
  ['a bottle on a heat pump', 'house', heater({ kind: 'heat-pump', tank: 10 }), 'heaters.0.tank', 'runs on electricity', heater({ kind: 'propane', tank: 10 })],
  ['a heater in hours that are none', 'house', heater({ kind: 'propane', hours: { from: '18:00', to: '18:00' } }), 'heaters.0.hours.to', 'another time than it begins at (18:00', heater({ kind: 'propane', hours: { from: '18:00', to: '17:59' } })],
  ['a fan that draws from no room', 'house', { fan: { ...fan, draws: 'room' } }, 'fan.draws', 'a room to draw air from', { fan: { ...fan, draws: 'outdoors' } }],
  ['a fan in a tent', 'tent', { fan: { ...fan, flow: 0 } }, 'fan.flow', 'got 0', { fan: { ...fan, draws: 'room' } }],
  ['a curtain before no room', 'house', { curtain: screen({}) }, 'curtain', 'open to a room', {}],
  ['a curtain in a tent', 'tent', { curtain: screen({}) }, 'curtain', 'open to a room', {}],
  ['a screen in hours that are none', 'house', { screen: screen({ from: '20:00', to: '20:00' }) }, 'screen.to', 'got 20:00', { screen: screen({ from: '20:00', to: '20:00', closedWhen: 'night' }) }],
  ['a curtain in hours that are none', 'window', { curtain: screen({ from: '20:00', to: '20:00' }) }, 'curtain.to', 'got 20:00', { curtain: screen({ from: '20:00', to: '07:00' }) }],
  ['a door that opens as it shuts', 'house', door(1.5, 1.9, ['12:00', '12:00']), 'door.to', 'a whole day is 00:00 to 24:00', door(1.5, 1.9, ['00:00', '24:00'])],
  ['a time that is none', 'house', door(1.5, 1.9, ['12:00', '12:60']), 'door.to', 'expected a time as HH:MM', door(1.5, 1.9)],
  ['half a lamp of no kind', 'tent', { lamps: [{ ...aLamp, technology: 'moonlight' }] }, 'lamps.0.technology', 'a known lamp technology', { lamps: [aLamp] }],
  ['air that never stops', 'house', { leakage: 1e9 }, 'leakage', 'from 0 to 60', { leakage: 60 }],
  ['a series of a room without readings', 'tent', { room: { kind: 'series', from: '11-01', stepHours: 1, values: [], otherwise: 15 } }, 'room.values', 'at least 1, got 0', { room: { kind: 'series', from: '11-01', stepHours: 1, values: [14], otherwise: 15 } }],
];

const problems = (place: object) => {
  const reading = readPlace(place);
  return reading.ok ? [] : reading.problems;
};

describe.each([
  ['sizes that do not go together', sizes],
  ['lists of surfaces that enclose nothing', lists],
  ['coverings put where they cannot be', coverings],
  ['equipment that cannot run', equipment],
])('%s', (_group, cases) => {
  it.each(cases)('%s', (_what, of, bad, path, reason, good) => {
    expect(problems({ ...sound[of], ...good })).toEqual([]);
    const found = problems({ ...sound[of], ...bad });
    expect(found.map((each) => each.path)).toEqual([`places.0.${path}`]);
    expect(found[0].message).toContain(reason);
    expect(found[0].message).not.toMatch(/undefined|NaN.*NaN|Invalid/);
  });
});

it.each(Object.entries(sound))('%s alone is sound', (_name, place) => {
  expect(problems(place)).toEqual([]);
});

describe('snow', () => {
  const withSnow = (to: string) =>
    parsePlan({
      ...demonstrationPlan,
      site: { ...demonstrationPlan.site, snow: { depth: 0.1, from: '12-01', to } },
    });
  it('that goes the day it comes is refused, over New Year it is not', () => {
    expect(withSnow('12-01')).toMatchObject({ problems: [{ path: 'site.snow.to', message: /another day/ }] });
    expect(withSnow('02-20').ok).toBe(true);
  });
});

describe('hostile JSON', () => {
  const text = JSON.stringify(planWith(sound.house));
  const parsed = (from: string, to: string) => parsePlan(JSON.parse(text.replace(from, to)));

  // prettier-ignore
  it.each([
    ['a number as text', '"leakage":1', '"leakage":"1e999"', 'places.0.leakage', 'got "1e999"'],
    ['a number beyond all numbers', '"leakage":1', '"leakage":1e999', 'places.0.leakage', 'got Infinity'],
    ['null where a number stands', '"leakage":1', '"leakage":null', 'places.0.leakage', 'got null'],
    ['a list where a number stands', '"leakage":1', '"leakage":[1]', 'places.0.leakage', 'got Array'],
    ['a prototype in a place', '"leakage":1', '"leakage":1,"__proto__":{"room":7}', 'places.0.__proto__', 'no field of this name'],
    ['a constructor in a place', '"leakage":1', '"leakage":1,"constructor":1', 'places.0.constructor', 'no field of this name'],
    ['a version that is text', '"schemaVersion":4', '"schemaVersion":"4"', 'schemaVersion', 'expected schemaVersion 4'],
    ['a version of nothing', '"schemaVersion":4', '"schemaVersion":0', 'schemaVersion', 'expected schemaVersion 4'],
    ['a version from the future', '"schemaVersion":4', '"schemaVersion":5', 'schemaVersion', 'newer Winterbench'],
  ])('%s', (_what, from, to, path, reason) => {
    expect(text).toContain(from);
    const reading = parsed(from, to);
    const found = reading.ok ? [] : reading.problems;
    expect(found.map((each) => each.path)).toContain(path);
    expect(found.find((each) => each.path === path)?.message).toContain(reason);
    expect(({} as { room?: unknown }).room).toBeUndefined();
  });

  it('a prototype at the head of a plan or among the edits changes nothing', () => {
    const head = parsePlan(JSON.parse(text.replace('{', '{"__proto__":{"places":[]},')));
    expect(head.ok ? [] : head.problems.map((each) => each.path)).toEqual(['__proto__']);
    for (const name of ['__proto__', 'constructor', 'prototype']) {
      const edits = parsed('"groupEdits":{}', `"groupEdits":{"${name}":{"agave":1}}`);
      expect(edits.ok && Object.keys(edits.plan.groupEdits), name).toEqual([]);
    }
    expect(Object.getPrototypeOf({})).toBe(Object.prototype);
  });

  it('ten thousand wrong things are told as forty', () => {
    const reading = parsePlan(planWith(sound.house, { places: Array(10_000).fill(3) }));
    expect(reading.ok ? 0 : reading.problems.length).toBeLessThanOrEqual(40);
  });
});
