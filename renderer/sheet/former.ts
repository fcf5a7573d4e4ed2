import type { LotSeason } from '../../core/index.ts';
import type { AirDays, LightDays, Stand } from './stands.ts';

/** Differences smaller than this are not drawn [K, mol m⁻² d⁻¹]. */
const visible = 0.05;

function differs(a: Float64Array, b: Float64Array): boolean {
  return a.some((value, day) => Math.abs(value - b[day]) > visible);
}

/** What was before is drawn only where it differs: identical lines would say nothing. */
export function formerAir(ghost: Stand | null, { air: now }: Stand): AirDays | null {
  if (!ghost) return null;
  const was = ghost.air;
  return differs(was.airMean, now.airMean) || differs(was.airLeast, now.airLeast) ? was : null;
}

export function formerLight(ghost: Stand | null, { light: now }: Stand): LightDays | null {
  if (!ghost) return null;
  const was = ghost.light;
  return differs(was.lampLight, now.lampLight) || differs(was.daylight, now.daylight) ? was : null;
}

/** The ribbon of before: of every lot in a place that the change touches, so that a ribbon that stays is seen to stay. */
export function formerLot(ghost: Stand | null, now: Stand, lot: LotSeason): LotSeason | null {
  const was = ghost?.lots.find((each) => each.lotId === lot.lotId);
  if (!was) return null;
  const moved = was.state.some((state, day) => state !== lot.state[day]);
  return moved || formerAir(ghost, now) || formerLight(ghost, now) ? was : null;
}
