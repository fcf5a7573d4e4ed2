import type { DailySeries } from './result.ts';

const STEPS = 0;
const AIR_SUM = 1;
const AIR_LEAST = 2;
const AIR_MOST = 3;
const AIR_LIT = 4;
const LIT_STEPS = 5;
const LEAF_SUM = 6;
const LEAF_LEAST = 7;
const LEAF_MOST = 8;
const LEAF_DARK = 9;
const DARK_STEPS = 10;
const POT_SUM = 11;
const POT_LEAST = 12;
const sumCount = 13;

/** Running sums of one day while the steps go by; `close` writes the day into the series. */
export class DayReducer {
  readonly series: DailySeries;
  readonly #hours: number;
  /** Sums and extremes of the day, in the order of the constants below; an array so that nothing is allocated a step. */
  readonly #sum = new Float64Array(sumCount);

  constructor(days: number, stepMinutes: number) {
    this.#hours = stepMinutes / 60;
    this.clear();
    const series = () => new Float64Array(days);
    this.series = {
      airLeast: series(),
      airMean: series(),
      airMost: series(),
      airDay: series(),
      leafLeast: series(),
      leafMean: series(),
      leafMost: series(),
      leafNight: series(),
      potMean: series(),
      potLeast: series(),
      daylight: series(),
      lampLight: series(),
      photoperiod: series(),
      heaterHeat: series(),
      lampElectricity: series(),
      fanElectricity: series(),
      cost: series(),
      lampCost: series(),
      dampHours: series(),
      dewHours: series(),
      leafDewHours: series(),
      mouldHours: series(),
      shortfallHours: series(),
    };
  }

  /** Takes one step's temperatures [°C]; `lit` where the sun is up or a lamp on. */
  temperatures(air: number, leaf: number, pots: number, lit: boolean): void {
    const sum = this.#sum;
    sum[STEPS] += 1;
    sum[AIR_SUM] += air;
    if (air < sum[AIR_LEAST]) sum[AIR_LEAST] = air;
    if (air > sum[AIR_MOST]) sum[AIR_MOST] = air;
    sum[LEAF_SUM] += leaf;
    if (leaf < sum[LEAF_LEAST]) sum[LEAF_LEAST] = leaf;
    if (leaf > sum[LEAF_MOST]) sum[LEAF_MOST] = leaf;
    sum[POT_SUM] += pots;
    if (pots < sum[POT_LEAST]) sum[POT_LEAST] = pots;
    if (lit) {
      sum[AIR_LIT] += air;
      sum[LIT_STEPS] += 1;
    } else {
      sum[LEAF_DARK] += leaf;
      sum[DARK_STEPS] += 1;
    }
  }

  /** Adds watts to a daily energy series [kWh]. */
  energy(series: Float64Array, day: number, watts: number): void {
    series[day] += (watts * this.#hours) / 1000;
  }

  /** Adds one step's length, or a share of it, to a daily series of hours. */
  hours(series: Float64Array, day: number, share = 1): void {
    series[day] += share * this.#hours;
  }

  /** Writes the day's means and extremes and clears the sums. */
  close(day: number): void {
    const s = this.series;
    const sum = this.#sum;
    const steps = sum[STEPS];
    s.airLeast[day] = sum[AIR_LEAST];
    s.airMost[day] = sum[AIR_MOST];
    s.airMean[day] = sum[AIR_SUM] / steps;
    s.airDay[day] = sum[LIT_STEPS] > 0 ? sum[AIR_LIT] / sum[LIT_STEPS] : s.airMean[day];
    s.leafLeast[day] = sum[LEAF_LEAST];
    s.leafMost[day] = sum[LEAF_MOST];
    s.leafMean[day] = sum[LEAF_SUM] / steps;
    s.leafNight[day] = sum[DARK_STEPS] > 0 ? sum[LEAF_DARK] / sum[DARK_STEPS] : s.leafMean[day];
    s.potMean[day] = sum[POT_SUM] / steps;
    s.potLeast[day] = sum[POT_LEAST];
    this.clear();
  }

  clear(): void {
    this.#sum.fill(0);
    this.#sum[AIR_LEAST] = this.#sum[LEAF_LEAST] = this.#sum[POT_LEAST] = Infinity;
    this.#sum[AIR_MOST] = this.#sum[LEAF_MOST] = -Infinity;
  }
}
