import { openStore } from './open.ts';
import type { OpenOptions, OpenStore } from './open.ts';
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
  return storeOn(openStore(options), options.now);
}

export function storeOn({ database, notice }: OpenStore, now: () => number): Store {
  return {
    plans: planTable(database, now),
    weather: weatherTable(database),
    settings: settingTable(database),
    notice,
    together: (work) => database.transaction(work).immediate(),
    close: () => database.close(),
  };
}
