/** Lamps, shelves and cloths that gainsay each other or their place are refused; the nearest that can be is taken. */
import { describe, expect, it } from 'vitest';
import { coveringsFor } from '../../core/index.ts';
import { aLamp, readPlace, sound } from './places.ts';
import type { SoundName } from './places.ts';

type Case = readonly [what: string, of: SoundName, bad: object, path: string, reason: string, good: object];

const lamp = (changes: object) => ({ lamps: [{ ...aLamp, ...changes }] });
const extend = (hours: number) => ({ kind: 'extend', hours, end: 'both' });
const dark = { kind: 'daylight', below: 100 };
const photometry = { name: 'own.ies', vertical: [0, 90], planes: [0], candela: [300, 0] };
const fromFile = { light: { kind: 'file' } };
const second = (on: string, off: string) => ({ second: { on, off } });
const upper = (changes: object = {}) => ({
  upperShelf: { height: 0.5, plants: 0.1, length: 0.6, width: 0.3, ...changes },
});
const opaque = [
  { name: 'glass', area: 9, tilt: 90, azimuth: 180, covering: 'brick-215', behind: 'outdoors' },
];
const windowShape = (changes: object) => ({ shape: { ...sound.window.shape, ...changes } });
const [cloth] = coveringsFor('shade');
const [sheer] = coveringsFor('sheer');
const shade = (from: string, to: string) => ({ shadeCloth: { covering: cloth.id, from, to } });
const curtain = (from: string, to: string) => ({ sheer: { covering: sheer.id, from, to } });

// prettier-ignore
const lamps: readonly Case[] = [
  ['light of a file without one', 'tent', lamp(fromFile), 'lamps.0.light', 'a beam from a photometric file where the light is taken from one, got an even face', lamp({ ...fromFile, beam: { kind: 'file', photometry } })],
  ['light of a file with another beam', 'tent', lamp({ ...fromFile, beam: { kind: 'cosine-power', power: 4 } }), 'lamps.0.light', 'got a narrower beam', lamp({ beam: { kind: 'cosine-power', power: 4 } })],
  ['more watts at half its light', 'tent', lamp({ wattsAtHalf: 51 }), 'lamps.0.wattsAtHalf', 'than at full (50 W), got 51 W', lamp({ wattsAtHalf: 50 })],
  ['on as it goes off', 'tent', lamp({ off: '07:00' }), 'lamps.0.off', 'another time than it begins at (07:00', lamp({ off: '07:01' })],
  ['from midnight to midnight the wrong way', 'tent', lamp({ on: '24:00', off: '00:00' }), 'lamps.0.off', 'a whole day is 00:00 to 24:00', lamp({ on: '00:00', off: '24:00' })],
  ['a second block at no time', 'tent', lamp(second('21:00', '21:00')), 'lamps.0.second.off', 'got 21:00', lamp(second('21:00', '22:00'))],
  ['a second block within the first', 'tent', lamp(second('18:30', '20:00')), 'lamps.0.second', 'clear of the first (07:00 to 19:00), got 18:30 to 20:00', lamp(second('19:00', '20:00'))],
  ['a second block round the first', 'tent', lamp(second('06:00', '20:00')), 'lamps.0.second', 'clear of the first', lamp(second('20:00', '06:00'))],
  ['a second block over midnight into the first', 'tent', lamp(second('22:00', '08:00')), 'lamps.0.second', 'clear of the first', lamp(second('22:00', '07:00'))],
  ['the same block twice', 'tent', lamp(second('07:00', '19:00')), 'lamps.0.second', 'clear of the first', lamp(second('19:00', '07:00'))],
  ['a second block beside a whole day', 'tent', lamp({ on: '00:00', off: '24:00', ...second('03:00', '04:00') }), 'lamps.0.second', 'clear of the first (00:00 to 24:00)', lamp({ on: '04:00', off: '03:00', ...second('03:00', '04:00') })],
  ['a longer day than it may make', 'house', lamp({ control: extend(16), mostDay: 12 }), 'lamps.0.mostDay', 'at least the 16 h it makes, got 12 h', lamp({ control: extend(12), mostDay: 12 })],
  ['a natural day in a tent', 'tent', lamp({ control: extend(14) }), 'lamps.0.control', 'no daylight reaches the plants, got a lamp that follows the natural day', lamp({})],
  ['dark days on a shelf in a room', 'shelf', lamp({ control: dark }), 'lamps.0.control', 'follows the daylight', lamp({})],
  ['dark days in a house of panels', 'house', { covering: 'insulated-panel', ...lamp({ control: dark }) }, 'lamps.0.control', 'follows the daylight', lamp({ control: dark })],
  ['dark days behind brick', 'listed', { shape: { ...sound.listed.shape, surfaces: opaque }, ...lamp({ control: dark }) }, 'lamps.0.control', 'follows the daylight', lamp({ control: dark })],
  ['a lamp over no shelf', 'tent', lamp({ shelf: 'upper' }), 'lamps.0.shelf', 'an upper shelf under it', { ...upper(), ...lamp({ shelf: 'upper' }) }],
  ['a lamp over the upper shelf and the tent', 'tent', { ...upper(), ...lamp({ shelf: 'upper', height: 1.1 }) }, 'lamps.0.height', 'at most 1 m over those of the upper shelf, which reach 0.6 m, got 1.1 m', { ...upper(), ...lamp({ shelf: 'upper', height: 1 }) }],
  ['a lamp beside the tent', 'tent', lamp({ along: -0.5 }), 'lamps.0.along', 'at most 0.4 m off the middle, got -0.5 m', lamp({ along: -0.4 })],
  ['a lamp beside the house', 'house', lamp({ across: 1.2 }), 'lamps.0.across', 'at most 1 m off the middle', lamp({ across: 1 })],
];

// prettier-ignore
const shelves: readonly Case[] = [
  ['longer than the tent', 'tent', upper({ length: 0.9 }), 'upperShelf.length', 'no longer than the place (0.8 m), got 0.9 m', upper({ length: 0.8 })],
  ['wider than the shelf below', 'shelf', upper({ width: 0.45, length: 0.5, height: 0.4 }), 'upperShelf.width', 'no wider than the place (0.4 m), got 0.45 m', upper({ width: 0.4, length: 0.5, height: 0.4 })],
  ['larger than a listed floor', 'listed', { growingArea: 9, ...upper({ length: 4, width: 1.1 }) }, 'upperShelf.length', 'no larger than the floor (4 m²), got 4.4 m²', { growingArea: 9, ...upper({ length: 4, width: 1 }) }],
  ['its plants through the top', 'tent', upper({ height: 1.5, plants: 0.2 }), 'upperShelf.height', 'whose plants stay within the height of the place (1.6 m), got 1.7 m', upper({ height: 1.4, plants: 0.2 })],
  ['its boards over the open shelf', 'shelf', upper({ height: 0.55, width: 0.2 }), 'upperShelf.height', 'an upper shelf within the height of the place (0.5 m), got 0.55 m', upper({ height: 0.5, width: 0.2 })],
  ['nothing left below it', 'tent', { growingArea: 0.18, ...upper() }, 'growingArea', 'than the upper shelf alone (0.18 m²; both count), got 0.18 m²', { growingArea: 0.19, ...upper() }],
  ['plants behind their own sill', 'window', windowShape({ distance: 0.3 }), 'shape.distance', 'before the back of the sill (0.3 m deep), got 0.3 m', windowShape({ distance: 0.29 })],
];

// prettier-ignore
const cloths: readonly Case[] = [
  ['shade laid for no day', 'house', shade('05-01', '05-01'), 'shadeCloth.to', 'another day than it is laid on (05-01; all year is 01-01 to 12-31)', shade('05-01', '04-30')],
  ['a sheer curtain as shade', 'house', { shadeCloth: { covering: sheer.id, from: '05-01', to: '09-01' } }, 'shadeCloth.covering', 'which is a sheer curtain', shade('05-01', '09-01')],
  ['a sheer curtain in a house', 'house', curtain('08:00', '18:00'), 'sheer', 'only before a window', {}],
  ['a sheer curtain at no time', 'window', curtain('08:00', '08:00'), 'sheer.to', 'another time than it begins at', curtain('00:00', '24:00')],
  ['washed on no day', 'house', { cleanedOn: '13-01' }, 'cleanedOn', 'a day as MM-DD', { cleanedOn: '09-15' }],
  ['a skyline over the zenith', 'house', { horizon: [{ azimuth: 180, elevation: 95 }] }, 'horizon.0.elevation', 'from 0 to 89 degrees, got 95', { horizon: [{ azimuth: 180, elevation: 89 }] }],
];

const problems = (place: object) => {
  const reading = readPlace(place);
  return reading.ok ? [] : reading.problems;
};

describe.each([
  ['lamps', lamps],
  ['shelves', shelves],
  ['cloths, dirt and skylines', cloths],
])('%s', (_group, cases) => {
  it.each(cases)('%s', (_what, of, bad, path, reason, good) => {
    expect(problems({ ...sound[of], ...good })).toEqual([]);
    const found = problems({ ...sound[of], ...bad });
    expect(found.map((each) => each.path)).toEqual([`places.0.${path}`]);
    expect(found[0].message).toContain(reason);
  });
});

it('hours that a lamp does not read are not held against it', () => {
  const idle = { control: extend(12), off: '07:00', ...second('07:00', '09:00') };
  expect(problems({ ...sound.house, ...lamp(idle) })).toEqual([]);
});
