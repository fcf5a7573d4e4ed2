import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { startHost } from '../../../electron/host/worker/bridge.ts';
import { useFolder } from '../store/folder.ts';

const newFolder = useFolder();
const hostFile = new URL('../../../electron/host/worker/host.worker.ts', import.meta.url);
const setting = () => ({ dataFolder: join(newFolder(), 'data'), shell: 'local', version: '0' }) as const;

/** A thread of the test's own in place of the host's. */
function thread(script: string): URL {
  const file = join(newFolder(), 'thread.mjs');
  writeFileSync(file, `import { parentPort } from 'node:worker_threads';\n${script}`);
  return pathToFileURL(file);
}

describe('the host’s thread', () => {
  it('closes once the calls under way are answered, and answers later ones in words', async () => {
    const host = await startHost(hostFile, setting());
    const underWay = host.call('start', null);
    await host.close();
    expect(await underWay).toMatchObject({ ok: true });
    expect(await host.call('start', null)).toMatchObject({ ok: false, error: { code: 'internal' } });
    await host.close();
  });

  it('that dies answers what was waiting, with the reason', async () => {
    const dying = `parentPort.on('message', () => { throw new Error('out of paper'); }); parentPort.postMessage({ kind: 'ready' });`;
    const host = await startHost(thread(dying), setting());
    const answers = await Promise.all([host.call('start', null), host.call('listPlans', null)]);
    for (const answer of answers) {
      expect(answer).toMatchObject({ ok: false, error: { code: 'internal' } });
      expect(JSON.stringify(answer)).toContain('out of paper');
    }
    await host.close();
  });

  it('that never opens is told as an error', async () => {
    await expect(startHost(thread(`throw new Error('out of ink');`), setting())).rejects.toThrow(
      'out of ink',
    );
    await expect(startHost(thread(`parentPort.close();`), setting())).rejects.toThrow(
      'ended before it was open',
    );
  });

  it('refuses what cannot be sent to it and goes on', async () => {
    const host = await startHost(hostFile, setting());
    const deep = JSON.parse('['.repeat(100_000) + ']'.repeat(100_000)) as unknown;
    for (const input of [{ id: () => 1 }, { plan: deep }]) {
      expect(await host.call('createPlan', input)).toMatchObject({ ok: false, error: { code: 'refused' } });
    }
    expect(await host.call('listPlans', null)).toMatchObject({ ok: true });
    await host.close();
  });
});
