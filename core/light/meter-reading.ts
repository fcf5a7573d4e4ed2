/** A reading of a light meter at the tops of the plants, held level, and what it was taken under. */
export interface MeterReading {
  readonly value: number;
  readonly unit: 'lux' | 'foot-candle' | 'ppfd';
  readonly meter: MeterKind;
  readonly light: LampLight | DaylightReading;
}

/** A cheap lux meter or a telephone, a good lux meter with cosine correction, a quantum (PAR) meter. */
export type MeterKind = 'cheap' | 'good' | 'quantum';

/** Lamps alone, by night or with the daylight shut out; daylight is read by itself with the lamps off. */
export interface LampLight {
  readonly kind: 'lamp';
  readonly technology: string;
  /** Hours the lamps burn a day [h]. */
  readonly hours: number;
}

export interface DaylightReading {
  readonly kind: 'daylight';
  /** Day of a common year, 0 for 1 January, or `MM-DD`. */
  readonly day: number | string;
  /** Civil time `HH:MM`. */
  readonly time: string;
  readonly sky: SkyState;
  readonly where: MeterPlace;
  /** Azimuth the window of a sill faces, clockwise from north [degrees]; null or missing where it is not known. */
  readonly facing?: number | null;
}

/** Sun out of a clear sky; sun that comes and goes; no sun and no shadows all day. */
export type SkyState = 'clear' | 'broken' | 'overcast';
export const skyStates: readonly SkyState[] = ['clear', 'broken', 'overcast'];

export type MeterPlace = 'outdoors' | 'under glass' | 'sill';

/** A figure with the band it lies in nine times of ten. */
export interface Band {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** One reason why the figure is not sure. */
export interface MeterError {
  readonly id: 'meter' | 'conversion' | 'angle' | 'day' | 'place';
  /** In the grower's words. */
  readonly words: string;
  /** Relative, as a factor over one: 0.1 is a tenth more or less. */
  readonly share: number;
}

export interface MeterResult {
  /** Photon flux density [µmol m⁻² s⁻¹]. */
  readonly ppfd: Band;
  /** Daily light [mol m⁻² d⁻¹]; null where it cannot be told, `refused` says why. */
  readonly dailyLight: Band | null;
  readonly refused: string | null;
  /** What makes the daily light unsure, largest first; of the reading alone where the daily light is refused. */
  readonly errors: readonly MeterError[];
  /** What a day of each sky would give at this spot on that date [mol m⁻² d⁻¹]; null for lamps and where refused. */
  readonly skies: Readonly<Record<SkyState, Band>> | null;
  /** Light here as a share of that outdoors under the same sky, by the model of the sky; null for lamps and where refused. */
  readonly share: number | null;
  /** What the band rests on, and what to look at again, in the grower's words. */
  readonly assumption: string;
  readonly cautions: readonly string[];
}
