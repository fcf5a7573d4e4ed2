/** Julian day of the Unix epoch, 1970-01-01 00:00 UT (Meeus, Astronomical Algorithms, ch. 7). */
const unixEpoch = 2440587.5;

/** Julian day, universal time, of an instant [epoch ms UTC]. UTC stands for UT1: they differ by less than 0.9 s. */
export function julianDay(epochMs: number): number {
  return epochMs / 86_400_000 + unixEpoch;
}

/**
 * ΔT = TT − UT [s] by the polynomials of Espenak & Meeus (Five Millennium Canon of Solar Eclipses, NASA/TP-2006-214141),
 * 1941 to 2150. Coefficients from memory, checked against the measured values in the tests (29.1 s in 1950,
 * 63.8 s in 2000). Forecasts past 2015 run some seconds ahead of what was measured since; the sun moves 0.00004° in one second.
 * Outside the years given the nearest polynomial is used.
 */
export function deltaT(epochMs: number): number {
  const year = 2000 + (epochMs / 86_400_000 - 10957) / 365.25;
  if (year < 1961) return polynomial(Math.max(year, 1900) - 1950, [29.07, 0.407, -1 / 233, 1 / 2547]);
  if (year < 1986) return polynomial(year - 1975, [45.45, 1.067, -1 / 260, -1 / 718]);
  if (year < 2005) {
    return polynomial(year - 2000, [63.86, 0.3345, -0.060374, 0.0017275, 0.000651814, 0.00002373599]);
  }
  if (year < 2050) return polynomial(year - 2000, [62.92, 0.32217, 0.005589]);
  const centuries = (Math.min(year, 2150) - 1820) / 100;
  return -20 + 32 * centuries * centuries - 0.5628 * (2150 - Math.min(year, 2150));
}

function polynomial(x: number, coefficients: readonly number[]): number {
  let sum = 0;
  for (let k = coefficients.length - 1; k >= 0; k--) sum = sum * x + coefficients[k];
  return sum;
}
