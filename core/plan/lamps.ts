import type { LampTechnology } from './lamp-technology.ts';
import { dischargeLamps, filamentLamps } from './lamps-discharge.ts';
import { ledLamps } from './lamps-led.ts';
import { fluorescentLamps } from './lamps-tubes.ts';

export type { DimmerKind, LampTechnology } from './lamp-technology.ts';

/**
 * Lamp kinds: LED, sodium and metal halide, fluorescent, filament; best first in each. A lamp in a plan carries its
 * own watts and efficacy; these are where to start.
 */
export const lampTechnologies: readonly LampTechnology[] = [
  ...ledLamps,
  ...dischargeLamps,
  ...fluorescentLamps,
  ...filamentLamps,
];

const byId: ReadonlyMap<string, LampTechnology> = new Map(lampTechnologies.map((entry) => [entry.id, entry]));

/** The lamp technology of an id; an unknown id is wrong use (the plan was checked before). */
export function lampTechnology(id: string): LampTechnology {
  const found = byId.get(id);
  if (found === undefined) throw new Error(`expected a lamp technology of the catalogue, got ${id}`);
  return found;
}

/** True where the catalogue holds the id. */
export function isLampTechnology(id: string): boolean {
  return byId.has(id);
}

/**
 * Where the watts at the plug go, as shares that sum to one: light of 400–700 nm, radiation beyond 700 nm that leaves
 * with it, loss in the driver or ballast, and the rest, which warms the air round the lamp.
 */
export interface WattShares {
  readonly light: number;
  readonly infrared: number;
  readonly driver: number;
  readonly air: number;
}

/** Shares of a technology's watts at a photon efficacy [µmol J⁻¹]; the light comes first where all would pass one. */
export function wattShares(technology: LampTechnology, efficacy = technology.efficacy.typical): WattShares {
  const light = Math.min(1, efficacy / technology.photonsPerJoule.value);
  const driver = Math.min(technology.driverLoss.value, 1 - light);
  const infrared = Math.min(technology.infraredShare.value, 1 - light - driver);
  return { light, infrared, driver, air: Math.max(0, 1 - light - driver - infrared) };
}
