import { figure, negligible, practice, whole } from './covering.ts';
import type { Covering, Figure } from './covering.ts';

const polythene = figure(1.51, 'refractive index of low-density polyethylene', 'high');
const thin = figure(0.0006, '0.2 mm ÷ 0.33 W m⁻¹ K⁻¹, derived', 'high');
const farmFilm = 'polyethylene greenhouse film, dry, 0.15–0.2 mm: handbook spread, from memory';
const heatFilm = 'polyethylene with infra-red absorber: long-wave transmittance 0.15–0.35, from memory';

interface FilmNumbers {
  readonly resistance: Figure;
  readonly emissivity: Figure;
  readonly longWave: Figure;
  readonly solar: Figure;
  readonly light: Figure;
  readonly reflectance: Figure;
  readonly curveLayers: 1 | 2;
  readonly price: number;
  readonly life: number;
}

function film(id: string, name: string, numbers: FilmNumbers): Covering {
  return {
    id,
    name,
    use: 'film',
    resistance: numbers.resistance,
    emissivityInside: numbers.emissivity,
    emissivityOutside: numbers.emissivity,
    longWaveTransmittance: numbers.longWave,
    optics: {
      kind: 'measured',
      normalTransmittance: numbers.solar,
      parTransmittance: numbers.light,
      reflectance: numbers.reflectance,
      refractiveIndex: polythene,
      curveLayers: numbers.curveLayers,
    },
    heatCapacity: negligible,
    airShare: whole,
    price: practice(numbers.price),
    life: practice(numbers.life),
  };
}

const clearLight = figure(0.87, 'polyethylene single new 0.80–0.90 (extension tables)', 'medium');

/** Plastic films, single and double. */
export const films: readonly Covering[] = [
  film('polythene', 'Polythene film, single', {
    resistance: thin,
    emissivity: figure(0.35, farmFilm, 'medium'),
    longWave: figure(0.55, farmFilm, 'medium'),
    solar: figure(0.86, 'single new film 0.80–0.90 (extension tables)', 'medium'),
    light: clearLight,
    reflectance: figure(0.1, 'one plate of index 1.51 with haze, derived', 'medium'),
    curveLayers: 1,
    price: 1.2,
    life: 4,
  }),
  film('thermal-polythene', 'Thermal (infra-red holding) polythene, single', {
    resistance: thin,
    emissivity: figure(0.65, heatFilm, 'medium'),
    longWave: figure(0.25, heatFilm, 'medium'),
    solar: figure(0.83, 'a few points below clear film, from memory', 'medium'),
    light: figure(0.85, 'a few points below clear film, from memory', 'medium'),
    reflectance: figure(0.11, 'one plate of index 1.51 with haze, derived', 'medium'),
    curveLayers: 1,
    price: 1.8,
    life: 5,
  }),
  film('double-polythene', 'Double polythene, inflated', {
    resistance: figure(
      0.167,
      'set so that the whole, long-wave included, has U 4.0 (ASAE EP406), derived',
      'medium',
    ),
    emissivity: figure(0.35, farmFilm, 'medium'),
    longWave: figure(0.3, 'two films of 0.55 with a reflectance of 0.1, derived', 'medium'),
    solar: figure(0.76, 'double inflated 0.76–0.78 (extension tables, from memory)', 'medium'),
    light: figure(0.77, 'double inflated 0.76–0.78 (extension tables, from memory)', 'medium'),
    reflectance: figure(0.17, 'two plates of index 1.51 with haze, derived', 'medium'),
    curveLayers: 2,
    price: 2.8,
    life: 4,
  }),
];
