import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Database } from 'better-sqlite3';
import { datedName } from './dated-name.ts';
import { StoreFailure } from './failure.ts';
import type { Migration } from './migrations.ts';

export function schemaVersion(database: Database): number {
  return database.pragma('user_version', { simple: true }) as number;
}

/** Throws where a newer program wrote the database; nothing has been changed in it by then. */
export function refuseFuture(database: Database, migrations: readonly Migration[]): void {
  const version = schemaVersion(database);
  if (version <= migrations.length) return;
  throw new StoreFailure(
    `Your plans were last opened by a newer Winterbench (store version ${version}; this one knows ${migrations.length}). ` +
      `Install the newer program again. Nothing was changed in ${database.name}.`,
  );
}

/**
 * Runs the migrations that are missing, each in one transaction that also sets `user_version`, and each
 * after a backup where there is something to lose.
 */
export function migrate(
  database: Database,
  migrations: readonly Migration[],
  backupFolder: string,
  now: () => number,
) {
  for (let version = schemaVersion(database); version < migrations.length; version++) {
    if (version > 0) backUp(database, backupFolder, version, now());
    database
      .transaction(() => {
        // Another window may have migrated while this one waited for the lock.
        if (schemaVersion(database) !== version) return;
        database.exec(migrations[version].sql);
        database.pragma(`user_version = ${version + 1}`);
      })
      .immediate();
  }
}

/** `VACUUM INTO` gives a whole and consistent copy; copying a file under WAL would not. */
function backUp(database: Database, folder: string, version: number, nowMs: number): void {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, datedName(`version-${version}`, nowMs));
  if (existsSync(file))
    throw new StoreFailure(`The backup file ${file} is already there; the store was not changed.`);
  database.prepare('VACUUM INTO ?').run(file);
}
