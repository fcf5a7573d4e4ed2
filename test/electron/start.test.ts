import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { skipBecause } from '../support/shared-data.ts';

const program = fileURLToPath(new URL('../../electron/start.ts', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'winterbench-start-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Started {
  /** Settles once the output holds the pattern, with all output so far; rejects when the program ends before. */
  until(pattern: RegExp): Promise<string>;
  ended: Promise<{ code: number | null; output: string }>;
  stop(): void;
}

function start(options: string[], surroundings: Record<string, string> = {}): Started {
  const { VITEST: _, NODE_ENV: __, DISPLAY: ___, WAYLAND_DISPLAY: ____, ...environment } = process.env;
  const env = { ...environment, WINTERBENCH_DATA: folder, ...surroundings };
  const child = spawn(process.execPath, [program, ...options], { env });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => (output += chunk));
  const ended = new Promise<{ code: number | null; output: string }>((settle) => {
    child.on('close', (code) => settle({ code, output }));
  });
  const until = (pattern: RegExp) =>
    new Promise<string>((settle, reject) => {
      const look = () => pattern.test(output) && settle(output);
      child.stdout.on('data', look);
      look();
      child.on('close', () => reject(new Error(`ended before ${pattern}: ${output}`)));
    });
  return { until, ended, stop: () => child.kill('SIGTERM') };
}

describe('npm start', { timeout: 120_000 }, () => {
  test('serves a browser where it is asked to, prints the address and ends at a signal', async () => {
    const started = start(['--browser', '--no-open']);
    const output = await started.until(/Ctrl\+C/);
    const address = output.match(/^Open this address in a browser: (http:\/\/127\.0\.0\.1:\d+\/\S*)$/m)?.[1];
    expect(address).toBeDefined();
    const page = await fetch(address!, { redirect: 'manual' });
    expect(page.status).toBeLessThan(400);
    started.stop();
    expect((await started.ended).code).toBe(0);
  });

  test('says in one line why there is no window', async (context) => {
    if (process.platform !== 'linux') skipBecause(context, 'only Linux has sessions without a display');
    const started = start([]);
    const output = await started.until(/Ctrl\+C/);
    expect(output).toMatch(/^No Electron window: there is no display here\.$/m);
    started.stop();
    expect((await started.ended).code).toBe(0);
  });

  test('refuses an option it does not know', async () => {
    const { code, output } = await start(['--colour']).ended;
    expect(code).toBe(2);
    expect(output).toContain('--colour');
  });
});
