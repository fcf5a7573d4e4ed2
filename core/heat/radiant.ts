/**
 * Radiating areas of faces in a star network by Carroll 1980 ("An MRT method of computing radiant energy
 * exchange in rooms"): each face i sees the mean radiant node through the factor F of
 *
 *     F_i = 1 / (1 − A_i F_i / Σ A_j F_j)
 *
 * which makes up for what a face cannot see of itself, and through its surface resistance (1 − ε) / ε. Two equal
 * plates come out exactly as σ A (T₁⁴ − T₂⁴) / (2/ε − 1).
 * @param areas of all faces [m²]
 * @returns F of each face; one face alone has no partner and gets 1
 */
export function carrollFactors(areas: readonly number[]): number[] {
  let factors = areas.map(() => 1);
  if (areas.length < 2) return factors;
  for (let round = 0; round < 60; round++) {
    const sum = areas.reduce((total, area, i) => total + area * factors[i], 0);
    factors = areas.map((area, i) =>
      Math.min(mostFactor, 1 / (1 - Math.min(0.9, (area * factors[i]) / sum))),
    );
  }
  return factors;
}

/** A face larger than all others together would see itself; its factor is held here. */
const mostFactor = 3;

/** Radiating area towards the star node [m²] of a face of absorptance `a` (emissivity, with what passes through). */
export function radiatingArea(area: number, absorptance: number, factor: number): number {
  if (absorptance <= 0) return 0;
  return area / (1 / factor + (1 - absorptance) / absorptance);
}
