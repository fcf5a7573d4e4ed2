import type { Place } from '../plan/schema.ts';
import type { WaterStore } from '../plan/equipment.ts';

/** Heat capacity of water [J kg⁻¹ K⁻¹], of dry mix with pots and of the water in it (peat and clay; de Vries 1963, derived). */
const waterHeat = 4186;
const dryMixHeat = 950;

/** Share of a moist pot's mass that is water: half (de Vries 1963: peat at half its pores); of a dry one a twentieth (estimate). */
const moistShare = 0.5;
const dryShare = 0.05;

/** Share of mix that evaporates at which the mix counts as moist all through; see the season's `wetnessOf`. */
const moistWetness = 0.12;

/**
 * Heat capacity of pots and mix [J K⁻¹]. `potMass` is the mass of moist pots; where they are held dry the water
 * is gone, and with it most of the capacity.
 * @param wetness share of the mix that evaporates as if wet, 0–1
 */
export function potCapacity(place: Place, wetness: number): number {
  const wet = Math.min(1, Math.max(0, wetness / moistWetness));
  const share = dryShare + (moistShare - dryShare) * wet;
  const dryMass = (1 - moistShare) * place.potMass * place.growingArea;
  const water = (dryMass * share) / (1 - share);
  return Math.max(500, dryMass * dryMixHeat + water * waterHeat);
}

/** Faces through which water of one kind exchanges heat: all of them [m²], and what of it is open water [m²]. */
export interface WaterBody {
  readonly name: string;
  readonly area: number;
  readonly openArea: number;
  readonly capacity: number;
}

/** Depth of water in an open trough [m] (common practice, no source). */
const troughDepth = 0.25;

/** All containers of one kind as one body; the form gives the face to the litres. Bottoms stand on something and do not count. */
export function waterBody(store: WaterStore): WaterBody {
  const volume = store.litres / 1000;
  const { area, open } = faceOf(store.form, volume);
  return {
    name: store.name,
    area: area * store.count,
    openArea: open * store.count,
    capacity: store.count * store.litres * waterHeat,
  };
}

/** Face of one container [m²]: drum half as high again as wide, bottle three times, canister 1 × 1.3 × 1.5, trough 0.25 m deep. */
function faceOf(form: WaterStore['form'], volume: number): { area: number; open: number } {
  const upright = (heightInRadii: number) => {
    const radius = Math.cbrt(volume / (heightInRadii * Math.PI));
    return { area: Math.PI * radius * radius * (1 + 2 * heightInRadii), open: 0 };
  };
  switch (form) {
    case 'drum':
      return upright(3);
    case 'bottle':
      return upright(6);
    case 'canister': {
      const edge = Math.cbrt(volume / 1.95);
      return { area: 8.2 * edge * edge, open: 0 };
    }
    case 'trough': {
      const base = volume / troughDepth;
      return { area: base + 4 * Math.sqrt(base) * troughDepth, open: base };
    }
  }
}

/** A heater full of oil a watt of its power: face [m²], so that it stands 60 K over the air at full power, and capacity [J K⁻¹] (estimates: 2 kW weighs about 14 kg, a third of it oil). */
export const oilFace = 0.0014;
export const oilCapacity = 7;
