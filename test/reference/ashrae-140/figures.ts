/**
 * Figures published with ASHRAE Standard 140-2020 (annex B8): least and most of six programs on Denver 725650.
 */
export type Range = readonly [least: number, most: number];

/** Table B8-13: sun on the outer faces in a year [kWh m⁻²]. */
export const incidentSun = {
  horizontal: [1663, 1670],
  north: [399, 477],
  east: [1017, 1068],
  south: [1291, 1387],
  west: [903, 997],
} as const satisfies Record<string, Range>;

/** Table B8-14: sun through the south windows of case 600 in a year [kWh m⁻²], and table B8-11: its share of the sun on them. */
export const transmittedSun: Range = [804, 826];
export const transmittedShare: Range = [0.587, 0.627];

/** Sun through the south windows on two days, sums of the hourly output [Wh m⁻²]: 1 February (low sun, clear) and 14 July (high sun). */
export const transmittedDays = { february: [4485, 4614], july: [1267, 1368] } as const satisfies Record<
  string,
  Range
>;

/** Air temperature in free float: hourly most and least and the mean of the year [°C]. */
export const freeFloat = {
  '600FF': { most: [62.4, 68.4], least: [-13.8, -9.9], mean: [24.3, 26.1] },
  '900FF': { most: [43.3, 46.0], least: [0.6, 2.2], mean: [24.5, 25.7] },
} as const satisfies Record<string, Record<'most' | 'least' | 'mean', Range>>;

const ranges = (least: readonly number[], most: readonly number[]): Range[] =>
  least.map((value, hour) => [value, most[hour]]);

/** Air temperature of the hours 1 to 24 of 1 February [°C]. */
export const firstOfFebruary = {
  '600FF': ranges(
    [4.5, 2.9, 1.4, 0.0, -1.2, -2.3, -3.2, -3.3, -0.2, 6.1, 12.5, 20.2].concat([
      28.5, 36.1, 41.9, 45.4, 43.5, 36.5, 29.7, 24.2, 19.3, 15.0, 11.2, 8.1,
    ]),
    [13.0, 10.3, 7.9, 5.7, 3.8, 2.1, 0.7, 0.1, 4.1, 12.0, 20.7, 29.8].concat([
      38.2, 44.9, 48.8, 49.8, 47.3, 44.0, 39.5, 34.4, 29.3, 24.6, 20.2, 16.3,
    ]),
  ),
  '900FF': ranges(
    [11.7, 11.2, 10.8, 10.3, 9.9, 9.5, 9.1, 9.0, 9.9, 11.8, 14.0, 16.2].concat([
      18.3, 19.7, 20.7, 21.0, 20.6, 19.2, 18.0, 17.2, 16.5, 15.7, 15.1, 14.5,
    ]),
    [15.4, 14.8, 14.2, 13.6, 13.0, 12.4, 11.8, 11.9, 13.2, 15.3, 17.5, 19.9].concat([
      22.0, 23.3, 24.8, 25.4, 24.6, 23.5, 22.6, 21.9, 20.8, 20.0, 19.2, 18.1,
    ]),
  ),
} as const;

/** Heat to hold 20 °C in a year [MWh] and the most in an hour [kW]. */
export const heating = {
  195: { year: [3.951, 4.217], peak: [1.791, 1.802] },
  200: { year: [4.813, 5.226], peak: [2.226, 2.353] },
  210: { year: [5.627, 6.531], peak: [2.374, 2.75] },
  215: { year: [5.181, 5.697], peak: [2.39, 2.521] },
  220: { year: [6.377, 7.178], peak: [2.631, 2.879] },
  230: { year: [9.812, 10.417], peak: [4.133, 4.316] },
  240: { year: [5.116, 5.944], peak: [2.431, 2.693] },
  250: { year: [4.733, 5.373], peak: [2.631, 2.874] },
  600: { year: [3.993, 4.504], peak: [3.02, 3.359] },
  900: { year: [1.379, 1.814], peak: [2.443, 2.778] },
} as const satisfies Record<number, Record<'year' | 'peak', Range>>;

/** How far a value lies outside a range: 0 inside, negative below, positive above. */
export const outside = (value: number, [least, most]: Range): number =>
  value < least ? value - least : value > most ? value - most : 0;
