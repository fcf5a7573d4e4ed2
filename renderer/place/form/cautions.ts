import type { Heater, Place } from '../../../core/index.ts';

const mains =
  'Mains electricity near water: damp air and wet benches need sockets, cables and fittings made for them and a residual-current device. Your local code says what is allowed; have a licensed electrician fit it.';
const flame =
  'A flame uses up air and gives off fumes and water: carbon monoxide can kill. Keep a vent open, keep it clear of film, fleece and fabric, never burn it in a living room or a closed tent, and follow the maker and your local code.';
const lampsNearWater =
  'Lamps over wet plants: use fittings made for damp places, hang them so that they cannot fall into water, and keep drivers dry and clear of fabric. Your local code comes first; have a licensed electrician fit new circuits.';
const waterNearMains =
  'Stand water where a leak cannot reach sockets, heaters or cables; a full barrel weighs a kilogram a litre.';

export const burns = (kind: Heater['kind']) => kind === 'propane' || kind === 'paraffin';

/** What to mind with the heaters of a place, in the order of danger. */
export function heaterCautions(place: Place): string[] {
  const cautions: string[] = [];
  if (place.heaters.some((heater) => burns(heater.kind))) cautions.push(flame);
  if (place.heaters.some((heater) => !burns(heater.kind))) cautions.push(mains);
  return cautions;
}

export function lampCautions(place: Place): string[] {
  return place.lamps.length > 0 ? [lampsNearWater] : [];
}

export function waterCautions(place: Place): string[] {
  const electric =
    place.lamps.length > 0 || place.fan !== null || place.heaters.some((heater) => !burns(heater.kind));
  return place.water.length > 0 && electric ? [waterNearMains] : [];
}
