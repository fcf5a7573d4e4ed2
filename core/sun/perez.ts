/**
 * Perez, Ineichen, Seals, Michalsky & Stewart 1990 (Solar Energy 44, 271–289): sky brightening round the sun and
 * at the horizon by eight bins of clearness. Rows: F11 F12 F13 F21 F22 F23.
 */
const coefficients: readonly (readonly number[])[] = [
  [-0.008, 0.588, -0.062, -0.06, 0.072, -0.022],
  [0.13, 0.683, -0.151, -0.019, 0.066, -0.029],
  [0.33, 0.487, -0.221, 0.055, -0.064, -0.026],
  [0.568, 0.187, -0.295, 0.109, -0.152, -0.014],
  [0.873, -0.392, -0.362, 0.226, -0.462, 0.001],
  [1.132, -1.237, -0.412, 0.288, -0.823, 0.056],
  [1.06, -1.6, -0.359, 0.264, -1.127, 0.131],
  [0.678, -0.327, -0.25, 0.156, -1.377, 0.251],
];

/** Upper edges of the first seven bins of the sky's clearness ε. */
const edges = [1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2];

/** cos 85°: the model's floor for the sun's height in its circumsolar term. */
export const perezFloor = 0.087;

/** Sky clearness ε; `zenith` [radians]. 1.041 is the paper's constant for radians (5.535e-6 belongs to degrees). */
export function perezClearness(diffuse: number, beamNormal: number, zenith: number): number {
  const cube = 1.041 * zenith * zenith * zenith;
  return ((diffuse + beamNormal) / diffuse + cube) / (1 + cube);
}

/** Circumsolar (F1) or horizon (F2) brightening coefficient. `brightness` Δ, `zenith` [radians]. */
export function perezCoefficient(
  which: 1 | 2,
  clearness: number,
  brightness: number,
  zenith: number,
): number {
  let bin = 0;
  while (bin < 7 && clearness >= edges[bin]) bin++;
  const row = coefficients[bin];
  if (which === 1) return Math.max(0, row[0] + row[1] * brightness + row[2] * zenith);
  return row[3] + row[4] * brightness + row[5] * zenith;
}
