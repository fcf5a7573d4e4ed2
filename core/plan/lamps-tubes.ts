import { figure, practice } from './covering.ts';
import { handbookBalance, photometry, warmFace } from './lamp-technology.ts';
import type { LampTechnology } from './lamp-technology.ts';

const coolWhite = figure(74, `cool-white fluorescent, ${photometry}`, 'high');
const coolWhitePhotons = figure(4.59, `cool-white fluorescent, ${photometry}`, 'high');
const tubeRadiation = figure(
  0.18,
  `infra-red 31 % of a cool white tube, half of it down and a part of the rest again from the warm reflector; derived, ${handbookBalance}`,
  'low',
);
const maintenance = figure(0.9, 'fluorescent −5…−10 % over 8,000–10,000 h', 'medium');

/** Fluorescent lamps, best first. */
export const fluorescentLamps: readonly LampTechnology[] = [
  {
    id: 'induction',
    name: 'Induction fluorescent',
    efficacy: {
      low: 0.75,
      typical: 0.9,
      high: 0.95,
      source:
        'best fluorescent 0.95, an induction fitting (Nelson & Bugbee 2014); lower ones common practice',
    },
    luxPerMicromole: figure(74, `as cool-white fluorescent, ${photometry}`, 'medium'),
    photonsPerJoule: figure(4.59, `as cool-white fluorescent, ${photometry}`, 'medium'),
    infraredShare: tubeRadiation,
    infraredAbsorptance: warmFace,
    nearest: practice(0.2),
    life: figure(60000, 'rated 60,000–100,000 h, from memory', 'low'),
    maintenance: figure(0.75, '−25…−30 % over 60,000 h, from memory', 'low'),
    dimmer: 'fluorescent',
    driverLoss: figure(0.06, 'electronic ballast 5–6 %, from memory', 'medium'),
    pricePerWatt: practice(0.9),
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
    luxPerMicromole: coolWhite,
    photonsPerJoule: coolWhitePhotons,
    infraredShare: tubeRadiation,
    infraredAbsorptance: warmFace,
    nearest: practice(0.1),
    life: figure(20000, 'common practice, no source', 'low'),
    maintenance,
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
    luxPerMicromole: coolWhite,
    photonsPerJoule: coolWhitePhotons,
    infraredShare: tubeRadiation,
    infraredAbsorptance: warmFace,
    nearest: practice(0.1),
    life: figure(15000, 'common practice, no source', 'low'),
    maintenance,
    dimmer: 'fluorescent',
    driverLoss: figure(
      0.12,
      '40 W lamps with 8–10 W on a magnetic ballast, less on an electronic one',
      'medium',
    ),
    pricePerWatt: practice(0.4),
  },
  {
    id: 'compact-fluorescent',
    name: 'Compact fluorescent with a screw base',
    efficacy: {
      low: 0.6,
      typical: 0.7,
      high: 0.85,
      source:
        '50–65 lm W⁻¹ on the packing (common practice) ÷ 75 lm s µmol⁻¹, less where it shades itself; derived',
    },
    luxPerMicromole: figure(75, 'three-band phosphors 2,700–6,500 K, 72–82, from memory', 'low'),
    photonsPerJoule: figure(4.65, 'three-band phosphors 2,700–6,500 K, 4.45–4.75; derived', 'low'),
    infraredShare: figure(0.3, `as a bare tube, 31 %; ${handbookBalance}`, 'low'),
    infraredAbsorptance: warmFace,
    nearest: practice(0.15),
    life: figure(8000, 'rated 8,000–10,000 h, common practice', 'low'),
    maintenance: figure(0.85, 'common practice, no source', 'low'),
    dimmer: 'fluorescent',
    driverLoss: figure(0.12, 'ballast in the base, from memory', 'low'),
    pricePerWatt: practice(0.25),
  },
];
