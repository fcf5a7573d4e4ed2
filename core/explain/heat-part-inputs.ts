import type { Place } from '../plan/schema.ts';
import { layerNumbers, standardFilms, surfacesOf } from '../fabric/index.ts';
import type { Surface } from '../fabric/index.ts';
import { lampWatts } from '../light/index.ts';
import type { HeatPart, PlaceSeason, SeasonResult } from '../season/index.ts';
import { input } from './format.ts';
import { spanSum } from './heat-span.ts';
import type { HeatSpan } from './heat-span.ts';
import { lampHoursWords } from './lamp-words.ts';
import type { ExplainInput } from './subject.ts';

/** Facets of one surface, numbered by their shape, are one part of the account. */
const facetNumber = / \d+$/;

/** What the heat of a part hangs on, with where each figure comes from. */
export function partInputs(
  place: Place,
  result: PlaceSeason,
  part: HeatPart,
  season: SeasonResult,
  span: HeatSpan,
): ExplainInput[] {
  switch (part.kind) {
    case 'surface':
      return surfaceInputs(place, part.name);
    case 'air':
      return airInputs(place);
    case 'ground':
      return groundInputs(place);
    case 'room':
      return [
        ...surfaceInputs(place, part.name),
        ...(place.room === null ? [] : [input('The room', roomWords(place), '', 'plan')]),
      ];
    case 'sun':
      return [
        input('Sun and sky outdoors', spanSum(season.outdoor.daylight, span), 'mol/m²', season.weatherName),
        input(
          'Daylight at the plants',
          spanSum(result.daily.daylight, span),
          'mol/m²',
          'light through the cover',
        ),
        input('Frame', place.frameShare * 100, '%', 'plan'),
        input('Dirt', place.dirtShare * 100, '%', 'plan'),
      ];
    case 'lamps':
      return [
        ...place.lamps.map((lamp) => input(lamp.name, lampWatts(lamp), 'W', `plan, ${lampHoursWords(lamp)}`)),
        ...fanInputs(place),
      ];
    case 'heaters':
      return heaterInputs(place, result, span);
    case 'fans':
      return fanInputs(place);
    case 'storage':
      return storageInputs(place, result, span);
  }
}

const uOf = (surface: Surface) => {
  const films = standardFilms(layerNumbers(surface.covering));
  return 1 / (1 / films.inside + surface.resistanceClosed + 1 / films.outside);
};

function surfaceInputs(place: Place, name: string): ExplainInput[] {
  const facets = surfacesOf(place).surfaces.filter((each) => each.name.replace(facetNumber, '') === name);
  if (facets.length === 0) return [];
  const area = facets.reduce((sum, each) => sum + each.area, 0);
  const [first] = facets;
  return [
    input('Area', area, 'm²', 'from the shape (plan)'),
    input('Made of', first.covering.name, '', 'plan'),
    input('Resistance, face to face', first.resistanceClosed, 'm²K/W', first.covering.resistance.source),
    input('U by the handbook, for comparison', uOf(first), 'W/m²K', 'films of EN 673'),
    input('Behind it', first.behind === 'nothing' ? 'no heat flow' : first.behind, '', 'plan'),
  ];
}

function airInputs(place: Place): ExplainInput[] {
  const vents = place.vents.map((vent, index) =>
    input(`Vent ${index + 1}`, vent.area, 'm²', `plan, opens at ${vent.openAt} °C over ${vent.band} K`),
  );
  const { fan, door } = place;
  return [
    input('Air enclosed', surfacesOf(place).volume, 'm³', 'from the shape (plan)'),
    input('Leakage at 20 K and 3 m/s', place.leakage, 'air changes/h', 'plan'),
    ...vents,
    ...(fan === null ? [] : [input('Fan', fan.flow, 'm³/h', `plan, from ${fan.onAt} °C over ${fan.band} K`)]),
    ...(door === null ? [] : [input('Door', door.area, 'm²', `plan, open ${door.from} to ${door.to}`)]),
  ];
}

function groundInputs(place: Place): ExplainInput[] {
  const { floorArea, perimeter, floorBehind } = surfacesOf(place);
  const edge = place.edgeInsulation;
  return [
    input('Floor', floorArea, 'm²', 'from the shape (plan)'),
    input('Edge to the outdoors', perimeter, 'm', 'from the shape (plan)'),
    input(
      'Kind of floor',
      place.floor.replace('-', ' '),
      '',
      floorBehind === 'room' ? 'plan; over a room' : 'plan',
    ),
    input('Soil', place.ground, '', 'plan'),
    ...(edge === null
      ? []
      : [input('Boards down the edge', edge.thickness, 'm', `plan, ${edge.depth} m deep`)]),
  ];
}

function roomWords(place: Place): string {
  const { room } = place;
  if (room === null) return 'none';
  switch (room.kind) {
    case 'constant':
      return `${room.temperature} °C`;
    case 'schedule':
      return `${room.day} °C from ${room.dayFrom} to ${room.dayTo}, else ${room.night} °C`;
    case 'following':
      return `${room.temperature} °C and ${room.factor} of the outdoor mean`;
    case 'series':
      return 'measured temperatures';
  }
}

function heaterInputs(place: Place, result: PlaceSeason, span: HeatSpan): ExplainInput[] {
  const there = place.heaters.map((heater) =>
    input(
      heater.name,
      heater.power,
      'W',
      `plan, set to ${heater.setPointDay} °C by day and ${heater.setPointNight} °C by night`,
    ),
  );
  if (span.dark) return there;
  const short = spanSum(result.daily.shortfallHours, span);
  return [...there, input('Hours at full power and still too cold', short, 'h', 'heat balance')];
}

function fanInputs(place: Place): ExplainInput[] {
  const { fan, circulation } = place;
  return [
    ...(fan === null ? [] : [input('Fan', fan.watts, 'W', 'plan')]),
    ...(circulation === null
      ? []
      : [
          input(
            'Circulation fan',
            circulation.watts,
            'W',
            `plan, ${circulation.runs === 'always' ? 'always on' : `on by ${circulation.runs}`}`,
          ),
        ]),
  ];
}

function storageInputs(place: Place, result: PlaceSeason, span: HeatSpan): ExplainInput[] {
  const { potMean } = result.daily;
  const water = place.water.map((each) => input(each.name, each.litres * each.count, 'litres', 'plan'));
  return [
    input('Pots and mix', place.potMass * place.growingArea, 'kg', 'plan'),
    ...water,
    input('Pots on the first day, mean', potMean[span.from], '°C', 'heat balance'),
    input(
      'Pots on the last day, mean',
      potMean[Math.min(potMean.length, span.to + (span.dark ? 1 : 0)) - 1],
      '°C',
      'heat balance',
    ),
  ];
}
