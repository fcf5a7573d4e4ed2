/**
 * The roof space of `../shared/data/measured/attic-60N` as a hand-listed place. What the description gives is marked
 * D; the rest are usual values of Finnish houses of about 2000, none of them fitted to the readings.
 */
import { demonstrationPlan, parsePlan, placeOf } from '../../core/index.ts';
import type { Place, Plan, Room } from '../../core/index.ts';
import { placeLight, prepareSiteYear } from '../../core/season/index.ts';
import { airOf, preparePlaceRun, runPlaceHeat } from '../../core/season/place-heat.ts';
import { roomTemperatures } from '../../core/season/surroundings.ts';
import type { LyingSnow } from './attic-snow.ts';
import type { AtticYear } from './attic-year.ts';
import { station } from './attic-year.ts';

/** Choices that the description leaves open. */
export interface AtticChoices {
  /** Openings at the eaves, area per floor area. */
  readonly eaves: number;
  /** Air changes through other gaps at 20 K and 3 m/s [1/h]. */
  readonly leakage: number;
  /** Wind at the house as a share of the station's. */
  readonly windShare: number;
  /** Conductivity of the blown wool as laid [W m⁻¹ K⁻¹]. */
  readonly wool: number;
  /** Short-wave absorptance of the tiles. */
  readonly tiles: number;
  /** Resistance of the gap between underlay and tiles [m² K W⁻¹]. */
  readonly gap: number;
  /** Snow on the roof as a share of its depth on the ground. */
  readonly snowShare: number;
}

/**
 * Eaves: slots of 20 mm along both sides, 0.4 % of the floor as Finnish guides ask (0.25–0.6 %, from memory); in 2 m/s
 * at the house that is 4 air changes an hour, and measured cold roofs have 2–10 (from memory). Wind: half among houses
 * as tall (D: terrain III). Wool: 0.05, the design value for blown mineral wool of the time (0.042–0.055, from memory).
 * Tiles: 0.75, middle of red to dark concrete, 0.6–0.9. Gap: 0.16 as ISO 6946 gives for air at rest, less as it moves:
 * 0.12 (0.08–0.16). Snow: 0.8, the shape coefficient of EN 1991-1-3 for roofs up to 30° (0.6–1).
 */
export const usualAttic: AtticChoices = {
  eaves: 0.004,
  leakage: 0.5,
  windShare: 0.5,
  wool: 0.05,
  tiles: 0.75,
  gap: 0.12,
  snowShare: 0.8,
};

/** Temperature under which the slots at the eaves would close [°C]: they never do. */
const alwaysOpen = -60;

/** Floor of one dwelling under its half of the roof: width across the ridge and length along it [m] (estimate). */
const width = 9;
const length = 11;

/** Slope of the roof [degrees]: with eaves near 3.2 m and the ridge at 4.5 m (D) about 1 in 3.5; tiles allow no less than 1 in 4. */
const slope = 16;
const degree = Math.PI / 180;
const rise = (width / 2) * Math.tan(slope * degree);

/** Mean height of the roof space's air [m] (D). */
const meanHeight = 1;
const floor = width * length;

/** Upright end of the roof space: the triangle, on the strip that its mean height of air leaves below it [m²]. */
const gable = width * (meanHeight - rise / 2) + (width * rise) / 2;

type Surfaces = Extract<Place['shape'], { kind: 'listed' }>['surfaces'];
type Layer = { thickness: number; conductivity: number; density: number; specificHeat: number };

const layer = (thickness: number, conductivity: number, density: number, specificHeat: number): Layer => ({
  thickness,
  conductivity,
  density,
  specificHeat,
});

const wood = (thickness: number) => layer(thickness, 0.12, 450, 1600);
const gypsum = (thickness: number) => layer(thickness, 0.21, 700, 1000);

/** Layers from the roof space outwards; properties are usual values of EN ISO 10456. */
function surfaces(choices: AtticChoices): object[] {
  const { gap, tiles, wool } = choices;
  const roof = {
    area: (length * width) / 2 / Math.cos(slope * degree),
    tilt: slope,
    behind: 'outdoors',
    build: {
      kind: 'layers',
      // Underlay, ventilation gap (D), concrete tiles (D) of 42 kg a square metre.
      layers: [
        layer(0.0005, 0.2, 900, 1800),
        layer(0.05, 0.05 / gap, 1.2, 1006),
        layer(0.02, 1.5, 2100, 1000),
      ],
      absorptance: tiles,
    },
  };
  return [
    {
      name: 'ceiling',
      area: floor,
      tilt: 180,
      azimuth: 0,
      behind: 'room',
      // Blown mineral wool 0.3 m (D) of 30 kg/m³; vapour barrier (D) without resistance; a gypsum board.
      build: { kind: 'layers', layers: [layer(0.3, wool, 30, 840), gypsum(0.013)] },
    },
    // The long sides with the eaves look east and west (D: names of the loggers).
    { name: 'east slope', azimuth: 90, ...roof },
    { name: 'west slope', azimuth: 270, ...roof },
    {
      name: 'south gable',
      area: gable,
      tilt: 90,
      azimuth: 180,
      behind: 'outdoors',
      build: { kind: 'layers', layers: [wood(0.022)], absorptance: 0.6 },
    },
    {
      // Two boards each side of studs toward the neighbour's half, which is as warm.
      name: 'wall to the other half',
      area: gable,
      tilt: 90,
      azimuth: 0,
      behind: 'nothing',
      build: { kind: 'layers', layers: [gypsum(0.026)] },
    },
    {
      // Trusses (D) 0.9 m apart: upper chords 42 × 123 mm and webs 42 × 73 mm give 0.55 m² of face and 8 litres of
      // wood for each square metre of floor; the lower chords lie in the wool.
      name: 'trusses',
      area: 0.55 * floor,
      tilt: 90,
      azimuth: 0,
      behind: 'nothing',
      build: { kind: 'layers', layers: [wood(0.015)] },
    },
  ];
}

/** The roof space as a place over a room. */
export function atticPlace(room: Room, choices: AtticChoices, snowLies: boolean): Place {
  const place = placeOf({
    id: 'attic',
    name: 'Roof space',
    shape: {
      kind: 'listed',
      floorArea: floor,
      volume: floor * meanHeight,
      surfaces: surfaces(choices) as Surfaces,
    },
    covering: 'timber-board',
    room,
    leakage: choices.leakage,
    floor: 'raised',
    snow: snowLies ? 'left' : 'cleared',
    frameShare: 0,
    dirtShare: 0,
    growingArea: 0.01,
    potMass: 0,
  });
  // The plan's vents are opened by hand or by a thermostat down to −10 °C; slots stand open in any frost.
  const eaves = {
    position: 'side' as const,
    area: choices.eaves * floor,
    height: 0.1,
    openAt: alwaysOpen,
    band: 1,
  };
  return { ...place, vents: [eaves] };
}

/** Air of the roof space at the end of each hour of the year [°C]. */
export function runAttic(
  year: AtticYear,
  room: Room,
  snow: LyingSnow | null,
  choices: AtticChoices = usualAttic,
): Float64Array {
  const place = atticPlace(room, choices, snow !== null);
  const siteYear = prepareSiteYear(planFor(choices, snow), year.weather, 'attic');
  const light = placeLight(place, siteYear);
  const { clock } = siteYear;
  const run = preparePlaceRun(place, siteYear, light, [], roomTemperatures(place.room, clock), 0);
  const air = new Float64Array(8760);
  const perHour = 60 / clock.stepMinutes;
  runPlaceHeat(run, siteYear, 0, (index, _drive, state) => {
    if ((index + 1) % perHour === 0) air[(index + 1) / perHour - 1] = airOf(state);
  });
  return air;
}

function planFor(choices: AtticChoices, snow: LyingSnow | null): Plan {
  const reading = parsePlan({
    ...demonstrationPlan,
    site: {
      name: 'Vantaa',
      ...station,
      timeZone: 'Europe/Helsinki',
      windShare: choices.windShare,
      snow: snow === null ? null : { ...snow, depth: Math.max(0.01, snow.depth * choices.snowShare) },
    },
    places: [],
    lots: [],
    groupEdits: {},
  });
  if (!reading.ok)
    throw new Error(reading.problems.map((each) => `${each.path}: ${each.message}`).join('\n'));
  return reading.plan;
}
