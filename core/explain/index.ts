import type { Place, Plan } from '../plan/schema.ts';
import type { PlaceSeason, SeasonResult } from '../season/index.ts';
import { explainHeatLoss } from './heat-loss.ts';
import { explainHeatPart } from './heat-part.ts';
import { explainDailyLight, explainLampLight } from './light.ts';
import { explainState } from './plants.ts';
import { input, round } from './format.ts';
import type { ExplainSubject, Explanation } from './subject.ts';

export { balanceOf, coldestNightDay, heatBalance, heatOf, spanWords } from './heat-span.ts';
export type { HeatAmount, HeatBalance, HeatSpan } from './heat-span.ts';
export type * from './subject.ts';

/**
 * The working behind a figure: formula, inputs with their origin, intermediate results, source.
 * @throws RangeError where the subject names a place or lot that the plan does not have
 */
export function explain(season: SeasonResult, subject: ExplainSubject): Explanation {
  const { plan } = season;
  if (subject.kind === 'state') return stateOf(plan, season, subject.lotId, subject.day);
  const place = plan.places.find((each) => each.id === subject.placeId);
  const result = season.places.find((each) => each.placeId === subject.placeId);
  if (place === undefined || result === undefined)
    throw new RangeError(`expected a place of the plan, got ${subject.placeId}`);
  switch (subject.kind) {
    case 'heat-loss':
      return explainHeatLoss(place, result);
    case 'running-cost':
      return explainCost(plan, place, result);
    case 'daily-light':
      return explainDailyLight(plan, place, result, season, subject.day);
    case 'lamp-light':
      return explainLampLight(place);
    case 'inside-temperature':
      return explainTemperature(place, result, season, subject.day);
    case 'heat-part':
      return explainHeatPart(place, result, season, subject);
  }
}

function stateOf(plan: Plan, season: SeasonResult, lotId: string, day: number): Explanation {
  const lot = plan.lots.find((each) => each.id === lotId);
  const judged = season.lots.find((each) => each.lotId === lotId);
  if (lot === undefined || judged === undefined)
    throw new RangeError(`expected a lot of the plan, got ${lotId}`);
  return explainState(plan, lot, judged, day);
}

function explainCost(plan: Plan, place: Place, result: PlaceSeason): Explanation {
  const { tariff } = plan;
  const { totals } = result;
  const night =
    tariff.nightPrice === null
      ? []
      : [
          input(
            `Night price, ${tariff.nightFrom} to ${tariff.nightTo}`,
            tariff.nightPrice,
            `${tariff.currency}/kWh`,
            'plan',
          ),
        ];
  return {
    title: `Running cost of ${place.name}`,
    formula: 'cost = Σ over quarter-hours of power × price at that hour; fuel by its heat of combustion',
    inputs: [input('Day price', tariff.dayPrice, `${tariff.currency}/kWh`, 'plan'), ...night],
    steps: [
      `Heaters: ${round(totals.heaterHeat)} kWh of heat, ${tariff.currency} ${round(totals.heaterCost)}`,
      `Lamps: ${round(totals.lampElectricity)} kWh, ${tariff.currency} ${round(totals.lampCost)}`,
      `Fans: ${round(totals.fanElectricity)} kWh, ${tariff.currency} ${round(totals.fanCost)}`,
    ],
    result: `${tariff.currency} ${round(totals.cost)} a season`,
    source: 'Summed from the season run; heats of combustion by standard heats of formation.',
  };
}

function explainTemperature(
  place: Place,
  result: PlaceSeason,
  season: SeasonResult,
  day: number,
): Explanation {
  const { daily } = result;
  return {
    title: `Inside temperature of ${place.name}`,
    formula:
      'for every node: C · dT/dt = Σ conductance × (neighbour − T) + sun + lamps + heaters, by steps of 15 min',
    inputs: [
      input('Outdoors, least', season.outdoor.least[day], '°C', season.weatherName),
      input('Outdoors, most', season.outdoor.most[day], '°C', season.weatherName),
      input('Heat from heaters', daily.heaterHeat[day], 'kWh', 'heat balance'),
      input('Daylight at the plants', daily.daylight[day], 'mol/m²', 'daylight'),
    ],
    steps: [
      `Air: least ${round(daily.airLeast[day])}, mean ${round(daily.airMean[day])}, most ${round(daily.airMost[day])} °C`,
      `Leaf: least ${round(daily.leafLeast[day])}, mean ${round(daily.leafMean[day])}, most ${round(daily.leafMost[day])} °C`,
      `Pots: mean ${round(daily.potMean[day])} °C`,
    ],
    result: `${round(daily.airLeast[day])} to ${round(daily.airMost[day])} °C`,
    source:
      'Thermal network, implicit Euler; long-wave by a radiant star node; sky temperature from the weather’s long-wave.',
  };
}
