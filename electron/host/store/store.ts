import { openStore } from './open.ts';
import type { OpenOptions } from './open.ts';
import { planTable } from './plans.ts';
import type { PlanTable } from './plans.ts';
import { settingTable } from './settings.ts';
import type { SettingTable } from './settings.ts';
import { weatherTable } from './weather.ts';
import type { WeatherTable } from './weather.ts';

export interface Store {
  readonly plans: PlanTable;
  readonly weather: WeatherTable;
  readonly settings: SettingTable;
  readonly notice: string | null;
  /** Runs `work` as one transaction: all of it is kept or none. */
  readonly together: <T>(work: () => T) => T;
  readonly close: () => void;
}

export function createStore(options: OpenOptions): Store {
  const { database, notice } = openStore(options);
  return {
    plans: planTable(database, options.now),
    weather: weatherTable(database),
    settings: settingTable(database),
    notice,
    together: (work) => database.transaction(work)(),
    close: () => database.close(),
  };
}
