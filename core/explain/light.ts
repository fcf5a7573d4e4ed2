import type { Lamp } from '../plan/lamp.ts';
import type { Place, Plan } from '../plan/schema.ts';
import { lampTechnology } from '../plan/lamps.ts';
import { lampLight, lampPhotons, lampWatts, placeField } from '../light/index.ts';
import type { FieldLevel } from '../light/index.ts';
import type { PlaceSeason, SeasonResult } from '../season/index.ts';
import { input, round } from './format.ts';
import { lightSourceWords, lampHoursWords } from './lamp-words.ts';
import type { ExplainInput, Explanation } from './subject.ts';

/** Daily light of one day at the plants. */
export function explainDailyLight(
  _plan: Plan,
  place: Place,
  result: PlaceSeason,
  season: SeasonResult,
  day: number,
): Explanation {
  const daylight = result.daily.daylight[day];
  const lamp = result.daily.lampLight[day];
  const outdoors = season.outdoor.daylight[day];
  const share = outdoors > 0 ? (100 * daylight) / outdoors : 0;
  return {
    title: `Daily light in ${place.name}`,
    formula: 'daily light = ∫ photon flux density dt = daylight + Σ lamps (µmol/m²s × hours on × 0.0036)',
    inputs: [
      input(
        'Photons in sunlight',
        '1.95 under a clear sky to 2.15 under cloud',
        'µmol/J',
        'Jacovides et al. 2004, by the clearness of each step',
      ),
      input('Outdoor daily light', outdoors, 'mol/m²', season.weatherName),
      ...coverInputs(place),
    ],
    steps: [
      `Daylight at the plants: ${round(daylight)} of ${round(outdoors)} mol/m² outdoors (${round(share)} %)`,
      ...place.lamps.map(
        (each) => `${each.name}: ${round(lampLight(place, each).average)} µmol/m²s, ${lampHoursWords(each)}`,
      ),
      `Lamps over the day: ${round(lamp)} mol/m²`,
    ],
    result: `${round(daylight + lamp)} mol/m² in the day`,
    source:
      'Beam by Fresnel and Bouguer (Duffie & Beckman ch. 5) along the ray, sky by integration over the dome; lamps by radiosity.',
  };
}

/** What stands between the sky and the plants, as the plan has it. */
function coverInputs(place: Place): ExplainInput[] {
  const dirt =
    place.cleanedOn === null
      ? 'plan, the same all year'
      : `plan, when dirtiest; washed on ${place.cleanedOn}`;
  const inputs = [
    input('Frame', place.frameShare * 100, '%', 'plan'),
    input('Dirt', place.dirtShare * 100, '%', dirt),
  ];
  if (place.shadeCloth !== null)
    inputs.push(input('Shade cloth', `${place.shadeCloth.from} to ${place.shadeCloth.to}`, '', 'plan'));
  if (place.sheer !== null)
    inputs.push(input('Sheer curtain', `${place.sheer.from} to ${place.sheer.to}`, '', 'plan'));
  return inputs;
}

/** Photon flux density of the lamps on the growing area. */
export function explainLampLight(place: Place): Explanation {
  const field = placeField(place);
  const share = (photons: number) => (field.emitted > 0 ? round((100 * photons) / field.emitted) : '0');
  return {
    title: `Lamp light in ${place.name}`,
    formula: 'flux density at a point = ∫ over the lamp of radiance × cos θ × dω, plus what walls throw back',
    inputs: [
      ...place.lamps.flatMap(lampInputs),
      input('Growing area', place.growingArea, 'm²', 'plan'),
      input('Wall reflectance', place.wallReflectance, '', 'plan'),
    ],
    steps: [
      ...place.lamps.map((lamp) => `${lamp.name}: ${round(lampPhotons(lamp))} µmol/s given`),
      `of it ${share(field.absorbed)} % taken up by plants and bench, ${share(field.inWalls)} % by walls, ${share(field.inCeiling)} % overhead, ${share(field.lost)} % lost past the plants`,
      ...field.levels.map((level) => levelWords(level, field.levels.length)),
      `The parts add up to what is given within ${round(Math.abs(100 * field.closure))} %`,
    ],
    result: `${round(field.average)} µmol/m²s on average`,
    source:
      'Direct light by integration over the lamp’s face or its photometric file; what walls throw back by radiosity over patches with exact configuration factors (Howell, C-13 to C-15).',
  };
}

function levelWords(level: FieldLevel, count: number): string {
  const where = count === 1 ? '' : level.shelf === 'upper' ? 'upper shelf: ' : 'lower level: ';
  return `${where}average ${round(level.average)} µmol/m²s, least ${round(level.least)}, most ${round(level.most)}`;
}

function lampInputs(lamp: Lamp): ExplainInput[] {
  const technology = lampTechnology(lamp.technology);
  return [
    input(`${lamp.name}: watts at the plug`, lampWatts(lamp), 'W', 'plan, at its dimming'),
    input(`${lamp.name}: light`, lightSourceWords(lamp), '', `plan; ${technology.name}`),
    input(`${lamp.name}: height over the plants`, lamp.height, 'm', 'plan'),
  ];
}
