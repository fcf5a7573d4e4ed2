import type { Covering } from '../plan/coverings.ts';
import type { PassAndReflect } from './slab.ts';
import { slab, stack } from './slab.ts';

/** Whole solar spectrum, or 400–700 nm. */
export type Band = 'solar' | 'par';

const degree = Math.PI / 180;

/** What a covering passes and reflects at an incidence cosine. */
export function coverOptics(cosine: number, covering: Covering, band: Band = 'solar'): PassAndReflect {
  const { optics } = covering;
  switch (optics.kind) {
    case 'opaque':
      return { transmittance: 0, reflectance: 1 - optics.absorptance.value };
    case 'slab': {
      const extinction = band === 'solar' ? optics.extinction : optics.parExtinction;
      return slab(
        cosine,
        optics.refractiveIndex.value,
        extinction.value,
        optics.thickness.value,
        optics.layers,
      );
    }
    case 'measured': {
      const normal = band === 'solar' ? optics.normalTransmittance.value : optics.parTransmittance.value;
      const reflectance = Math.min(optics.reflectance.value, 1 - normal);
      if (optics.curveLayers === 0) return { transmittance: normal, reflectance };
      const fall = angleFall(cosine, optics.refractiveIndex.value, optics.curveLayers);
      return { transmittance: normal * fall, reflectance: reflectance + normal * (1 - fall) };
    }
  }
}

/** Transmittance of clear plates without absorption relative to normal incidence: the shape measured sheets follow. */
function angleFall(cosine: number, refractiveIndex: number, layers: number): number {
  const normal = slab(1, refractiveIndex, 0, 0, layers).transmittance;
  return slab(cosine, refractiveIndex, 0, 0, layers).transmittance / normal;
}

/** Transmittance of a covering for beam light at an incidence angle [degrees], 0–1. */
export function coverTransmittance(
  incidenceDegrees: number,
  covering: Covering,
  band: Band = 'solar',
): number {
  return coverOptics(Math.cos(checked(incidenceDegrees) * degree), covering, band).transmittance;
}

/** Share of beam light at an incidence angle [degrees] that a covering absorbs, 0–1. */
export function coverAbsorptance(incidenceDegrees: number, covering: Covering, band: Band = 'solar'): number {
  const { transmittance, reflectance } = coverOptics(
    Math.cos(checked(incidenceDegrees) * degree),
    covering,
    band,
  );
  return Math.max(0, 1 - transmittance - reflectance);
}

/** What a cover with layers inside it passes and reflects, outermost first; layers beyond the first scatter or nearly so. */
export function assemblyOptics(
  cosine: number,
  layers: readonly Covering[],
  band: Band = 'solar',
): PassAndReflect {
  let all: PassAndReflect = { transmittance: 1, reflectance: 0 };
  for (const layer of layers) all = stack(all, coverOptics(cosine, layer, band));
  return all;
}

/** Transmittance of cover, lining and screen together for beam light at an incidence angle [degrees], 0–1. */
export function assemblyTransmittance(
  incidenceDegrees: number,
  layers: readonly Covering[],
  band: Band = 'solar',
): number {
  return assemblyOptics(Math.cos(checked(incidenceDegrees) * degree), layers, band).transmittance;
}

/** Steps of the hemispherical integration; 180 of them bring glass to 1e-5. */
const hemisphereSteps = 180;

/**
 * Hemispherical mean of cover optics under an even sky: ∫ τ(θ) sin 2θ dθ (Duffie & Beckman ch. 5.4), by
 * midpoints in the angle.
 */
export function diffuseOptics(layers: readonly Covering[], band: Band = 'solar'): PassAndReflect {
  let transmittance = 0;
  let reflectance = 0;
  const step = Math.PI / 2 / hemisphereSteps;
  let weights = 0;
  for (let i = 0; i < hemisphereSteps; i++) {
    const angle = (i + 0.5) * step;
    const weight = Math.sin(2 * angle) * step;
    const optics = assemblyOptics(Math.cos(angle), layers, band);
    transmittance += optics.transmittance * weight;
    reflectance += optics.reflectance * weight;
    weights += weight;
  }
  return { transmittance: transmittance / weights, reflectance: reflectance / weights };
}

/** Transmittance of a covering for even diffuse light, 0–1. */
export function diffuseTransmittance(covering: Covering, band: Band = 'solar'): number {
  return diffuseOptics([covering], band).transmittance;
}

/** Share of even diffuse sunlight a cover with its inner layers absorbs, 0–1. */
export function solarAbsorptance(layers: readonly Covering[]): number {
  const { transmittance, reflectance } = diffuseOptics(layers, 'solar');
  return Math.max(0, 1 - transmittance - reflectance);
}

function checked(incidenceDegrees: number): number {
  if (!(incidenceDegrees >= 0 && incidenceDegrees <= 90)) {
    throw new Error(`expected an incidence of 0 to 90 degrees, got ${incidenceDegrees}`);
  }
  return incidenceDegrees;
}
