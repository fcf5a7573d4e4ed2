import type { Database } from 'better-sqlite3';

export type SettingName = 'preferences' | 'open-plan' | 'last-night';

/** Small things remembered, a JSON value a name. Readers check what comes out. */
export function settingTable(database: Database) {
  const get = database.prepare<[string], string>('SELECT value FROM setting WHERE name = ?').pluck();
  const put = database.prepare(
    'INSERT INTO setting (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
  );
  return {
    read(name: SettingName): unknown {
      const text = get.get(name) as string | undefined;
      return text === undefined ? null : JSON.parse(text);
    },
    write(name: SettingName, value: unknown): void {
      put.run(name, JSON.stringify(value));
    },
  };
}

export type SettingTable = ReturnType<typeof settingTable>;
