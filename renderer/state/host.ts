import type { Answer, Bridge, CallName, Host, HostFailure } from '../../electron/contract.ts';

/** A call that the host refused, with the reason in plain words and the places in the plan it concerns. */
export class HostError extends Error {
  readonly failure: HostFailure;
  constructor(failure: HostFailure) {
    super(failure.message);
    this.name = 'HostError';
    this.failure = failure;
  }
}

type AnyCall = (input?: unknown) => Promise<Answer>;

function overBridge(bridge: Bridge, name: CallName): AnyCall {
  return bridge[name] as AnyCall;
}

/** The loopback shell: the same call as a POST to the page's own origin; the session cookie goes along. */
function overHttp(name: CallName): AnyCall {
  return async (input) => {
    const response = await fetch(`/call/${name}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(input ?? {}),
    });
    const isAnswer = response.headers.get('content-type')?.startsWith('application/json') ?? false;
    if (isAnswer) return (await response.json()) as Answer;
    const message = `Winterbench does not answer as expected (${response.status}); start it again from its own window or terminal`;
    return { ok: false, error: { code: 'internal', message } };
  };
}

/** The host behind whichever shell the page runs in. Refused calls reject with `HostError`. */
export function connectHost(): Host {
  const bridge = (window as { winterbench?: Bridge }).winterbench;
  const target = {} as Record<string, (input?: unknown) => Promise<unknown>>;
  return new Proxy(target, {
    get(calls, name) {
      if (typeof name !== 'string' || name === 'then') return undefined;
      calls[name] ??= async (input) => {
        const call = bridge ? overBridge(bridge, name as CallName) : overHttp(name as CallName);
        const answer = await call(input);
        if (!answer.ok) throw new HostError(answer.error);
        return answer.value;
      };
      return calls[name];
    },
  }) as unknown as Host;
}
