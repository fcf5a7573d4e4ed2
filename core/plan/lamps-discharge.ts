import { figure, practice } from './covering.ts';
import { handbookBalance, hotBulb, photometry } from './lamp-technology.ts';
import type { LampTechnology } from './lamp-technology.ts';

const sodiumLux = figure(82, `high-pressure sodium, ${photometry}`, 'high');
const sodiumPhotons = figure(4.98, `high-pressure sodium, ${photometry}`, 'high');
const sodiumRadiation = figure(
  0.37,
  `400 W high-pressure sodium: infra-red 37 %; ${handbookBalance}`,
  'medium',
);
const electronic = (value: number) => figure(value, 'electronic ballast 5–6 %, from memory', 'medium');

/** High-pressure discharge lamps, best first. */
export const dischargeLamps: readonly LampTechnology[] = [
  {
    id: 'hps-electronic',
    name: 'High-pressure sodium, double-ended, electronic ballast',
    efficacy: { low: 1.5, typical: 1.68, high: 1.72, source: '1.66–1.70 (Nelson & Bugbee 2014)' },
    luxPerMicromole: sodiumLux,
    photonsPerJoule: sodiumPhotons,
    infraredShare: sodiumRadiation,
    infraredAbsorptance: hotBulb,
    nearest: practice(0.3),
    life: figure(10000, 'common practice, no source', 'low'),
    maintenance: figure(0.9, '0.90 at 12,000 h', 'medium'),
    dimmer: 'discharge',
    driverLoss: electronic(0.055),
    pricePerWatt: practice(0.4),
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
    photonsPerJoule: figure(4.75, 'between metal halide 4.59 and warmer light 4.9; derived', 'low'),
    infraredShare: figure(0.33, `as metal halide; ${handbookBalance}`, 'low'),
    infraredAbsorptance: hotBulb,
    nearest: practice(0.3),
    life: figure(15000, 'common practice, no source', 'low'),
    maintenance: figure(0.85, 'common practice, no source', 'low'),
    dimmer: 'discharge',
    driverLoss: electronic(0.06),
    pricePerWatt: practice(0.6),
  },
  {
    id: 'hps-screw-electronic',
    name: 'High-pressure sodium, screw base, electronic ballast',
    efficacy: {
      low: 1.15,
      typical: 1.3,
      high: 1.4,
      source:
        'electronic ballast and a good reflector +27 % on 1.02 with a magnetic one (Nelson & Bugbee 2013, 2014); derived',
    },
    luxPerMicromole: sodiumLux,
    photonsPerJoule: sodiumPhotons,
    infraredShare: sodiumRadiation,
    infraredAbsorptance: hotBulb,
    nearest: practice(0.3),
    life: figure(20000, 'rated 24,000 h', 'medium'),
    maintenance: figure(0.8, '0.80 at 24,000 h', 'medium'),
    dimmer: 'discharge',
    driverLoss: electronic(0.055),
    pricePerWatt: practice(0.35),
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
    luxPerMicromole: sodiumLux,
    photonsPerJoule: sodiumPhotons,
    infraredShare: sodiumRadiation,
    infraredAbsorptance: hotBulb,
    nearest: practice(0.3),
    life: figure(20000, 'rated 24,000 h', 'medium'),
    maintenance: figure(0.8, '0.80 at 24,000 h', 'medium'),
    dimmer: 'discharge',
    driverLoss: figure(0.13, '400 W lamps draw 460 W', 'high'),
    pricePerWatt: practice(0.25),
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
    luxPerMicromole: figure(71, `metal halide, ${photometry}`, 'high'),
    photonsPerJoule: figure(4.59, `metal halide, ${photometry}`, 'high'),
    infraredShare: figure(0.32, `400 W metal halide: infra-red 32 %; ${handbookBalance}`, 'medium'),
    infraredAbsorptance: hotBulb,
    nearest: practice(0.3),
    life: figure(10000, 'common practice, no source', 'low'),
    maintenance: figure(0.75, '−25…−30 % over 8,000–10,000 h', 'medium'),
    dimmer: 'discharge',
    driverLoss: figure(0.13, '400 W lamps draw 458–461 W', 'high'),
    pricePerWatt: practice(0.3),
  },
];

/** Filament lamps. */
export const filamentLamps: readonly LampTechnology[] = [
  {
    id: 'incandescent',
    name: 'Incandescent',
    efficacy: { low: 0.2, typical: 0.25, high: 0.3, source: '12–15 lm W⁻¹ ÷ 50 lm s µmol⁻¹, derived' },
    luxPerMicromole: figure(50, `incandescent, ${photometry}`, 'high'),
    photonsPerJoule: figure(5, `incandescent, ${photometry}`, 'high'),
    infraredShare: figure(0.72, `100 W: infra-red 72 %; ${handbookBalance}`, 'medium'),
    infraredAbsorptance: figure(
      0.4,
      'filament of 2,800 K over a leaf that takes 0.15 below 1.3 µm and most beyond; derived',
      'low',
    ),
    nearest: practice(0.3),
    life: figure(1000, 'common practice, no source', 'low'),
    maintenance: figure(0.9, 'common practice, no source', 'low'),
    dimmer: 'filament',
    driverLoss: figure(0, 'no driver', 'high'),
    pricePerWatt: practice(0.03),
  },
];
