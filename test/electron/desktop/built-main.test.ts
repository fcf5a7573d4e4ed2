import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Answer, Start } from '../../../electron/contract.ts';
import { callChannel } from '../../../electron/desktop/origin.ts';
import { skipBecause } from '../../support/shared-data.ts';
import { useFolder } from '../store/folder.ts';
import { standIn } from './electron-stand-in.ts';

vi.mock('electron', async () => (await import('./electron-stand-in.ts')).standIn);

const program = fileURLToPath(new URL('../../../out/main/main.js', import.meta.url));
const newFolder = useFolder();
const { asked, app } = standIn;

beforeEach((context) => {
  if (!existsSync(program)) skipBecause(context, 'out/ is not built');
  for (const list of [asked.errors, asked.menu, asked.ends, asked.windows]) list.length = 0;
  asked.handlers.clear();
});
afterEach(() => {
  vi.unstubAllEnvs();
  app.removeAllListeners();
});

let loads = 0;
/** Runs main anew; the query makes it another module each time. */
const load = (): Promise<unknown> => import(/* @vite-ignore */ `${program}?load=${++loads}`);

describe('the built desktop shell', () => {
  it('opens its window on the host in its own thread, and closes the store before it ends', async () => {
    const folder = newFolder();
    vi.stubEnv('WINTERBENCH_DATA', folder);
    await load();
    await vi.waitFor(() => expect(asked.windows).toHaveLength(1), { timeout: 20_000 });
    expect(asked.errors).toEqual([]);
    expect(app.userData).toBe(join(folder, 'window'));
    expect(asked.windows[0].loaded).toEqual(['winterbench://app/']);
    const { preload } = asked.windows[0].options.webPreferences as { preload: string };
    expect(preload).toBe(fileURLToPath(new URL('../../../out/preload/preload.cjs', import.meta.url)));
    expect(asked.menu.length).toBeGreaterThanOrEqual(4);

    const frame = { url: 'winterbench://app/' };
    const handler = asked.handlers.get(callChannel) as unknown as (
      ...words: unknown[]
    ) => Promise<Answer<Start>>;
    const answer = await handler({ senderFrame: frame, sender: { mainFrame: frame } }, 'start', undefined);
    expect(answer).toMatchObject({
      ok: true,
      value: { shell: 'desktop', version: '1.2.3', firstStart: true },
    });

    const preventDefault = vi.fn();
    app.emit('will-quit', { preventDefault });
    expect(preventDefault).toHaveBeenCalledOnce();
    await vi.waitFor(() => expect(asked.ends).toEqual(['quit']), { timeout: 20_000 });
    app.emit('will-quit', { preventDefault });
    expect(preventDefault).toHaveBeenCalledOnce();
  });

  it('says in words why it cannot start on a blocked data folder', async () => {
    const file = join(newFolder(), 'file');
    writeFileSync(file, '');
    vi.stubEnv('WINTERBENCH_DATA', file);
    await load();
    expect(asked.errors).toHaveLength(1);
    expect(asked.errors[0]).toMatch(/^Winterbench cannot start: It cannot keep its data in .*file/);
    expect(asked.ends).toEqual(['exit 1']);
    expect(asked.windows).toEqual([]);
  });
});
