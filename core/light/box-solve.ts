/** Reflectance up to which a patch counts as black. */
const black = 1e-9;

/**
 * Follows light that first falls as `direct` [µmol s⁻¹] on each patch until all is taken up, and gives the light
 * falling on each patch in all [µmol s⁻¹]. With radiosity B of the patches that reflect (Siegel & Howell, Thermal
 * Radiation Heat Transfer, ch. 6), (A/ρ) B − Σ S B = direct is symmetric and positive definite as long as something
 * takes light up, and is solved by conjugate gradients (Hestenes & Stiefel 1952) to 1e-9 of the light.
 */
export function lightFalling(
  matrix: Float64Array,
  areas: Float64Array,
  reflectance: Float64Array,
  direct: Float64Array,
): Float64Array {
  const n = areas.length;
  const bright = Int32Array.from(areas.keys()).filter((i) => reflectance[i] > black);
  const falling = new Float64Array(direct);
  if (bright.length === 0) return falling;
  const exchange = compact(matrix, bright, n);
  const own = Float64Array.from(bright, (i) => areas[i] / reflectance[i]);
  const solved = conjugateGradients(
    exchange,
    own,
    Float64Array.from(bright, (i) => direct[i]),
  );
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let k = 0; k < bright.length; k++) sum += matrix[i * n + bright[k]] * solved[k];
    falling[i] += sum;
  }
  return falling;
}

function compact(matrix: Float64Array, chosen: Int32Array, n: number): Float64Array {
  const m = chosen.length;
  const out = new Float64Array(m * m);
  for (let i = 0; i < m; i++) for (let j = 0; j < m; j++) out[i * m + j] = matrix[chosen[i] * n + chosen[j]];
  return out;
}

/** Solves (own − exchange) x = right, with `own` on the diagonal, which also serves to even out the rows. */
function conjugateGradients(exchange: Float64Array, own: Float64Array, right: Float64Array): Float64Array {
  const m = own.length;
  const x = new Float64Array(m);
  const rest = new Float64Array(right);
  const step = new Float64Array(m);
  const product = new Float64Array(m);
  let weight = 0;
  for (let i = 0; i < m; i++) {
    step[i] = rest[i] / own[i];
    weight += rest[i] * step[i];
  }
  const enough = 1e-20 * weight;
  for (let round = 0; weight > enough; round++) {
    if (round > 4 * m + 100) throw new Error('expected a box that takes light up somewhere, got none');
    let along = 0;
    for (let i = 0; i < m; i++) {
      let sum = own[i] * step[i];
      const row = i * m;
      for (let j = 0; j < m; j++) sum -= exchange[row + j] * step[j];
      product[i] = sum;
      along += sum * step[i];
    }
    const far = weight / along;
    let next = 0;
    for (let i = 0; i < m; i++) {
      x[i] += far * step[i];
      rest[i] -= far * product[i];
      next += (rest[i] * rest[i]) / own[i];
    }
    const turn = next / weight;
    for (let i = 0; i < m; i++) step[i] = rest[i] / own[i] + turn * step[i];
    weight = next;
  }
  return x;
}
