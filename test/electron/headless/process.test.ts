import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { planSchemaVersion } from '../../../core/index.ts';

const program = fileURLToPath(new URL('../../../electron/headless/main.ts', import.meta.url));

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly notes: string;
}

function start(words: readonly string[], input = '', closeAfterFirst = false): Promise<Ended> {
  const child = spawn(process.execPath, [program, ...words]);
  let out = '';
  let notes = '';
  child.stdout.on('data', (part) => {
    out += part;
    if (closeAfterFirst) child.stdout.destroy();
  });
  child.stderr.on('data', (part) => (notes += part));
  child.stdin.end(input);
  return new Promise((resolve) => child.on('close', (code) => resolve({ code, out, notes })));
}

describe('the command', () => {
  it('ends with 0, 1 and 2 as it says, the result alone on standard output', async () => {
    const demo = await start(['demo']);
    expect(demo).toMatchObject({ code: 0, notes: '' });
    expect(JSON.parse(demo.out).schemaVersion).toBe(planSchemaVersion);
    expect(await start(['season', '-'], '{}')).toMatchObject({ code: 1, out: '' });
    expect(await start(['winter'])).toMatchObject({ code: 2, out: '' });
  });

  it('reads a plan from standard input and writes a long result whole', async () => {
    const { out: demo } = await start(['demo']);
    const season = await start(['season', '-'], demo);
    expect(season.code).toBe(0);
    expect(JSON.parse(season.out).days).toBe(365);
  });

  it('is quiet where the reader of its output has seen enough', async () => {
    const { out: demo } = await start(['demo']);
    expect((await start(['season', '-'], demo, true)).notes).toBe('');
  });
});
