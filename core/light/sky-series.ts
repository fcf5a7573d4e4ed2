import type { OutdoorSteps } from '../weather/index.ts';
import { airMass, lowSunZenith } from '../sun/index.ts';
import { clearnessIndex, photonsPerJouleOfSky } from './photons.ts';
import { perezClearness, perezCoefficient } from '../sun/perez.ts';

/** Sun and sky of a run of steps made ready for any number of planes; arrays hold daylit steps only. */
export interface SkySeries {
  /** Number of all steps, and the index of each daylit one. */
  readonly n: number;
  readonly index: Int32Array;
  /** Unit vector to the sun: east, north, up. */
  readonly east: Float64Array;
  readonly north: Float64Array;
  readonly up: Float64Array;
  /** Beam on a plane facing the sun, sky light and global on the horizontal [W m⁻²]. */
  readonly beam: Float64Array;
  readonly diffuse: Float64Array;
  readonly global: Float64Array;
  /** Share of the sky light that comes from round the sun, and the horizon brightening (Perez et al. 1990). */
  readonly circumsolar: Float64Array;
  readonly horizon: Float64Array;
  /** Photons 400–700 nm per joule of global sunlight [µmol J⁻¹], by the sky's clearness. */
  readonly photonsPerJoule: Float64Array;
}

const degree = Math.PI / 180;

/**
 * Perez' coefficients of every daylit step, computed once and shared by all planes. With the sun within 3° of
 * the horizon, or down, the sky is taken as even.
 */
export function skySeries(steps: OutdoorSteps): SkySeries {
  const lit = litSteps(steps);
  const make = () => new Float64Array(lit.length);
  const east = make();
  const north = make();
  const up = make();
  const beam = make();
  const diffuse = make();
  const global = make();
  const circumsolar = make();
  const horizon = make();
  const photonsPerJoule = make();
  for (let j = 0; j < lit.length; j++) {
    const k = lit[j];
    const elevation = steps.sunElevation[k];
    const level = Math.cos(elevation * degree);
    east[j] = level * Math.sin(steps.sunAzimuth[k] * degree);
    north[j] = level * Math.cos(steps.sunAzimuth[k] * degree);
    up[j] = Math.sin(elevation * degree);
    beam[j] = elevation > 0 ? steps.beamNormal[k] : 0;
    diffuse[j] = steps.diffuseHorizontal[k];
    global[j] = steps.globalHorizontal[k];
    photonsPerJoule[j] = photonsPerJouleOfSky(
      clearnessIndex(global[j], steps.extraterrestrialNormal[k], up[j]),
    );
    const zenith = 90 - elevation;
    if (zenith < lowSunZenith && diffuse[j] > 0) {
      const angle = zenith * degree;
      const clearness = perezClearness(diffuse[j], beam[j], angle);
      const brightness = (diffuse[j] * airMass(zenith)) / steps.extraterrestrialNormal[k];
      circumsolar[j] = Math.min(1, perezCoefficient(1, clearness, brightness, angle));
      horizon[j] = perezCoefficient(2, clearness, brightness, angle);
    }
  }
  return {
    n: steps.n,
    index: lit,
    east,
    north,
    up,
    beam,
    diffuse,
    global,
    circumsolar,
    horizon,
    photonsPerJoule,
  };
}

function litSteps(steps: OutdoorSteps): Int32Array {
  const lit = new Int32Array(steps.n);
  let count = 0;
  for (let k = 0; k < steps.n; k++) {
    if (steps.globalHorizontal[k] > 0 || steps.diffuseHorizontal[k] > 0 || steps.beamNormal[k] > 0)
      lit[count++] = k;
  }
  return lit.slice(0, count);
}

const kept = new WeakMap<OutdoorSteps, SkySeries>();

/** The same, kept for as long as the steps are: every place of a plan shares them. */
export function sharedSkySeries(steps: OutdoorSteps): SkySeries {
  const found = kept.get(steps);
  if (found !== undefined) return found;
  const made = skySeries(steps);
  kept.set(steps, made);
  return made;
}
