import type { Host, Preferences } from '../../electron/contract.ts';
import type { UnitPreferences } from './units.ts';

/** Regions whose weather is told in °F (CLDR supplemental data, `temperature` preference). */
const fahrenheitRegions = new Set([
  'US',
  'BS',
  'BZ',
  'KY',
  'PW',
  'PR',
  'GU',
  'VI',
  'AS',
  'MP',
  'FM',
  'MH',
  'LR',
]);
/** Regions that measure rooms in feet (CLDR supplemental data, measurement systems `US`). */
const feetRegions = new Set(['US', 'LR', 'MM', 'PR', 'GU', 'VI', 'AS', 'MP']);

/** The region of the system's language; '' where the system names none that is known (`C`, `en-US@posix`). */
export function regionOf(language: string): string {
  try {
    return new Intl.Locale(language).maximize().region ?? '';
  } catch (error) {
    if (error instanceof RangeError) return '';
    throw error;
  }
}

const systemRegion = () => regionOf(navigator.language);

/** What the user prefers, with the system's habits where nothing was chosen. */
export class PreferencesState {
  #stored = $state.raw<Preferences>({
    theme: 'system',
    temperature: 'system',
    length: 'system',
    firstDay: 'system',
    motion: 'system',
    currency: null,
  });
  #systemDark = $state(matchMedia('(prefers-color-scheme: dark)').matches);
  #host: Host;

  constructor(host: Host) {
    this.#host = host;
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', (event) => {
      this.#systemDark = event.matches;
    });
  }

  load(stored: Preferences) {
    this.#stored = stored;
  }

  async set(change: Partial<Preferences>) {
    this.#stored = { ...this.#stored, ...change };
    this.#stored = await this.#host.writePreferences(change);
  }

  get stored(): Preferences {
    return this.#stored;
  }

  readonly theme: 'light' | 'dark' = $derived.by(() => {
    if (this.#stored.theme !== 'system') return this.#stored.theme;
    return this.#systemDark ? 'dark' : 'light';
  });
  readonly temperature: 'C' | 'F' = $derived.by(() => {
    if (this.#stored.temperature !== 'system') return this.#stored.temperature;
    return fahrenheitRegions.has(systemRegion()) ? 'F' : 'C';
  });
  readonly length: 'm' | 'ft' = $derived.by(() => {
    if (this.#stored.length !== 'system') return this.#stored.length;
    return feetRegions.has(systemRegion()) ? 'ft' : 'm';
  });
  readonly units: UnitPreferences = $derived({ temperature: this.temperature, length: this.length });
  readonly reducedMotion: boolean = $derived(
    this.#stored.motion === 'reduced' || matchMedia('(prefers-reduced-motion: reduce)').matches,
  );
}
