import { nodeCount } from './nodes.ts';

const n = nodeCount;

/**
 * Factors a symmetric positive definite matrix in place as L·D·Lᵀ (lower triangle, unit diagonal of L,
 * D on the diagonal). The network's matrix is diagonally dominant with negative off-diagonals, so no
 * pivoting is needed (Golub & Van Loan, Matrix Computations, §4.1).
 */
export function factor(matrix: Float64Array, size = nodeCount): void {
  for (let j = 0; j < size; j++) {
    const rowJ = j * n;
    let diagonal = matrix[rowJ + j];
    for (let k = 0; k < j; k++) {
      const l = matrix[rowJ + k];
      diagonal -= l * l * matrix[k * n + k];
    }
    matrix[rowJ + j] = diagonal;
    const inverse = 1 / diagonal;
    for (let i = j + 1; i < size; i++) {
      const rowI = i * n;
      let sum = matrix[rowI + j];
      for (let k = 0; k < j; k++) sum -= matrix[rowI + k] * matrix[rowJ + k] * matrix[k * n + k];
      matrix[rowI + j] = sum * inverse;
    }
  }
}

/** Solves L·D·Lᵀ·x = b in place of `b`, with the factors of `factor`. */
export function solve(matrix: Float64Array, b: Float64Array, size = nodeCount): void {
  for (let i = 1; i < size; i++) {
    const row = i * n;
    let sum = b[i];
    for (let k = 0; k < i; k++) sum -= matrix[row + k] * b[k];
    b[i] = sum;
  }
  for (let i = 0; i < size; i++) b[i] /= matrix[i * n + i];
  for (let i = size - 2; i >= 0; i--) {
    let sum = b[i];
    for (let k = i + 1; k < size; k++) sum -= matrix[k * n + i] * b[k];
    b[i] = sum;
  }
}

/** Adds a conductance [W K⁻¹] between two nodes to a lower-triangle matrix. */
export function link(matrix: Float64Array, a: number, b: number, conductance: number): void {
  matrix[a * n + a] += conductance;
  matrix[b * n + b] += conductance;
  matrix[Math.max(a, b) * n + Math.min(a, b)] -= conductance;
}
