import type { Lamp } from '../plan/equipment.ts';
import { lampTechnology } from '../plan/lamps.ts';
import { leafLoad, leafOverAir } from './burn-leaf.ts';
import { dailyLight } from './daily-light.ts';
import { lampWatts } from './lamps.ts';

/** What a lamp does to the leaf nearest to it. */
export interface BurnRisk {
  /** Most photon flux density at the tops of the plants [µmol m⁻² s⁻¹]. */
  readonly ppfd: number;
  /** Leaf above the air there, lamps alone, still air [K]. */
  readonly leafOver: number;
  readonly level: 'none' | 'watch' | 'burn';
  /** Why, in the grower's words with the figures; '' where there is no risk. */
  readonly words: string;
}

/** A lot that stands under the lamps. */
export interface LitPlants {
  readonly name: string;
  /** Most daily light before bleaching [mol m⁻² d⁻¹], and leaf temperature borne for a few hours [°C]. */
  readonly most: number;
  readonly hot: number;
}

/** Lamps over one level of plants, and what their brightest spot gets. */
export interface BurnInput {
  readonly lamps: readonly Lamp[];
  /** Photon flux density of the lamps at the brightest spot [µmol m⁻² s⁻¹]. */
  readonly ppfd: number;
  /** Hours they burn a day [h], and the daylight that comes on top there [mol m⁻² d⁻¹]. */
  readonly hours: number;
  readonly daylight: number;
  /** Warmest air in which they burn [°C]. */
  readonly air: number;
  readonly plants: readonly LitPlants[];
}

/** Hot leaf temperature where no plants are named [°C]: most tender plants are hurt at 45–50 (from memory). */
const usualHot = 45;

/** Leaf temperatures this near to harm are worth watching [K]: the balance is good to about that (derived). */
const nearHarm = 4;

/** Daily light over the most a group bears bleaches; by this factor over it, it burns (common practice, no source). */
const burningFactor = 1.5;

type Level = BurnRisk['level'];
interface Finding {
  readonly level: Level;
  readonly words: string;
}
const rank: Readonly<Record<Level, number>> = { none: 0, watch: 1, burn: 2 };

/** Whether the lamps hurt the plants' tops at their brightest spot: by heat, by light, or by hanging too near. */
export function burnRisk(input: BurnInput): BurnRisk {
  for (const name of ['ppfd', 'hours', 'daylight'] as const) {
    if (!(input[name] >= 0)) throw new Error(`expected ${name} of 0 or more, got ${input[name]}`);
  }
  const leafOver = leafOverAir(leafLoad(input.lamps, input.ppfd), input.air);
  const findings =
    input.lamps.length === 0 ? [] : [byHeat(input, leafOver), byLight(input), byDistance(input)];
  const risks = findings.filter((one) => one.level !== 'none').sort((a, b) => rank[b.level] - rank[a.level]);
  return {
    ppfd: input.ppfd,
    leafOver,
    level: risks[0]?.level ?? 'none',
    words: risks.map((one) => one.words).join(' '),
  };
}

const none: Finding = { level: 'none', words: '' };

function byHeat(input: BurnInput, leafOver: number): Finding {
  const leaf = input.air + leafOver;
  const tenderest = least(input.plants, (one) => one.hot);
  const hot = tenderest?.hot ?? usualHot;
  // Air that is too hot by itself is no fault of the lamp.
  if (!(leaf >= hot - nearHarm) || leafOver < 1) return none;
  const whose = tenderest === null ? 'most plants' : tenderest.name;
  const stands = `In still air of ${input.air.toFixed(0)} °C the leaves under the brightest spot stand ${leafOver.toFixed(0)} K over it, at ${leaf.toFixed(0)} °C`;
  return leaf >= hot
    ? { level: 'burn', words: `${stands}: over the ${hot.toFixed(0)} °C limit of ${whose}.` }
    : { level: 'watch', words: `${stands}: near the ${hot.toFixed(0)} °C limit of ${whose}.` };
}

function byLight(input: BurnInput): Finding {
  const tenderest = least(input.plants, (one) => one.most);
  if (tenderest === null) return none;
  const light = dailyLight(input.ppfd, input.hours) + input.daylight;
  if (!(light > tenderest.most)) return none;
  const words = `The brightest spot gets ${light.toFixed(0)} mol a day, over the ${tenderest.most.toFixed(0)} at which ${tenderest.name} may bleach.`;
  return { level: light > burningFactor * tenderest.most ? 'burn' : 'watch', words };
}

/** How near a lamp may hang [m]: the catalogue's distance at 100 W, growing with the root of the watts it draws. */
export function nearestDistance(lamp: Lamp): number {
  return lampTechnology(lamp.technology).nearest.value * Math.sqrt(lampWatts(lamp) / lamp.count / 100);
}

function byDistance(input: BurnInput): Finding {
  const near = input.lamps.filter((lamp) => lamp.height < nearestDistance(lamp));
  if (near.length === 0) return none;
  const words = near.map(
    (lamp) =>
      `${lamp.name} hangs ${lamp.height.toFixed(2)} m over the tops; growers keep one of ${lamp.watts.toFixed(0)} W at ${nearestDistance(lamp).toFixed(2)} m or more.`,
  );
  return { level: 'watch', words: words.join(' ') };
}

function least<T>(items: readonly T[], of: (item: T) => number): T | null {
  return items.reduce<T | null>((best, item) => (best === null || of(item) < of(best) ? item : best), null);
}
