import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { root } from './project.ts';

const folder = mkdtempSync(join(tmpdir(), 'winterbench-build-'));
const built = (file: string) => readFileSync(join(folder, file), 'utf8');

beforeAll(() => {
  const { VITEST: _, NODE_ENV: __, ...env } = process.env;
  execFileSync(process.execPath, [join(root, 'electron/launch/build.ts'), '--out', folder], {
    env,
    stdio: 'pipe',
  });
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the built application', () => {
  test('has a preload that requires electron only, as its sandbox demands', () => {
    const text = built('preload/preload.cjs');
    const required = [...text.matchAll(/\brequire\(\s*["'`]([^"'`]+)["'`]\s*\)/g)].map((match) => match[1]);
    expect([...new Set(required)]).toEqual(['electron']);
    expect(text).not.toMatch(/^\s*import[\s{*"']/m);
  });

  test('has a page without inline script or style, which its security policy would block', () => {
    const page = built('renderer/index.html');
    const scripts = page.match(/<script\b[^>]*>/g) ?? [];
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.filter((tag) => !/\bsrc=/.test(tag))).toEqual([]);
    expect(page).not.toMatch(/<style\b|\sstyle=|\son\w+=/);
  });
});
