import type { Beam, Lamp, Photometry } from '../../core/index.ts';

const degree = Math.PI / 180;

/** Index and share of `value` between rising knots; ends hold beyond them. */
function between(knots: readonly number[], value: number): { at: number; share: number } {
  const last = knots.length - 1;
  if (last === 0 || value <= knots[0]) return { at: 0, share: 0 };
  if (value >= knots[last]) return { at: last - 1, share: 1 };
  let low = 0;
  for (let high = last; high - low > 1;) {
    const middle = (low + high) >> 1;
    if (knots[middle] <= value) low = middle;
    else high = middle;
  }
  return { at: low, share: (value - knots[low]) / (knots[low + 1] - knots[low]) };
}

/** A direction round the vertical folded into the planes a file gives [degrees]. */
function folded(planes: readonly number[], azimuth: number): number {
  const turn = ((azimuth % 360) + 360) % 360;
  const last = planes[planes.length - 1];
  if (last === 0) return 0;
  if (last === 360) return turn;
  const half = turn > 180 ? 360 - turn : turn;
  return last === 180 ? half : half > 90 ? 180 - half : half;
}

/** Candela of a distribution, linear between its angles; 0 outside the vertical angles it gives. */
export function candela(
  { vertical, planes, candela: values }: Photometry,
  gamma: number,
  azimuth: number,
): number {
  if (gamma < vertical[0] - 1e-9 || gamma > vertical[vertical.length - 1] + 1e-9) return 0;
  const v = between(vertical, gamma);
  const p = between(planes, folded(planes, azimuth));
  const n = vertical.length;
  const along = (plane: number) => {
    const first = values[plane * n + v.at];
    return first + v.share * (values[plane * n + Math.min(n - 1, v.at + 1)] - first);
  };
  const first = along(p.at);
  return p.share === 0 ? first : first + p.share * (along(p.at + 1) - first);
}

/** Light sent out in all directions by a distribution [lm]: midpoints of 1° by 5° (fine enough for a drawing). */
function lumensOf(photometry: Photometry): number {
  let sum = 0;
  for (let gamma = 0.5; gamma < 180; gamma += 1) {
    let ring = 0;
    for (let azimuth = 2.5; azimuth < 360; azimuth += 5) ring += candela(photometry, gamma, azimuth);
    sum += ring * 5 * degree * Math.sin(gamma * degree) * degree;
  }
  return sum;
}

/** Share of the light sent into a direction [sr⁻¹]: `gamma` from straight down, `azimuth` round the vertical [degrees]. */
export type Intensity = (gamma: number, azimuth: number) => number;

/** How a beam spreads its light: Lambert's law, a power of the cosine, or the file, each over its own total. */
export function intensityOf(beam: Beam): Intensity {
  if (beam.kind === 'file') {
    const total = lumensOf(beam.photometry);
    return total > 0
      ? (gamma, azimuth) => candela(beam.photometry, gamma, azimuth - beam.turned) / total
      : () => 0;
  }
  const power = beam.kind === 'even' ? 1 : beam.power;
  const peak = (power + 1) / (2 * Math.PI);
  return (gamma) => (gamma < 90 ? peak * Math.cos(gamma * degree) ** power : 0);
}

/** Angle from straight down at which a beam has half its greatest intensity, in one direction round [degrees]. */
export function halfAngle(intensity: Intensity, azimuth: number): number {
  let most = 0;
  let last = 0;
  for (let gamma = 0; gamma <= 180; gamma += 0.5) most = Math.max(most, intensity(gamma, azimuth));
  for (let gamma = 0; gamma <= 180; gamma += 0.5) if (intensity(gamma, azimuth) >= most / 2) last = gamma;
  return last;
}

/** The beam in words: an even face, or how wide its light is at half strength. */
export function beamWords(lamp: Lamp): string {
  const intensity = intensityOf(lamp.beam);
  const across = Math.round(2 * halfAngle(intensity, 90));
  const along = Math.round(2 * halfAngle(intensity, 0));
  const width = Math.abs(across - along) < 3 ? `${across}°` : `${along}° along and ${across}° across`;
  return `at half strength ${width} wide`;
}
