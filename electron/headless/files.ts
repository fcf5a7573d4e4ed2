import { weatherFromPlan } from '../../core/index.ts';
import type { Plan, WeatherYear } from '../../core/index.ts';
import { longestPlanText, longestWeatherBytes } from '../contract.ts';
import { planFromText } from '../host/plan-text.ts';
import { Refusal } from '../host/refusal.ts';
import { readWeatherFile } from '../host/weather-reading.ts';
import { RefusedInput } from './outcome.ts';
import type { World } from './world.ts';

/** The file's bytes; a file that is not there or cannot be read is refused by name. */
export function bytesOf(world: World, path: string, most: number): Uint8Array {
  let bytes: Uint8Array;
  try {
    bytes = world.readFile(path);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    throw new RefusedInput(
      `${path} cannot be read: ${code === 'ENOENT' ? 'there is no such file' : message}`,
    );
  }
  if (bytes.length > most) {
    throw new RefusedInput(
      `${path} has ${(bytes.length / 1e6).toFixed(1)} million bytes; at most ${most / 1e6} million are read`,
    );
  }
  return bytes;
}

export function planFile(world: World, path: string): Plan {
  const text = new TextDecoder().decode(bytesOf(world, path, longestPlanText));
  try {
    return planFromText(text, path);
  } catch (error) {
    if (error instanceof Refusal) throw new RefusedInput(error.message, error.problems);
    throw error;
  }
}

/** The weather named on the command line, else the plan's own climate. */
export function weatherFor(world: World, plan: Plan, file: string | null): WeatherYear {
  if (file !== null) {
    const reading = readWeatherFile(file, bytesOf(world, file, longestWeatherBytes));
    if (!reading.ok) throw new RefusedInput(reading.message, reading.problems);
    for (const note of reading.summary.notes) world.note(`${file}: ${note}`);
    return reading.weather;
  }
  const weather = weatherFromPlan(plan);
  if (weather !== null) return weather;
  const name = plan.climate.kind === 'file' ? ` “${plan.climate.name}”` : '';
  const message = `this plan uses the weather file${name}: name it with --weather FILE`;
  throw new RefusedInput('The plan carries no weather of its own.', [{ path: 'climate', message }]);
}
