/**
 * Outdoor conditions in even steps. Step `j` runs from `startMs + j·stepMinutes`; every value belongs to its middle,
 * radiation is the mean over it. The same shape serves a year (`outdoorSteps`) and a night (`nightWeather`).
 */
export interface OutdoorSteps {
  readonly startMs: number;
  readonly stepMinutes: number;
  readonly n: number;
  /** [°C], [°C], [m s⁻¹] at 10 m, [Pa]. */
  readonly dryBulb: Float64Array;
  readonly dewPoint: Float64Array;
  readonly windSpeed: Float64Array;
  readonly pressure: Float64Array;
  /** Long-wave of the sky on the horizontal [W m⁻²]. */
  readonly skyLongWave: Float64Array;
  /** Cloud cover 0–1. */
  readonly cloudCover: Float64Array;
  /** Apparent elevation and azimuth of the sun [degrees]. */
  readonly sunElevation: Float64Array;
  readonly sunAzimuth: Float64Array;
  /** [W m⁻²] */
  readonly beamNormal: Float64Array;
  readonly diffuseHorizontal: Float64Array;
  readonly globalHorizontal: Float64Array;
  readonly extraterrestrialNormal: Float64Array;
}

export interface StepOptions {
  /** Length of a step [min]; a whole number of them makes an hour. */
  readonly stepMinutes: number;
}

/** What sets a garden apart from its weather station. */
export interface GardenOffset {
  /** How much colder than the station the garden is on a clear still night [K]. */
  readonly frostHollow?: number;
}

/** Empty steps to be filled. */
export function emptySteps(startMs: number, stepMinutes: number, n: number): OutdoorSteps {
  const column = (): Float64Array => new Float64Array(n);
  return {
    startMs,
    stepMinutes,
    n,
    dryBulb: column(),
    dewPoint: column(),
    windSpeed: column(),
    pressure: column(),
    skyLongWave: column(),
    cloudCover: column(),
    sunElevation: column(),
    sunAzimuth: column(),
    beamNormal: column(),
    diffuseHorizontal: column(),
    globalHorizontal: column(),
    extraterrestrialNormal: column(),
  };
}
