import { lampWatts } from '../../../core/index.ts';
import type { Heater, Place } from '../../../core/index.ts';
import { formatPower } from '../../state/units.ts';
import type { SectionPart } from '../section/parts.ts';

const flame =
  'A flame uses up air and gives off water vapour, carbon dioxide and, burning badly, carbon monoxide, which kills unnoticed. Keep a way open for fresh air, keep a carbon monoxide alarm where you would hear it, and keep the flame clear of film, fleece and fabric; never burn it in a living room or a closed tent. Follow the maker and your local code.';
const flued =
  'A flue carries off vapour and fumes only while it is clear and draws. Keep a carbon monoxide alarm where you would hear it, have it fitted and looked after by a licensed installer, and follow your local code.';
const heatPump =
  'A heat pump with refrigerant pipes is for a licensed installer to fit; your local code may ask where the outdoor part may stand.';
const mains =
  'Mains electricity near water: damp air and wet benches need sockets, cables and fittings made for them and a residual-current device; hang lamps so that they cannot fall, keep drivers dry, and stand water where a leak cannot reach them. Your local code comes first; have a licensed electrician fit it.';

/**
 * More than one socket carries at length where circuits are weakest: 80 % of 15 A at 120 V is 1440 W (common
 * practice for lasting loads, from memory).
 */
export const socketWatts = 1440;

export const burns = (kind: Heater['kind']) => kind === 'propane' || kind === 'paraffin';

/** Most that all electric things of a place can draw at once [W]; a heat pump as at −7 °C. */
export function mostWatts(place: Place): number {
  const heaters = place.heaters
    .filter((heater) => !burns(heater.kind))
    .map((heater) => heater.power / (heater.kind === 'heat-pump' ? heater.coefficientAtMinus7 : 1));
  const lamps = place.lamps.map(lampWatts);
  const fans = [place.fan?.watts ?? 0, place.circulation?.watts ?? 0];
  return [...heaters, ...lamps, ...fans].reduce((sum, watts) => sum + watts, 0);
}

const socketWords = (watts: number) =>
  `All electric things here can take ${formatPower(watts)} at once. One socket carries 1.5 to 3 kW in most countries, and not every cable that much for a whole night: find out what yours may carry and spread the load.`;

/** The first group of the form that has an electric thing; what holds for all of them is said there. */
function electricPart(place: Place): SectionPart | null {
  if (place.heaters.some((heater) => !burns(heater.kind))) return 'heat';
  if (place.lamps.length > 0) return 'lamps';
  return place.fan !== null || place.circulation !== null ? 'air' : null;
}

/** What to mind with the things of one group of the form, in the order of danger; each is said in one group only. */
export function cautionsAt(place: Place, part: SectionPart): string[] {
  const cautions: string[] = [];
  if (part === 'heat') {
    const burners = place.heaters.filter((heater) => burns(heater.kind));
    if (burners.some((heater) => !heater.flued)) cautions.push(flame);
    else if (burners.length > 0) cautions.push(flued);
    if (place.heaters.some((heater) => heater.kind === 'heat-pump')) cautions.push(heatPump);
  }
  if (part === electricPart(place)) {
    cautions.push(mains);
    const watts = mostWatts(place);
    if (watts > socketWatts) cautions.push(socketWords(watts));
  }
  return cautions;
}
