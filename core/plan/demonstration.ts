import { parsePlan } from './parse.ts';
import type { Plan } from './schema.ts';

/**
 * The demonstration plan: an invented grower at an invented place near 54° N, with an invented climate,
 * plants, equipment and prices. Nothing here is a measurement.
 */
const mildMaritime: [number, number, number][] = [
  // mean daily least [°C], mean daily most [°C], global radiation [MJ m⁻² d⁻¹]
  [1.6, 7.9, 2.1],
  [1.5, 8.6, 4.3],
  [2.4, 10.6, 8.0],
  [3.9, 13.1, 12.9],
  [6.4, 16.2, 16.6],
  [9.2, 18.6, 17.6],
  [11.1, 20.2, 16.5],
  [10.8, 19.8, 13.5],
  [8.9, 17.4, 9.7],
  [6.4, 13.7, 5.5],
  [3.5, 10.1, 2.8],
  [2.0, 8.1, 1.6],
];

const description = {
  schemaVersion: 1,
  name: 'Winter at Tarnabeg',
  site: {
    name: 'Tarnabeg, above the lough',
    latitude: 54.1,
    longitude: -7.4,
    elevation: 62,
    timeZone: 'Europe/Dublin',
    frostHollow: 1,
    windShare: 0.5,
    albedo: 0.2,
    horizon: [],
  },
  climate: {
    kind: 'normals',
    months: mildMaritime.map(([meanMinimum, meanMaximum, globalRadiation]) => ({
      meanMinimum,
      meanMaximum,
      globalRadiation,
      sunshineHours: null,
      wind: 4.2,
    })),
    typicalLow: -5.5,
    rareLow: -10,
    seed: 7,
  },
  tariff: { currency: 'EUR', dayPrice: 0.34, nightPrice: 0.17, nightFrom: '23:00', nightTo: '07:00', propanePrice: 3.1, paraffinPrice: 2.2 },
  places: [
    {
      id: 'lean-to',
      name: 'Lean-to on the kitchen wall',
      shape: {
        kind: 'lean-to',
        length: 4.2,
        width: 2.1,
        eavesHeight: 1.6,
        ridgeHeight: 2.6,
        azimuth: 190,
        wall: { material: 'brick', thickness: 0.22, behind: 'room' },
      },
      covering: 'glass-3',
      room: { kind: 'constant', temperature: 18 },
      baseWall: { height: 0.5, covering: 'brick-102' },
      lining: null,
      leakage: 1.2,
      vents: { area: 0.5, height: 1.2, openAt: 18, band: 5 },
      floor: 'slab',
      water: [{ name: 'Blue barrel', litres: 120, count: 1 }],
      heaters: [
        { id: 'fan', name: 'Fan heater', kind: 'fan', power: 2000, setPointDay: 5, setPointNight: 5, differential: 1 },
      ],
      growingArea: 4.6,
      wallReflectance: 0.5,
    },
    {
      id: 'tunnel',
      name: 'Tunnel in the orchard',
      shape: { kind: 'tunnel', length: 5, width: 3, height: 2.1, azimuth: 170 },
      covering: 'polythene',
      fleece: null,
      leakage: 1.5,
      frameShare: 0.06,
      vents: { area: 1.6, height: 1, openAt: 16, band: 6 },
      floor: 'soil',
      growingArea: 7,
      wallReflectance: 0.2,
    },
    {
      id: 'bright-tent',
      name: 'Bright tent in the box room',
      shape: { kind: 'tent', length: 0.8, width: 0.8, height: 1.6 },
      covering: 'tent-fabric',
      room: { kind: 'schedule', day: 19, night: 15.5, dayFrom: '07:00', dayTo: '22:00' },
      leakage: 5,
      fan: { flow: 60, watts: 4, onAt: 28, band: 3 },
      floor: 'raised',
      lamps: [
        {
          id: 'panel',
          name: 'LED panel',
          technology: 'led-white',
          watts: 75,
          efficacy: 2.6,
          count: 1,
          height: 0.4,
          length: 0.5,
          width: 0.5,
          on: '07:00',
          off: '19:00',
          price: 110,
        },
      ],
      growingArea: 0.56,
      wallReflectance: 0.88,
    },
    {
      id: 'dim-tent',
      name: 'Old tent under the stairs',
      shape: { kind: 'tent', length: 0.8, width: 0.8, height: 1.6 },
      covering: 'tent-fabric',
      room: { kind: 'schedule', day: 19, night: 15.5, dayFrom: '07:00', dayTo: '22:00' },
      leakage: 5,
      floor: 'raised',
      lamps: [
        {
          id: 'tubes',
          name: 'Two LED tubes',
          technology: 'led-older',
          watts: 14,
          efficacy: 1.6,
          count: 2,
          height: 0.4,
          length: 0.55,
          width: 0.04,
          on: '08:00',
          off: '18:00',
          price: 35,
        },
      ],
      growingArea: 0.56,
      wallReflectance: 0.75,
    },
    {
      id: 'window',
      name: 'Landing window',
      shape: { kind: 'window-bay', width: 1.3, height: 1.2, depth: 0.35, azimuth: 175 },
      covering: 'glass-4',
      room: { kind: 'schedule', day: 18.5, night: 13, dayFrom: '06:30', dayTo: '22:30' },
      leakage: 0.5,
      frameShare: 0.2,
      floor: 'raised',
      growingArea: 0.4,
      potMass: 25,
      wallReflectance: 0.6,
    },
  ],
  lots: [
    { id: 'pelargoniums', name: 'Pelargoniums from cuttings', group: 'pelargonium', place: 'lean-to', area: 1.4 },
    { id: 'lemons', name: 'Two lemons in tubs', group: 'citrus', place: 'lean-to', area: 1 },
    { id: 'cacti', name: 'Seed-raised mammillarias', group: 'desert-cacti', place: 'lean-to', area: 0.8, watering: 'dry' },
    { id: 'houseleeks', name: 'Houseleek pans', group: 'sempervivum', place: 'tunnel', area: 2.5 },
    { id: 'agaves', name: 'Agaves', group: 'agave', place: 'tunnel', area: 2 },
    { id: 'echeverias', name: 'Echeverias', group: 'echeveria', place: 'bright-tent', area: 0.28 },
    { id: 'aeoniums', name: 'Aeoniums', group: 'aeonium', place: 'bright-tent', area: 0.2 },
    { id: 'spare-echeverias', name: 'Spare echeverias', group: 'echeveria', place: 'dim-tent', area: 0.25 },
    { id: 'haworthias', name: 'Haworthias', group: 'haworthia', place: 'window', area: 0.15 },
    { id: 'window-echeverias', name: 'Echeverias on the sill', group: 'echeveria', place: 'window', area: 0.12 },
    { id: 'conophytums', name: 'Conophytums', group: 'conophytum', place: 'bright-tent', area: 0.06 },
  ],
};

function checked(): Plan {
  const reading = parsePlan(description);
  if (reading.ok) return reading.plan;
  throw new Error(
    `expected a valid demonstration plan, got ${reading.problems.map((each) => `${each.path}: ${each.message}`).join('; ')}`,
  );
}

/** The plan a first start opens. */
export const demonstrationPlan: Plan = checked();
