import * as v from 'valibot';
import type { NightInput } from '../../../core/index.ts';
import { firstPreferences, nightInputSchema, preferencesSchema } from '../../contract.ts';
import type { CheckedInput, Preferences } from '../../contract.ts';
import type { SettingTable } from '../store/settings.ts';

/** Preferences and the last night asked about. What an older program stored and this one does not know is left out. */
export function rememberedCalls(settings: SettingTable) {
  function readPreferences(): Preferences {
    const reading = v.safeParse(v.partial(preferencesSchema), settings.read('preferences') ?? {});
    return { ...firstPreferences, ...(reading.success ? reading.output : {}) };
  }
  return {
    readPreferences,
    writePreferences(change: CheckedInput<'writePreferences'>): Preferences {
      const next = { ...readPreferences(), ...change };
      settings.write('preferences', next);
      return next;
    },
    rememberNight({ night }: CheckedInput<'rememberNight'>): null {
      settings.write('last-night', night);
      return null;
    },
    lastNight(): NightInput | null {
      const reading = v.safeParse(nightInputSchema, settings.read('last-night'));
      return reading.success ? reading.output : null;
    },
  };
}
