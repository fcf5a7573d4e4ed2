import type { Place, Plan } from '../plan/schema.ts';
import { heatPrice } from '../cost/index.ts';
import { mouldRule } from '../plan/mould.ts';
import { airHeights, heatPerEnergy } from '../heat/index.ts';
import type { Drive, HeatState } from '../heat/index.ts';
import { DayReducer } from './reduce.ts';
import { HeatLedger } from './ledger.ts';
import {
  airOf,
  coverClear,
  leafOf,
  potsOf,
  preparePlaceRun,
  relativeHumidity,
  runPlaceHeat,
} from './place-heat.ts';
import type { PlaceRun } from './place-heat.ts';
import type { PlaceLight } from './place-light.ts';
import type { SiteYear } from './site-year.ts';
import { lampRuns } from './lamps.ts';
import { roomTemperatures } from './surroundings.ts';
import { FuelCount } from './fuel.ts';
import { MouldCount } from './mould.ts';
import type { DailySeries, FuelUse, HeatPart, Heights } from './result.ts';

/** A place's year before its plants are judged. */
export interface PlaceYear {
  readonly run: PlaceRun;
  readonly daily: DailySeries;
  /** Leaf temperature of every step of the season [°C]. */
  readonly leaf: Float64Array;
  /** Share of the daylight that snow, drops on the cover and the fleece let through in every step, 0–1. */
  readonly passing: Float64Array;
  /** Light of each lamp entry, day by day, mean of the growing area [mol m⁻² d⁻¹]. */
  readonly lampLightBy: readonly Float64Array[];
  readonly parts: readonly HeatPart[];
  readonly energyResidual: number;
  readonly heights: Heights;
  readonly fuels: readonly FuelUse[];
  readonly mostCarbonDioxide: number;
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
  coldestNight: number,
): PlaceYear {
  const { clock } = year;
  const perDay = 1440 / clock.stepMinutes;
  const lamps = lampRuns(place);
  const run = preparePlaceRun(
    place,
    year,
    light,
    lamps,
    roomTemperatures(place.room, clock, year.beginMinutes),
    wetness,
  );
  const days = clock.n / perDay;
  const reducer = new DayReducer(days, clock.stepMinutes);
  const { series } = reducer;
  const ledger = new HeatLedger(run.network, clock.stepMinutes, days);
  const mould = new MouldCount(mouldRule(plan.mouldRule), clock.stepMinutes / 60);
  const fuelCount = new FuelCount(place.heaters, run.network.heaters, days);
  const circulation = run.network.circulation?.watts ?? 0;
  const fanFull = run.network.fan?.watts ?? 0;
  let least = Infinity;
  let mostCarbonDioxide = 0;
  let heights: Heights = { floor: 0, bench: 0, ridge: 0, middle: 0, edge: 0 };
  const leaf = new Float64Array(clock.n);
  const passing = new Float64Array(clock.n);
  const lampLightBy = lamps.map(() => new Float64Array(days));
  const hours = clock.stepMinutes / 60;
  const first = startDay * perDay;
  const { heaters } = run.network;
  const seesDay = light.seesDay;
  const sum = { heaterElectricity: 0, heaterCost: 0, lampCost: 0, fanCost: 0, peakWatts: 0 };
  const moles = (clock.stepMinutes * 60) / 1e6;
  runPlaceHeat(run, year, startDay, (index: number, drive: Drive, state: HeatState) => {
    const k = (first + index) % clock.n;
    const day = Math.floor(index / perDay);
    const price = clock.price[k];
    let lampWatts = 0;
    let lampPeak = 0;
    let ppfd = 0;
    let lampShare = 0;
    const underFleece = drive.fleeceLaid ? light.fleeceShare : 1;
    for (let l = 0; l < lamps.length; l++) {
      const on = run.lampFlags[l][k];
      if (on === 0) continue;
      lampPeak += lamps[l].watts;
      lampWatts += on * lamps[l].watts;
      ppfd += on * lamps[l].ppfd;
      lampLightBy[l][day] += on * lamps[l].ppfd * underFleece * moles;
      if (lamps[l].ppfd > 0 && on > lampShare) lampShare = on;
    }
    const lit = ppfd > 0 || (seesDay && clock.sunUp[k] === 1);
    leaf[index] = leafOf(state);
    reducer.temperatures(airOf(state), leaf[index], potsOf(state), lit);
    ppfd *= underFleece;
    const clear = coverClear(run, drive.snowDepth, state.condensing);
    passing[index] = underFleece * clear;
    series.daylight[day] += light.benchPhotons[k] * passing[index] * moles;
    series.lampLight[day] += ppfd * moles;
    if (seesDay && clock.twilight[k] === 1) reducer.hours(series.photoperiod, day);
    else if (lampShare > 0) reducer.hours(series.photoperiod, day, lampShare);
    let electric = lampPeak;
    for (let h = 0; h < heaters.length; h++) {
      const watts = state.heaterPower[h];
      if (watts <= 0) continue;
      reducer.energy(series.heaterHeat, day, watts);
      const taken = watts / heatPerEnergy(heaters[h], drive.outdoor);
      const cost = ((taken * hours) / 1000) * heatPrice(heaters[h].fuel, plan.tariff, price);
      sum.heaterCost += cost;
      series.cost[day] += cost;
      fuelCount.add(h, day, (taken * hours) / 1000);
      if (heaters[h].fuel === 'electricity') {
        electric += taken;
        sum.heaterElectricity += (taken * hours) / 1000;
      }
    }
    const fanWatts = state.fan * fanFull + (drive.circulating ? circulation : 0);
    electric += fanWatts;
    if (electric > sum.peakWatts) sum.peakWatts = electric;
    reducer.energy(series.lampElectricity, day, lampWatts);
    reducer.energy(series.fanElectricity, day, fanWatts);
    const lampCost = ((lampWatts * hours) / 1000) * price;
    const fanCost = ((fanWatts * hours) / 1000) * price;
    sum.lampCost += lampCost;
    sum.fanCost += fanCost;
    series.cost[day] += lampCost + fanCost;
    series.lampCost[day] += lampCost;
    const humidity = relativeHumidity(state);
    if (humidity >= 0.9) reducer.hours(series.dampHours, day);
    if (state.condensing) reducer.hours(series.dewHours, day);
    if (state.leafWet) reducer.hours(series.leafDewHours, day);
    if (mould.step(airOf(state), humidity, state.leafWet)) reducer.hours(series.mouldHours, day);
    if (state.carbonDioxide > mostCarbonDioxide) mostCarbonDioxide = state.carbonDioxide;
    if (airOf(state) < least) {
      least = airOf(state);
      heights = airHeights(run.network, state, drive);
    }
    if (state.short) reducer.hours(series.shortfallHours, day);
    ledger.step(index, drive, state, clock.sunUp[k] === 0);
    if ((index + 1) % perDay === 0) reducer.close(day);
  });
  return {
    run,
    daily: series,
    leaf,
    passing,
    lampLightBy,
    parts: ledger.parts(coldestNight),
    heights,
    fuels: fuelCount.uses(),
    mostCarbonDioxide,
    energyResidual: ledger.residual(),
    ...sum,
    lampPpfd: lamps.reduce((total, lamp) => total + lamp.ppfd, 0),
  };
}
