import { createHash } from 'node:crypto';
import { longestWeatherBytes } from '../../contract.ts';
import type { CheckedInput, WeatherFile, WeatherRecord } from '../../contract.ts';
import { Refusal } from '../refusal.ts';
import type { WeatherTable } from '../store/weather.ts';
import { readWeatherFile } from '../weather-reading.ts';

/** Calls about weather files. A file is read whole before any of it is stored. */
export function weatherCalls(weather: WeatherTable, now: () => number) {
  return {
    importWeather({ name, base64 }: CheckedInput<'importWeather'>): WeatherRecord {
      const bytes = Buffer.from(base64, 'base64');
      if (bytes.length > longestWeatherBytes) {
        throw new Refusal('too-large', `${name} is larger than ${longestWeatherBytes / 1e6} million bytes.`);
      }
      const reading = readWeatherFile(name, bytes);
      if (!reading.ok) throw new Refusal('refused', reading.message, reading.problems);
      const id = `file-${createHash('sha256').update(bytes).digest('hex').slice(0, 24)}`;
      weather.put({ id, fileName: name, importedMs: now(), ...reading.summary }, bytes);
      const stored = weather.read(id);
      if (stored === null) throw new Error(`expected weather ${id} in the store, got nothing`);
      return stored.record;
    },
    listWeather: () => weather.list(),
    readWeather({ id }: CheckedInput<'readWeather'>): WeatherFile {
      const stored = weather.read(id);
      if (stored === null) throw new Refusal('not-found', 'This weather file is not here. Import it again.');
      return { record: stored.record, base64: stored.bytes.toString('base64') };
    },
  };
}
