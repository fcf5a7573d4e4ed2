import { figure, practice } from './covering.ts';
import { warmFace } from './lamp-technology.ts';
import type { LampTechnology } from './lamp-technology.ts';

const light = figure(68, 'white LED 3,500–5,000 K, 65–72, from memory', 'medium');
const life = figure(50000, 'makers’ ratings 50,000–60,000 h (Paucek et al. 2020)', 'medium');
const maintenance = figure(0.9, '−10 % at 45,000 h (Paucek et al. 2020)', 'high');
const driver = figure(0.07, 'LED driver 90–95 %, from memory', 'medium');
const cheapDriver = figure(0.1, 'LED driver 90–95 %, from memory', 'medium');

/** Most of an LED's heat leaves by its fins; the face is 40–50 °C and radiates a part of it. */
const face = figure(
  0.1,
  'about a fifth of the heat leaves as radiation of a 45 °C face; estimate, no source',
  'low',
);
const whitePhotons = figure(
  4.8,
  'white LED near 4,000 K, from memory; a chip and two phosphors give the same',
  'medium',
);

/** Lamps of light-emitting diodes, best first. */
export const ledLamps: readonly LampTechnology[] = [
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
    luxPerMicromole: light,
    photonsPerJoule: whitePhotons,
    infraredShare: face,
    infraredAbsorptance: warmFace,
    nearest: practice(0.15),
    life,
    maintenance,
    dimmer: 'led',
    driverLoss: driver,
    pricePerWatt: practice(1.2),
  },
  {
    id: 'led-bars',
    name: 'LED bars, white with red',
    efficacy: {
      low: 2.5,
      typical: 2.8,
      high: 3.2,
      source:
        'limit of white and red 3.4 (Kusuma, Pattison & Bugbee 2020); survey 70 % within 2–3 (Paucek et al. 2020); fittings 2.5–3.2 common practice',
    },
    luxPerMicromole: figure(58, 'white LED with red at 660 nm: 60–53 by the share of red; derived', 'low'),
    photonsPerJoule: figure(4.9, 'white 4.8 with a part at 660 nm, 5.5; derived', 'medium'),
    infraredShare: figure(0.08, 'bars in free air, cooler than a panel; estimate, no source', 'low'),
    infraredAbsorptance: warmFace,
    nearest: practice(0.12),
    life,
    maintenance,
    dimmer: 'led',
    driverLoss: driver,
    pricePerWatt: practice(1.3),
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
    luxPerMicromole: light,
    photonsPerJoule: whitePhotons,
    infraredShare: figure(0.13, 'as for a recent one, with more heat to lose; estimate, no source', 'low'),
    infraredAbsorptance: warmFace,
    nearest: practice(0.2),
    life: figure(30000, 'common practice, no source', 'low'),
    maintenance: figure(0.8, 'between −10 % and −30 % (Paucek et al. 2020)', 'medium'),
    dimmer: 'led',
    driverLoss: cheapDriver,
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
    photonsPerJoule: figure(
      5.17,
      'four fifths of the watts at 660 nm (5.52), one fifth at 450 nm (3.76); derived',
      'medium',
    ),
    infraredShare: figure(0.08, 'less heat than a white one; estimate, no source', 'low'),
    infraredAbsorptance: warmFace,
    nearest: practice(0.2),
    life,
    maintenance,
    dimmer: 'led',
    driverLoss: driver,
    pricePerWatt: practice(1.5),
  },
  {
    id: 'led-tube',
    name: 'LED tube in a fluorescent’s place',
    efficacy: {
      low: 1.5,
      typical: 1.9,
      high: 2.3,
      source: '105–160 lm W⁻¹ on the packing (common practice) ÷ 70 lm s µmol⁻¹; derived',
    },
    luxPerMicromole: figure(70, 'white LED 4,000–6,500 K, 68–74, from memory', 'medium'),
    photonsPerJoule: figure(4.65, 'white LED 4,000–6,500 K, 4.55–4.8, from memory', 'medium'),
    infraredShare: face,
    infraredAbsorptance: warmFace,
    nearest: practice(0.12),
    life: figure(30000, 'common practice, no source', 'low'),
    maintenance: figure(0.8, 'between −10 % and −30 % (Paucek et al. 2020)', 'medium'),
    dimmer: 'led',
    driverLoss: cheapDriver,
    pricePerWatt: practice(0.5),
  },
  {
    id: 'led-bulb',
    name: 'LED bulb with a screw base',
    efficacy: {
      low: 1.1,
      typical: 1.35,
      high: 1.65,
      source: '75–110 lm W⁻¹ on the packing (common practice) ÷ 67 lm s µmol⁻¹; derived',
    },
    luxPerMicromole: figure(67, 'warm white LED 2,700–3,000 K, 64–70, from memory', 'medium'),
    photonsPerJoule: figure(4.9, 'warm white LED 2,700–3,000 K, from memory', 'medium'),
    infraredShare: figure(0.1, 'most of its heat leaves by the base; estimate, no source', 'low'),
    infraredAbsorptance: warmFace,
    nearest: practice(0.2),
    life: figure(15000, 'rated 15,000 h, common practice', 'low'),
    maintenance: figure(0.8, 'common practice, no source', 'low'),
    dimmer: 'led',
    driverLoss: figure(0.12, 'driver in the base, from memory', 'low'),
    pricePerWatt: practice(0.5),
  },
];
