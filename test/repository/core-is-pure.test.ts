import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readJson, root } from './project.ts';

const folder = mkdtempSync(join(tmpdir(), 'winterbench-core-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Compiles one line with the settings of core/; the compiler's complaints, empty where it takes the line. */
function compile(line: string): string {
  writeFileSync(join(folder, 'probe.ts'), `${line}\nexport {};\n`);
  writeFileSync(
    join(folder, 'tsconfig.json'),
    JSON.stringify({ extends: join(root, 'core/tsconfig.json'), include: ['probe.ts'] }),
  );
  try {
    execFileSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', folder], {
      stdio: 'pipe',
    });
    return '';
  } catch (error) {
    return String((error as { stdout: Buffer }).stdout);
  }
}

describe('core/tsconfig.json', () => {
  test('has neither DOM nor Node types', () => {
    const { lib, types } = readJson('core/tsconfig.json').compilerOptions;
    expect(lib).toEqual(['ES2023']);
    expect(types).toEqual([]);
  });

  test('takes plain ECMAScript', { timeout: 60_000 }, () => {
    expect(compile('const x: number = Math.hypot(3, 4); void x;')).toBe('');
  });

  test.each([
    ['the DOM', 'document.title;'],
    ['Node', 'process.env;'],
    ['timers', 'setTimeout(() => {}, 1);'],
    ['enums, which Node does not run', 'enum A { b } void A.b;'],
  ])('refuses %s', { timeout: 60_000 }, (_, line) => {
    expect(compile(line)).toMatch(/error TS/);
  });
});
