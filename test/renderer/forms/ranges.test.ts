import { describe, expect, test } from 'vitest';
import { demonstrationPlan, heaterOf, parsePlan } from '../../../core/index.ts';
import type { Place, Plan } from '../../../core/index.ts';
import type { Field } from '../../../renderer/forms/fields.ts';
import * as air from '../../../renderer/place/form/air-fields.ts';
import * as build from '../../../renderer/place/form/build-fields.ts';
import * as cover from '../../../renderer/place/form/cover-fields.ts';
import * as heat from '../../../renderer/place/form/heater-fields.ts';
import * as lampRows from '../../../renderer/place/form/lamp-fields.ts';
import * as lampHours from '../../../renderer/place/form/lamp-hour-fields.ts';
import * as lampLight from '../../../renderer/place/form/lamp-light-fields.ts';
import * as layer from '../../../renderer/place/form/layer-fields.ts';
import { windowFields } from '../../../renderer/place/form/ranges.ts';
import * as room from '../../../renderer/place/form/room-fields.ts';
import { firstUpperShelf, upperShelfFields } from '../../../renderer/place/form/shelf-fields.ts';
import { firstWater, waterFields } from '../../../renderer/place/form/water-fields.ts';
import { firstLamp, firstVent, newPlace } from '../../../renderer/place/new/defaults.ts';
import * as site from '../../../renderer/place/site/site-fields.ts';

/** Fields end where the plan ends: at each limit its number is accepted, past it refused. */
interface Case {
  readonly name: string;
  readonly fields: readonly Field<never>[];
  /** The plan with this part, and the path its problems stand under. */
  readonly plan: (part: object) => unknown;
  readonly path: string;
}

const house = newPlace('even-span', 54).place;
const withPlace = (place: object): unknown => ({ ...demonstrationPlan, places: [place], lots: [] });
const inPlace = (name: string, fields: readonly Field<never>[], first: object, key: string): Case => ({
  name,
  fields,
  plan: (part) => withPlace({ ...house, [key]: { ...first, ...part } }),
  path: `places.0.${key}`,
});
const inList = (name: string, fields: readonly Field<never>[], first: object, key: string): Case => ({
  name,
  fields,
  plan: (part) => withPlace({ ...house, [key]: [{ ...first, ...part }] }),
  path: `places.0.${key}.0`,
});
const heater = heaterOf({ id: 'a', name: 'A', kind: 'fan', power: 9, setPointDay: 5, setPointNight: 5 });
const screen = { covering: 'woven-screen', closedWhen: 'cold-night', below: 5, from: '17:00', to: '08:00' };
const lamp = firstLamp(house);
const inLamp = (name: string, fields: readonly Field<never>[], first: object, key: string): Case => ({
  name,
  fields,
  plan: (part) => withPlace({ ...house, lamps: [{ ...lamp, [key]: { ...first, ...part } }] }),
  path: `places.0.lamps.0.${key}`,
});
const reading = { kind: 'reading', value: 900, unit: 'lux', distance: 0.4, luxPerMicromole: null } as const;
const narrow = { kind: 'cosine-power', power: 4 } as const;
const fileBeam = {
  kind: 'file',
  photometry: { name: 'own', vertical: [0, 90], planes: [0], candela: [9, 0] },
  turned: 0,
} as const;
const bay = newPlace('window-bay', 54).place;
const porch = newPlace('listed', 54).place;
const withSurface = (surface: object): unknown => {
  if (porch.shape.kind !== 'listed') throw new Error(`expected listed surfaces, got ${porch.shape.kind}`);
  const [first] = porch.shape.surfaces;
  return withPlace({ ...porch, shape: { ...porch.shape, surfaces: [{ ...first, ...surface }] } });
};
const inBuild = (name: string, fields: readonly Field<never>[], whole: (part: object) => object): Case => ({
  name,
  fields,
  plan: (part) => withSurface({ covering: null, build: whole(part) }),
  path: 'places.0.shape.surfaces.0.build',
});

const cases: readonly Case[] = [
  inPlace('second skin', layer.secondSkinFields, layer.firstSecondSkin('polythene'), 'secondSkin'),
  inPlace('screen', layer.screenFields, screen, 'screen'),
  inPlace('fleece', layer.fleeceFields, layer.firstFleece('fleece-30'), 'fleece'),
  inPlace('base wall', layer.baseWallFields, layer.firstBaseWall('brick-102'), 'baseWall'),
  inPlace('edge insulation', cover.edgeFields, cover.firstEdge, 'edgeInsulation'),
  inPlace('bars', cover.barFields, cover.firstBars, 'bars'),
  inPlace('fan', air.fanFields(house), air.firstFan, 'fan'),
  inPlace('circulation', air.circulationFields, air.firstCirculation, 'circulation'),
  inPlace('door', air.doorFields, air.firstDoor(2), 'door'),
  inPlace('room', room.constantFields, { kind: 'constant', temperature: 18 }, 'room'),
  inPlace('following room', room.followingFields, { kind: 'following', temperature: 8, factor: 0.5 }, 'room'),
  inPlace(
    'room by schedule',
    room.scheduleFields,
    { kind: 'schedule', day: 9, night: 9, dayFrom: '07:00', dayTo: '22:00' },
    'room',
  ),
  inList('vent', air.ventFields, firstVent(house.shape, 5), 'vents'),
  inList(
    'heater',
    [
      ...heat.heaterFields,
      ...heat.holdFields,
      ...heat.fuelFields,
      ...heat.thermostatFields,
      ...heat.frostWatchFields,
    ],
    heater,
    'heaters',
  ),
  inList(
    'lamp',
    [
      ...lampRows.sizeFields,
      ...lampRows.setFields,
      ...lampRows.layoutFields(house),
      ...lampRows.ageFields(lamp, 'EUR'),
      ...lampHours.dayFields,
      lampLight.efficacyField(lamp),
    ],
    lamp,
    'lamps',
  ),
  inLamp('light by lumens', lampLight.lumenFields(lamp), lampLight.lightFrom('lumens', lamp), 'light'),
  inLamp('light by reading', lampLight.readingFields(lamp, reading), reading, 'light'),
  inLamp('light of a file', lampLight.fileFields(lamp), lampLight.lightFrom('file', lamp), 'light'),
  inLamp('narrow beam', lampLight.powerFields(narrow), narrow, 'beam'),
  inLamp('beam of a file', lampLight.turnedFields, fileBeam, 'beam'),
  inLamp('longer day', lampHours.extendFields(lamp), lampHours.controlFrom('extend', lamp), 'control'),
  inLamp('dark days', lampHours.darkDayFields, lampHours.controlFrom('daylight', lamp), 'control'),
  inPlace('upper shelf', upperShelfFields(house), firstUpperShelf(house), 'upperShelf'),
  {
    name: 'window',
    fields: windowFields as readonly Field<never>[],
    plan: (part) => withPlace({ ...bay, shape: { ...bay.shape, ...part } }),
    path: 'places.0.shape',
  },
  inList('water', waterFields, firstWater, 'water'),
  {
    name: 'place',
    fields: [...cover.surroundFields, ...cover.lightShareFields, cover.gutterField, ...cover.standFields],
    plan: (part) => withPlace({ ...house, ...part }),
    path: 'places.0',
  },
  {
    name: 'site',
    fields: [...site.whereFields([]), ...site.aroundFields],
    plan: (part) => ({ ...demonstrationPlan, site: { ...demonstrationPlan.site, ...part } }),
    path: 'site',
  },
  {
    name: 'snow',
    fields: site.snowFields,
    plan: (part) => ({
      ...demonstrationPlan,
      site: { ...demonstrationPlan.site, snow: { ...site.firstSnow(54), ...part } },
    }),
    path: 'site.snow',
  },
  inBuild('layers', build.layersFaceFields, (part) => ({ ...build.firstLayers, ...part })),
  inBuild('panes', [...build.paneFields, ...build.paneMoreFields], (part) => ({
    ...build.firstPanes,
    ...part,
  })),
  {
    ...inBuild('layer', build.layerFields, (part) => ({
      ...build.firstLayers,
      layers: [{ ...build.firstLayer, ...part }],
    })),
    path: 'places.0.shape.surfaces.0.build.layers.0',
  },
];

/** The problem of the schema's own range; that two sizes do not fit each other is another matter. */
function rangeProblems(plan: unknown, path: string): string[] {
  const reading = parsePlan(plan);
  if (reading.ok) return [];
  return reading.problems
    .filter((problem) => problem.path === path && /^expected a number from /.test(problem.message))
    .map((problem) => problem.message);
}

describe.each(cases)('fields of $name', ({ fields, plan, path }) => {
  const numbers = fields.flatMap((field) => (field.kind === 'number' ? [field] : []));
  test('end where the plan ends', () => {
    for (const { key, minimum, maximum, factor = 1 } of numbers) {
      const problems = (value: number) => rangeProblems(plan({ [key]: value / factor }), `${path}.${key}`);
      const step = (maximum - minimum) * 1e-6;
      expect([key, problems(minimum), problems(maximum)]).toEqual([key, [], []]);
      expect([key, problems(minimum - step).length, problems(maximum + step).length]).toEqual([key, 1, 1]);
    }
  });
});

test('what is first put in leaves every shape sound', () => {
  for (const kind of ['even-span', 'lean-to', 'tunnel', 'cold-frame', 'tent', 'listed'] as const) {
    const { place } = newPlace(kind, 54);
    const whole: Place = {
      ...place,
      secondSkin: layer.firstSecondSkin('polythene'),
      vents: [firstVent(place.shape, place.growingArea)],
      fan: air.firstFan,
      circulation: air.firstCirculation,
      water: [firstWater],
    };
    const plan: Plan = {
      ...demonstrationPlan,
      site: { ...demonstrationPlan.site, snow: site.firstSnow(54) },
      places: [whole],
      lots: [],
    };
    const reading = parsePlan(plan);
    expect([kind, reading.ok ? [] : reading.problems]).toEqual([kind, []]);
  }
});
