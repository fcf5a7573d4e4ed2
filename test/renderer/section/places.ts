import { heaterOf, placeOf, screenOf, waterOf } from '../../../core/index.ts';
import type { Heater, Place, PlanSite, ShapeKind } from '../../../core/index.ts';

export const snow: PlanSite['snow'] = { depth: 0.15, from: '12-01', to: '02-28' };

const room = { kind: 'constant', temperature: 18 } as const;

/** One place of every shape, with a cover that fits it. */
const bare: Readonly<Record<ShapeKind, Omit<Parameters<typeof placeOf>[0], 'id' | 'name' | 'leakage'>>> = {
  'even-span': {
    shape: { kind: 'even-span', length: 4, width: 2.5, eavesHeight: 1.5, ridgeHeight: 2.3, azimuth: 180 },
    covering: 'glass-3',
    growingArea: 4,
  },
  'lean-to': {
    shape: {
      kind: 'lean-to',
      length: 4,
      width: 2,
      eavesHeight: 1.6,
      ridgeHeight: 2.6,
      azimuth: 180,
      wall: { material: 'brick', thickness: 0.3, behind: 'room' },
    },
    covering: 'glass-3',
    room,
    growingArea: 4.6,
  },
  tunnel: {
    shape: { kind: 'tunnel', length: 5, width: 3, height: 2.1, azimuth: 170 },
    covering: 'polythene',
    growingArea: 7,
  },
  'cold-frame': {
    shape: {
      kind: 'cold-frame',
      length: 1.2,
      width: 0.8,
      frontHeight: 0.25,
      backHeight: 0.4,
      azimuth: 180,
    },
    covering: 'twin-wall-4',
    growingArea: 0.6,
  },
  tent: {
    shape: { kind: 'tent', length: 1.2, width: 0.8, height: 1.6 },
    covering: 'tent-fabric',
    room,
    growingArea: 0.5,
  },
  shelf: {
    shape: { kind: 'shelf', length: 1, width: 0.4, height: 0.5 },
    covering: 'open',
    room,
    growingArea: 0.35,
  },
  'window-bay': {
    shape: { kind: 'window-bay', width: 1.3, height: 1.2, depth: 0.35, azimuth: 180 },
    covering: 'glass-4',
    room,
    growingArea: 0.35,
  },
  listed: {
    shape: {
      kind: 'listed',
      floorArea: 6,
      volume: 8,
      surfaces: [
        { name: 'top', area: 6, tilt: 20, azimuth: 180, covering: 'glass-3', behind: 'outdoors' },
        { name: 'front', area: 8, tilt: 90, azimuth: 180, covering: 'glass-3', behind: 'outdoors' },
      ],
    },
    covering: 'glass-3',
    growingArea: 4,
  },
};

export const kinds = Object.keys(bare) as ShapeKind[];

export const placeWith = (kind: ShapeKind, parts: Partial<Place> = {}): Place =>
  placeOf({ id: 'place', name: 'Place', leakage: 1, ...bare[kind], ...parts });

const heater = (kind: Heater['kind']): Heater =>
  heaterOf({ id: kind, name: `My ${kind}`, kind, power: 500, setPointDay: 5, setPointNight: 4 });

const vent = (position: 'roof' | 'side' | 'end') => ({
  ...{ position, area: 0.1, height: 0.3, openAt: 18, band: 5 },
});

export interface Fitting {
  readonly parts: Partial<Place>;
  readonly name: RegExp;
  /** The part of the form it leads to. */
  readonly part: string;
  /** Shapes on which it is drawn; all where not given. */
  readonly on?: readonly ShapeKind[];
  /** Lies in the ground, on the roof or in the wall's thickness rather than in the air inside. */
  readonly where?: 'ground' | 'roof' | 'wall' | 'hinged';
}

const outdoors: ShapeKind[] = ['even-span', 'lean-to', 'tunnel', 'cold-frame', 'listed'];
const lined: ShapeKind[] = [...outdoors, 'tent', 'window-bay'];
const screen = screenOf({
  covering: 'aluminised-screen',
  closedWhen: 'hours',
  from: '18:00',
  to: '07:00',
});

const water = (['drum', 'canister', 'bottle', 'trough'] as const).map((form): [string, Fitting] => [
  `water in a ${form}`,
  {
    parts: { water: [waterOf({ name: 'Store', litres: 3, count: 8, form })] },
    name: new RegExp(`^Store: 8 ${form}s of 3 litres of water`),
    part: 'water',
  },
]);

const heaterKinds: Readonly<Record<Heater['kind'], string>> = {
  fan: 'fan heater',
  tubular: 'tube heater',
  'oil-filled': 'oil-filled radiator',
  propane: 'propane heater',
  paraffin: 'paraffin heater',
  'heat-mat': 'heat mat',
  'heat-pump': 'heat pump',
};

const heaters = (Object.keys(heaterKinds) as Heater['kind'][]).map((kind): [string, Fitting] => [
  `${heaterKinds[kind]}`,
  {
    parts: { heaters: [heater(kind)] },
    name: new RegExp(`^My ${kind}: ${heaterKinds[kind]}, 500\\sW, holds 4\\s°C by night`),
    part: 'heat',
  },
]);

const vents = (['roof', 'side', 'end'] as const).map((position): [string, Fitting] => [
  `${position} vent`,
  {
    parts: { vents: [vent(position)] },
    name: new RegExp(`^${position} vent: 0\\.10\\sm² when open, opens from 18\\s°C over 5\\s°C`, 'i'),
    part: 'air',
    ...(position === 'end' ? {} : { where: 'hinged' as const }),
  },
]);

export const fittings: readonly [string, Fitting][] = [
  ['plants', { parts: {}, name: /^Plants on .*, \d+\.\d\d\sm²/, part: 'plants' }],
  [
    'lining',
    { parts: { lining: 'bubble-lining' }, name: /^Lining: Bubble lining/, part: 'extras', on: lined },
  ],
  [
    'second skin',
    {
      parts: { secondSkin: { covering: 'polythene', gap: 0.03 } },
      name: /^Second skin: .*, 0\.030\sm inside the cover/,
      part: 'extras',
      on: lined,
    },
  ],
  [
    'screen',
    { parts: { screen }, name: /^Screen: .*, drawn from 18:00 to 07:00/, part: 'extras', on: lined },
  ],
  [
    'curtain',
    {
      parts: { curtain: screen },
      name: /^Curtain before the room: .*18:00/,
      part: 'extras',
      on: ['window-bay'],
    },
  ],
  [
    'fleece',
    {
      parts: {
        fleece: { covering: 'fleece-17', layers: 2, laidWhen: 'cold-night', below: 2, hangs: 'floor' },
      },
      name: /^Fleece over the plants: 2 layers of .*, on nights colder than 2\s°C, hanging to the floor/,
      part: 'extras',
    },
  ],
  [
    'shade cloth',
    {
      parts: { shadeCloth: { covering: 'fleece-17', from: '06-01', to: '08-31' } },
      name: /^Shade cloth: .*, from 1 June to 31 August/,
      part: 'cover',
      on: lined,
      where: 'wall',
    },
  ],
  [
    'sheer curtain',
    {
      parts: { sheer: { covering: 'fleece-17', from: '10:00', to: '16:00' } },
      name: /^Sheer curtain: .*, drawn from 10:00 to 16:00/,
      part: 'extras',
      on: ['window-bay'],
    },
  ],
  [
    'upper shelf',
    {
      parts: { upperShelf: { height: 0.1, plants: 0.05, length: 0.5, width: 0.2, side: 'back' } },
      name: /^Upper shelf: 0\.10\sm over the plants below, 0\.50\sm by 0\.20\sm/,
      part: 'plants',
    },
  ],
  [
    'skyline',
    {
      parts: { horizon: [{ azimuth: 0, elevation: 14, passes: 0 }] },
      name: /^A skyline stands 14° high in this direction/,
      part: 'air',
      on: [...outdoors, 'window-bay'],
      where: 'wall',
    },
  ],
  [
    'trees',
    {
      parts: { horizon: [{ azimuth: 0, elevation: 14, passes: 0.5 }] },
      name: /^Trees stand 14° high in this direction/,
      part: 'air',
      on: [...outdoors, 'window-bay'],
      where: 'wall',
    },
  ],
  ...water,
  ...vents,
  ...heaters,
  [
    'door',
    {
      parts: { door: { area: 0.06, height: 0.3, from: '10:00', to: '15:00', above: 8 } },
      name: /^Door: 0\.06\sm², open from 10:00 to 15:00 on days of 8\s°C and more/,
      part: 'air',
    },
  ],
  [
    'circulation fan',
    {
      parts: { circulation: { watts: 30, airSpeed: 0.4, runs: 'night' } },
      name: /^Circulation fan: 30\sW, moves the air at 0\.4 m\/s, runs by night/,
      part: 'air',
    },
  ],
  [
    'extract fan',
    {
      parts: { fan: { flow: 60, watts: 4, onAt: 28, band: 3, leastSpeed: 0, draws: 'around' } },
      name: /^Extract fan: 60 m³ an hour, 4(\.0)?\sW, runs from 28\s°C/,
      part: 'air',
    },
  ],
  [
    'base wall',
    {
      parts: { baseWall: { height: 0.1, covering: 'brick-102' } },
      name: /^Base wall: Half-brick wall 102 mm, 0\.10\sm high/,
      part: 'cover',
      on: ['even-span', 'lean-to', 'tunnel', 'cold-frame'],
      where: 'wall',
    },
  ],
  [
    'shady side',
    {
      parts: { shadySide: 'insulated-panel' },
      name: /^Shady side: Insulated panel 50 mm/,
      part: 'cover',
      on: ['even-span', 'cold-frame'],
      where: 'wall',
    },
  ],
  [
    'edge insulation',
    {
      parts: { edgeInsulation: { thickness: 0.05, depth: 0.6 } },
      name: /^Edge insulation in the ground: 0\.05\sm thick, 0\.60\sm deep/,
      part: 'cover',
      on: outdoors,
      where: 'ground',
    },
  ],
  ...(
    [
      ['soil', 'soil'],
      ['slab', 'concrete or paving'],
      ['insulated-slab', 'insulated slab'],
      ['gravel', 'gravel'],
      ['raised', 'off the ground'],
    ] as const
  ).map(([floor, words]): [string, Fitting] => [
    `floor of ${floor}`,
    {
      parts: { floor, ground: 'wet' },
      name: new RegExp(`^Floor: ${words}, wet ground`),
      part: 'cover',
      on: outdoors,
      where: 'ground',
    },
  ]),
  [
    'snow',
    {
      parts: { snow: 'left' },
      name: /^Snow left on the roof: 0\.15\sm in a usual winter/,
      part: 'cover',
      on: outdoors,
      where: 'roof',
    },
  ],
];
