import type { Heater } from '../plan/equipment.ts';
import {
  fluedEfficiency,
  paraffinCarbonDioxide,
  paraffinVapour,
  propaneCarbonDioxide,
  propaneVapour,
} from '../plan/fuels.ts';
import type { HeaterNumbers } from './network.ts';

/** Share of heat given as long-wave by each kind (estimates after EN 442's 0.2–0.4 for radiators; flames from memory). */
const radiantShares: Readonly<Record<Heater['kind'], number>> = {
  fan: 0,
  tubular: 0.35,
  'oil-filled': 0,
  propane: 0.15,
  paraffin: 0.25,
  'heat-mat': 0,
  'heat-pump': 0,
};

/**
 * Heaters as the network needs them, in the plan's order. A thermostat switches on at its set point and off a
 * differential above; the mean it holds lies half of that above.
 * @param oilSurfaces surface through which each oil-filled heater gives its heat, by the heater's place in the list
 */
export function heaterNumbers(
  heaters: readonly Heater[],
  oilSurfaces: ReadonlyMap<number, number>,
): HeaterNumbers[] {
  return heaters.map((heater, index) => {
    const swing = heater.differential / 2;
    const burns = fuelOf(heater) !== 'electricity';
    const inside = burns && !heater.flued ? 1 : 0;
    const paraffin = heater.kind === 'paraffin';
    return {
      id: heater.id,
      name: heater.name,
      power: heater.power,
      day: heater.setPointDay + swing,
      night: heater.setPointNight + swing,
      frostWatch: heater.frostWatch === null ? null : heater.frostWatch + swing,
      swing,
      mat: heater.kind === 'heat-mat',
      radiantShare: radiantShares[heater.kind],
      surface: oilSurfaces.get(index) ?? -1,
      fuel: fuelOf(heater),
      vapour: inside * (paraffin ? paraffinVapour : propaneVapour),
      carbonDioxide: inside * (paraffin ? paraffinCarbonDioxide : propaneCarbonDioxide),
      efficiency: burns && heater.flued ? fluedEfficiency : 1,
      coefficients:
        heater.kind === 'heat-pump'
          ? { at7: heater.coefficientAt7, atMinus7: heater.coefficientAtMinus7 }
          : null,
    };
  });
}

/** A plain electric heater of a power [W] that holds one temperature [°C] without a differential. */
export function plainHeater(power: number, setPoint: number, name = ''): HeaterNumbers {
  return {
    id: 'plain',
    name,
    power,
    day: setPoint,
    night: setPoint,
    frostWatch: null,
    swing: 0,
    mat: false,
    radiantShare: 0,
    surface: -1,
    fuel: 'electricity',
    vapour: 0,
    carbonDioxide: 0,
    efficiency: 1,
    coefficients: null,
  };
}

export function fuelOf(heater: Heater): HeaterNumbers['fuel'] {
  if (heater.kind === 'propane') return 'propane';
  return heater.kind === 'paraffin' ? 'paraffin' : 'electricity';
}

/** Least and most coefficient of a heat pump: never worse than a resistance, never better than 7. */
const leastCoefficient = 1;
const mostCoefficient = 7;

/**
 * Heat given per energy taken at an outdoor temperature [°C]: for a heat pump straight through its two rating
 * points (EN 14511: A7 and A−7), between 1 and 7; for the others their efficiency.
 */
export function heatPerEnergy(heater: HeaterNumbers, outdoor: number): number {
  const { coefficients } = heater;
  if (coefficients === null) return heater.efficiency;
  const slope = (coefficients.at7 - coefficients.atMinus7) / 14;
  return Math.min(mostCoefficient, Math.max(leastCoefficient, coefficients.at7 + slope * (outdoor - 7)));
}
