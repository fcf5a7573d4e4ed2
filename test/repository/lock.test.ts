import { describe, expect, test } from 'vitest';
import { readJson } from './project.ts';

const manifest = readJson('package.json');
const lock = readJson('package-lock.json');
const entries: [string, Record<string, unknown>][] = Object.entries(lock.packages);

describe('install scripts', () => {
  test('only node may run one', () => {
    expect(manifest.allowScripts).toEqual({ node: true, 'better-sqlite3': false, electron: false });
  });

  test('better-sqlite3 is not compiled at npm ci (npm drops the field: `npm run fix` puts it back)', () => {
    expect(lock.packages['node_modules/better-sqlite3'].gypfile).toBe(false);
  });

  test('no other package of the lock file has one', () => {
    const scripted = entries.filter(([, entry]) => entry.hasInstallScript).map(([path]) => path);
    expect(scripted).toEqual(['node_modules/node']);
  });
});

describe('lock file', () => {
  test('names no host but the public registry', () => {
    const hosts = entries
      .map(([, entry]) => entry.resolved)
      .filter((resolved) => typeof resolved === 'string');
    expect(hosts.filter((resolved) => !resolved.startsWith('https://registry.npmjs.org/'))).toEqual([]);
  });

  test('carries an integrity hash for every package', () => {
    const bare = entries.filter(([path, entry]) => path !== '' && !entry.integrity && !entry.link);
    expect(bare.map(([path]) => path)).toEqual([]);
  });

  test('agrees with package.json', () => {
    const top = lock.packages[''];
    expect(top.dependencies).toEqual(manifest.dependencies);
    expect(top.devDependencies).toEqual(manifest.devDependencies);
  });
});

test.each([
  ['electron', 45],
  ['svelte', 5],
  ['electron-vite', 6],
  ['vite', 8],
  ['d3', 7],
  ['better-sqlite3', 13],
  ['vitest', 5],
  ['typescript', 6],
  ['node', 24],
])('%s stays at major version %i', (name, major) => {
  expect(Number.parseInt(lock.packages[`node_modules/${name}`].version)).toBe(major);
});
