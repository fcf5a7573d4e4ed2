import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { findElectron } from '../../../electron/launch/electron-binary.ts';

const folder = mkdtempSync(join(tmpdir(), 'winterbench-electron-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('Electron is there only when its path file and its program both are', () => {
  expect(findElectron(folder)).toBeNull();
  writeFileSync(join(folder, 'path.txt'), 'electron');
  expect(findElectron(folder)).toBeNull();
  mkdirSync(join(folder, 'dist'));
  writeFileSync(join(folder, 'dist', 'electron'), '');
  expect(findElectron(folder)).toBe(join(folder, 'dist', 'electron'));
});
