import type { Problem } from '../../core/index.ts';
import type { HostFailure } from '../contract.ts';

/** A call refused for a reason the user can do something about. Nothing has been stored by then. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  readonly code: HostFailure['code'];
  readonly problems: readonly Problem[] | undefined;

  constructor(code: HostFailure['code'], message: string, problems?: readonly Problem[]) {
    super(message);
    this.code = code;
    this.problems = problems;
  }
}
