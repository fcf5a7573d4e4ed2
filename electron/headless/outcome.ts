import type { Problem } from '../../core/index.ts';

/** What a run ends with; documented in the usage text. */
export const exitCodes = { done: 0, refused: 1, wrongUse: 2, fault: 3 } as const;

/** The input was read and refused: exit 1, with the reasons by path or line. */
export class RefusedInput extends Error {
  readonly problems: readonly Problem[];
  constructor(message: string, problems: readonly Problem[] = []) {
    super(message);
    this.problems = problems;
  }
}

/** The command was called in a way it does not know: exit 2. */
export class WrongUse extends Error {}
