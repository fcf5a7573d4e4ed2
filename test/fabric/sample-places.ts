import * as v from 'valibot';
import { placeSchema } from '../../core/plan/schema.ts';
import type { Place } from '../../core/plan/schema.ts';

/** A place with the schema's defaults and what the test gives. */
export function samplePlace(parts: object): Place {
  return v.parse(placeSchema, {
    id: 'place',
    name: 'Place',
    covering: 'glass-3',
    leakage: 1,
    growingArea: 4,
    ...parts,
  });
}

const warmRoom = { kind: 'constant', temperature: 18 };

export const house = samplePlace({
  shape: { kind: 'even-span', length: 4, width: 2.5, eavesHeight: 1.5, ridgeHeight: 2.3, azimuth: 180 },
  baseWall: { height: 0.6, covering: 'brick-102' },
});

export const leanTo = samplePlace({
  shape: {
    kind: 'lean-to',
    length: 4,
    width: 2,
    eavesHeight: 1.6,
    ridgeHeight: 2.5,
    azimuth: 180,
    wall: { material: 'brick', thickness: 0.3, behind: 'room' },
  },
  room: warmRoom,
});

export const tunnel = samplePlace({
  covering: 'polythene',
  shape: { kind: 'tunnel', length: 5, width: 3, height: 2.1, azimuth: 170 },
});

export const coldFrame = samplePlace({
  covering: 'twin-wall-4',
  growingArea: 0.9,
  shape: { kind: 'cold-frame', length: 1.2, width: 0.8, frontHeight: 0.25, backHeight: 0.4, azimuth: 180 },
});

export const tent = samplePlace({
  covering: 'tent-fabric',
  growingArea: 0.56,
  wallReflectance: 0.88,
  room: warmRoom,
  shape: { kind: 'tent', length: 0.8, width: 0.8, height: 1.6 },
});

export const shelf = samplePlace({
  covering: 'open',
  growingArea: 0.4,
  room: warmRoom,
  shape: { kind: 'shelf', length: 1, width: 0.4, height: 0.5 },
});

export const windowBay = samplePlace({
  covering: 'glass-4',
  growingArea: 0.4,
  room: warmRoom,
  shape: { kind: 'window-bay', width: 1.3, height: 1.2, depth: 0.35, azimuth: 180 },
});

export const listed = samplePlace({
  shape: {
    kind: 'listed',
    floorArea: 4,
    volume: 8,
    surfaces: [
      { name: 'front', area: 4, tilt: 90, azimuth: 180, covering: 'glass-3', behind: 'outdoors' },
      { name: 'left', area: 4, tilt: 90, azimuth: 270, covering: 'glass-3', behind: 'outdoors' },
      { name: 'right', area: 4, tilt: 90, azimuth: 90, covering: 'glass-3', behind: 'outdoors' },
      { name: 'back', area: 4, tilt: 90, azimuth: 0, covering: 'brick-215', behind: 'outdoors' },
      { name: 'top', area: 4, tilt: 0, azimuth: 0, covering: 'glass-3', behind: 'outdoors' },
    ],
  },
});

export const solidPlaces = [house, leanTo, tunnel, coldFrame, tent, shelf, windowBay] as const;
export const allPlaces = [...solidPlaces, listed] as const;
