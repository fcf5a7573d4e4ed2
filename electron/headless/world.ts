/** What a run may touch; tests hand in their own. */
export interface World {
  readonly readFile: (path: string) => Uint8Array;
  readonly writeFile: (path: string, text: string) => void;
  /** Writes to standard output and standard error. */
  readonly out: (text: string) => void;
  readonly note: (text: string) => void;
  readonly nowMs: () => number;
}
