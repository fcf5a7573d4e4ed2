import type { Heater } from '../plan/equipment.ts';
import { paraffinHeat, propaneHeat } from '../plan/fuels.ts';
import type { HeaterNumbers } from '../heat/index.ts';
import type { FuelUse } from './result.ts';

/** Kilograms of propane or litres of paraffin in a kilowatt-hour of its net heat; 0 for electricity. */
export function fuelPerKwh(fuel: HeaterNumbers['fuel']): number {
  if (fuel === 'propane') return 1 / propaneHeat;
  return fuel === 'paraffin' ? 1 / paraffinHeat : 0;
}

/** Unit a burner's fuel is sold by; null for electricity. */
export function fuelUnit(fuel: HeaterNumbers['fuel']): FuelUse['unit'] | null {
  if (fuel === 'electricity') return null;
  return fuel === 'propane' ? 'kg' : 'litres';
}

/** Adds up what each burner takes, day by day. */
export class FuelCount {
  readonly #heaters: readonly Heater[];
  readonly #numbers: readonly HeaterNumbers[];
  readonly #byDay: readonly Float64Array[];

  constructor(heaters: readonly Heater[], numbers: readonly HeaterNumbers[], days: number) {
    this.#heaters = heaters;
    this.#numbers = numbers;
    this.#byDay = numbers.map((each) => new Float64Array(each.fuel === 'electricity' ? 0 : days));
  }

  /** @param kwh net heat of the fuel taken */
  add(heater: number, day: number, kwh: number): void {
    if (this.#byDay[heater].length > 0)
      this.#byDay[heater][day] += kwh * fuelPerKwh(this.#numbers[heater].fuel);
  }

  uses(): FuelUse[] {
    return this.#numbers.flatMap((numbers, h) => {
      const unit = fuelUnit(numbers.fuel);
      if (unit === null) return [];
      const amount = this.#byDay[h].reduce((sum, value) => sum + value, 0);
      const mostInADay = this.#byDay[h].reduce((most, value) => Math.max(most, value), 0);
      const { id, name, tank } = this.#heaters[h];
      return [
        {
          heaterId: id,
          name,
          unit,
          amount,
          mostInADay,
          tank,
          fillings: tank === null ? null : amount / tank,
        },
      ];
    });
  }
}
