/**
 * The store's schema as the ordered list of its changes. A migration's number is its place in the list
 * (the first is 1) and the value of `user_version` after it. A published migration is never edited.
 * Units stand in the column names: `_ms` is epoch ms UTC, `_c` °C, `_m` metres, `_deg` degrees.
 */
export interface Migration {
  readonly name: string;
  readonly sql: string;
}

const plansAndVersions: Migration = {
  name: 'plans, their versions, weather files and settings',
  sql: `
    CREATE TABLE plan (
      id TEXT PRIMARY KEY NOT NULL,
      name TEXT NOT NULL,
      site_name TEXT NOT NULL,
      place_count INTEGER NOT NULL,
      -- number of the version that is shown; undo and redo move it
      shown_version INTEGER NOT NULL,
      revision INTEGER NOT NULL,
      changed_ms INTEGER NOT NULL,
      -- when it was put away; null while it is in the list
      archived_ms INTEGER
    ) STRICT;

    CREATE TABLE plan_version (
      plan_id TEXT NOT NULL REFERENCES plan (id) ON DELETE CASCADE,
      number INTEGER NOT NULL,
      words TEXT NOT NULL,
      merge_key TEXT,
      saved_ms INTEGER NOT NULL,
      schema_version INTEGER NOT NULL,
      document TEXT NOT NULL CHECK (json_valid(document)),
      PRIMARY KEY (plan_id, number)
    ) STRICT;

    CREATE TABLE weather_file (
      id TEXT PRIMARY KEY NOT NULL,
      name TEXT NOT NULL,
      file_name TEXT NOT NULL,
      format TEXT NOT NULL CHECK (format IN ('epw', 'tmy3')),
      latitude_deg REAL NOT NULL,
      longitude_deg REAL NOT NULL,
      elevation_m REAL NOT NULL,
      mean_temperature_c REAL NOT NULL,
      global_radiation_kwh_m2 REAL NOT NULL,
      notes TEXT NOT NULL CHECK (json_valid(notes)),
      imported_ms INTEGER NOT NULL,
      bytes BLOB NOT NULL
    ) STRICT;

    CREATE TABLE setting (
      name TEXT PRIMARY KEY NOT NULL,
      value TEXT NOT NULL CHECK (json_valid(value))
    ) STRICT;
  `,
};

export const migrations: readonly Migration[] = [plansAndVersions];
