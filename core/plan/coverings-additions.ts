import { figure, negligible, practice, whole } from './covering.ts';
import type { Covering, CoveringUse, Figure } from './covering.ts';

const cloth = figure(1.5, 'refractive index; not used for porous cloth', 'high');
const estimate = 'estimate; no published value found';

interface LayerNumbers {
  readonly use: CoveringUse;
  readonly resistance: Figure;
  readonly inside: Figure;
  readonly outside: Figure;
  readonly longWave: Figure;
  readonly light: Figure;
  readonly reflectance: Figure;
  readonly curveLayers?: 0 | 1 | 2;
  readonly airShare: Figure;
  readonly price: number;
  readonly life: number;
}

/** A layer of cloth or film from its numbers: the sun is passed as light is. */
export function layer(id: string, name: string, numbers: LayerNumbers): Covering {
  return {
    id,
    name,
    use: numbers.use,
    resistance: numbers.resistance,
    emissivityInside: numbers.inside,
    emissivityOutside: numbers.outside,
    longWaveTransmittance: numbers.longWave,
    optics: {
      kind: 'measured',
      normalTransmittance: numbers.light,
      parTransmittance: numbers.light,
      reflectance: numbers.reflectance,
      refractiveIndex: cloth,
      curveLayers: numbers.curveLayers ?? 0,
    },
    heatCapacity: negligible,
    airShare: numbers.airShare,
    price: practice(numbers.price),
    life: practice(numbers.life),
  };
}

const plastic = figure(0.6, 'thin plastic with air cells, from memory', 'low');

/** Linings fixed inside the cover. */
const linings: readonly Covering[] = [
  layer('bubble-lining', 'Bubble lining', {
    use: 'lining',
    resistance: figure(
      0.08,
      'glass 5.5 to about 4.2 gives 0.056 (orchid society table 2001); large bubbles claimed 0.1 and more',
      'low',
    ),
    inside: plastic,
    outside: plastic,
    longWave: figure(0.25, 'two or three films of thin polythene, estimate', 'low'),
    light: figure(
      0.86,
      'one layer 0.83–0.90 of what was there, from memory; no published value found',
      'low',
    ),
    reflectance: figure(0.1, estimate, 'low'),
    curveLayers: 2,
    airShare: figure(0.7, 'covers gaps between panes; common practice, no source', 'low'),
    price: 1.5,
    life: 3,
  }),
  layer('film-lining', 'Second skin of polythene film', {
    use: 'lining',
    resistance: figure(
      0.13,
      'air gap of some centimetres with one film, ISO 6946 unventilated 0.15–0.18 less leaks',
      'low',
    ),
    inside: figure(0.35, 'polyethylene film, from memory', 'medium'),
    outside: figure(0.35, 'polyethylene film, from memory', 'medium'),
    longWave: figure(0.55, 'polyethylene film, from memory', 'medium'),
    light: figure(0.87, 'polyethylene single new 0.80–0.90 (extension tables)', 'medium'),
    reflectance: figure(0.1, 'one plate of index 1.51 with haze, derived', 'medium'),
    curveLayers: 1,
    airShare: figure(0.6, 'seals a leaky cover in part; common practice, no source', 'low'),
    price: 0.8,
    life: 3,
  }),
];

/** Screens drawn at night. */
const screens: readonly Covering[] = [
  layer('aluminised-screen', 'Aluminised night screen', {
    use: 'screen',
    resistance: figure(0.12, 'air between screen and cover, leaks at the edges allowed for; estimate', 'low'),
    inside: figure(0.45, 'strips of aluminium and clear film, woven, from memory', 'low'),
    outside: figure(0.25, 'aluminium side, woven, from memory', 'low'),
    longWave: figure(0.08, 'gaps of the weave, estimate', 'low'),
    light: figure(0.4, 'energy screens of half aluminium 0.35–0.45, from memory', 'low'),
    reflectance: figure(0.45, estimate, 'low'),
    airShare: figure(0.6, 'closes the roof space off in part; common practice, no source', 'low'),
    price: 7,
    life: 8,
  }),
  layer('woven-screen', 'Thin woven night screen', {
    use: 'screen',
    resistance: figure(
      0.09,
      'single glass 6.2 to 4.0 with a curtain (ASAE EP406, from memory) gives 0.089',
      'medium',
    ),
    inside: figure(0.85, 'polyester or acrylic cloth, from memory', 'medium'),
    outside: figure(0.85, 'polyester or acrylic cloth, from memory', 'medium'),
    longWave: figure(0.12, 'gaps of the weave, estimate', 'low'),
    light: figure(0.75, 'clear woven screens 0.65–0.85, from memory', 'low'),
    reflectance: figure(0.15, estimate, 'low'),
    airShare: figure(0.7, 'closes the roof space off in part; common practice, no source', 'low'),
    price: 4,
    life: 6,
  }),
];

function fleece(
  grams: number,
  resistance: number,
  longWave: number,
  light: Figure,
  airShare: number,
  price: number,
): Covering {
  const open = figure(longWave, 'polypropylene non-woven, gaps and thin fibres; estimate', 'low');
  const emissivity = figure(0.9 - longWave, 'what is neither passed nor reflected (0.1); derived', 'low');
  return layer(`fleece-${grams}`, `Frost fleece ${grams} g/m²`, {
    use: 'fleece',
    resistance: figure(resistance, 'fleece of 17–30 g m⁻² as a layer 0.02–0.05, from memory', 'low'),
    inside: emissivity,
    outside: emissivity,
    longWave: open,
    light,
    reflectance: figure(
      Math.max(0.05, (1 - light.value) * 0.8),
      'white cloth reflects most of what it holds back, estimate',
      'low',
    ),
    airShare: figure(airShare, 'porous cloth over plants; estimate', 'low'),
    price,
    life: 3,
  });
}

/** Fleeces laid over the plants. */
const fleeces: readonly Covering[] = [
  fleece(17, 0.03, 0.45, figure(0.85, '17–19 g m⁻²: WSU Extension FS089E', 'high'), 0.5, 0.4),
  fleece(
    30,
    0.04,
    0.35,
    figure(0.7, '31–68 g m⁻² 0.30–0.50 (WSU FS089E) against 0.70 at 42 g m⁻²: sources disagree', 'low'),
    0.4,
    0.7,
  ),
  fleece(60, 0.06, 0.2, figure(0.45, '31–68 g m⁻²: 0.30–0.50 (WSU Extension FS089E)', 'medium'), 0.3, 1.3),
];

/** Layers added inside the cover or over the plants. */
export const additions: readonly Covering[] = [...linings, ...screens, ...fleeces];

/** Nothing at all: the open side of a shelf or a window bay. */
export const open: Covering = {
  id: 'open',
  name: 'Open to the room',
  use: 'open',
  resistance: negligible,
  emissivityInside: negligible,
  emissivityOutside: negligible,
  longWaveTransmittance: figure(1, 'nothing in the way', 'high'),
  optics: {
    kind: 'measured',
    normalTransmittance: figure(1, 'nothing in the way', 'high'),
    parTransmittance: figure(1, 'nothing in the way', 'high'),
    reflectance: negligible,
    refractiveIndex: figure(1, 'refractive index of air', 'high'),
    curveLayers: 0,
  },
  heatCapacity: negligible,
  airShare: whole,
  price: figure(0, 'nothing is bought', 'high'),
  life: practice(1),
};
