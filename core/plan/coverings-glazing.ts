import { figure, negligible, practice, whole } from './covering.ts';
import type { Covering, Figure, Optics } from './covering.ts';

const glassEmissivity = figure(0.837, 'EN 673:2011 annex A, uncoated soda-lime glass', 'high');
const glassIndex = figure(1.526, 'Duffie & Beckman ch. 5, glass', 'high');
const opaqueToHeat = figure(
  0,
  'glass passes no long-wave beyond about 3 µm (Duffie & Beckman ch. 5)',
  'high',
);
const sheetEmissivity = figure(
  0.9,
  'smooth plastics 0.85–0.95, heat-transfer handbooks, from memory',
  'medium',
);
const polycarbonateLongWave = figure(0.02, 'polycarbonate sheet below 0.03, from memory', 'medium');

/**
 * Clear float glass, per plate. Glass is not grey, so a fit falls with thickness: 33 m⁻¹ at 3 mm, 28.5 m⁻¹ at 4 mm.
 */
const solarExtinction = {
  thin: figure(33, 'fit to ASHRAE Fundamentals 2005 ch. 31, 3 mm clear, T 0.83 at normal', 'high'),
  usual: figure(28.5, 'fit to the ESP-r optics database, clear 4 mm, T 0.819 at normal', 'high'),
};
const lightExtinction = figure(
  6.5,
  'fit to visible transmittance 0.90 at 3 mm and 0.89 at 4 mm (ASHRAE 2005 ch. 31; ESP-r optics database)',
  'medium',
);

function plates(layers: 1 | 2, thickness: number): Optics {
  return {
    kind: 'slab',
    layers,
    refractiveIndex: glassIndex,
    extinction: thickness < 0.0035 ? solarExtinction.thin : solarExtinction.usual,
    parExtinction: lightExtinction,
    thickness: figure(thickness, 'nominal thickness of one plate', 'high'),
  };
}

function glass(
  id: string,
  name: string,
  resistance: Figure,
  optics: Optics,
  millimetres: number,
  price: number,
): Covering {
  return {
    id,
    name,
    use: 'glazing',
    resistance,
    emissivityInside: glassEmissivity,
    emissivityOutside: glassEmissivity,
    longWaveTransmittance: opaqueToHeat,
    optics,
    heatCapacity: figure(
      millimetres * 1e-3 * 2500 * 750,
      '2,500 kg m⁻³ × 750 J kg⁻¹ K⁻¹ (ISO 10456) × thickness',
      'high',
    ),
    airShare: whole,
    price: practice(price),
    life: practice(30),
  };
}

function sheet(
  id: string,
  name: string,
  uValue: number,
  uSource: string,
  light: number,
  lightSource: string,
  index: Figure,
  price: number,
): Covering {
  return {
    id,
    name,
    use: 'glazing',
    resistance: figure(
      1 / uValue - 0.17,
      `${uSource}: U ${uValue} less ISO 6946 films 0.13 + 0.04`,
      'medium',
    ),
    emissivityInside: sheetEmissivity,
    emissivityOutside: sheetEmissivity,
    longWaveTransmittance: polycarbonateLongWave,
    optics: {
      kind: 'measured',
      normalTransmittance: figure(
        light - 0.03,
        `${lightSource}; solar taken 0.03 below light, from memory`,
        'medium',
      ),
      parTransmittance: figure(light, lightSource, 'medium'),
      reflectance: figure(0.14, 'two plates of the index, Duffie & Beckman eq. 5.1.8, derived', 'medium'),
      refractiveIndex: index,
      curveLayers: 2,
    },
    heatCapacity: negligible,
    airShare: whole,
    price: practice(price),
    life: practice(12),
  };
}

const polycarbonate = figure(1.586, 'refractive index of polycarbonate', 'high');
const acrylic = figure(1.49, 'refractive index of acrylic (PMMA)', 'high');
const sheetLight = 'sheet makers’ tables 0.78–0.82';
const sheetU = 'mean of sheet makers’ tables';

/** Glass and rigid plastic sheets. */
export const glazings: readonly Covering[] = [
  glass(
    'glass-3',
    'Horticultural glass 3 mm',
    figure(0.003, '3 mm ÷ 1.0 W m⁻¹ K⁻¹ (EN 673)', 'high'),
    plates(1, 0.003),
    3,
    18,
  ),
  glass(
    'glass-4',
    'Float glass 4 mm',
    figure(0.004, '4 mm ÷ 1.0 W m⁻¹ K⁻¹ (EN 673)', 'high'),
    plates(1, 0.004),
    4,
    25,
  ),
  glass(
    'double-glass',
    'Sealed double glass 4-16-4',
    figure(0.2, 'EN 673 gap of 16 mm air, 0.19, and two plates of 0.004; derived', 'medium'),
    plates(2, 0.004),
    8,
    70,
  ),
  {
    ...glass(
      'low-e-double-glass',
      'Sealed double glass 4-16-4 with low-emissivity coating',
      figure(
        0.55,
        'EN 673 gap of 16 mm air with a face of emissivity 0.05, 0.54, and two plates; derived',
        'medium',
      ),
      plates(2, 0.004),
      8,
      95,
    ),
    optics: {
      kind: 'measured',
      normalTransmittance: figure(0.58, 'double low-e with air, solar 0.55–0.62, from memory', 'medium'),
      parTransmittance: figure(0.77, 'double low-e with air, light 0.75–0.80, from memory', 'medium'),
      reflectance: figure(0.25, 'double low-e, solar reflectance 0.22–0.28, from memory', 'medium'),
      refractiveIndex: glassIndex,
      curveLayers: 2,
    },
  },
  sheet(
    'twin-wall-4',
    'Twin-wall polycarbonate 4 mm',
    3.9,
    `${sheetU} 3.77–4.1`,
    0.82,
    sheetLight,
    polycarbonate,
    14,
  ),
  sheet(
    'twin-wall-6',
    'Twin-wall polycarbonate 6 mm',
    3.5,
    `${sheetU} 3.33–3.6`,
    0.8,
    sheetLight,
    polycarbonate,
    18,
  ),
  sheet(
    'twin-wall-10',
    'Twin-wall polycarbonate 10 mm',
    3,
    `${sheetU} 2.83–3.2`,
    0.8,
    sheetLight,
    polycarbonate,
    26,
  ),
  sheet(
    'multi-wall-16',
    'Triple-wall polycarbonate 16 mm',
    2.3,
    `${sheetU} 2.1–2.5`,
    0.7,
    'sheet makers’ tables 0.59 (X-structure) to 0.73',
    polycarbonate,
    38,
  ),
  sheet(
    'acrylic-twin-wall',
    'Twin-wall acrylic 16 mm',
    3.2,
    'ASAE EP406 rigid acrylic double-wall, from memory',
    0.85,
    'twin-wall acrylic 0.83–0.90 (extension tables disagree)',
    acrylic,
    60,
  ),
];
