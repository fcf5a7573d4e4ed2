import { solarCoordinates, sunsetHourAngle } from '../sun/index.ts';

/** The sun of each day of the nominal year by the clock of standard time. */
export interface SolarClock {
  /** Clock time of solar noon [h]. */
  readonly noon: Float64Array;
  /** Sunset hour angle of the sun's centre, without refraction [degrees]. */
  readonly sunset: Float64Array;
}

export function solarClock(
  site: { latitude: number; longitude: number },
  utcOffsetHours: number,
): SolarClock {
  const noon = new Float64Array(365);
  const sunset = new Float64Array(365);
  for (let day = 0; day < 365; day++) {
    const midday = Date.UTC(2025, 0, 1) + (day + 0.5 - site.longitude / 360) * 86_400_000;
    const sun = solarCoordinates(midday);
    noon[day] = 12 + utcOffsetHours - site.longitude / 15 - sun.equationOfTime / 60;
    sunset[day] = sunsetHourAngle(site.latitude, sun.declination);
  }
  return { noon, sunset };
}

/** Half the length of a day [h], 0 to 12. */
export function halfDayHours(clock: SolarClock, day: number): number {
  return clock.sunset[day] / 15;
}
