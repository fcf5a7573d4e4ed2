import type { Covering } from '../plan/coverings.ts';
import type { Band } from './cover.ts';
import { assemblyOptics, diffuseOptics } from './cover.ts';

/** Steps of the table in the incidence cosine; straight lines between them err by less than 0.002. */
const steps = 256;

/** Transmittance of a cover with its inner layers by incidence cosine, tabled for the year's loop. */
export interface TransmittanceCurve {
  /** Value at cosine i / 256. */
  readonly table: Float64Array;
  /** Hemispherical value. */
  readonly diffuse: number;
}

export function transmittanceCurve(layers: readonly Covering[], band: Band): TransmittanceCurve {
  const table = new Float64Array(steps + 2);
  for (let i = 0; i <= steps; i++) table[i] = assemblyOptics(i / steps, layers, band).transmittance;
  table[steps + 1] = table[steps];
  return { table, diffuse: diffuseOptics(layers, band).transmittance };
}

/** Transmittance at an incidence cosine, 0 behind the face. */
export function onCurve(curve: TransmittanceCurve, cosine: number): number {
  if (!(cosine > 0)) return 0;
  const at = Math.min(1, cosine) * steps;
  const low = Math.floor(at);
  return curve.table[low] + (at - low) * (curve.table[low + 1] - curve.table[low]);
}
