/**
 * A question to the engine whose answer comes piece by piece. The newest question wins; it outlives the view, so that
 * looking elsewhere loses nothing. What follows from its state are getters, since a `$derived` would end with the view
 * that first read it.
 */
export class Search<Piece, Answer> {
  #now = $state.raw<AbortController | null>(null);
  #found = $state.raw<readonly Piece[]>([]);
  #answer = $state.raw<Answer | null>(null);
  #stopped = $state(false);
  #error = $state<string | null>(null);

  get running(): boolean {
    return this.#now !== null;
  }
  /** What has come so far, in the order in which it came. */
  get found(): readonly Piece[] {
    return this.#found;
  }
  get answer(): Answer | null {
    return this.#answer;
  }
  /** True where the user stopped it before its answer. */
  get stopped(): boolean {
    return this.#stopped;
  }
  /** Why there is no answer, in words; null where nothing failed. */
  get error(): string | null {
    return this.#error;
  }

  stop() {
    this.#now?.abort(new DOMException('stopped by the user', 'AbortError'));
  }

  /** Stops and forgets: another thing is looked at. */
  clear() {
    this.stop();
    this.#now = null;
    this.#found = [];
    this.#answer = null;
    this.#error = null;
    this.#stopped = false;
  }

  async run(ask: (onPiece: (piece: Piece) => void, signal: AbortSignal) => Promise<Answer>) {
    this.clear();
    const mine = new AbortController();
    this.#now = mine;
    const onPiece = (piece: Piece) => {
      if (this.#now === mine) this.#found = [...this.#found, piece];
    };
    try {
      const answer = await ask(onPiece, mine.signal);
      if (this.#now === mine) this.#answer = answer;
    } catch (failure) {
      if (this.#now !== mine) return;
      if (mine.signal.aborted) this.#stopped = true;
      else this.#error = failure instanceof Error ? failure.message : String(failure);
    } finally {
      if (this.#now === mine) this.#now = null;
    }
  }
}
