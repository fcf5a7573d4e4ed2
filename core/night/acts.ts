import type { Place } from '../plan/schema.ts';
import { fleeceOf, screenOf, waterOf } from '../plan/parts.ts';
import { heatPrice } from '../cost/index.ts';
import type { CheapAct } from './result.ts';
import { buildNetwork, plainHeater } from '../heat/index.ts';
import { changedTonight, leastOf, nightCost, runTrace } from './place-night.ts';
import type { NightSetting } from './place-night.ts';

/** A canister of warm water: litres and temperature [°C] of a hot tap (common practice, no source). */
const canister = { litres: 20, temperature: 55 };

/** Heat to warm it from a cold tap at 10 °C [kWh]. */
const canisterHeat = (canister.litres * 4.186 * (canister.temperature - 10)) / 3600;

/** Acts that lift the leaf by less than this are not worth going out for [K]. */
const worthwhile = 0.1;

/** What a grower can still do before dark, each with its effect on the least leaf temperature and its price tonight. */
export function cheapActs(setting: NightSetting, least: number): CheapAct[] {
  const { place, plan } = setting;
  const acts: CheapAct[] = [];
  const tariff = plan.tariff;
  const nightRate = tariff.nightPrice ?? tariff.dayPrice;
  const tryPlace = (id: CheapAct['id'], words: string, changed: Place, cost: number) => {
    const trace = runTrace(changedTonight(setting, changed));
    acts.push({ id, words, kelvin: leastOf(trace.leaf).value - least, cost });
  };
  if (place.fleece === null) {
    const fleece = fleeceOf({ covering: 'fleece-30', layers: 1, laidWhen: 'night' });
    tryPlace('fleece', 'Lay frost fleece over the plants', { ...place, fleece }, 0);
  }
  if (place.screen === null && !['tent', 'shelf', 'window-bay'].includes(place.shape.kind)) {
    const screen = screenOf({ covering: 'woven-screen', closedWhen: 'night' });
    tryPlace('screen', 'Hang a cloth inside the glazing overnight', { ...place, screen }, 0);
  }
  if (place.room === null || place.shape.kind === 'lean-to') {
    const warmed = {
      ...place,
      water: [
        ...place.water,
        waterOf({ name: 'Canister', litres: canister.litres, count: 1, form: 'canister' }),
      ],
    };
    const network = buildNetwork(warmed, setting.night.site, setting.night.pressure, setting.run.wetness);
    const trace = runTrace(setting, { network, warmWater: canister });
    acts.push({
      id: 'warm-water',
      words: `Put in a ${canister.litres} l canister of water at ${canister.temperature} °C`,
      kelvin: leastOf(trace.leaf).value - least,
      cost: canisterHeat * heatPrice('electricity', tariff, tariff.dayPrice),
    });
  }
  const [lamp, ...others] = place.lamps;
  if (lamp !== undefined) {
    const lit = changedTonight(setting, {
      ...place,
      lamps: [
        { ...lamp, on: '20:00', off: '08:00', second: null, control: { kind: 'clock' }, mostDay: null },
        ...others,
      ],
    });
    const trace = runTrace(lit);
    acts.push({
      id: 'lamp-at-night',
      words: `Burn the ${lamp.name} all night; the plants then have no dark tonight`,
      kelvin: leastOf(trace.leaf).value - least,
      cost: nightCost(lit, trace).cost - nightCost(setting, runTrace(setting)).cost,
    });
  }
  if (place.heaters.length === 0 && place.room === null) {
    const network = { ...setting.run.network, heaters: [smallHeater] };
    const trace = runTrace(setting, { network });
    const kwh =
      trace.power.reduce((sum, watts) => sum + watts, 0) * (setting.night.steps.stepMinutes / 60 / 1000);
    acts.push({
      id: 'small-heater',
      words: 'Stand in a 500 W heater set to 3 °C',
      kelvin: leastOf(trace.leaf).value - least,
      cost: kwh * nightRate,
    });
  }
  return acts.filter((act) => act.kelvin >= worthwhile).sort((a, b) => b.kelvin - a.kelvin);
}

const smallHeater = plainHeater(500, 3, 'Small heater');
