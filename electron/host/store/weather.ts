import type { Database } from 'better-sqlite3';
import type { WeatherRecord } from '../../contract.ts';

type WeatherRow = Omit<WeatherRecord, 'notes'> & { readonly notes: string };

const columns = `id, name, file_name AS fileName, format, latitude_deg AS latitude, longitude_deg AS longitude,
  elevation_m AS elevation, mean_temperature_c AS meanTemperature, global_radiation_kwh_m2 AS globalRadiation,
  notes, imported_ms AS importedMs`;

const recordOf = (row: WeatherRow): WeatherRecord => ({ ...row, notes: JSON.parse(row.notes) as string[] });

/** Imported weather files, kept byte for byte. */
export function weatherTable(database: Database) {
  const all = database.prepare<[], WeatherRow>(`SELECT ${columns} FROM weather_file ORDER BY name, id`);
  const one = database.prepare<[string], WeatherRow>(`SELECT ${columns} FROM weather_file WHERE id = ?`);
  const bytes = database.prepare<[string], Buffer>('SELECT bytes FROM weather_file WHERE id = ?').pluck();
  const put = database.prepare(
    `INSERT INTO weather_file (id, name, file_name, format, latitude_deg, longitude_deg, elevation_m,
       mean_temperature_c, global_radiation_kwh_m2, notes, imported_ms, bytes)
     VALUES (@id, @name, @fileName, @format, @latitude, @longitude, @elevation,
       @meanTemperature, @globalRadiation, @notes, @importedMs, @bytes)
     ON CONFLICT (id) DO NOTHING`,
  );
  return {
    list: (): WeatherRecord[] => all.all().map(recordOf),
    read(id: string): { record: WeatherRecord; bytes: Buffer } | null {
      const row = one.get(id);
      const content = bytes.get(id) as Buffer | undefined;
      return row && content ? { record: recordOf(row), bytes: content } : null;
    },
    /** The same file imported twice is kept once. */
    put(record: WeatherRecord, content: Uint8Array): void {
      put.run({ ...record, notes: JSON.stringify(record.notes), bytes: Buffer.from(content) });
    },
  };
}

export type WeatherTable = ReturnType<typeof weatherTable>;
