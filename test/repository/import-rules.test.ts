import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { root } from './project.ts';

/** A small project that breaks every import rule once: file, what it imports, the rule it breaks. */
const trespasses: [string, string, string][] = [
  ['core/sun/a.ts', "import '../weather/fine.ts';", 'core-order-sun'],
  ['core/plan/a.ts', "import '../sun/fine.ts';", 'core-order-plan'],
  [
    'core/advice/a.ts',
    "import type { fine } from '../explain/fine.ts'; export type A = fine;",
    'core-order-advice',
  ],
  ['core/extra/a.ts', "import '../sun/fine.ts';", 'core-known-rooms'],
  ['core/heat/a.ts', "import '../index.ts';", 'core-index-is-last'],
  ['core/heat/b.ts', "import 'node:fs';", 'core-is-pure'],
  ['core/heat/c.ts', "import '../../electron/contract.ts';", 'core-is-pure'],
  ['core/heat/d.ts', "import 'hono';", 'core-is-pure'],
  ['core/heat/e.ts', "import 'valibot';", 'valibot-in-plan-only'],
  ['renderer/a.ts', "import '../core/sun/fine.ts';", 'engine-through-its-index'],
  [
    'renderer/B.svelte',
    '<script lang="ts">import "../core/sun/fine.ts";</script>',
    'engine-through-its-index',
  ],
  ['electron/host/a.ts', "import '../../core/sun/fine.ts';", 'engine-through-its-index'],
  ['renderer/c.ts', "import '../electron/host/fine.ts';", 'renderer-reaches-the-host-by-contract'],
  [
    'renderer/d.ts',
    "import { fine } from '../electron/contract.ts'; fine;",
    'renderer-takes-types-from-the-contract',
  ],
  ['renderer/e.ts', "import 'node:fs';", 'renderer-has-no-node'],
  ['electron/contract.ts', "import './host/fine.ts'; export const fine = 1;", 'contract-stands-alone'],
  ['electron/host/b.ts', "import '../local/fine.ts';", 'host-knows-no-shell'],
  ['electron/local/a.ts', "import '../headless/fine.ts';", 'shells-stay-apart'],
  ['electron/local/b.ts', "import 'electron';", 'electron-in-desktop-only'],
  ['electron/local/c.ts', "import 'better-sqlite3';", 'better-sqlite3-in-store-only'],
  ['electron/local/d.ts', "import '../../test/fine.ts';", 'tests-are-imported-by-tests'],
  ['core/light/a.ts', "import './b.ts';", 'no-circles'],
  ['core/light/c.ts', "import './missing.ts';", 'resolvable'],
];

/** What the rules must let pass. */
const honest: [string, string][] = [
  ['core/index.ts', "export * from './explain/fine.ts';"],
  ['core/plan/schema.ts', "import 'valibot';"],
  [
    'core/explain/all.ts',
    "import '../plan/fine.ts'; import '../advice/fine.ts'; import 'temporal-polyfill';",
  ],
  [
    'renderer/fine.ts',
    "import '../core/index.ts'; import type { fine } from '../electron/contract.ts'; export let f: typeof fine;",
  ],
  ['electron/desktop/main.ts', "import 'electron'; import '../host/fine.ts'; import '../contract.ts';"],
  [
    'electron/host/store/fine.ts',
    "import 'better-sqlite3'; import 'node:fs'; import '../../../core/index.ts';",
  ],
  ['electron/start.ts', "import './local/fine.ts';"],
  ['test/core/sun.test.ts', "import '../../core/sun/fine.ts';"],
];

const coreRooms = 'plan sun weather fabric light heat plants cost season night advice explain'.split(' ');
const folders = [
  ...coreRooms.map((room) => `core/${room}`),
  'electron/host',
  'electron/local',
  'electron/headless',
  'test',
];
const packages = ['valibot', 'hono', 'electron', 'better-sqlite3', 'temporal-polyfill'];

const project = mkdtempSync(join(tmpdir(), 'winterbench-rules-'));
afterAll(() => rmSync(project, { recursive: true, force: true }));

function write(file: string, text: string): void {
  mkdirSync(dirname(join(project, file)), { recursive: true });
  writeFileSync(join(project, file), `${text}\n`);
}

function cruise(): string[] {
  const program = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const rooms = ['core', 'electron', 'renderer', 'test'];
  const output = execFileSync(
    process.execPath,
    [program, '--config', '.dependency-cruiser.cjs', '--output-type', 'json', ...rooms],
    { cwd: project, encoding: 'utf8' },
  );
  const violations: { from: string; rule: { name: string } }[] = JSON.parse(output).summary.violations;
  return violations.map(({ from, rule }) => `${from}: ${rule.name}`);
}

let found: string[] = [];
beforeAll(() => {
  for (const name of ['.dependency-cruiser.cjs', 'tsconfig.json'])
    copyFileSync(root + name, join(project, name));
  for (const name of packages) {
    write(`node_modules/${name}/package.json`, JSON.stringify({ name, version: '1.0.0', main: 'index.js' }));
    write(`node_modules/${name}/index.js`, 'module.exports = {};');
  }
  write(
    'package.json',
    JSON.stringify({ type: 'module', dependencies: Object.fromEntries(packages.map((name) => [name, '1'])) }),
  );
  for (const folder of folders) write(`${folder}/fine.ts`, 'export const fine = 1; export type fine = 1;');
  for (const [file, text] of [...honest, ...trespasses]) write(file, text);
  write('core/light/b.ts', "import './a.ts';"); // the other half of the circle, which is reported once
  found = cruise();
}, 60_000);

describe('the import rules', () => {
  test.each(trespasses)('%s: `%s` breaks %s', (file, _, rule) => {
    expect(found).toContain(`${file}: ${rule}`);
  });

  test.each(honest)('%s: `%s` is allowed', (file) => {
    expect(found.filter((violation) => violation.startsWith(`${file}:`))).toEqual([]);
  });
});
