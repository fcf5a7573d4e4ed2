import {
  beamPatches,
  civilInstant,
  sectionOf,
  skylineShare,
  sunPosition,
  surfacesOf,
} from '../../../core/index.ts';
import type { BeamPatch, Enclosure, Place, PlanSite } from '../../../core/index.ts';
import { clothsOn, lightThrough } from '../section/cloths.ts';
import { innerRange } from '../section/geometry.ts';
import type { Cloths } from '../section/cloths.ts';
import { clock } from './figures.ts';

/** Where the sun falls on the plants' level, and the share of its plant light that comes in there, cloths included. */
export interface Patch extends Pick<BeamPatch, 'surface' | 'polygon' | 'area' | 'incidence'> {
  readonly share: number;
}

/** Where the sun is for the plants of a place: not up, behind the skyline, off the glass that reaches them, or on them. */
export type SunState = 'down' | 'skyline' | 'away' | 'in';

/** The sun over a place at one time of the clock. */
export interface SunMoment {
  /** Clock time at the site [min after midnight]. */
  readonly minutes: number;
  /** Height over the horizon and azimuth clockwise from north [degrees]. */
  readonly elevation: number;
  readonly azimuth: number;
  readonly state: SunState;
  /** Share of its beam that passes what stands around, 0–1. */
  readonly through: number;
  readonly cloths: Cloths;
  /** Where its beam falls on the plants' level; empty unless `in`. */
  readonly patches: readonly Patch[];
}

/** Minutes from one look at the sun to the next. */
export const stepMinutes = 10;
const minutesInDay = 1440;

/** What stands round a place: its own skyline, or the site's. */
export const skylineOf = (place: Place, site: PlanSite) => place.horizon ?? site.horizon;

export function sunAt(
  place: Place,
  site: PlanSite,
  date: string,
  minutes: number,
  enclosure: Enclosure = surfacesOf(place),
): SunMoment {
  const sun = sunPosition(civilInstant(date, minutes, site.timeZone), site);
  const { azimuth } = sun;
  const elevation = 90 - sun.apparentZenith;
  const through = skylineShare(skylineOf(place, site), elevation, azimuth);
  const cloths = clothsOn(place, date.slice(5), clock(minutes));
  const at = { minutes, elevation, azimuth, through, cloths, patches: [] };
  if (!(elevation > 0)) return { ...at, state: 'down' };
  if (!(through > 0)) return { ...at, state: 'skyline' };
  const patches = patchesOf(place, site, { azimuth, elevation }, cloths, enclosure);
  return { ...at, patches, state: patches.length > 0 ? 'in' : 'away' };
}

function patchesOf(
  place: Place,
  site: PlanSite,
  sun: { readonly azimuth: number; readonly elevation: number },
  cloths: Cloths,
  enclosure: Enclosure,
): Patch[] {
  const found = beamPatches(place, site, sun, enclosure);
  return found.flatMap(({ surface: name, polygon, area, incidence }) => {
    const surface = enclosure.surfaces.find((each) => each.name === name);
    if (surface === undefined) return [];
    const cosine = Math.cos((incidence * Math.PI) / 180);
    const share = lightThrough(place, surface, cosine, cloths).transmittance;
    return [{ surface: name, polygon, area, incidence, share }];
  });
}

/** The sun of a whole date from midnight to midnight by the clock. */
export function sunDay(place: Place, site: PlanSite, date: string): SunMoment[] {
  const enclosure = surfacesOf(place);
  return Array.from({ length: minutesInDay / stepMinutes + 1 }, (_, i) =>
    sunAt(place, site, date, i * stepMinutes, enclosure),
  );
}

/** A stretch of the day in one state, from its first to its last look [min after midnight]. */
export interface Spell {
  readonly state: SunState;
  readonly from: number;
  readonly to: number;
}

export function spellsOf(day: readonly SunMoment[]): Spell[] {
  const spells: Spell[] = [];
  for (const { state, minutes } of day) {
    const last = spells[spells.length - 1];
    if (last !== undefined) spells[spells.length - 1] = { ...last, to: minutes };
    if (last?.state !== state) spells.push({ state, from: minutes, to: minutes });
  }
  return spells;
}

/** Area at the height of the plants' tables over which the engine spreads daylight [m²]: within the cover, clear of a pane. */
export function plantsLevelArea(place: Place): number {
  const section = sectionOf(place);
  const { from, to } = innerRange(section, section.plantLevel);
  const clear = place.shape.kind === 'window-bay' ? place.shape.distance : 0;
  return Math.max(0, to - from - clear) * section.length;
}

/** Area on which the beam falls [m²]. */
export const litArea = ({ patches }: SunMoment) => patches.reduce((sum, { area }) => sum + area, 0);

/** Mean share of the beam that comes in where it falls, 0–1. */
export function shareOf({ patches }: SunMoment): number {
  const all = patches.reduce((sum, { area }) => sum + area, 0);
  return all > 0 ? patches.reduce((sum, { area, share }) => sum + area * share, 0) / all : 0;
}

/** Day of the season on which the sun is lowest at noon: 21 December, or 21 June south of the equator. */
export function shortestDay(startDate: string, latitude: number): number {
  const start = Date.parse(`${startDate}T00:00:00Z`);
  const year = new Date(start).getUTCFullYear();
  const month = latitude >= 0 ? 11 : 5;
  const inYear = (of: number) => (Date.UTC(of, month, 21) - start) / 86_400_000;
  return inYear(year) >= 0 ? inYear(year) : inYear(year + 1);
}
