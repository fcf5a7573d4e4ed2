import type { Lamp } from '../plan/lamp.ts';
import { lampTechnology, wattShares } from '../plan/lamps.ts';
import type { Place } from '../plan/schema.ts';
import { lampLight, lampWatts } from '../light/index.ts';

/** Share of 400–700 nm light that leaves and pots take up (Campbell & Norman 1998); the catalogue has it for the radiation beyond. */
const lightTaken = 0.85;

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
    const technology = lampTechnology(lamp.technology);
    const landed = light.average * place.growingArea;
    // Light thrown to and fro over a bright bench lands more than once and is taken up once.
    const asLight = Math.min(lightTaken * landed, light.absorbed) / technology.photonsPerJoule.value;
    const reaching = light.emitted > 0 ? Math.min(1, landed / light.emitted) : 0;
    const efficacy = watts > 0 ? light.emitted / watts : 0;
    const infrared = watts * wattShares(technology, efficacy).infrared;
    const asInfrared = technology.infraredAbsorptance.value * reaching * infrared;
    const absorbed = Math.min(inside, asLight + asInfrared);
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
