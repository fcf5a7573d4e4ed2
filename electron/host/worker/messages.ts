import type { Answer, Start } from '../../contract.ts';

/** What the host's thread is started with. */
export interface HostSetting {
  readonly dataFolder: string;
  readonly shell: Start['shell'];
  readonly version: string;
}

export type ToHost =
  | { readonly kind: 'call'; readonly ticket: number; readonly name: string; readonly input: unknown }
  | { readonly kind: 'close' };

export type FromHost =
  | { readonly kind: 'ready' }
  /** The store could not be opened; plain words. */
  | { readonly kind: 'failed'; readonly message: string }
  | { readonly kind: 'answer'; readonly ticket: number; readonly answer: Answer }
  | { readonly kind: 'closed' };
