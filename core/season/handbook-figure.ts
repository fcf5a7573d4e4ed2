import type { Place, Plan } from '../plan/schema.ts';
import { handbookLoss, steadyPower } from '../heat/index.ts';
import type { SteadyConditions } from '../heat/handbook.ts';
import type { Network } from '../heat/index.ts';
import type { HandbookLoss, HandbookReason } from './result.ts';
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
  const conditions: SteadyConditions = {
    outdoor: outside,
    sky: outside - clearSkyDepression,
    deepGround: year.ground.mean,
    wind: designWind,
    room,
    fleeceLaid: place.fleece !== null,
    screenClosed: place.screen !== null,
  };
  const power = steadyPower(network, inside, conditions);
  const reasons = handbookReasons(network, inside, conditions, sum.loss, power, place);
  return {
    fabric: sum.fabric,
    air: sum.air,
    ground: sum.ground,
    inside,
    outside,
    loss: sum.loss,
    network: power,
    reasons,
    reason: reasonOf(sum.loss, power, reasons),
  };
}

/**
 * What makes the network's need differ from the handbook sum, found by running the network with one thing at a
 * time put as the handbook has it: a sky as warm as the air, no room and no warm ground beside; the rest is films
 * and leakage (the handbook's are those of a windy night). The causes add up to the difference.
 */
function handbookReasons(
  network: Network,
  inside: number,
  conditions: SteadyConditions,
  handbook: number,
  power: number,
  place: Place,
): HandbookReason[] {
  const warmSky = steadyPower(network, inside, { ...conditions, sky: conditions.outdoor });
  const film = network.throughClosed.some((area) => area > 0);
  const sky: HandbookReason = {
    words: film
      ? 'a clear sky colder than the air, and a film that lets the plants’ own warmth through to it'
      : 'a clear sky colder than the air',
    watts: power - warmSky,
  };
  const windy = steadyPower(network, inside, { ...conditions, sky: conditions.outdoor, wind: handbookWind });
  const wind: HandbookReason = {
    words: 'a night stiller than the one the handbook’s films and leakage are made for',
    watts: warmSky - windy,
  };
  const rest: HandbookReason = {
    words:
      place.fleece !== null || place.room !== null
        ? 'faces that warm each other: room, fleece, floor and plants are all reckoned with'
        : 'floor, plants and cover that warm each other, where the handbook has one film for all',
    watts: windy - handbook,
  };
  return [sky, wind, rest].sort((a, b) => Math.abs(b.watts) - Math.abs(a.watts));
}

/** Wind the handbook's outside film of 23 W m⁻² K⁻¹ belongs to (EN 673: about 4 m s⁻¹ at the cover). */
const handbookWind = 4;

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
  if (room.kind === 'series')
    return room.values.reduce((least, value) => Math.min(least, value), room.otherwise);
  return room.temperature + room.factor * outside;
}

function reasonOf(handbook: number, network: number, reasons: readonly HandbookReason[]): string | null {
  const larger = Math.max(handbook, network);
  if (larger < 20 || Math.abs(handbook - network) < 0.2 * larger) return null;
  const more = network > handbook;
  const main = reasons.find(({ watts }) => watts > 0 === more);
  if (main === undefined) return null;
  return `The full balance needs ${more ? 'more' : 'less'} than the handbook sum, chiefly because of ${main.words}.`;
}
