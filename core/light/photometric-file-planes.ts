import { mostCandela } from '../plan/lamp.ts';
import type { CandelaTable } from './beam.ts';
import { Refusal } from './photometric-file-numbers.ts';

/** Most angles a plan keeps one way (`photometrySchema`). */
const mostAngles = 361;

/** Distribution of a type C file brought to planes from 0, or a refusal at `line`. */
export function typeC(given: CandelaTable, line: number): CandelaTable {
  const { vertical, planes } = given;
  const top = vertical[vertical.length - 1];
  if ((vertical[0] !== 0 && vertical[0] !== 90) || top > 180)
    throw new Refusal(line, `expected vertical angles from 0 or 90 up to 180, got ${vertical[0]} to ${top}`);
  const [first, last] = [planes[0], planes[planes.length - 1]];
  if (first === 90 && last === 270) return mirroredAcross(given, line);
  if (first !== 0 || ![0, 90, 180, 360].includes(last))
    throw new Refusal(
      line,
      `expected horizontal angles from 0 to 0, 90, 180 or 360 (or from 90 to 270), got ${first} to ${last}`,
    );
  return given;
}

/** A half given from 90 to 270 (two equal halves about the plane of 90 and 270) as planes all round. */
function mirroredAcross({ vertical, planes, candela }: CandelaTable, line: number): CandelaTable {
  const rows = vertical.length;
  const round = new Map<number, number>();
  planes.forEach((plane, p) => {
    round.set(plane, p);
    round.set((540 - plane) % 360, p);
  });
  const zero = round.get(0);
  if (zero === undefined)
    throw new Refusal(line, 'expected a horizontal angle of 180 between 90 and 270, got none');
  round.set(360, zero);
  const all = [...round.keys()].sort((a, b) => a - b);
  return {
    vertical,
    planes: all,
    candela: all.flatMap((plane) => {
      const p = round.get(plane) ?? 0;
      return candela.slice(p * rows, (p + 1) * rows);
    }),
  };
}

/** Where two equal values stand for the whole range: index below and share of the way. */
function placeIn(angles: readonly number[], angle: number): readonly [number, number] {
  let low = 0;
  let high = angles.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (angles[middle] <= angle) low = middle;
    else high = middle;
  }
  return [low, angles.length < 2 ? 0 : (angle - angles[low]) / (angles[high] - angles[low])];
}

const degree = Math.PI / 180;

/**
 * Distribution of a type B file on a type C grid. In type B the planes share a level axis, the direction of
 * horizontal angle 0 and vertical angle 90; straight down is 0, 0 (IES LM-63-2002, definitions). A direction γ from
 * straight down, C round it, lies at vertical angle asin(sin γ cos C) in the plane whose horizontal angle has the
 * tangent −tan γ sin C: clockwise seen from the end of the axis (derived).
 */
export function typeB(given: CandelaTable, line: number): CandelaTable {
  const { vertical, planes } = given;
  for (const [name, angles] of [
    ['vertical', vertical],
    ['horizontal', planes],
  ] as const) {
    const [first, last] = [angles[0], angles[angles.length - 1]];
    if ((first !== 0 && first !== -90) || !(last > 0) || last > 90)
      throw new Refusal(
        line,
        `expected ${name} angles of type B from 0 or −90 up to 90, got ${first} to ${last}`,
      );
  }
  const down = Array.from({ length: 46 }, (_, k) => 2 * k);
  const round = Array.from({ length: 73 }, (_, k) => 5 * k);
  return {
    vertical: down,
    planes: round,
    candela: round.flatMap((plane) => down.map((angle) => inTypeB(given, angle * degree, plane * degree))),
  };
}

function inTypeB({ vertical, planes, candela }: CandelaTable, down: number, round: number): number {
  const along = Math.asin(Math.max(-1, Math.min(1, Math.sin(down) * Math.cos(round)))) / degree;
  const across = Math.atan2(-Math.sin(down) * Math.sin(round), Math.max(0, Math.cos(down))) / degree;
  const v = vertical[0] === 0 ? Math.abs(along) : along;
  const h = planes[0] === 0 ? Math.abs(across) : across;
  if (v > vertical[vertical.length - 1] || h > planes[planes.length - 1]) return 0;
  const rows = vertical.length;
  const [row, up] = placeIn(vertical, v);
  const [plane, over] = placeIn(planes, h);
  const at = (p: number) => {
    const low = candela[p * rows + row];
    return low + up * (candela[p * rows + row + 1] - low);
  };
  return at(plane) + over * (at(plane + 1) - at(plane));
}

/** Takes every second plane, then every second angle, until a plan can keep what is left; ends are kept. */
export function thinned(given: CandelaTable): CandelaTable {
  let kept = given;
  const tooMany = ({ vertical, planes, candela }: CandelaTable) =>
    candela.length > mostCandela || vertical.length > mostAngles || planes.length > mostAngles;
  while (tooMany(kept)) {
    const morePlanes = kept.planes.length > kept.vertical.length;
    const planes = morePlanes ? everySecond(kept.planes.length) : kept.planes.map((_, p) => p);
    const rows = morePlanes ? kept.vertical.map((_, r) => r) : everySecond(kept.vertical.length);
    const { vertical, planes: all, candela } = kept;
    kept = {
      vertical: rows.map((r) => vertical[r]),
      planes: planes.map((p) => all[p]),
      candela: planes.flatMap((p) => rows.map((r) => candela[p * vertical.length + r])),
    };
  }
  return kept;
}

function everySecond(count: number): number[] {
  const chosen: number[] = [];
  for (let k = 0; k < count; k += 2) chosen.push(k);
  if (chosen[chosen.length - 1] !== count - 1) chosen.push(count - 1);
  return chosen;
}
