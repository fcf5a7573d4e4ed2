import { mkdirSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demonstrationPlan } from '../../../core/index.ts';
import type { Answer, CallName, PlanDocument, Start } from '../../../electron/contract.ts';
import { startLocal } from '../../../electron/local/main.ts';
import type { LocalShell } from '../../../electron/local/main.ts';
import { useFolder } from '../store/folder.ts';

const newFolder = useFolder();
let dataFolder: string;
let rendererFolder: string;
let shell: LocalShell;
let cookie: string;

async function open() {
  shell = await startLocal({ dataFolder, rendererFolder });
  const page = await fetch(shell.url);
  cookie = page.headers.getSetCookie()[0].split(';')[0];
}
beforeEach(async () => {
  dataFolder = join(newFolder(), 'data');
  rendererFolder = newFolder();
  writeFileSync(join(rendererFolder, 'index.html'), '<p>sheet</p>');
  await open();
});
afterEach(() => shell.close());

async function call<T>(name: CallName, input: unknown): Promise<Answer<T>> {
  const origin = `http://127.0.0.1:${shell.port}`;
  const headers = { cookie, origin, 'content-type': 'application/json' };
  const reply = await fetch(`${origin}/call/${name}`, {
    method: 'POST',
    headers,
    body: JSON.stringify(input),
  });
  return (await reply.json()) as Answer<T>;
}
async function value<T>(name: CallName, input: unknown): Promise<T> {
  const answer = await call<T>(name, input);
  if (!answer.ok) throw new Error(answer.error.message);
  return answer.value;
}

describe('the loopback shell with the real store', () => {
  it('finds the changed plan and its undo after a restart, under a new address', async () => {
    const { openPlanId: id, firstStart } = await value<Start>('start', null);
    expect(firstStart).toBe(true);
    await value('savePlan', { id, plan: { ...demonstrationPlan, name: 'Changed' }, words: 'Name changed' });
    const before = shell.url;
    await shell.close();
    await open();
    expect(shell.url).not.toBe(before);
    expect(await value<Start>('start', {})).toMatchObject({
      firstStart: false,
      openPlanId: id,
      shell: 'local',
    });
    const undone = await value<PlanDocument>('undo', { id });
    expect(undone).toMatchObject({ plan: { name: demonstrationPlan.name }, redoWords: 'Name changed' });
  });

  it('answers many calls at once, each with its own answer', async () => {
    const { openPlanId: id } = await value<Start>('start', null);
    const names = Array.from({ length: 20 }, (_, i) => `Plan ${i}`);
    const made = await Promise.all(
      names.map((name) => value<PlanDocument>('createPlan', { plan: { ...demonstrationPlan, name } })),
    );
    expect(made.map((document) => document.plan.name)).toEqual(names);
    expect((await value<PlanDocument>('readPlan', { id })).plan.name).toBe(demonstrationPlan.name);
  });

  it('refuses a bad plan with its paths and leaves the open one as it was', async () => {
    const { openPlanId: id } = await value<Start>('start', null);
    const site = { ...demonstrationPlan.site, latitude: 123 };
    const answer = await call('savePlan', { id, plan: { ...demonstrationPlan, site }, words: 'Moved' });
    expect(answer).toMatchObject({
      ok: false,
      error: { code: 'refused', problems: [{ path: 'site.latitude' }] },
    });
    expect(await value<PlanDocument>('readPlan', { id })).toMatchObject({
      plan: demonstrationPlan,
      canUndo: false,
    });
  });

  it('finishes the calls under way when it is closed', async () => {
    const { openPlanId: id } = await value<Start>('start', null);
    const saved = value('savePlan', {
      id,
      plan: { ...demonstrationPlan, name: 'Last' },
      words: 'Last',
    }).catch(() => null);
    await saved;
    await shell.close();
    await open();
    expect((await value<PlanDocument>('readPlan', { id })).plan.name).toBe('Last');
  });

  it('listens on 127.0.0.1 and on no other address of the machine', async () => {
    const error = await new Promise((resolve) => {
      const socket = connect({ port: shell.port, host: '127.0.0.2' }, () => resolve(null));
      socket.on('error', resolve);
    });
    expect(error).toMatchObject({ code: 'ECONNREFUSED' });
  });

  it('says in words why it cannot start: a blocked data folder, a taken port', async () => {
    const file = join(newFolder(), 'file');
    writeFileSync(file, '');
    await expect(startLocal({ dataFolder: join(file, 'data'), rendererFolder })).rejects.toThrow(
      /^Winterbench cannot keep its data in /,
    );
    const other = join(newFolder(), 'other');
    mkdirSync(other);
    await expect(startLocal({ dataFolder: other, rendererFolder, port: shell.port })).rejects.toThrow(
      `Winterbench cannot listen on 127.0.0.1 port ${shell.port}`,
    );
  });
});
