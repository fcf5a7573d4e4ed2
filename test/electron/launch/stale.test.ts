import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { fingerprintName, isStale, sourceFingerprint } from '../../../electron/launch/stale.ts';

const project = `${mkdtempSync(join(tmpdir(), 'winterbench-stale-'))}/`;
const write = (file: string, text: string) => writeFileSync(join(project, file), text);
let first = '';

beforeAll(() => {
  for (const folder of ['core/sun', 'renderer', 'out']) mkdirSync(join(project, folder), { recursive: true });
  write('core/sun/a.ts', 'a');
  write('renderer/App.svelte', 'b');
  first = sourceFingerprint(project);
  write(`out/${fingerprintName}`, first);
});
afterAll(() => rmSync(project, { recursive: true, force: true }));

test('nothing changed: the build stands', () => {
  utimesSync(join(project, 'core/sun/a.ts'), new Date(), new Date());
  write('core/notes.md', 'not a source');
  expect(isStale(sourceFingerprint(project), join(project, 'out'))).toBe(false);
});

test('no build yet: stale', () => {
  expect(isStale(first, join(project, 'nowhere'))).toBe(true);
});

test.each([
  ['an edit', () => write('core/sun/a.ts', 'c'), () => write('core/sun/a.ts', 'a')],
  ['a new file', () => write('renderer/x.css', ''), () => rmSync(join(project, 'renderer/x.css'))],
  ['a deletion', () => rmSync(join(project, 'core/sun/a.ts')), () => write('core/sun/a.ts', 'a')],
])('%s makes it stale, taking it back does not', (_, change, restore) => {
  change();
  expect(sourceFingerprint(project)).not.toBe(first);
  restore();
  expect(sourceFingerprint(project)).toBe(first);
});
