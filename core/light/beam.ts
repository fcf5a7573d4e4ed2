import type { Beam, Photometry } from '../plan/lamp.ts';

/** How a fitting throws its light: per µmol s⁻¹ (or lumen) of it, into each direction. */
export interface BeamShape {
  /** True for the evenly bright flat face, whose light has closed forms. */
  readonly even: boolean;
  /** True where no light goes above the level of the face. */
  readonly downward: boolean;
  /** Widest a patch may be against its distance for its light to be taken by four points. */
  readonly grain: number;
  /** Angle from straight down within which a narrow beam lies [radians], and the same for patches in it; 0 where it is not narrow. */
  readonly core: number;
  readonly coreGrain: number;
  /** Angle from straight down beyond which next to no light goes [radians]; patches out there are left dark. */
  readonly edge: number;
  /** Intensity per steradian into the unit direction x, y (along, across), z (up). */
  readonly intensity: (x: number, y: number, z: number) => number;
}

/** Lambert's cosine law: intensity cos θ / π. */
const evenBeam: BeamShape = {
  even: true,
  downward: true,
  grain: 0.6,
  core: 0,
  coreGrain: 0.6,
  edge: Math.PI / 2,
  intensity: (_x, _y, z) => (z < 0 ? -z / Math.PI : 0),
};

/** Intensity (n + 1) / 2π · cosⁿ θ below the level of the face; derived from ∫ cosⁿ θ dω = 2π / (n + 1). */
function powerBeam(power: number): BeamShape {
  const peak = (power + 1) / (2 * Math.PI);
  const grain = Math.min(0.6, 1.6 / Math.sqrt(power + 1));
  return {
    even: power === 1,
    downward: true,
    grain,
    core: 0,
    coreGrain: grain,
    edge: power > 1 ? Math.acos(1e-6 ** (1 / power)) : Math.PI / 2,
    intensity: (_x, _y, z) => (z < 0 ? peak * (-z) ** power : 0),
  };
}

export function beamShape(beam: Beam): BeamShape {
  switch (beam.kind) {
    case 'even':
      return evenBeam;
    case 'cosine-power':
      return powerBeam(beam.power);
    case 'file':
      return fileBeam(beam.photometry, beam.turned);
  }
}

const degree = Math.PI / 180;

/** Candela by vertical angle and plane [degrees], plane by plane. */
export interface CandelaTable {
  readonly vertical: readonly number[];
  readonly planes: readonly number[];
  readonly candela: readonly number[];
}

/**
 * Share of the whole circle each plane of a distribution stands for: half-way to its neighbours, over the planes
 * mirrored round. A single plane stands for all of it.
 */
export function planeShares(planes: readonly number[]): number[] {
  const last = planes[planes.length - 1];
  if (planes.length === 1) return [1];
  return planes.map((at, i) => {
    const before = i === 0 ? at : planes[i - 1];
    const after = i === planes.length - 1 ? at : planes[i + 1];
    return (after - before) / 2 / last;
  });
}

/** Integral of sin θ times a straight line from `from` at angle a to `to` at angle b [radians]. */
function lineZone(a: number, b: number, from: number, to: number): number {
  const slope = (to - from) / (b - a);
  return from * Math.cos(a) - to * Math.cos(b) + slope * (Math.sin(b) - Math.sin(a));
}

/** Light of a distribution taken as straight between its angles and planes, exactly integrated [lm]. */
function lightBetween({ vertical, planes, candela }: Photometry): number {
  const rows = vertical.length;
  return planeShares(planes).reduce((total, share, p) => {
    let sum = 0;
    for (let i = 1; i < rows; i++) {
      const at = p * rows + i;
      sum += lineZone(vertical[i - 1] * degree, vertical[i] * degree, candela[at - 1], candela[at]);
    }
    return total + 2 * Math.PI * share * sum;
  }, 0);
}

/**
 * Lumens of a distribution by zonal sum: the mean candela of a zone's two ends times its solid angle
 * 2π (cos θ₁ − cos θ₂), plane by plane (IES zonal constants).
 */
export function zonalLumens({ vertical, planes, candela }: CandelaTable): number {
  const rows = vertical.length;
  return planeShares(planes).reduce((total, share, p) => {
    let sum = 0;
    for (let i = 1; i < rows; i++) {
      const at = p * rows + i;
      const zone = Math.cos(vertical[i - 1] * degree) - Math.cos(vertical[i] * degree);
      sum += ((candela[at - 1] + candela[at]) / 2) * zone;
    }
    return total + 2 * Math.PI * share * sum;
  }, 0);
}

const shapes = new WeakMap<Photometry, Map<number, BeamShape>>();

/** The beam of a photometric file, kept for the object and its turn. */
function fileBeam(photometry: Photometry, turned: number): BeamShape {
  let turns = shapes.get(photometry);
  if (turns === undefined) shapes.set(photometry, (turns = new Map<number, BeamShape>()));
  const known = turns.get(turned);
  if (known !== undefined) return known;
  const made = madeFileBeam(photometry, turned);
  if (turns.size > 40) turns.clear();
  turns.set(turned, made);
  return made;
}

function madeFileBeam(photometry: Photometry, turned: number): BeamShape {
  const { vertical, planes, candela } = photometry;
  const light = lightBetween(photometry);
  const scale = light > 0 ? 1 / light : 0;
  const rows = vertical.length;
  const lowest = vertical[0];
  const highest = vertical[rows - 1];
  const rowOf = finder(vertical, 180);
  const planeOf = finder(planes, 360);
  const last = planes[planes.length - 1];
  const grain = grainOf(photometry);
  const core = Math.min(Math.PI, reachOf(photometry, coreShare) * degree);
  const coreGrain = Math.max(0.03, core / 4);
  const inPlane = (p: number, row: number, share: number) => {
    const at = p * rows + row;
    return candela[at] + share * (candela[at + 1] - candela[at]);
  };
  return {
    even: false,
    downward: candela.every((value, k) => vertical[k % rows] <= 90 || value === 0),
    grain,
    core: coreGrain < grain ? core : 0,
    coreGrain: Math.min(grain, coreGrain),
    edge: Math.min(Math.PI, reachOf(photometry, 0) * degree),
    intensity: (x, y, z) => {
      const angle = Math.acos(Math.max(-1, Math.min(1, -z))) / degree;
      if (angle < lowest || angle > highest) return 0;
      const row = rowOf(angle);
      const share = (angle - vertical[row]) / (vertical[row + 1] - vertical[row]);
      if (last === 0) return scale * inPlane(0, row, share);
      const round = folded(Math.atan2(y, x) / degree - turned, last);
      const plane = planeOf(round);
      const between = (round - planes[plane]) / (planes[plane + 1] - planes[plane]);
      const low = inPlane(plane, row, share);
      return scale * (low + between * (inPlane(plane + 1, row, share) - low));
    },
  };
}

/** An angle round the vertical brought into the planes a file gives, by its symmetry. */
function folded(angle: number, last: number): number {
  const round = ((angle % 360) + 360) % 360;
  if (last === 360) return round;
  const half = round > 180 ? 360 - round : round;
  return last === 180 || half <= 90 ? half : 180 - half;
}

/** Finds the place in rising angles by a table of half degrees and a step or two. */
function finder(angles: readonly number[], most: number): (angle: number) => number {
  const top = Math.max(0, angles.length - 2);
  const table = new Int32Array(2 * most + 2);
  for (let k = 0, i = 0; k < table.length; k++) {
    while (i < top && angles[i + 1] <= k / 2) i++;
    table[k] = i;
  }
  return (angle) => {
    let i = table[Math.floor(2 * angle)];
    while (i < top && angles[i + 1] <= angle) i++;
    return i;
  };
}

/** Finer where the intensity changes faster with the angle; never coarser than an even face needs. */
function grainOf({ vertical, planes, candela }: Photometry): number {
  const rows = vertical.length;
  let most = 0;
  for (const value of candela) most = Math.max(most, value);
  let steepest = 0;
  for (let k = 0; k < rows * planes.length; k++) {
    const row = k % rows;
    if (row === 0) continue;
    const change = Math.abs(candela[k] - candela[k - 1]) / ((vertical[row] - vertical[row - 1]) * degree);
    steepest = Math.max(steepest, change);
  }
  return most > 0 ? Math.max(0.15, Math.min(0.6, most / Math.max(steepest, 1e-9))) : 1;
}

/** Share of its brightest candela down to which a beam counts as its core: a tenth, as field angles are told (from memory). */
const coreShare = 0.1;

/** The widest angle from straight down up to which the file gives more than a share of its brightest candela [degrees]. */
function reachOf({ vertical, candela }: Photometry, share: number): number {
  const rows = vertical.length;
  const least = share * candela.reduce((most, value) => Math.max(most, value), 0);
  let edge = 0;
  candela.forEach((value, k) => {
    if (value > least) edge = Math.max(edge, vertical[Math.min(rows - 1, (k % rows) + 1)]);
  });
  return edge;
}
