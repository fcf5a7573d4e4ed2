import type { Place } from '../plan/schema.ts';
import { layerNumbers, standardFilms, surfacesOf } from '../fabric/index.ts';
import type { HandbookLoss, PlaceSeason } from '../season/index.ts';
import { input, round } from './format.ts';
import type { ExplainInput, Explanation } from './subject.ts';

/** The handbook's steady loss, surface by surface, beside the network's figure. */
export function explainHeatLoss(place: Place, season: PlaceSeason): Explanation {
  const { handbook } = season;
  const fabric = surfacesOf(place);
  const difference = handbook.inside - handbook.outside;
  const steps: string[] = [];
  const inputs: ExplainInput[] = [
    input(
      'Inside temperature',
      handbook.inside,
      '°C',
      place.heaters.length > 0 ? 'heater set point (plan)' : 'frost-free, common practice',
    ),
    input('Outside temperature', handbook.outside, '°C', 'design low of the climate (plan or weather file)'),
    input('Air enclosed', fabric.volume, 'm³', 'from the shape (plan)'),
    input('Leakage', place.leakage, 'air changes/h', 'plan'),
  ];
  for (const surface of fabric.surfaces) {
    if (surface.behind !== 'outdoors' || surface.covering.id === 'open') continue;
    const cover = surface.covering;
    const films = standardFilms(layerNumbers(cover));
    const u = 1 / (1 / films.inside + surface.resistanceClosed + 1 / films.outside);
    inputs.push(
      input(`${surface.name}: ${cover.name}`, surface.area, 'm²', `resistance ${cover.resistance.source}`),
    );
    steps.push(
      `${surface.name}: U ${round(u)} W/m²K × ${round(surface.area)} m² × ${round(difference)} K = ${round(u * surface.area * difference)} W`,
    );
  }
  steps.push(`Covers together: ${round(handbook.fabric)} W/K`);
  steps.push(`Air: 0.33 × n × V = ${round(handbook.air)} W/K`);
  steps.push(`Floor by ISO 13370: ${round(handbook.ground)} W/K`);
  steps.push(
    `Handbook: ${round(handbook.loss)} W. The full balance of this place on a clear night: ${round(handbook.network)} W.`,
  );
  if (handbook.reason !== null) steps.push(handbook.reason);
  steps.push(...reasonSteps(handbook));
  return {
    title: `Heat needed in ${place.name} on the design night`,
    formula: 'Q = Σ U · A · ΔT + 0.33 · n · V · ΔT + floor · ΔT, less what a room gives',
    inputs,
    steps,
    result: `${round(handbook.network)} W`,
    source:
      'Handbook sum as in ASABE EP406 and extension bulletins; films EN 673; floor ISO 13370:2017; the balance by surface with sky radiation as DEVELOPERS.md describes.',
  };
}

/** The causes of the difference one by one, and their sum. */
function reasonSteps(handbook: HandbookLoss): string[] {
  if (handbook.reasons.length === 0) return [];
  const signed = (watts: number) => `${watts < 0 ? '−' : '+'}${round(Math.abs(watts))} W`;
  const sum = handbook.reasons.reduce((total, reason) => total + reason.watts, 0);
  return [
    ...handbook.reasons.map((reason) => `${reason.words}: ${signed(reason.watts)}`),
    `Together: ${signed(sum)}, and ${round(handbook.loss)} ${sum < 0 ? '−' : '+'} ${round(Math.abs(sum))} = ${round(handbook.loss + sum)} W`,
  ];
}
