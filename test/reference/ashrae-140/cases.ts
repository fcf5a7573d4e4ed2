/**
 * The building of ASHRAE Standard 140-2020: 8 × 6 × 2.7 m, 48 m² of floor, two windows of 3 × 2 m to the south, built as a
 * place of listed surfaces. Simplifications, with what each is worth where it was tried:
 *
 * - the 200 W of gains are a lamp's and go to the air; the standard has 60 % of them radiate (so spread, cases 600 and 900
 *   take 0.09 and 0.07 MWh more, and the free-floating means fall by 0.3 K);
 * - cooling is a vent to the open air: it cannot cool below the outdoor air, which matters in summer only (below 0.1 MWh);
 * - the windows' gap has one resistance at all temperatures (0.19 for 0.179 m² K W⁻¹: −0.04 MWh in case 200), and the sun
 *   the panes take up sits at the outer face (0.42 of it at the inner pane: case 900 −0.13 MWh, 600FF most +2.7 K, and noon of 1 February 2.4 K
 *   over the programs' range);
 * - the opaque windows of cases 200 to 250 have the wind convection of walls, not of smooth glass;
 * - the sun inside falls on the floor first and goes round by area and absorptance from there, at every hour alike;
 * - the floor stands on ground of the weather's own temperature at a metre, not on 10 °C (behind 25 m² K W⁻¹);
 * - the constant air exchange is a fan that never stops, drawing outdoor air at the site's own pressure, so that it is
 *   the standard's 0.5 an hour and not the 0.414 meant for programs that reckon with air at sea level;
 * - the wind of the file's 10 m is taken to the walls' middle at 1.35 m by the power law of open country,
 *   (1.35 / 10)^0.14 = 0.756 (at 0.5 case 200 takes 0.14 MWh less);
 * - 0.01 m² of plants, the least a place can have.
 */
import { demonstrationPlan, placeOf } from '../../../core/index.ts';
import type { Place, Plan } from '../../../core/index.ts';
import { clearPanes, layersOf, opaqueWindow } from './build-ups.ts';
import type { Build, Layer, Mass } from './build-ups.ts';

/** What sets one case apart. Definitions from memory of the standard's table of cases. */
export interface Case {
  readonly name: string;
  readonly mass: Mass;
  readonly windows: 'none' | 'opaque' | 'clear';
  /** Long-wave emissivity of all opaque faces, inside and outside; 0.84 holds for clear glass. */
  readonly emissivityInside: number;
  readonly emissivityOutside: number;
  /** Share of the sun taken up by outer faces. */
  readonly absorptance: number;
  /** Air changes an hour, gains inside [W]. */
  readonly airChanges: number;
  readonly gains: number;
  /** Heated to and, where not null, cooled to [°C]; null is free-floating. */
  readonly heatTo: number | null;
  readonly coolTo: number | null;
}

const tested = (
  name: string,
  windows: Case['windows'],
  emissivities: readonly [inside: number, outside: number],
  changes: Partial<Case> = {},
): Case => ({
  name,
  mass: 'light',
  windows,
  emissivityInside: emissivities[0],
  emissivityOutside: emissivities[1],
  absorptance: 0.1,
  airChanges: 0,
  gains: 0,
  heatTo: 20,
  coolTo: 20,
  ...changes,
});

const lived = { absorptance: 0.6, airChanges: 0.5, gains: 200 };

export const cases = {
  195: tested('195', 'none', [0.1, 0.1]),
  200: tested('200', 'opaque', [0.1, 0.1]),
  210: tested('210', 'opaque', [0.1, 0.9]),
  215: tested('215', 'opaque', [0.9, 0.1]),
  220: tested('220', 'opaque', [0.9, 0.9]),
  230: tested('230', 'opaque', [0.9, 0.9], { airChanges: 1 }),
  240: tested('240', 'opaque', [0.9, 0.9], { gains: 200 }),
  250: tested('250', 'opaque', [0.9, 0.9], { absorptance: 0.9 }),
  600: tested('600', 'clear', [0.9, 0.9], { ...lived, coolTo: 27 }),
  900: tested('900', 'clear', [0.9, 0.9], { ...lived, coolTo: 27, mass: 'heavy' }),
  '600FF': tested('600FF', 'clear', [0.9, 0.9], { ...lived, heatTo: null, coolTo: null }),
  '900FF': tested('900FF', 'clear', [0.9, 0.9], { ...lived, heatTo: null, coolTo: null, mass: 'heavy' }),
} as const;

const floorArea = 48;
const volume = 129.6;
const windowArea = 12;

/** Surfaces of a case, areas in m². */
function surfacesOfCase(each: Case) {
  const layers = layersOf[each.mass];
  const opaque = (list: readonly Layer[]): Build => ({
    kind: 'layers',
    layers: [...list],
    absorptance: each.absorptance,
    absorptanceInside: 0.6,
    emissivity: each.emissivityOutside,
    emissivityInside: each.emissivityInside,
  });
  const wall = (name: string, area: number, azimuth: number) => ({
    name,
    area,
    tilt: 90,
    azimuth,
    build: opaque(layers.wall),
    behind: 'outdoors' as const,
  });
  const south = wall('south wall', each.windows === 'none' ? 21.6 : 21.6 - windowArea, 180);
  const glazed = {
    ...wall('south windows', windowArea, 180),
    build: each.windows === 'clear' ? clearPanes() : opaque(opaqueWindow()),
  };
  return [
    wall('north wall', 21.6, 0),
    wall('east wall', 16.2, 90),
    south,
    wall('west wall', 16.2, 270),
    ...(each.windows === 'none' ? [] : [glazed]),
    { ...wall('roof', floorArea, 0), tilt: 0, build: opaque(layers.roof) },
    { ...wall('floor', floorArea, 0), tilt: 180, build: opaque(layers.floor), behind: 'ground' as const },
  ];
}

/** A lamp that turns its whole electric input into heat inside, all day. */
const gainsOf = (watts: number) => ({
  id: 'gains',
  name: 'Gains',
  technology: 'led-white',
  watts,
  efficacy: 1,
  count: 1,
  height: 1,
  length: 0.1,
  width: 0.1,
  on: '00:00',
  off: '23:59',
});

export function placeOfCase(each: Case): Place {
  return placeOf({
    id: 'case',
    name: `Case ${each.name}`,
    shape: { kind: 'listed', floorArea, volume, surfaces: surfacesOfCase(each) },
    covering: 'glass-4',
    frameShare: 0,
    dirtShare: 0,
    leakage: 0,
    fan:
      each.airChanges === 0
        ? null
        : {
            flow: each.airChanges * volume,
            watts: 0,
            onAt: 60,
            band: 1,
            leastSpeed: 1,
            draws: 'outdoors',
          },
    vents: each.coolTo === null ? [] : [{ area: 20, height: 2, openAt: each.coolTo, band: 0.5 }],
    heaters:
      each.heatTo === null
        ? []
        : [
            {
              id: 'heater',
              name: 'Ideal heater',
              kind: 'fan',
              power: 10000,
              setPointDay: each.heatTo,
              setPointNight: each.heatTo,
              differential: 0,
            },
          ],
    lamps: each.gains === 0 ? [] : [gainsOf(each.gains)],
    growingArea: 0.01,
    potMass: 0,
    wallReflectance: 0.4,
  });
}

/** The case's place on the standard's site in standard time; the weather comes from the file. */
export function planOfCase(each: Case): Plan {
  return {
    ...demonstrationPlan,
    site: {
      ...demonstrationPlan.site,
      latitude: 39.83,
      longitude: -104.65,
      elevation: 1650,
      timeZone: 'Etc/GMT+7',
      albedo: 0.2,
      windShare: 0.756,
      frostHollow: 0,
      horizon: [],
    },
    places: [placeOfCase(each)],
    lots: [],
  };
}
