import { solarNoon } from '../sun/index.ts';
import type { FileHeader } from './sun-hours.ts';

/** Gap between the clock in the header and the sun in the data that is taken as a wrong header [h]. */
const wrongClock = 0.7;

/**
 * Some files give their hours in UTC and name another zone in the header. The centre of the year's global radiation
 * must lie near the solar noon of its longitude (morning or afternoon cloud moves it by a quarter of an hour); where
 * it lies 0.7 h or more away the offset is mended by whole hours, with a note.
 */
export function sunClock(
  global: Float64Array,
  header: FileHeader,
  notes: string[],
): { readonly utcOffsetHours: number } {
  let sum = 0;
  let east = 0;
  let north = 0;
  for (let i = 0; i < global.length; i++) {
    if (!(global[i] > 0)) continue;
    const angle = (2 * Math.PI * ((i % 24) + 0.5 + header.radiationShiftMinutes / 60)) / 24;
    sum += global[i];
    east += global[i] * Math.cos(angle);
    north += global[i] * Math.sin(angle);
  }
  if (!(sum > 0)) return { utcOffsetHours: header.utcOffsetHours };
  const seen = ((Math.atan2(north, east) / (2 * Math.PI)) * 24 + 24) % 24;
  const expected = meanNoon(header.longitude, header.utcOffsetHours);
  const gap = ((seen - expected + 36) % 24) - 12;
  if (!(Math.abs(gap) >= wrongClock)) return { utcOffsetHours: header.utcOffsetHours };
  const hours = Math.round(gap);
  const mended = header.utcOffsetHours + hours;
  notes.push(
    `The sun in this file runs ${Math.abs(hours)} h ${hours < 0 ? 'ahead of' : 'behind'} its header's clock; ` +
      `read as UTC${mended < 0 ? '−' : '+'}${Math.abs(mended)} instead of UTC${header.utcOffsetHours < 0 ? '−' : '+'}${Math.abs(header.utcOffsetHours)}.`,
  );
  return { utcOffsetHours: mended };
}

/** Clock time of solar noon, mean over the four quarters of 2025 [h]. */
function meanNoon(longitude: number, utcOffsetHours: number): number {
  let sum = 0;
  for (const day of [15, 105, 196, 288]) {
    const near = Date.UTC(2025, 0, 1) + (day + 0.5 - longitude / 360) * 86_400_000;
    const noon = solarNoon(near, longitude);
    const midday = Date.UTC(2025, 0, 1) + (day + 0.5) * 86_400_000 - utcOffsetHours * 3_600_000;
    sum += 12 + (noon - midday) / 3_600_000;
  }
  return sum / 4;
}
