import type { Place } from '../plan/schema.ts';
import type { ShapeOf } from '../plan/shapes.ts';
import { wallMaterials, wallNumbers } from '../plan/coverings-walls.ts';

/** Heat capacity of water [J kg⁻¹ K⁻¹] and of moist potting mix with pots [J kg⁻¹ K⁻¹] (half water by mass; de Vries 1963, derived). */
const waterHeat = 4186;
const mixHeat = 2400;

/** Floor build-ups: conductivity [W m⁻¹ K⁻¹] and volumetric capacity [J m⁻³ K⁻¹] (soil and ground: ISO 13370 clay; slab: ISO 10456 concrete 2000; gravel: dry, de Vries 1963). */
export const floorKinds = {
  soil: { conductivity: 1.5, capacity: 3.0e6, top: 0.1 },
  slab: { conductivity: 1.35, capacity: 2.0e6, top: 0.1 },
  'insulated-slab': { conductivity: 1.35, capacity: 2.0e6, top: 0.1 },
  gravel: { conductivity: 0.7, capacity: 1.6e6, top: 0.1 },
  /** A shelf, tray or boarded floor in the open air: 18 mm board (ISO 10456 timber 500). */
  raised: { conductivity: 0.13, capacity: 0.8e6, top: 0.018 },
} as const;

export function potCapacity(place: Place): number {
  return Math.max(500, place.potMass * place.growingArea * mixHeat);
}

/** Heat capacity of all water containers [J K⁻¹] and their face [m²], each an upright cylinder half as high again as wide. */
export function waterStores(place: Place): { capacity: number; area: number } {
  let capacity = 0;
  let area = 0;
  for (const store of place.water) {
    const volume = store.litres / 1000;
    const radius = Math.cbrt(volume / (3 * Math.PI));
    area += store.count * (Math.PI * radius * radius + 2 * Math.PI * radius * 3 * radius);
    capacity += store.count * store.litres * waterHeat;
  }
  return { capacity, area };
}

/** Half resistance [m² K W⁻¹] and capacity [J m⁻² K⁻¹] of a lean-to's back wall. */
export function backWall(shape: ShapeOf<'lean-to'>): { half: number; capacity: number } {
  const numbers = wallNumbers(wallMaterials[shape.wall.material], shape.wall.thickness);
  return { half: numbers.resistance / 2, capacity: numbers.heatCapacity };
}

/**
 * Conductance of a ground floor between inside and the year's mean outdoors [W K⁻¹]: ISO 13370:2017, slab on
 * ground, with B' = A / (P/2) and total equivalent thickness dt = w + λ (Rsi + Rse), Rsi 0.17, Rse 0.04.
 */
export function groundFloorConductance(
  area: number,
  perimeter: number,
  wall: number,
  conductivity: number,
): number {
  const characteristic = area / (0.5 * perimeter);
  const thickness = wall + conductivity * (0.17 + 0.04);
  return area * groundU(characteristic, thickness, conductivity);
}

/** U-value of a slab on ground [W m⁻² K⁻¹] from characteristic dimension and equivalent thickness [m] (ISO 13370). */
export function groundU(characteristic: number, thickness: number, conductivity: number): number {
  if (thickness < characteristic) {
    const ratio = (Math.PI * characteristic) / thickness;
    return ((2 * conductivity) / (Math.PI * characteristic + thickness)) * Math.log(ratio + 1);
  }
  return conductivity / (0.457 * characteristic + thickness);
}
