/**
 * Clear plates: Fresnel's reflection, Snell's refraction and Bouguer's absorption as in Duffie & Beckman,
 * Solar Engineering of Thermal Processes, ch. 5, each polarisation followed by itself and averaged last.
 */

/** Shares of the light that pass and that are thrown back, 0–1; the rest is absorbed. */
export interface PassAndReflect {
  readonly transmittance: number;
  readonly reflectance: number;
}

/** Reflectance of one air–plate face for light polarised across (`perpendicular`) and along the plane of incidence. */
export function fresnel(
  cosine: number,
  refractiveIndex: number,
): { perpendicular: number; parallel: number } {
  const sine = Math.sqrt(Math.max(0, 1 - cosine * cosine)) / refractiveIndex;
  const refracted = Math.sqrt(1 - sine * sine);
  const n = refractiveIndex;
  const perpendicular = ((cosine - n * refracted) / (cosine + n * refracted)) ** 2;
  const parallel = ((refracted - n * cosine) / (refracted + n * cosine)) ** 2;
  return { perpendicular, parallel };
}

/** One plate for one polarisation: face reflectance r, share `passed` that survives one crossing (D&B 5.3.1–5.3.3). */
function plate(r: number, passed: number): PassAndReflect {
  const transmittance = (passed * (1 - r) * (1 - r)) / (1 - r * r * passed * passed);
  return { transmittance, reflectance: r * (1 + passed * transmittance) };
}

/** Two layers one behind the other, outer first, reflections between them summed (D&B ch. 5.3, eq. for two covers). */
export function stack(outer: PassAndReflect, inner: PassAndReflect): PassAndReflect {
  const both = outer.reflectance * inner.reflectance;
  const between = both < 1 ? 1 / (1 - both) : 1;
  return {
    transmittance: outer.transmittance * inner.transmittance * between,
    reflectance: outer.reflectance + outer.transmittance * outer.transmittance * inner.reflectance * between,
  };
}

/**
 * `layers` equal plates at an incidence cosine. `thickness` [m] of one plate, `extinction` [m⁻¹].
 * Light along the face (cosine 0) is all reflected.
 */
export function slab(
  cosine: number,
  refractiveIndex: number,
  extinction: number,
  thickness: number,
  layers: number,
): PassAndReflect {
  if (!(cosine > 1e-6)) return { transmittance: 0, reflectance: 1 };
  const face = fresnel(cosine, refractiveIndex);
  const sine = Math.sqrt(Math.max(0, 1 - cosine * cosine)) / refractiveIndex;
  const passed = Math.exp((-extinction * thickness) / Math.sqrt(1 - sine * sine));
  const across = plates(plate(face.perpendicular, passed), layers);
  const along = plates(plate(face.parallel, passed), layers);
  return {
    transmittance: (across.transmittance + along.transmittance) / 2,
    reflectance: (across.reflectance + along.reflectance) / 2,
  };
}

function plates(one: PassAndReflect, layers: number): PassAndReflect {
  let all = one;
  for (let k = 1; k < layers; k++) all = stack(all, one);
  return all;
}
