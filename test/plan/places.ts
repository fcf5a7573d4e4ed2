import { demonstrationPlan, parsePlan } from '../../core/index.ts';
import type { PlanReading } from '../../core/index.ts';

const room = { kind: 'constant', temperature: 18 };

/** A small sound place of each shape, as a plan file writes it. */
export const sound = {
  house: place('glass-3', {
    kind: 'even-span',
    length: 3,
    width: 2,
    eavesHeight: 1.5,
    ridgeHeight: 2.2,
    azimuth: 180,
  }),
  leanTo: place(
    'glass-3',
    {
      kind: 'lean-to',
      length: 3,
      width: 2,
      eavesHeight: 1.5,
      ridgeHeight: 2.5,
      azimuth: 180,
      wall: { material: 'brick', thickness: 0.2, behind: 'room' },
    },
    { room },
  ),
  tunnel: place('polythene', { kind: 'tunnel', length: 5, width: 3, height: 2, azimuth: 170 }),
  frame: place(
    'glass-4',
    { kind: 'cold-frame', length: 1.2, width: 0.8, frontHeight: 0.3, backHeight: 0.5, azimuth: 180 },
    { growingArea: 0.8 },
  ),
  tent: place(
    'tent-fabric',
    { kind: 'tent', length: 0.8, width: 0.8, height: 1.6 },
    { room, growingArea: 0.5, floor: 'raised' },
  ),
  shelf: place(
    'open',
    { kind: 'shelf', length: 1, width: 0.4, height: 0.5 },
    { room, growingArea: 0.4, floor: 'raised' },
  ),
  window: place(
    'glass-4',
    { kind: 'window-bay', width: 1.2, height: 1.2, depth: 0.3, azimuth: 180 },
    { room, growingArea: 0.3, floor: 'raised' },
  ),
  listed: place('glass-3', {
    kind: 'listed',
    floorArea: 4,
    volume: 8,
    surfaces: [
      { name: 'glass', area: 8, tilt: 90, azimuth: 180, covering: 'glass-3', behind: 'outdoors' },
      { name: 'back', area: 8, tilt: 90, azimuth: 0, covering: 'brick-215', behind: 'outdoors' },
      { name: 'top', area: 4, tilt: 0, azimuth: 0, covering: 'glass-3', behind: 'outdoors' },
    ],
  }),
} as const;

function place(covering: string, shape: object, changes: object = {}) {
  return { id: 'p', name: 'Place', covering, shape, leakage: 1, growingArea: 2, ...changes };
}

export type SoundName = keyof typeof sound;

/** The demonstration's site and climate with one place. */
export const planWith = (only: object, changes: object = {}): object => ({
  ...demonstrationPlan,
  places: [only],
  lots: [],
  ...changes,
});

export const readPlace = (only: object): PlanReading => parsePlan(planWith(only));

export const aHeater = {
  id: 'h',
  name: 'Heater',
  kind: 'fan',
  power: 1000,
  setPointDay: 5,
  setPointNight: 5,
};

export const aLamp = {
  id: 'l',
  name: 'Lamp',
  technology: 'led-white',
  watts: 50,
  efficacy: 2.5,
  count: 1,
  height: 0.4,
  length: 0.4,
  width: 0.4,
  on: '07:00',
  off: '19:00',
};
