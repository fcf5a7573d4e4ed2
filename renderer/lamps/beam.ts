import { beamShape } from '../../core/index.ts';
import type { Beam, Lamp } from '../../core/index.ts';

const degree = Math.PI / 180;

/** Strength of a beam [sr⁻¹] by `gamma` from straight down and `azimuth` round the vertical [degrees]. */
export type Strength = (gamma: number, azimuth: number) => number;

export function strengthOf(beam: Beam): Strength {
  const { intensity } = beamShape(beam);
  return (gamma, azimuth) => {
    const flat = Math.sin(gamma * degree);
    const round = azimuth * degree;
    return intensity(flat * Math.cos(round), flat * Math.sin(round), -Math.cos(gamma * degree));
  };
}

/** Widest angle from straight down at which a beam still has half its greatest strength, to one side [degrees]. */
export function halfAngle(strength: Strength, azimuth: number): number {
  let most = 0;
  let last = 0;
  for (let gamma = 0; gamma <= 180; gamma += 0.5) most = Math.max(most, strength(gamma, azimuth));
  for (let gamma = 0; gamma <= 180; gamma += 0.5) if (strength(gamma, azimuth) >= most / 2) last = gamma;
  return last;
}

/** The beam in words: how wide its light is at half strength. */
export function beamWords(lamp: Lamp): string {
  const strength = strengthOf(lamp.beam);
  const wide = (azimuth: number) => halfAngle(strength, azimuth) + halfAngle(strength, azimuth + 180);
  const across = Math.round(wide(90));
  const along = Math.round(wide(0));
  return Math.abs(across - along) < 3
    ? `${across}° wide at half strength`
    : `${along}° wide at half strength along it, ${across}° across it`;
}
