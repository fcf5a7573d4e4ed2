import { placeLampHours } from '../../../core/index.ts';
import { planFile, weatherFor } from '../files.ts';
import { neededText, readOptions, textOption } from '../options.ts';
import { RefusedInput } from '../outcome.ts';
import { serialise } from '../serialise.ts';
import type { World } from '../world.ts';

const options = {
  place: { type: 'string' },
  lamp: { type: 'string' },
  weather: { type: 'string' },
} as const;

/** `hours PLAN --place ID --lamp ID`: where in the day the lamp's hours cost least, lamp and heater together. */
export function hours(words: readonly string[], world: World): void {
  const given = readOptions(words, options, ['PLAN']);
  const [placeId, lampId] = [neededText(given, 'place'), neededText(given, 'lamp')];
  const plan = planFile(world, given.positionals[0]);
  const place = plan.places.find(({ id }) => id === placeId);
  if (place === undefined)
    throw new RefusedInput(`The plan has no place ${placeId}; it has ${idsOf(plan.places)}.`);
  if (!place.lamps.some(({ id }) => id === lampId))
    throw new RefusedInput(`${place.name} has no lamp ${lampId}; it has ${idsOf(place.lamps)}.`);
  const weather = weatherFor(world, plan, textOption(given, 'weather'));
  world.out(serialise(placeLampHours(plan, weather, placeId, lampId)));
}

const idsOf = (items: readonly { readonly id: string }[]) => items.map(({ id }) => id).join(', ') || 'none';
