/**
 * How long the light field of a tent takes: the whole field with everything new, and with only the lamp's height
 * changed, each against a plain Gaussian elimination of as many equations as the box has patches, in the same run.
 */
import { lampOf, placeField, placeOf } from '../../core/index.ts';
import type { Lamp, Place } from '../../core/index.ts';
import { exchangeOf } from '../../core/light/box-exchange.ts';
import { boxOfPlace } from '../../core/light/field-place.ts';
import { median } from './figures.ts';
import type { Figure } from './figures.ts';

const warmUps = 6;
const rounds = 15;

/** Most that a field may take, as a multiple of the plain solution of its equations: all new, and lamp moved. */
const newTarget = 0.9;
const movedTarget = 0.35;

/** A tent of its own for each round, so that nothing of an earlier one is kept. */
const tentOf = (round: number): Place =>
  placeOf({
    id: 'tent',
    name: 'Tent',
    shape: { kind: 'tent', length: 1.2 + 0.001 * round, width: 0.8, height: 1.6 },
    covering: 'tent-fabric',
    leakage: 1,
    growingArea: 0.9,
    wallReflectance: 0.88,
    room: { kind: 'constant', temperature: 18 },
  });

const lampAt = (height: number): Lamp =>
  lampOf({
    id: 'lamp',
    name: 'Lamp',
    technology: 'led-white',
    watts: 100,
    efficacy: 2.7,
    count: 2,
    height,
    length: 0.45,
    width: 0.25,
    on: '08:00',
    off: '20:00',
  });

export function fieldFigures(): Figure[] {
  const fresh: number[] = [];
  const moved: number[] = [];
  const plain: number[] = [];
  let patches = 0;
  for (let round = -warmUps; round < rounds; round++) {
    const place = tentOf(round + warmUps);
    const first = timed(() => placeField(place, { lamps: [lampAt(0.4)] }));
    const second = timed(() => placeField(place, { lamps: [lampAt(0.45)] }));
    patches = exchangeOf(boxOfPlace(place).box).mesh.patches;
    const elimination = timed(() => eliminated(patches));
    if (round < 0) continue;
    fresh.push(first);
    moved.push(second);
    plain.push(elimination);
  }
  const solve = median(plain);
  return [
    {
      name: `Light field of a tent, ${patches} patches, all new`,
      value: median(fresh),
      unit: 'ms',
      target: null,
    },
    { name: 'Light field of a tent, lamp moved', value: median(moved), unit: 'ms', target: null },
    { name: 'Plain solution of as many equations', value: solve, unit: 'ms', target: null },
    {
      name: 'Light field, all new ÷ plain solution',
      value: median(fresh) / solve,
      unit: '',
      target: newTarget,
    },
    {
      name: 'Light field, lamp moved ÷ plain solution',
      value: median(moved) / solve,
      unit: '',
      target: movedTarget,
    },
  ];
}

function timed(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

/** Solves a well-behaved full system of `n` equations by Gaussian elimination without any craft. */
function eliminated(n: number): Float64Array {
  const rows = Array.from({ length: n }, (_, i) =>
    Float64Array.from({ length: n + 1 }, (__, j) => (i === j ? n : ((i * 7 + j * 13) % 11) / 11)),
  );
  for (let k = 0; k < n; k++) {
    for (let i = k + 1; i < n; i++) {
      const factor = rows[i][k] / rows[k][k];
      for (let j = k; j <= n; j++) rows[i][j] -= factor * rows[k][j];
    }
  }
  const solution = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    let sum = rows[i][n];
    for (let j = i + 1; j < n; j++) sum -= rows[i][j] * solution[j];
    solution[i] = sum / rows[i][i];
  }
  return solution;
}
