import { ipcMain } from 'electron';
import type { Answer } from '../contract.ts';
import type { HostThread } from '../host/worker/bridge.ts';
import { callChannel, isOwnPage } from './origin.ts';

/** Passes calls from the interface's own top page to the host; anyone else is refused. */
export function answerCalls(host: HostThread, devServer: string | null): void {
  ipcMain.handle(callChannel, (event, name: unknown, input: unknown): Answer | Promise<Answer> => {
    const frame = event.senderFrame;
    const own = frame !== null && frame === event.sender.mainFrame && isOwnPage(frame.url, devServer);
    if (!own)
      return { ok: false, error: { code: 'unknown-call', message: 'Only Winterbench’s own page may call.' } };
    return host.call(String(name), input);
  });
}
