import { readEpwBytes, readTmy3 } from '../../core/index.ts';
import type { Problem, WeatherYear } from '../../core/index.ts';
import type { WeatherRecord } from '../contract.ts';

export type WeatherSummary = Omit<WeatherRecord, 'id' | 'fileName' | 'importedMs'>;

export type FileReading =
  | { readonly ok: true; readonly weather: WeatherYear; readonly summary: WeatherSummary }
  | { readonly ok: false; readonly message: string; readonly problems: readonly Problem[] };

/** At most this many problems are listed; a file that is wrong everywhere is not worth more. */
const mostProblems = 40;

/** Reads an EPW or TMY3 file whole; where it is refused, the reasons carry their line. */
export function readWeatherFile(name: string, bytes: Uint8Array): FileReading {
  const format = formatOf(bytes);
  if (format === null) {
    const problems = [
      { path: 'line 1', message: 'expected an EPW file, which begins with LOCATION, or a TMY3 file' },
    ];
    return { ok: false, message: `${name} is not a weather file that Winterbench reads.`, problems };
  }
  const reading = format === 'epw' ? readEpwBytes(bytes) : readTmy3(new TextDecoder('latin1').decode(bytes));
  if (reading.ok) return { ok: true, weather: reading.weather, summary: summaryOf(reading.weather, format) };
  const shown = reading.problems.slice(0, mostProblems);
  const problems = shown.map(({ line, message }) => ({ path: line > 0 ? `line ${line}` : '', message }));
  const left = reading.problems.length - shown.length;
  if (left > 0) problems.push({ path: '', message: `and ${left} more` });
  return { ok: false, message: `The weather file ${name} cannot be used.`, problems };
}

/** By the first lines: an EPW begins with LOCATION, a TMY3 file has its column names in the second line. */
function formatOf(bytes: Uint8Array): WeatherRecord['format'] | null {
  const [first, second = ''] = new TextDecoder('latin1').decode(bytes.subarray(0, 4000)).split(/\r\n|\r|\n/);
  if (/^(\u00EF\u00BB\u00BF)?\s*LOCATION\s*,/i.test(first)) return 'epw';
  return /^"?Date \(MM\/DD\/YYYY\)/i.test(second) ? 'tmy3' : null;
}

/** What a weather year is, without its hours. */
export function weatherSummary(weather: WeatherYear) {
  const { name, origin, latitude, longitude, elevation, notes } = weather;
  const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
  return {
    name,
    origin,
    latitude,
    longitude,
    elevation,
    /** Mean of the year [°C]. */
    meanTemperature: sum(weather.dryBulb) / weather.hours,
    /** Sum of the year on the horizontal [kWh m⁻²]; hourly means in W m⁻² are Wh m⁻² an hour. */
    globalRadiation: sum(weather.globalHorizontal) / 1000,
    notes,
  };
}

function summaryOf(weather: WeatherYear, format: WeatherRecord['format']): WeatherSummary {
  const { origin: _, ...summary } = weatherSummary(weather);
  return { ...summary, format };
}
