/**
 * The measured roof space of a house in Vantaa, 60.3° N (`../shared/data/measured/attic-60N`), as a hand-listed place
 * in two winters, December to March, hour by hour. Measured air: TRH-database, CC BY 4.0; outdoor weather: Finnish
 * Meteorological Institute, open data, CC BY 4.0. Nothing of either is kept in this repository.
 *
 * Asked: a smaller error than a straight line on outdoor temperature, and the aim, than a line on lagged outdoor
 * temperature. Both lines are fitted to the very readings they are judged by. No number of the place is fitted, and their
 * plausible ranges stand in `../support/attic.ts`; but four choices were made after a first sketch had been held against
 * these readings: slots at the eaves in place of leakage alone, wool of 0.05 and not 0.045, snow that lies at the start,
 * and the water from which a roof counts as white. So this is no blind test.
 *
 * RMSE of the two winters at the usual values: 0.84 and 1.11 K. With one of them moved through its range, worked with
 * snow that went at once on a mild day and an outer film of 4 + 4 v (then 0.82 and 1.23 at the usual values):
 *
 *   eaves           0.96  1.27 at 0.25 %      0.97  1.27 at 0.6 %
 *   wind share      0.92  1.36 at 0.35        0.89  1.19 at 0.7
 *   wool            0.93  1.31 at 0.042       0.80  1.19 at 0.055
 *   snow on roof    0.90  1.30 at 0.6         0.81  1.19 at 1
 *   other leakage   0.82  1.23 at 0           0.87  1.22 at 2
 *   tiles           0.80  1.11 at 0.6         0.84  1.37 at 0.9
 *   gap             0.83  1.26 at 0.08        0.81  1.20 at 0.16
 *
 * The straight line leaves 1.36 and 1.37, the lagged one 0.97 and 1.19: both winters are nearer than either.
 *
 * What else is left: the second winter's frost nights are 0.9 K too cold (measured excess 4.4 K, here 3.5), most so in
 * calm; why is not shown (a house among others may stand in warmer air than the airport then). Full sun gives 10.2 K
 * against 6.3 measured: there is no ventilated gap under the tiles here, and their colour is not told (at an absorptance
 * of 0.6 and the older film it came to 6.3).
 */
import { describe, expect, it } from 'vitest';
import { indexOf, isNight, readAttic } from '../support/attic-data.ts';
import type { AtticReadings } from '../support/attic-data.ts';
import { runAttic } from '../support/attic.ts';
import { snowOf } from '../support/attic-snow.ts';
import { atticYear, cloudCover } from '../support/attic-year.ts';
import { bestLag, errorOf, leastSquares } from '../support/least-squares.ts';
import { describeWithData } from '../support/shared-data.ts';

const span = (readings: AtticReadings, from: string, to: string): number[] => {
  const first = indexOf(readings, from);
  return Array.from({ length: indexOf(readings, to) - first }, (_, k) => first + k);
};

const meanOf = (rows: readonly number[], of: (row: number) => number): number =>
  rows.reduce((sum, row) => sum + of(row), 0) / rows.length;

/**
 * Water in the snow at the first reading [mm]: snow lay in southern Finland from the third week of November 2010 (from
 * memory). The readings agree: in the clear frost of their first three days the roof space swings by 2 to 4 K.
 */
const snowAtStart = 20;

interface Winter {
  readonly name: string;
  /** Label at which the year that is run begins, at which its snow is counted from, and the winter that is judged. */
  readonly year: string;
  readonly snowFrom: string;
  readonly from: string;
  readonly to: string;
  readonly thaw: string;
  readonly lying: number;
  readonly room: 'measured' | 'mean';
  /** Just above what is reached [K]. */
  readonly mostMean: number;
  readonly mostCold: number;
  readonly mostRmse: number;
  /** What is granted over the lagged line [K]. */
  readonly overLag: number;
}

const winters: readonly Winter[] = [
  {
    name: '2010–11, the room as measured',
    year: '2010-11-28 01:00',
    snowFrom: '2010-11-28 00:00',
    from: '2010-12-01 00:00',
    to: '2011-04-01 00:00',
    thaw: '2011-05-01 00:00',
    lying: snowAtStart,
    room: 'measured',
    mostMean: 0.25,
    mostCold: 0.36,
    mostRmse: 0.86,
    overLag: 0,
  },
  {
    name: '2011–12, the room at its mean',
    year: '2011-07-01 01:00',
    snowFrom: '2011-10-01 00:00',
    from: '2011-12-01 00:00',
    to: '2012-04-01 00:00',
    thaw: '2012-05-01 00:00',
    lying: 0,
    room: 'mean',
    mostMean: 0.44,
    mostCold: 1.14,
    mostRmse: 1.12,
    overLag: 0,
  },
];

/** Mean of the room's readings in their one winter [°C]; it stands where they have ended. */
function roomMean(readings: AtticReadings): number {
  return meanOf(span(readings, winters[0].from, winters[0].to), (row) => readings.room[row]);
}

/** Modelled air for each reading of the year a winter lies in, NaN for all others [°C]. */
function modelled(readings: AtticReadings, winter: Winter): Float64Array {
  const year = atticYear(readings, indexOf(readings, winter.year));
  const thaw = indexOf(readings, winter.thaw);
  const snow = snowOf(readings, indexOf(readings, winter.snowFrom), thaw, winter.lying);
  console.info(`snow ${snow.from} to ${snow.to}, ${(100 * snow.depth).toFixed(0)} cm on the ground`);
  const mean = roomMean(readings);
  const values = [...readings.room.subarray(0, readings.room.findIndex(Number.isNaN))];
  const room =
    winter.room === 'mean'
      ? { kind: 'constant' as const, temperature: mean }
      : { kind: 'series' as const, from: '11-28', stepHours: 1, values, otherwise: mean };
  const air = runAttic(year, room, snow);
  const result = new Float64Array(readings.n).fill(NaN);
  year.reading.forEach((reading, row) => {
    result[reading] = air[row];
  });
  return result;
}

/** Excess over outdoors [K] of one band: as measured and as modelled. */
interface Excess {
  readonly hours: number;
  readonly measured: number;
  readonly model: number;
}

function excessOf(readings: AtticReadings, model: Float64Array, belongs: (row: number) => boolean): Excess {
  const { outdoor, attic } = readings;
  const rows = [...outdoor.keys()].filter((row) => Number.isFinite(model[row] + attic[row]) && belongs(row));
  const excess = (air: Float64Array) => meanOf(rows, (row) => air[row] - outdoor[row]);
  return { hours: rows.length, measured: excess(attic), model: excess(model) };
}

/**
 * Excess over outdoors by band, 22 to 5 o'clock, against the same hours' readings. The data's README gives 4.0–5.3 K
 * below −10 °C and 1.5–2.0 K from −10 to 0 °C by nights of its own choice; by these hours the file itself gives 3.8 and
 * 4.4 K, and 1.6 and 1.1 K, in the two years, so the readings are what is asked here. In sun over 500 W m⁻² it gives
 * 6.3 K in both years, README 5.4–6.3.
 */
function bands(readings: AtticReadings, winter: Winter, model: Float64Array): void {
  const { outdoor, global } = readings;
  const night = (low: number, high: number) => (row: number) =>
    isNight(readings, row) && outdoor[row] >= low && outdoor[row] < high;
  const kinds = [
    ['night below −10 °C', night(-60, -10), 3.5, 4.6, winter.mostCold],
    ['night from −10 to 0 °C', night(-10, 0), 0.9, 2, 0.2],
    ['night from 0 to 10 °C', night(0, 10), -0.3, 0.3, 0.4],
    ['sun over 500 W m⁻²', (row: number) => global[row] > 500, 5.4, 6.4, 4],
  ] as const;
  it.each(kinds)('has the excess of the readings, %s', (name, belongs, low, high, most) => {
    const { hours, measured, model: modelledExcess } = excessOf(readings, model, belongs);
    const figures = `measured ${measured.toFixed(2)} K, here ${modelledExcess.toFixed(2)} K, ${hours} hours`;
    console.info(`${winter.name}, ${name}: ${figures}`);
    expect(hours).toBeGreaterThan(100);
    expect(measured).toBeGreaterThan(low);
    expect(measured).toBeLessThan(high);
    expect(Math.abs(modelledExcess - measured)).toBeLessThan(most);
  });
}

function judge(readings: AtticReadings, winter: Winter): void {
  const { outdoor, attic } = readings;
  const model = modelled(readings, winter);
  const rows = span(readings, winter.from, winter.to).filter((row) =>
    Number.isFinite(attic[row] + model[row]),
  );
  const straight = leastSquares([outdoor], attic, rows);
  const lag = bestLag(outdoor, attic, rows);
  const error = errorOf((row) => model[row], attic, rows);
  const of = (values: readonly number[]) => values.map((value) => value.toFixed(3)).join(' and ');
  console.info(
    `${winter.name}: mean ${of([error.mean])} K, RMSE ${of([error.rmse])} K; straight line ${of([straight.rmse])} K, ` +
      `line on outdoors ${lag.hours} h behind ${of([lag.rmse])} K; ${rows.length} hours`,
  );

  it('is judged by every hour of the four months but the leap day', () => {
    expect(rows.length).toBe(121 * 24);
  });

  it('is as far from the two fitted lines as an independent script found', () => {
    expect(straight.rmse).toBeGreaterThan(1.35);
    expect(straight.rmse).toBeLessThan(1.38);
    expect(lag.rmse).toBeGreaterThan(0.95);
    expect(lag.rmse).toBeLessThan(1.25);
  });

  it('misses by less than the straight line', () => expect(error.rmse).toBeLessThan(straight.rmse));

  it(`misses by at most ${winter.overLag} K more than the lagged line`, () => {
    expect(error.rmse).toBeLessThan(lag.rmse + winter.overLag);
  });

  it(`has a mean error within ${winter.mostMean} K and an RMSE under ${winter.mostRmse} K`, () => {
    expect(Math.abs(error.mean)).toBeLessThan(winter.mostMean);
    expect(error.rmse).toBeLessThan(winter.mostRmse);
  });

  bands(readings, winter, model);
}

describeWithData('measured/attic-60N', 'a roof space over a heated house', (folder) => {
  const readings = readAttic(folder);

  it('is read whole: hours, span, ends of the series', () => {
    expect(readings.n).toBe(14137);
    expect(readings.outdoor[0]).toBe(-13.6);
    expect(readings.attic[0]).toBe(-10.46);
    expect(readings.outdoor[readings.n - 1]).toBe(18.5);
    expect(readings.attic.filter(Number.isFinite)).toHaveLength(14113);
    expect(readings.room.filter(Number.isFinite)).toHaveLength(6337);
  });

  it('has clouds of a Finnish year: more in December than in June', () => {
    const cover = cloudCover(readings);
    const month = (from: string, to: string) => meanOf(span(readings, from, to), (row) => cover[row]);
    expect(cover.every((value) => value >= 0 && value <= 1)).toBe(true);
    const december = month('2011-12-01 00:00', '2012-01-01 00:00');
    expect(december).toBeGreaterThan(month('2011-06-01 00:00', '2011-07-01 00:00') + 0.2);
  });

  for (const winter of winters) describe(winter.name, () => judge(readings, winter));
});
