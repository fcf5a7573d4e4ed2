import type { Heater } from '../plan/equipment.ts';
import { paraffinVapour, propaneVapour } from '../plan/fuels.ts';
import type { HeaterNumbers } from './network.ts';

/**
 * Heaters in order of priority: the highest night set point first, as thermostats would have it. A thermostat
 * switches on at its set point and off a differential above; the mean it holds lies half of that above.
 */
export function heaterNumbers(heaters: readonly Heater[]): HeaterNumbers[] {
  return heaters
    .map((heater) => ({
      name: heater.name,
      power: heater.power,
      day: heater.setPointDay + heater.differential / 2,
      night: heater.setPointNight + heater.differential / 2,
      swing: heater.differential / 2,
      mat: heater.kind === 'heat-mat',
      fuel: fuelOf(heater),
      vapour: vapourOf(heater),
    }))
    .sort((a, b) => b.night - a.night);
}

export function fuelOf(heater: Heater): HeaterNumbers['fuel'] {
  if (heater.kind === 'propane') return 'propane';
  return heater.kind === 'paraffin' ? 'paraffin' : 'electricity';
}

function vapourOf(heater: Heater): number {
  if (heater.kind === 'propane') return propaneVapour;
  return heater.kind === 'paraffin' ? paraffinVapour : 0;
}
