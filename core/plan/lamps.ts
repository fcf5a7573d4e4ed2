import { figure, practice } from './covering.ts';
import type { Figure } from './covering.ts';

/** How electric input follows the light when a lamp is dimmed (`lampInputShare` in light/lamps.ts). */
export type DimmerKind = 'led' | 'fluorescent' | 'discharge' | 'filament';

/** A kind of lamp, whole fitting with its driver or ballast. */
export interface LampTechnology {
  readonly id: string;
  readonly name: string;
  /** Photons 400–700 nm per joule at the plug [µmol J⁻¹]: low, typical and high of what is sold. */
  readonly efficacy: {
    readonly low: number;
    readonly typical: number;
    readonly high: number;
    readonly source: string;
  };
  /** Lux for one µmol m⁻² s⁻¹ of this lamp's light. */
  readonly luxPerMicromole: Figure;
  /** Burning life [h], and the share of the first light left towards its end, 0–1. */
  readonly life: Figure;
  readonly maintenance: Figure;
  readonly dimmer: DimmerKind;
  /** Share of the electric input lost in a driver or ballast that may stand outside, 0–1. */
  readonly driverLoss: Figure;
  /** Purchase price a watt, in the plan's currency. */
  readonly pricePerWatt: Figure;
}

const handbook = 'Thimijan & Heins 1983, HortScience 18:818';
const ledLight = figure(68, 'white LED 3,500–5,000 K, 65–72, from memory', 'medium');
const ledLife = figure(50000, 'makers’ ratings 50,000–60,000 h (Paucek et al. 2020)', 'medium');
const ledMaintenance = figure(0.9, '−10 % at 45,000 h (Paucek et al. 2020)', 'high');
const ledDriver = figure(0.07, 'LED driver 90–95 %, from memory', 'medium');

/** Lamp kinds, best first. A lamp in a plan carries its own watts and efficacy; these are where to start. */
export const lampTechnologies: readonly LampTechnology[] = [
  {
    id: 'led-white',
    name: 'White LED, recent',
    efficacy: {
      low: 2.5,
      typical: 2.7,
      high: 2.9,
      source:
        'listing threshold 2.3 and survey 2–3 (Paucek et al. 2020); recent fittings 2.5–2.9, common practice',
    },
    luxPerMicromole: ledLight,
    life: ledLife,
    maintenance: ledMaintenance,
    dimmer: 'led',
    driverLoss: ledDriver,
    pricePerWatt: practice(1.2),
  },
  {
    id: 'led-older',
    name: 'White LED, older or cheap',
    efficacy: {
      low: 1.2,
      typical: 1.6,
      high: 1.9,
      source: 'best fittings of 2014 1.66–1.70 (Nelson & Bugbee 2014); first listing threshold 1.90',
    },
    luxPerMicromole: ledLight,
    life: figure(30000, 'common practice, no source', 'low'),
    maintenance: figure(0.8, 'between −10 % and −30 % (Paucek et al. 2020)', 'medium'),
    dimmer: 'led',
    driverLoss: figure(0.1, 'LED driver 90–95 %, from memory', 'medium'),
    pricePerWatt: practice(0.7),
  },
  {
    id: 'led-red-blue',
    name: 'Red and blue LED',
    efficacy: {
      low: 2.4,
      typical: 3,
      high: 3.6,
      source: 'limit of blue and red 4.1 (Kusuma, Pattison & Bugbee 2020), fittings 2.4–3.6 common practice',
    },
    luxPerMicromole: figure(
      8,
      '683 lm W⁻¹ × V(λ) ÷ µmol J⁻¹: 7.6 at 660 nm, 6.9 at 450 nm, a little more with their spread; derived',
      'medium',
    ),
    life: ledLife,
    maintenance: ledMaintenance,
    dimmer: 'led',
    driverLoss: ledDriver,
    pricePerWatt: practice(1.5),
  },
  {
    id: 't5-fluorescent',
    name: 'T5 fluorescent',
    efficacy: {
      low: 0.75,
      typical: 0.8,
      high: 0.85,
      source: 'no citable figure for the fitting; between T8 0.84 bare and reflector losses; common practice',
    },
    luxPerMicromole: figure(74, `cool-white fluorescent, ${handbook}`, 'high'),
    life: figure(20000, 'common practice, no source', 'low'),
    maintenance: figure(0.9, 'fluorescent −5…−10 % over 8,000–10,000 h', 'medium'),
    dimmer: 'fluorescent',
    driverLoss: figure(0.1, 'electronic two-lamp ballast, from memory', 'medium'),
    pricePerWatt: practice(0.5),
  },
  {
    id: 't8-fluorescent',
    name: 'T8 fluorescent',
    efficacy: {
      low: 0.65,
      typical: 0.75,
      high: 0.84,
      source: 'T8 0.84 (Nelson & Bugbee 2014, from memory), less with a plain reflector',
    },
    luxPerMicromole: figure(74, `cool-white fluorescent, ${handbook}`, 'high'),
    life: figure(15000, 'common practice, no source', 'low'),
    maintenance: figure(0.9, 'fluorescent −5…−10 % over 8,000–10,000 h', 'medium'),
    dimmer: 'fluorescent',
    driverLoss: figure(
      0.12,
      '40 W lamps with 8–10 W on a magnetic ballast, less on an electronic one',
      'medium',
    ),
    pricePerWatt: practice(0.4),
  },
  {
    id: 'hps-electronic',
    name: 'High-pressure sodium, double-ended, electronic ballast',
    efficacy: { low: 1.5, typical: 1.68, high: 1.72, source: '1.66–1.70 (Nelson & Bugbee 2014)' },
    luxPerMicromole: figure(82, `high-pressure sodium, ${handbook}`, 'high'),
    life: figure(10000, 'common practice, no source', 'low'),
    maintenance: figure(0.9, '0.90 at 12,000 h', 'medium'),
    dimmer: 'discharge',
    driverLoss: figure(0.055, 'electronic ballast 5–6 %, from memory', 'medium'),
    pricePerWatt: practice(0.4),
  },
  {
    id: 'hps-magnetic',
    name: 'High-pressure sodium, screw base, magnetic ballast',
    efficacy: {
      low: 0.94,
      typical: 1.02,
      high: 1.15,
      source: '1.02 (Nelson & Bugbee 2014); 0.94 for 400 W, from memory',
    },
    luxPerMicromole: figure(82, `high-pressure sodium, ${handbook}`, 'high'),
    life: figure(20000, 'rated 24,000 h', 'medium'),
    maintenance: figure(0.8, '0.80 at 24,000 h', 'medium'),
    dimmer: 'discharge',
    driverLoss: figure(0.13, '400 W lamps draw 460 W', 'high'),
    pricePerWatt: practice(0.25),
  },
  {
    id: 'ceramic-metal-halide',
    name: 'Ceramic metal halide',
    efficacy: {
      low: 1.3,
      typical: 1.46,
      high: 1.6,
      source: '1.46 best (Nelson & Bugbee 2014); later fittings somewhat higher, common practice',
    },
    luxPerMicromole: figure(62, '59 at 3,100 K, 65 at 4,200 K, a light-sensor maker’s table', 'high'),
    life: figure(15000, 'common practice, no source', 'low'),
    maintenance: figure(0.85, 'common practice, no source', 'low'),
    dimmer: 'discharge',
    driverLoss: figure(0.06, 'electronic ballast 5–6 %, from memory', 'medium'),
    pricePerWatt: practice(0.6),
  },
  {
    id: 'metal-halide',
    name: 'Metal halide',
    efficacy: {
      low: 0.75,
      typical: 0.9,
      high: 1.1,
      source:
        '36 klm at 400 W is 507 µmol s⁻¹ (71 lm s µmol⁻¹) for 460 W and 0.8 of it leaving the fitting; derived',
    },
    luxPerMicromole: figure(71, `metal halide, ${handbook}`, 'high'),
    life: figure(10000, 'common practice, no source', 'low'),
    maintenance: figure(0.75, '−25…−30 % over 8,000–10,000 h', 'medium'),
    dimmer: 'discharge',
    driverLoss: figure(0.13, '400 W lamps draw 458–461 W', 'high'),
    pricePerWatt: practice(0.3),
  },
  {
    id: 'incandescent',
    name: 'Incandescent',
    efficacy: { low: 0.2, typical: 0.25, high: 0.3, source: '12–15 lm W⁻¹ ÷ 50 lm s µmol⁻¹, derived' },
    luxPerMicromole: figure(50, `incandescent, ${handbook}`, 'high'),
    life: figure(1000, 'common practice, no source', 'low'),
    maintenance: figure(0.9, 'common practice, no source', 'low'),
    dimmer: 'filament',
    driverLoss: figure(0, 'no driver', 'high'),
    pricePerWatt: practice(0.03),
  },
];

const byId: ReadonlyMap<string, LampTechnology> = new Map(lampTechnologies.map((entry) => [entry.id, entry]));

/** The lamp technology of an id; an unknown id is wrong use (the plan was checked before). */
export function lampTechnology(id: string): LampTechnology {
  const found = byId.get(id);
  if (found === undefined) throw new Error(`expected a lamp technology of the catalogue, got ${id}`);
  return found;
}

/** True where the catalogue holds the id. */
export function isLampTechnology(id: string): boolean {
  return byId.has(id);
}
