/**
 * The yardstick of the benchmark: a bare loop that does only the network arithmetic of a place, for as many
 * steps, nodes, surfaces and layers behind them. It shares no code with the engine and computes nothing of use.
 *
 * Its operations are fixed, so that a slow yardstick cannot flatter. Each step, for `size` nodes (N) and
 * `surfaces` surfaces (M), in this order:
 *
 * 1. assembly: N(N+1)/2 elements `a = b + r·c` from two constant matrices (lower triangle, row by row), then
 *    N diagonal elements `a += s`, N right-hand sides `x = s·t`;
 * 2. layers: L times 5 multiply-adds and 3 divisions, folded one into the next; surfaces: M times 28 multiply-adds, 4
 *    divisions, two cube roots and a square root (convection of both faces), on six numbers of the surface, added to
 *    two diagonal elements, one off-diagonal element and two right-hand sides;
 * 3. one L·D·Lᵀ factorisation in place: N(N²−1)/6 inner multiply-adds of two products, N divisions;
 * 4. two right-hand sides solved, each forward, by the diagonal and backward: N² multiply-adds and N divisions;
 * 5. N temperatures stored, and one sum over the surfaces of 4 multiply-adds each; L layers read
 *    back with 2 multiply-adds and a division.
 *
 * No function is called within a step, nothing is allocated, all numbers lie in typed arrays.
 */
export function bareLoop(steps: number, size: number, surfaces: number, layers: number): number {
  const n = size;
  const constant = new Float64Array(n * n);
  const radiant = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) {
      constant[i * n + j] = -1 - ((i * 7 + j * 3) % 5);
      radiant[i * n + j] = -0.2 - 0.1 * ((i + j) % 3);
    }
    constant[i * n + i] = 6 * n;
    radiant[i * n + i] = n;
  }
  const surface = new Float64Array(6 * surfaces).map((_, i) => 0.5 + ((i * 13) % 7) / 7);
  const matrix = new Float64Array(n * n);
  const right = new Float64Array(n);
  const unit = new Float64Array(n);
  const temperature = new Float64Array(n).fill(10);
  const kept = new Float64Array(surfaces);
  const layer = new Float64Array(layers).fill(10);
  const layerTotal = new Float64Array(layers);
  const layerRight = new Float64Array(layers);
  let check = 0;
  for (let step = 0; step < steps; step++) {
    const outdoor = 5 + (step % 96) * 0.1;
    const r = 5 + temperature[1] * 0.01;
    for (let i = 0; i < n; i++) {
      const row = i * n;
      for (let j = 0; j <= i; j++) matrix[row + j] = constant[row + j] + r * radiant[row + j];
      matrix[row + i] += 20 + i;
      right[i] = (20 + i) * temperature[i];
      unit[i] = 0;
    }
    unit[0] = 1;
    let air = 0;
    let star = 0;
    let cross = 0;
    let airRight = 0;
    let starRight = 0;
    let behind = 2;
    let known = behind * outdoor;
    for (let k = 0; k < layers; k++) {
      const total = 3 + behind + 1.5;
      const right = 3 * layer[k] + known;
      layerTotal[k] = total;
      layerRight[k] = right;
      known = (1.5 * right) / total;
      behind = (1.5 * (3 + behind)) / total;
    }
    for (let k = 0; k < surfaces; k++) {
      const at = 6 * k;
      const area = surface[at];
      const free = Math.cbrt(0.3 + Math.abs(temperature[0] - outdoor) * surface[at + 1]);
      const wind = Math.cbrt(0.1 + Math.abs(temperature[1] - outdoor) * surface[at + 1]);
      const a = surface[at + 1] * r + surface[at + 2] + 0.01 * free + 0.01 * Math.sqrt(wind * wind + 4);
      const b = surface[at + 3] * outdoor + surface[at + 4];
      const c = a * surface[at + 5] + b;
      const film = a + c * 0.5 + b * 0.25;
      const equivalent = (a * outdoor + b * 3 + c * 0.1) / film;
      const out = area / (surface[at + 2] + 1 + film * 0.01);
      const toAir = a * area;
      const toStar = r * surface[at + 4] * area;
      const sum = out + toAir + toStar;
      const source = out * equivalent + surface[at + 3];
      air += toAir - (toAir * toAir) / sum;
      star += toStar - toStar * toStar * (1 / sum);
      cross += toAir * toStar * 0.01;
      airRight += toAir * source * 0.01;
      starRight += toStar * source * 0.01;
      star += surface[at + 5] * area * 0.1;
      starRight += surface[at + 5] * area * 0.1 * outdoor;
      kept[k] = sum;
    }
    matrix[0] += air;
    matrix[n + 1] += star;
    matrix[n] -= cross * 0.01;
    right[0] += airRight;
    right[1] += starRight;
    for (let j = 0; j < n; j++) {
      const rowJ = j * n;
      let diagonal = matrix[rowJ + j];
      for (let k = 0; k < j; k++) diagonal -= matrix[rowJ + k] * matrix[rowJ + k] * matrix[k * n + k];
      matrix[rowJ + j] = diagonal;
      const inverse = 1 / diagonal;
      for (let i = j + 1; i < n; i++) {
        const rowI = i * n;
        let sum = matrix[rowI + j];
        for (let k = 0; k < j; k++) sum -= matrix[rowI + k] * matrix[rowJ + k] * matrix[k * n + k];
        matrix[rowI + j] = sum * inverse;
      }
    }
    for (let side = 0; side < 2; side++) {
      const x = side === 0 ? right : unit;
      for (let i = 1; i < n; i++) {
        let sum = x[i];
        for (let k = 0; k < i; k++) sum -= matrix[i * n + k] * x[k];
        x[i] = sum;
      }
      for (let i = 0; i < n; i++) x[i] /= matrix[i * n + i];
      for (let i = n - 2; i >= 0; i--) {
        let sum = x[i];
        for (let k = i + 1; k < n; k++) sum -= matrix[k * n + i] * x[k];
        x[i] = sum;
      }
    }
    for (let k = layers - 1; k >= 0; k--) layer[k] = (layerRight[k] + 1.5 * layer[k]) / layerTotal[k];
    let flow = 0;
    for (let k = 0; k < surfaces; k++)
      flow += kept[k] * (right[0] - outdoor) + surface[6 * k] * (right[1] - outdoor);
    for (let i = 0; i < n; i++) temperature[i] = Math.min(40, Math.max(-40, right[i] + unit[i]));
    check += flow * 1e-9 + temperature[0];
  }
  return check;
}
