import type { DailySeries } from './result.ts';

/** Running sums of one day while the steps go by; `close` writes the day into the series. */
export class DayReducer {
  readonly series: DailySeries;
  readonly #hours: number;
  #steps = 0;
  #air = 0;
  #airLeast = Infinity;
  #airMost = -Infinity;
  #airLit = 0;
  #litSteps = 0;
  #leaf = 0;
  #leafLeast = Infinity;
  #leafMost = -Infinity;
  #leafDark = 0;
  #darkSteps = 0;
  #pots = 0;

  constructor(days: number, stepMinutes: number) {
    this.#hours = stepMinutes / 60;
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
      daylight: series(),
      lampLight: series(),
      photoperiod: series(),
      heaterHeat: series(),
      lampElectricity: series(),
      fanElectricity: series(),
      cost: series(),
      dampHours: series(),
      dewHours: series(),
      shortfallHours: series(),
    };
  }

  /** Takes one step's temperatures [°C]; `lit` where the sun is up or a lamp on. */
  temperatures(air: number, leaf: number, pots: number, lit: boolean): void {
    this.#steps += 1;
    this.#air += air;
    if (air < this.#airLeast) this.#airLeast = air;
    if (air > this.#airMost) this.#airMost = air;
    this.#leaf += leaf;
    if (leaf < this.#leafLeast) this.#leafLeast = leaf;
    if (leaf > this.#leafMost) this.#leafMost = leaf;
    this.#pots += pots;
    if (lit) {
      this.#airLit += air;
      this.#litSteps += 1;
    } else {
      this.#leafDark += leaf;
      this.#darkSteps += 1;
    }
  }

  /** Adds watts to a daily energy series [kWh]. */
  energy(series: Float64Array, day: number, watts: number): void {
    series[day] += (watts * this.#hours) / 1000;
  }

  /** Adds one step's length to a daily series of hours. */
  hours(series: Float64Array, day: number): void {
    series[day] += this.#hours;
  }

  /** Writes the day's means and extremes and clears the sums. */
  close(day: number): void {
    const s = this.series;
    s.airLeast[day] = this.#airLeast;
    s.airMost[day] = this.#airMost;
    s.airMean[day] = this.#air / this.#steps;
    s.airDay[day] = this.#litSteps > 0 ? this.#airLit / this.#litSteps : s.airMean[day];
    s.leafLeast[day] = this.#leafLeast;
    s.leafMost[day] = this.#leafMost;
    s.leafMean[day] = this.#leaf / this.#steps;
    s.leafNight[day] = this.#darkSteps > 0 ? this.#leafDark / this.#darkSteps : s.leafMean[day];
    s.potMean[day] = this.#pots / this.#steps;
    this.clear();
  }

  clear(): void {
    this.#steps = this.#air = this.#airLit = this.#litSteps = 0;
    this.#leaf = this.#leafDark = this.#darkSteps = this.#pots = 0;
    this.#airLeast = this.#leafLeast = Infinity;
    this.#airMost = this.#leafMost = -Infinity;
  }
}
