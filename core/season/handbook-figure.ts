import type { Place, Plan } from '../plan/schema.ts';
import { handbookLoss, steadyPower } from '../heat/index.ts';
import type { Network } from '../heat/index.ts';
import type { HandbookLoss } from './result.ts';
import type { SiteYear } from './site-year.ts';

/** Inside temperature of the design case where no heater is set [°C]: frost-free with a margin (common practice, no source). */
const frostFree = 5;

/** How far the sky stands below the air on a clear design night [K] (Berdahl & Martin 1984 near 0 °C, 80–90 % RH; derived). */
const clearSkyDepression = 22;

/** Wind on the design night [m s⁻¹]: still but not dead (common practice, no source). */
const designWind = 2;

/** The handbook's steady loss at the design low beside the network's, and why they differ. */
export function handbookFigure(place: Place, plan: Plan, network: Network, year: SiteYear): HandbookLoss {
  const setPoints = place.heaters
    .filter((heater) => heater.kind !== 'heat-mat')
    .map((heater) => heater.setPointNight);
  const inside = setPoints.length > 0 ? Math.max(...setPoints) : frostFree;
  const outside = designLow(plan, year);
  const room = place.room === null ? null : roomNight(place, outside);
  const sum = handbookLoss(network, network.groundConductance, inside, outside, room, year.ground.mean);
  const power = steadyPower(network, inside, {
    outdoor: outside,
    sky: outside - clearSkyDepression,
    deepGround: network.groundConductance > 0 ? year.ground.mean : (room ?? outside),
    wind: designWind,
    room,
    fleeceLaid: place.fleece !== null,
    screenClosed: place.screen !== null,
  });
  return {
    fabric: sum.fabric,
    air: sum.air,
    ground: sum.ground,
    inside,
    outside,
    loss: sum.loss,
    network: power,
    reason: reasonOf(place, sum.loss, power),
  };
}

/** The rare low of typed normals, or the least temperature of the file [°C]. */
function designLow(plan: Plan, year: SiteYear): number {
  if (year.origin === 'normals' && plan.climate.kind === 'normals') return plan.climate.rareLow;
  return year.steps.dryBulb.reduce((least, value) => Math.min(least, value), Infinity);
}

function roomNight(place: Place, outside: number): number {
  const { room } = place;
  if (room === null) return outside;
  if (room.kind === 'constant') return room.temperature;
  if (room.kind === 'schedule') return room.night;
  if (room.kind === 'series') return room.values.reduce((least, value) => Math.min(least, value), room.otherwise);
  return room.temperature + room.factor * outside;
}

function reasonOf(place: Place, handbook: number, network: number): string | null {
  const larger = Math.max(handbook, network);
  if (larger < 20 || Math.abs(handbook - network) < 0.2 * larger) return null;
  const film = place.covering.includes('polythene');
  if (network > handbook) {
    return film
      ? 'Polythene lets the plants’ own warmth through to a clear sky; the handbook sum reckons with air temperature alone.'
      : 'On a clear night the cover also loses warmth to a sky colder than the air; the handbook sum reckons with air temperature alone.';
  }
  if (place.room !== null)
    return 'The room, the wall behind and the ground give warmth that the handbook sum leaves out.';
  return 'Ground and still air hold more warmth than the handbook sum allows, which is made for wind.';
}
