import { figure } from './covering.ts';
import type { Figure } from './covering.ts';

/** How electric input follows the light when a lamp is dimmed (`lampInputShare` in light/lamps.ts). */
export type DimmerKind = 'led' | 'fluorescent' | 'discharge' | 'filament';

/** A kind of lamp, whole fitting with its driver or ballast. */
export interface LampTechnology {
  readonly id: string;
  readonly name: string;
  /** Photons 400–700 nm per joule at the plug [µmol J⁻¹]: low, typical and high of what is sold. */
  readonly efficacy: {
    readonly low: number;
    readonly typical: number;
    readonly high: number;
    readonly source: string;
  };
  /** Lux for one µmol m⁻² s⁻¹ of this lamp's light. */
  readonly luxPerMicromole: Figure;
  /** Photons per joule of its light of 400–700 nm itself [µmol J⁻¹]; efficacy ÷ this is the light's share of the watts. */
  readonly photonsPerJoule: Figure;
  /** Share of the watts at the plug that leaves with the light as radiation beyond 700 nm, 0–1. */
  readonly infraredShare: Figure;
  /** Share of that radiation which a leaf takes up, 0–1: little of the near infra-red, nearly all of a warm face's heat. */
  readonly infraredAbsorptance: Figure;
  /** Nearer than this growers do not hang a lamp of 100 W [m]; for other watts × √(watts ÷ 100). */
  readonly nearest: Figure;
  /** Burning life [h], and the share of the first light left towards its end, 0–1. */
  readonly life: Figure;
  readonly maintenance: Figure;
  readonly dimmer: DimmerKind;
  /** Share of the electric input lost in a driver or ballast that may stand outside, 0–1. */
  readonly driverLoss: Figure;
  /** Purchase price a watt, in the plan's currency. */
  readonly pricePerWatt: Figure;
}

export const photometry = 'Thimijan & Heins 1983, HortScience 18:818';

/** Input of general lamps by visible, infra-red, convection and ballast, as lighting handbooks table it. */
export const handbookBalance = 'energy balance of the lamp in the IES Lighting Handbook, from memory';

/** A leaf takes up nearly all long-wave radiation (emissivity 0.94–0.99, Campbell & Norman 1998). */
export const warmFace = figure(
  0.95,
  'thermal radiation of a warm face; leaf emissivity 0.94–0.99 (Campbell & Norman 1998)',
  'high',
);

/** Hot bulbs give near infra-red, of which a leaf takes about a sixth, and thermal radiation, of which nearly all. */
export const hotBulb = figure(
  0.5,
  'about half near infra-red (leaf 0.15, from memory) and half thermal of the hot bulb; derived',
  'low',
);
