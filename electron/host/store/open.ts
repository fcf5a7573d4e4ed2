import { existsSync, mkdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import type { Database } from 'better-sqlite3';
import { datedName } from './dated-name.ts';
import { StoreFailure } from './failure.ts';
import { migrate, refuseFuture } from './migrate.ts';
import { migrations as allMigrations } from './migrations.ts';
import type { Migration } from './migrations.ts';
import { salvage } from './salvage.ts';

export const storeFileName = 'winterbench.sqlite';

export interface OpenStore {
  readonly database: Database;
  /** What the user must be told about the opening; null where all was well. */
  readonly notice: string | null;
}

export interface OpenOptions {
  readonly folder: string;
  readonly now: () => number;
  readonly migrations?: readonly Migration[];
}

/** Opens the store in `folder`, making, migrating or recovering it as needed. */
export function openStore(options: OpenOptions): OpenStore {
  makeFolder(options.folder);
  const file = join(options.folder, storeFileName);
  try {
    return openFile(file, options);
  } catch (error) {
    if (!(error instanceof SqliteDatabase.SqliteError)) throw error;
    throw new StoreFailure(`Winterbench cannot open its data file ${file}: ${error.message}.`);
  }
}

function openFile(file: string, { folder, now, migrations = allMigrations }: OpenOptions): OpenStore {
  const backups = join(folder, 'backups');
  if (!existsSync(file)) return { database: fresh(file, migrations, backups, now), notice: null };

  const found = openSound(file, migrations);
  if (found.database !== null) {
    migrate(found.database, migrations, backups, now);
    return { database: found.database, notice: null };
  }
  const damaged = setAside(folder, now());
  const database = fresh(file, migrations, backups, now);
  const saved = salvage(database, damaged);
  return { database, notice: recoveryNotice(found.reason, damaged, saved) };
}

function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw new StoreFailure(`Winterbench cannot keep its data in ${folder}: ${(error as Error).message}`);
  }
}

function fresh(file: string, migrations: readonly Migration[], backups: string, now: () => number): Database {
  const database = new SqliteDatabase(file, { timeout: 5000 });
  prepare(database);
  migrate(database, migrations, backups, now);
  return database;
}

function prepare(database: Database): void {
  database.pragma('journal_mode = WAL');
  database.pragma('foreign_keys = ON');
}

/** The database where it is whole, else why it is not. A locked or unreadable file throws: it is not damage. */
function openSound(
  file: string,
  migrations: readonly Migration[],
): { database: Database; reason: '' } | { database: null; reason: string } {
  const database = new SqliteDatabase(file, { timeout: 5000 });
  try {
    refuseFuture(database, migrations);
    prepare(database);
    const lines = database.pragma('integrity_check(5)') as { integrity_check: string }[];
    const report = lines.map((line) => line.integrity_check).join('; ');
    if (report === 'ok') return { database, reason: '' };
    database.close();
    return { database: null, reason: report };
  } catch (error) {
    database.close();
    const code = error instanceof SqliteDatabase.SqliteError ? error.code : '';
    if (!code.startsWith('SQLITE_CORRUPT') && code !== 'SQLITE_NOTADB') throw error;
    return { database: null, reason: (error as Error).message };
  }
}

/** Renames the damaged file and its WAL; nothing is deleted. */
function setAside(folder: string, nowMs: number): string {
  const target = join(folder, datedName('damaged', nowMs));
  for (const suffix of ['', '-wal', '-shm']) {
    const from = join(folder, storeFileName + suffix);
    if (existsSync(from)) renameSync(from, target + suffix);
  }
  return target;
}

function recoveryNotice(
  reason: string,
  damaged: string,
  saved: { plans: number; complete: boolean },
): string {
  const plans = saved.plans === 1 ? 'One plan' : `${saved.plans} plans`;
  const outcome =
    saved.plans === 0
      ? 'No plan could be read from it.'
      : `${plans} could be read from it and ${saved.plans === 1 ? 'is' : 'are'} here${saved.complete ? '' : ', perhaps not all'}.`;
  return `The file that keeps your plans was damaged (${reason}). It was set aside as ${damaged} and not deleted. ${outcome}`;
}
