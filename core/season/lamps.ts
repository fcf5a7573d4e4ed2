import type { Lamp } from '../plan/lamp.ts';
import { lampTechnology } from '../plan/lamps.ts';
import type { Place } from '../plan/schema.ts';
import { lampLight, lampWatts } from '../light/index.ts';

/** Micromoles of 400–700 nm photons a joule of that light: 4.6–5.0 for lamps (Thimijan & Heins 1983). */
const photonsPerJoule = 4.9;

/** One lamp of a place, reduced to what the season needs. */
export interface LampRun {
  readonly lamp: Lamp;
  /** Electric power drawn [W]; heat to the air, to leaves and to pots while on [W]. */
  readonly watts: number;
  readonly airHeat: number;
  readonly leafHeat: number;
  readonly potHeat: number;
  /** Average photon flux density on the growing area [µmol m⁻² s⁻¹]. */
  readonly ppfd: number;
}

export function lampRuns(place: Place): LampRun[] {
  return place.lamps.map((lamp) => {
    const light = lampLight(place, lamp);
    const watts = lampWatts(lamp);
    const inside =
      lamp.driver === 'inside' ? watts : watts * (1 - lampTechnology(lamp.technology).driverLoss.value);
    const onCanopy = (light.average * place.growingArea) / photonsPerJoule;
    const absorbed = Math.min(inside, 0.85 * onCanopy);
    return {
      lamp,
      watts,
      airHeat: inside - absorbed,
      leafHeat: absorbed * 0.7,
      potHeat: absorbed * 0.3,
      ppfd: light.average,
    };
  });
}
