import { clearSkyEmissivity, skyEmissivity, skyLongWave } from './sky.ts';

/** The columns long-wave is computed from and written to. */
export interface LongWaveColumns {
  readonly skyLongWave: Float64Array;
  readonly dryBulb: Float64Array;
  readonly dewPoint: Float64Array;
  readonly pressure: Float64Array;
  readonly cloudCover: Float64Array;
}

/**
 * Fills missing (NaN) hours of long-wave by Berdahl & Martin 1984 with the cloud cover, in place. Returns where each
 * hour's value comes from: 0 what was there, 1 computed.
 */
export function fillLongWave(
  columns: LongWaveColumns,
  station: { readonly longitude: number },
  startMs: number,
  notes: string[],
): Uint8Array {
  const { skyLongWave: longWave, dryBulb, dewPoint, pressure, cloudCover } = columns;
  const from = new Uint8Array(longWave.length);
  let computed = 0;
  for (let i = 0; i < longWave.length; i++) {
    if (!Number.isNaN(longWave[i])) continue;
    const solarHour = (((startMs / 3_600_000 + i + 0.5 + station.longitude / 15) % 24) + 24) % 24;
    const clear = clearSkyEmissivity(dewPoint[i], solarHour, pressure[i]);
    longWave[i] = skyLongWave(dryBulb[i], skyEmissivity(clear, cloudCover[i]));
    from[i] = 1;
    computed++;
  }
  if (computed > 0) {
    notes.push(
      `${computed} hours of sky long-wave computed from dew point and cloud (Berdahl & Martin 1984).`,
    );
  }
  return from;
}
