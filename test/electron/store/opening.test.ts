import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { planSchemaVersion } from '../../../core/index.ts';
import { migrations } from '../../../electron/host/store/migrations.ts';
import type { Migration } from '../../../electron/host/store/migrations.ts';
import { openStore, storeFileName } from '../../../electron/host/store/open.ts';
import { createStore } from '../../../electron/host/store/store.ts';
import { useFolder } from './folder.ts';

const newFolder = useFolder();
const now = () => Date.UTC(2026, 0, 15, 21, 30);
const text = (name: string) => ({
  document: `{"name":"${name}"}`,
  schemaVersion: planSchemaVersion,
  name,
  siteName: 'A',
  places: 1,
});
const second: Migration = { name: 'a note', sql: 'CREATE TABLE note (words TEXT NOT NULL) STRICT;' };

/** A store with `count` plans of some length in it, closed again. */
function filled(count: number): string {
  const folder = newFolder();
  const store = createStore({ folder, now });
  for (let i = 0; i < count; i++) {
    const document = JSON.stringify({ name: `Plan ${i}`, words: 'x'.repeat(5000) });
    store.plans.create(`plan-${i}`, { ...text(`Plan ${i}`), document }, 'New');
  }
  store.close();
  return folder;
}

describe('opening a store', () => {
  it('makes a new one with every migration run, WAL and foreign keys on, and nothing to report', () => {
    const { database, notice } = openStore({ folder: join(newFolder(), 'deep', 'er'), now });
    expect(notice).toBeNull();
    expect(database.pragma('user_version', { simple: true })).toBe(migrations.length);
    expect(database.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(database.pragma('foreign_keys', { simple: true })).toBe(1);
    const tables = database.pragma('table_list') as { name: string; strict: number; schema: string }[];
    const own = tables.filter((table) => table.schema === 'main' && !table.name.startsWith('sqlite_'));
    expect(own.map((table) => table.name).sort()).toEqual([
      'plan',
      'plan_version',
      'setting',
      'weather_file',
    ]);
    expect(own.every((table) => table.strict === 1)).toBe(true);
    database.close();
  });

  it('migrates an older one after a backup that holds the old version and the rows', () => {
    const folder = filled(2);
    const { database } = openStore({ folder, now, migrations: [...migrations, second] });
    expect(database.pragma('user_version', { simple: true })).toBe(migrations.length + 1);
    expect(database.prepare('SELECT count(*) FROM note').pluck().get()).toBe(0);
    database.close();
    const backups = readdirSync(join(folder, 'backups'));
    expect(backups).toEqual(['winterbench-version-1-2026-01-15T21-30-00-000Z.sqlite']);
    const backup = new SqliteDatabase(join(folder, 'backups', backups[0]), { readonly: true });
    expect(backup.pragma('user_version', { simple: true })).toBe(1);
    expect(backup.prepare('SELECT count(*) FROM plan').pluck().get()).toBe(2);
    backup.close();
  });

  it('leaves version and rows as they were where a migration fails half way', () => {
    const folder = filled(1);
    const broken: Migration = {
      name: 'broken',
      sql: 'CREATE TABLE half (a TEXT) STRICT; DROP TABLE missing;',
    };
    expect(() => openStore({ folder, now, migrations: [...migrations, broken] })).toThrow(/missing/);
    const { database } = openStore({ folder, now });
    expect(database.pragma('user_version', { simple: true })).toBe(migrations.length);
    expect(database.prepare("SELECT count(*) FROM sqlite_schema WHERE name = 'half'").pluck().get()).toBe(0);
    expect(database.prepare('SELECT count(*) FROM plan').pluck().get()).toBe(1);
    database.close();
  });

  it('refuses a store written by a newer program and does not touch it', () => {
    const folder = filled(1);
    const file = join(folder, storeFileName);
    const database = new SqliteDatabase(file);
    database.pragma('user_version = 99');
    database.close();
    const before = readFileSync(file);
    expect(() => openStore({ folder, now })).toThrow(
      /newer Winterbench \(store version 99; this one knows 1\)/,
    );
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('sets a file that is no database aside under a dated name, byte for byte, and starts afresh', () => {
    const folder = newFolder();
    const rubbish = 'not a database '.repeat(1000);
    writeFileSync(join(folder, storeFileName), rubbish);
    const store = createStore({ folder, now });
    const aside = join(folder, 'winterbench-damaged-2026-01-15T21-30-00-000Z.sqlite');
    expect(readFileSync(aside, 'utf8')).toBe(rubbish);
    expect(store.notice).toContain('was damaged');
    expect(store.notice).toContain(aside);
    expect(store.notice).toContain('No plan could be read from it.');
    expect(store.plans.list()).toEqual([]);
    store.close();
    const again = createStore({ folder, now });
    expect(again.notice).toBeNull();
    again.close();
  });

  it('brings over what can still be read from a damaged file', () => {
    const folder = filled(40);
    const file = join(folder, storeFileName);
    const bytes = readFileSync(file);
    // Pages past the middle hold versions: overwrite one run of them.
    bytes.fill(0x5a, Math.floor(bytes.length * 0.6), Math.floor(bytes.length * 0.65));
    writeFileSync(file, bytes);
    const store = createStore({ folder, now });
    const saved = store.plans.list();
    expect(store.notice).toMatch(/\d+ plans could be read from it and are here, perhaps not all\./);
    expect(saved.length).toBeGreaterThan(5);
    expect(saved.length).toBeLessThan(40);
    for (const plan of saved) expect(JSON.parse(store.plans.read(plan.id)!.document).name).toBe(plan.name);
    store.close();
    expect(existsSync(join(folder, 'winterbench-damaged-2026-01-15T21-30-00-000Z.sqlite'))).toBe(true);
  });

  it('says in words why where the data folder cannot be made', () => {
    const folder = newFolder();
    writeFileSync(join(folder, 'file'), '');
    expect(() => openStore({ folder: join(folder, 'file', 'data'), now })).toThrow(
      /cannot keep its data in .*file/,
    );
  });
});
