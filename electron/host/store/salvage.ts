import SqliteDatabase from 'better-sqlite3';
import type { Database } from 'better-sqlite3';

/** Parents before children, so that foreign keys hold while rows arrive. */
const tables = ['plan', 'plan_version', 'weather_file', 'setting'] as const;

export interface Salvage {
  /** Plans with the version that was shown, brought into the new store. */
  readonly plans: number;
  /** False where reading stopped at a damaged page. */
  readonly complete: boolean;
}

/** Copies into a fresh store every row that can still be read from the damaged file. */
export function salvage(database: Database, damagedFile: string): Salvage {
  let damaged: Database;
  try {
    damaged = new SqliteDatabase(damagedFile, { readonly: true, fileMustExist: true });
  } catch (error) {
    if (error instanceof SqliteDatabase.SqliteError) return { plans: 0, complete: false };
    throw error;
  }
  try {
    const complete = tables.map((table) => copyRows(database, damaged, table)).every(Boolean);
    return { plans: keepWholePlans(database), complete };
  } finally {
    damaged.close();
  }
}

/** Row by row until the end or the first page that cannot be read; a row the new schema refuses is left behind. */
function copyRows(database: Database, damaged: Database, table: (typeof tables)[number]): boolean {
  let complete = true;
  try {
    for (const row of damaged.prepare<[], Record<string, unknown>>(`SELECT * FROM ${table}`).iterate()) {
      const columns = Object.keys(row);
      const insert = database.prepare(
        `INSERT INTO ${table} (${columns.join(', ')}) VALUES (${columns.map(() => '?').join(', ')})`,
      );
      try {
        insert.run(Object.values(row));
      } catch (error) {
        if (!(error instanceof SqliteDatabase.SqliteError)) throw error;
        complete = false;
      }
    }
  } catch (error) {
    if (!(error instanceof SqliteDatabase.SqliteError)) throw error;
    complete = false;
  }
  return complete;
}

/** Shows the newest readable version where the shown one was lost, and drops plans of which no version came over. */
function keepWholePlans(database: Database): number {
  return database.transaction(() => {
    database.exec(`
      UPDATE plan SET shown_version = (SELECT max(number) FROM plan_version WHERE plan_id = plan.id)
        WHERE NOT EXISTS (SELECT 1 FROM plan_version WHERE plan_id = plan.id AND number = shown_version)
          AND EXISTS (SELECT 1 FROM plan_version WHERE plan_id = plan.id);
      DELETE FROM plan WHERE NOT EXISTS (SELECT 1 FROM plan_version WHERE plan_id = plan.id);
    `);
    return database.prepare('SELECT count(*) FROM plan').pluck().get() as number;
  })();
}
