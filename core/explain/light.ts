import type { Place, Plan } from '../plan/schema.ts';
import { lampTechnology } from '../plan/lamps.ts';
import { lampLight, photonsPerSolarJoule } from '../light/index.ts';
import { spanHours } from '../cost/index.ts';
import type { PlaceSeason, SeasonResult } from '../season/index.ts';
import { input, round } from './format.ts';
import type { Explanation } from './subject.ts';

/** Daily light of one day at the plants. */
export function explainDailyLight(
  plan: Plan,
  place: Place,
  result: PlaceSeason,
  season: SeasonResult,
  day: number,
): Explanation {
  const daylight = result.daily.daylight[day];
  const lamp = result.daily.lampLight[day];
  const outdoors = season.outdoor.daylight[day];
  const steps = [
    `Daylight at the plants: ${round(daylight)} of ${round(outdoors)} mol/m² outdoors (${round(outdoors > 0 ? (100 * daylight) / outdoors : 0)} %)`,
  ];
  for (const each of place.lamps) {
    const hours = spanHours(each.on, each.off, plan.tariff).total;
    const field = lampLight(place, each);
    steps.push(
      `${each.name}: ${round(field.average)} µmol/m²s × ${round(hours)} h × 0.0036 = ${round(field.average * hours * 0.0036)} mol/m²`,
    );
  }
  return {
    title: `Daily light in ${place.name}`,
    formula: 'daily light = ∫ photon flux density dt = daylight + Σ lamps (µmol/m²s × h × 0.0036)',
    inputs: [
      input('Photons in sunlight', photonsPerSolarJoule, 'µmol/J', '0.45 × 4.48, Faust & Logan 2018'),
      input('Outdoor daily light', outdoors, 'mol/m²', season.weatherName),
      input('Frame', place.frameShare * 100, '%', 'plan'),
      input('Dirt', place.dirtShare * 100, '%', 'plan'),
    ],
    steps,
    result: `${round(daylight + lamp)} mol/m² in the day`,
    source:
      'Beam by Fresnel and Bouguer (Duffie & Beckman ch. 5) along the ray, sky by integration over the dome; lamps by radiosity.',
  };
}

/** Photon flux density of the lamps on the growing area. */
export function explainLampLight(place: Place): Explanation {
  const inputs = [];
  const steps = [];
  let total = 0;
  for (const lamp of place.lamps) {
    const field = lampLight(place, lamp);
    const technology = lampTechnology(lamp.technology);
    total += field.average;
    inputs.push(input(`${lamp.name}: watts`, lamp.watts * lamp.count, 'W', 'plan'));
    inputs.push(
      input(
        `${lamp.name}: efficacy`,
        lamp.efficacy,
        'µmol/J',
        `plan; ${technology.name} ${technology.efficacy.low}–${technology.efficacy.high} (${technology.efficacy.source})`,
      ),
    );
    inputs.push(input(`${lamp.name}: height`, lamp.height, 'm', 'plan'));
    steps.push(
      `${lamp.name}: ${round(field.emitted)} µmol/s given, ${round(100 * field.utilisation)} % of it on the growing area`,
    );
    steps.push(
      `average ${round(field.average)} µmol/m²s, least ${round(field.least)}, most ${round(field.most)}`,
    );
  }
  return {
    title: `Lamp light in ${place.name}`,
    formula: 'flux density at a point = ∫ over the lamp of radiance × cos θ × dω, plus what walls throw back',
    inputs: [
      ...inputs,
      input('Growing area', place.growingArea, 'm²', 'plan'),
      input('Wall reflectance', place.wallReflectance, '', 'plan'),
    ],
    steps,
    result: `${round(total)} µmol/m²s on average`,
    source:
      'Direct light by integration over a Lambertian source, interreflection by radiosity over wall and floor patches.',
  };
}
