import type { Place, Plan } from '../plan/schema.ts';
import { heatPrice } from '../cost/index.ts';
import type { Drive, HeatState } from '../heat/index.ts';
import { DayReducer } from './reduce.ts';
import { HeatLedger } from './ledger.ts';
import { airOf, leafOf, potsOf, preparePlaceRun, relativeHumidity, runPlaceHeat } from './place-heat.ts';
import type { PlaceRun } from './place-heat.ts';
import type { PlaceLight } from './place-light.ts';
import type { SiteYear } from './site-year.ts';
import { lampRuns } from './lamps.ts';
import { roomTemperatures } from './surroundings.ts';
import type { DailySeries, HeatPart } from './result.ts';

/** A place's year before its plants are judged. */
export interface PlaceYear {
  readonly run: PlaceRun;
  readonly daily: DailySeries;
  /** Leaf temperature of every step of the season [°C]. */
  readonly leaf: Float64Array;
  readonly parts: readonly HeatPart[];
  readonly energyResidual: number;
  readonly heaterElectricity: number;
  readonly heaterCost: number;
  readonly lampCost: number;
  readonly fanCost: number;
  readonly peakWatts: number;
  readonly lampPpfd: number;
}

/** Runs one place through the season at the year's step and reduces it to days. */
export function runPlaceYear(
  plan: Plan,
  place: Place,
  year: SiteYear,
  light: PlaceLight,
  wetness: number,
  startDay: number,
  coldestNight: { from: number; to: number },
): PlaceYear {
  const { clock } = year;
  const perDay = 1440 / clock.stepMinutes;
  const lamps = lampRuns(place);
  const run = preparePlaceRun(place, year, light, lamps, roomTemperatures(place.room, clock), wetness);
  const days = clock.n / perDay;
  const reducer = new DayReducer(days, clock.stepMinutes);
  const { series } = reducer;
  const ledger = new HeatLedger(run.network, clock.stepMinutes, coldestNight);
  const leaf = new Float64Array(clock.n);
  const hours = clock.stepMinutes / 60;
  const first = startDay * perDay;
  const fuels = run.network.heaters.map((heater) => heater.fuel);
  const seesDay = light.seesDay;
  const sum = { heaterElectricity: 0, heaterCost: 0, lampCost: 0, fanCost: 0, peakWatts: 0 };
  const moles = (clock.stepMinutes * 60) / 1e6;
  runPlaceHeat(run, year, startDay, (index: number, drive: Drive, state: HeatState) => {
    const k = (first + index) % clock.n;
    const day = Math.floor(index / perDay);
    const price = clock.price[k];
    let lampWatts = 0;
    let ppfd = 0;
    for (let l = 0; l < lamps.length; l++) {
      if (run.lampFlags[l][k] === 0) continue;
      lampWatts += lamps[l].watts;
      ppfd += lamps[l].ppfd;
    }
    const lit = ppfd > 0 || (seesDay && clock.sunUp[k] === 1);
    leaf[index] = leafOf(state);
    reducer.temperatures(airOf(state), leaf[index], potsOf(state), lit);
    const underFleece = drive.fleeceLaid ? light.fleeceShare : 1;
    ppfd *= underFleece;
    series.daylight[day] += light.benchPhotons[k] * underFleece * moles;
    series.lampLight[day] += ppfd * moles;
    if (ppfd > 0 || (seesDay && clock.twilight[k] === 1)) reducer.hours(series.photoperiod, day);
    let electric = lampWatts;
    for (let h = 0; h < fuels.length; h++) {
      const watts = state.heaterPower[h];
      if (watts <= 0) continue;
      reducer.energy(series.heaterHeat, day, watts);
      const cost = ((watts * hours) / 1000) * heatPrice(fuels[h], plan.tariff, price);
      sum.heaterCost += cost;
      series.cost[day] += cost;
      if (fuels[h] === 'electricity') {
        electric += watts;
        sum.heaterElectricity += (watts * hours) / 1000;
      }
    }
    const fanWatts = state.fan * run.network.fanWatts;
    electric += fanWatts;
    if (electric > sum.peakWatts) sum.peakWatts = electric;
    reducer.energy(series.lampElectricity, day, lampWatts);
    reducer.energy(series.fanElectricity, day, fanWatts);
    const lampCost = ((lampWatts * hours) / 1000) * price;
    const fanCost = ((fanWatts * hours) / 1000) * price;
    sum.lampCost += lampCost;
    sum.fanCost += fanCost;
    series.cost[day] += lampCost + fanCost;
    if (relativeHumidity(state) >= 0.9) reducer.hours(series.dampHours, day);
    if (state.condensing) reducer.hours(series.dewHours, day);
    if (state.short) reducer.hours(series.shortfallHours, day);
    ledger.step(index, drive, state);
    if ((index + 1) % perDay === 0) reducer.close(day);
  });
  return {
    run,
    daily: series,
    leaf,
    parts: ledger.parts(),
    energyResidual: ledger.residual(),
    ...sum,
    lampPpfd: lamps.reduce((total, lamp) => total + lamp.ppfd, 0),
  };
}
