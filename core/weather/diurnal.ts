/** Shape of a day's temperature: a sine by day, a decay by night. */
export interface DiurnalShape {
  /** Lag of the warmest hour after the middle between coldest hour and sunset's mirror, `a` of Parton & Logan [h]. */
  readonly lag: number;
  /** Decay over the night, `b`. */
  readonly decay: number;
  /** Time of the minimum after sunrise, `c` [h]. */
  readonly minimumLag: number;
  /** Whether the night's curve is stretched to end at the minimum; Parton & Logan's own ends above it. */
  readonly meetsMinimum: boolean;
}

/** Air at 1.5 m, Denver: Parton & Logan 1981 (Agricultural Meteorology 23, 205–216), table 2; stretched to meet the minimum. */
export const partonLogan: DiurnalShape = { lag: 1.86, decay: 2.2, minimumLag: -0.17, meetsMinimum: true };

/** Temperature by day [°C], `sinceLow` hours after the minimum, in a day of `dayLength` hours. */
export function daytime(
  sinceLow: number,
  dayLength: number,
  minimum: number,
  maximum: number,
  shape: DiurnalShape,
): number {
  return minimum + (maximum - minimum) * Math.sin((Math.PI * sinceLow) / (dayLength + 2 * shape.lag));
}

/** Temperature by night [°C], `sinceSunset` of `nightLength` hours from sunset to the minimum, from the sunset's to the coming minimum. */
export function nighttime(
  sinceSunset: number,
  nightLength: number,
  sunsetTemperature: number,
  minimum: number,
  shape: DiurnalShape,
): number {
  const gone = Math.exp((-shape.decay * sinceSunset) / nightLength);
  if (!shape.meetsMinimum) return minimum + (sunsetTemperature - minimum) * gone;
  const end = Math.exp(-shape.decay);
  return minimum + ((sunsetTemperature - minimum) * (gone - end)) / (1 - end);
}

/** One day as the cycle needs it. Times [h] of the day's clock, temperatures [°C]. */
export interface DiurnalDay {
  readonly sunrise: number;
  readonly sunset: number;
  readonly minimum: number;
  readonly maximum: number;
}

/**
 * Temperature at a clock hour 0–24 of a day, with the days before and after it for the two nights. The day's sine runs
 * from its minimum (sunrise + c) to sunset, the night's decay to the next minimum.
 */
export function diurnalTemperature(
  hour: number,
  yesterday: DiurnalDay,
  today: DiurnalDay,
  tomorrow: DiurnalDay,
  shape: DiurnalShape = partonLogan,
): number {
  const low = today.sunrise + shape.minimumLag;
  if (hour < low) {
    const length = low + 24 - yesterday.sunset;
    return nighttime(
      hour + 24 - yesterday.sunset,
      length,
      sunsetTemperature(yesterday, shape),
      today.minimum,
      shape,
    );
  }
  if (hour <= today.sunset) {
    return daytime(hour - low, today.sunset - today.sunrise, today.minimum, today.maximum, shape);
  }
  const length = tomorrow.sunrise + shape.minimumLag + 24 - today.sunset;
  return nighttime(hour - today.sunset, length, sunsetTemperature(today, shape), tomorrow.minimum, shape);
}

/** Temperature at a day's sunset [°C]. */
export function sunsetTemperature(day: DiurnalDay, shape: DiurnalShape): number {
  const length = day.sunset - day.sunrise;
  return daytime(length - shape.minimumLag, length, day.minimum, day.maximum, shape);
}
