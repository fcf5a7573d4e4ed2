import * as v from 'valibot';
import { contract } from '../contract.ts';
import type { Answer, CallName, CallOutput, CheckedInput, HostFailure, Start } from '../contract.ts';
import { calendarFileCalls } from './calls/calendar-file.ts';
import { planCalls } from './calls/plans.ts';
import { rememberedCalls } from './calls/remembered.ts';
import { weatherCalls } from './calls/weather.ts';
import { Refusal } from './refusal.ts';
import type { Store } from './store/store.ts';
import { isStoreError, storeMessage } from './store/failure.ts';

export interface HostContext {
  readonly store: Store;
  readonly shell: Start['shell'];
  readonly version: string;
  readonly now: () => number;
}

/** The contract carried out on a store: one function a call, given checked input. */
type Calls = { readonly [K in CallName]: (input: CheckedInput<K>) => CallOutput<K> };

function callsOn({ store, shell, version, now }: HostContext) {
  const { list, ...plans } = planCalls(store);
  const remembered = rememberedCalls(store.settings);
  return {
    start(): Start {
      const firstStart = store.settings.read('open-plan') === null && store.plans.list().length === 0;
      const preferences = remembered.readPreferences();
      return { ...list(), preferences, firstStart, shell, version, notice: store.notice };
    },
    listPlans: list,
    ...plans,
    ...remembered,
    ...weatherCalls(store.weather, now),
    ...calendarFileCalls(now),
  } satisfies Calls;
}

const isCallName = (name: string): name is CallName => Object.hasOwn(contract, name);

/** Answers calls by name; never throws for what a caller did wrong. */
export function createHost(context: HostContext): (name: string, input: unknown) => Answer {
  const calls: Calls = callsOn(context);
  return (name, input) => {
    if (!isCallName(name))
      return refused({ code: 'unknown-call', message: `There is no call named ${name.slice(0, 60)}.` });
    try {
      const checked = v.safeParse(contract[name].input, input);
      if (!checked.success) return refused({ code: 'refused', ...inputProblems(name, checked.issues) });
      const call = calls[name] as (input: unknown) => unknown;
      return { ok: true, value: call(checked.output) };
    } catch (error) {
      return refused(failureOf(error));
    }
  };
}

const refused = (error: HostFailure): Answer => ({ ok: false, error });

function inputProblems(name: string, issues: readonly v.BaseIssue<unknown>[]) {
  const problems = issues
    .slice(0, 40)
    .map((issue) => ({ path: v.getDotPath(issue) ?? '', message: issue.message }));
  return { message: `The call ${name} was given something it does not take.`, problems };
}

/** Known reasons in plain words; anything else is a fault of the program, with its message for a report. */
function failureOf(error: unknown): HostFailure {
  if (error instanceof Refusal) {
    const { code, message, problems } = error;
    return problems === undefined ? { code, message } : { code, message, problems };
  }
  if (isStoreError(error)) return { code: 'store', message: storeMessage(error) };
  return { code: 'internal', message: `Something went wrong inside Winterbench: ${String(error)}` };
}
