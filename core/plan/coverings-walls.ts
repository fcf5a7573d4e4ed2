import { figure, negligible, practice, whole } from './covering.ts';
import type { Covering, Figure } from './covering.ts';

/** What a wall is made of: conductivity [W m⁻¹ K⁻¹], density [kg m⁻³], specific heat [J kg⁻¹ K⁻¹]. */
export interface WallMaterial {
  readonly id: 'brick' | 'stone' | 'insulated' | 'timber';
  readonly conductivity: Figure;
  readonly density: Figure;
  readonly specificHeat: Figure;
}

/** Wall materials by name; a lean-to's wall gives its own thickness. */
export const wallMaterials: Readonly<Record<WallMaterial['id'], WallMaterial>> = {
  brick: {
    id: 'brick',
    conductivity: figure(0.77, 'outer-leaf brick, CIBSE Guide A worked example', 'high'),
    density: figure(1700, 'CIBSE Guide A brickwork, from memory', 'medium'),
    specificHeat: figure(800, 'CIBSE Guide A brickwork, from memory', 'medium'),
  },
  stone: {
    id: 'stone',
    conductivity: figure(1.7, 'limestone and sandstone 1.1–2.3 (ISO 10456, from memory)', 'medium'),
    density: figure(2200, 'ISO 10456, from memory', 'medium'),
    specificHeat: figure(1000, 'ISO 10456', 'medium'),
  },
  insulated: {
    id: 'insulated',
    conductivity: figure(0.04, 'expanded polystyrene 0.0355–0.04, boards on both faces ignored', 'high'),
    density: figure(80, 'foam 20 kg m⁻³ with boards on both faces, derived for 100 mm', 'low'),
    specificHeat: figure(1470, 'expanded polystyrene (ASHRAE list)', 'medium'),
  },
  timber: {
    id: 'timber',
    conductivity: figure(0.13, 'timber of 500 kg m⁻³ (ISO 10456)', 'high'),
    density: figure(500, 'ISO 10456', 'high'),
    specificHeat: figure(1600, 'ISO 10456', 'high'),
  },
};

const dull = figure(0.9, 'non-metallic building surfaces, EN ISO 6946', 'high');

/** Resistance [m² K W⁻¹] and heat capacity [J m⁻² K⁻¹] of a wall of one material and a thickness [m]. */
export function wallNumbers(
  material: WallMaterial,
  thickness: number,
): { resistance: number; heatCapacity: number } {
  return {
    resistance: thickness / material.conductivity.value,
    heatCapacity: thickness * material.density.value * material.specificHeat.value,
  };
}

function wall(
  id: string,
  name: string,
  material: WallMaterial,
  thickness: number,
  absorptance: number,
  price: number,
): Covering {
  const numbers = wallNumbers(material, thickness);
  const how = `${thickness} m of ${material.id}: ${material.conductivity.source}; derived`;
  return {
    id,
    name,
    use: 'wall',
    resistance: figure(numbers.resistance, how, material.conductivity.confidence),
    emissivityInside: dull,
    emissivityOutside: dull,
    longWaveTransmittance: figure(0, 'opaque', 'high'),
    optics: {
      kind: 'opaque',
      absorptance: figure(absorptance, 'building surfaces by colour, from memory', 'medium'),
    },
    heatCapacity: figure(numbers.heatCapacity, `${how} with ${material.density.source}`, 'medium'),
    airShare: whole,
    price: practice(price),
    life: practice(40),
  };
}

const tentFabric: Covering = {
  id: 'tent-fabric',
  name: 'Tent fabric, aluminised inside',
  use: 'fabric',
  resistance: figure(
    0.01,
    'nylon cloth with a film, some tenths of a millimetre, and caught air; estimate',
    'low',
  ),
  emissivityInside: figure(0.4, 'embossed aluminised film under clear plastic 0.3–0.5, estimate', 'low'),
  emissivityOutside: dull,
  longWaveTransmittance: figure(0, 'metallised, closed', 'high'),
  optics: { kind: 'opaque', absorptance: figure(0.85, 'dark cloth, from memory', 'medium') },
  heatCapacity: negligible,
  airShare: whole,
  price: practice(12),
  life: practice(8),
};

/** Opaque walls and fabrics. */
export const walls: readonly Covering[] = [
  tentFabric,
  wall('brick-102', 'Half-brick wall 102 mm', wallMaterials.brick, 0.102, 0.7, 60),
  wall('brick-215', 'Brick wall 215 mm', wallMaterials.brick, 0.215, 0.7, 110),
  wall('stone-400', 'Stone wall 400 mm', wallMaterials.stone, 0.4, 0.65, 200),
  wall('timber-board', 'Timber boards 20 mm', wallMaterials.timber, 0.02, 0.6, 25),
  wall('insulated-panel', 'Insulated panel 50 mm', wallMaterials.insulated, 0.05, 0.5, 35),
];
