import type { Lamp } from '../plan/equipment.ts';
import type { DimmerKind } from '../plan/lamps.ts';
import { lampTechnology } from '../plan/lamps.ts';
import type { Place } from '../plan/schema.ts';
import { surfacesOf } from '../fabric/index.ts';
import type { LampField, Reflectances } from './lamp-field.ts';
import { lampField } from './lamp-field.ts';

/**
 * Electric input as a share of full at a light output of 0–1 of full: a fixed part and a part that follows the
 * light; a filament's light falls as input to the power 2.1. From memory of dimmer data sheets, low confidence.
 */
const dimmers: Readonly<Record<DimmerKind, (output: number) => number>> = {
  led: (output) => 0.02 + 0.98 * output,
  fluorescent: (output) => 0.15 + 0.85 * output,
  discharge: (output) => 0.25 + 0.75 * output,
  filament: (output) => output ** (1 / 2.1),
};

/** Electric power at the plug of all lamps of an entry at their dimming [W]. */
export function lampWatts(lamp: Lamp): number {
  return lamp.watts * lamp.count * dimmers[lampTechnology(lamp.technology).dimmer](lamp.dimming);
}

/** Photons 400–700 nm of all lamps of an entry at their dimming [µmol s⁻¹]; the plan's efficacy holds at full output. */
export function lampPhotons(lamp: Lamp): number {
  return lamp.watts * lamp.count * lamp.efficacy * lamp.dimming;
}

/** Share of the light pots and leaves throw back (400–700 nm, canopies 0.05–0.1, from memory). */
const plantReflectance = 0.08;

/**
 * Light of a lamp entry on a place's growing area. In a tent the walls are those of the tent; elsewhere the light
 * that misses the area is lost (a shelf's sides are open, glass by night returns little). Where plants stand on
 * more area than the floor has (stacked benches) the light is shared out over all of it.
 */
export function lampLight(place: Place, lamp: Lamp): LampField {
  const { length, width } = surfacesOf(place);
  const floorArea = length * width;
  const share = Math.sqrt(Math.min(1, place.growingArea / floorArea));
  const target = { length: length * share, width: width * share };
  const closed = place.shape.kind === 'tent';
  const walls = closed ? place.wallReflectance : 0;
  const reflectances: Reflectances = { walls, ceiling: walls, floor: plantReflectance };
  const lamps = {
    length: lamp.length,
    width: lamp.width,
    photonFlux: lampPhotons(lamp),
    count: Math.round(lamp.count),
  };
  const field = closed
    ? lampField({ length, width }, lamp.height, lamps, reflectances, { target })
    : lampField(target, lamp.height, lamps, reflectances);
  return place.growingArea > floorArea ? thinned(field, floorArea / place.growingArea) : field;
}

function thinned(field: LampField, factor: number): LampField {
  return {
    ...field,
    average: field.average * factor,
    least: field.least * factor,
    most: field.most * factor,
    map: field.map.map((value) => value * factor),
  };
}

const kept = new WeakMap<Lamp, { readonly place: Place; readonly ppfd: number }>();

/** Average photon flux density of a lamp entry on a place's growing area [µmol m⁻² s⁻¹]; kept for the pair of objects. */
export function lampPpfd(place: Place, lamp: Lamp): number {
  const found = kept.get(lamp);
  if (found !== undefined && found.place === place) return found.ppfd;
  const ppfd = lampLight(place, lamp).average;
  kept.set(lamp, { place, ppfd });
  return ppfd;
}
