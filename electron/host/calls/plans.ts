import { randomUUID } from 'node:crypto';
import { demonstrationPlan } from '../../../core/index.ts';
import type { Plan } from '../../../core/index.ts';
import type { CheckedInput, PlanDocument, PlanList } from '../../contract.ts';
import { fileNameOf } from '../file-name.ts';
import { checkedPlan, planFromText, planText } from '../plan-text.ts';
import { Refusal } from '../refusal.ts';
import type { StoredPlan } from '../store/plans.ts';
import type { Store } from '../store/store.ts';

type ById = CheckedInput<'readPlan'>;

/** Calls about plans: list, read, save with versions, undo, redo, put away, import and export. */
export function planCalls(store: Store) {
  const { plans, settings } = store;

  function create(plan: Plan, words: string): string {
    const id = randomUUID();
    plans.create(id, planText(plan), words);
    settings.write('open-plan', id);
    return id;
  }

  /** There is always a plan to show: the demonstration comes back where the last one was put away. */
  function list(): PlanList {
    const summaries = plans.list();
    if (summaries.length === 0) {
      create(demonstrationPlan, 'Demonstration plan');
      return list();
    }
    const open = settings.read('open-plan');
    const openPlanId = summaries.find((plan) => plan.id === open)?.id ?? summaries[0].id;
    return { openPlanId, plans: summaries };
  }

  function document(stored: StoredPlan | null): PlanDocument {
    if (stored === null) throw new Refusal('not-found', 'This plan is not here any more.');
    const plan = planFromText(stored.document, 'The stored plan');
    const { id, revision, undoWords, redoWords } = stored;
    return {
      id,
      plan,
      revision,
      canUndo: undoWords !== null,
      canRedo: redoWords !== null,
      undoWords,
      redoWords,
    };
  }

  const describe = (text: string) => planText(planFromText(text, 'The stored plan'));

  return {
    list: () => store.together(list),
    readPlan: ({ id }: ById) => document(plans.read(id)),
    openPlan({ id }: ById): PlanDocument {
      const opened = document(plans.read(id));
      settings.write('open-plan', id);
      return opened;
    },
    createPlan({ plan }: CheckedInput<'createPlan'>): PlanDocument {
      const checked = checkedPlan(plan);
      return store.together(() => document(plans.read(create(checked, 'New plan'))));
    },
    savePlan({ id, plan, words, mergeKey }: CheckedInput<'savePlan'>): PlanDocument {
      return document(plans.save(id, planText(checkedPlan(plan)), words, mergeKey ?? null));
    },
    undo: ({ id }: ById) => document(plans.move(id, -1, describe)),
    redo: ({ id }: ById) => document(plans.move(id, 1, describe)),
    deletePlan({ id }: ById): PlanList {
      return store.together(() => {
        if (!plans.archive(id)) throw new Refusal('not-found', 'This plan is not here any more.');
        return list();
      });
    },
    restorePlan({ id }: ById): PlanList {
      return store.together(() => {
        if (!plans.restore(id)) throw new Refusal('not-found', 'This plan was not put away.');
        return list();
      });
    },
    importPlan({ text }: CheckedInput<'importPlan'>): PlanDocument {
      const plan = planFromText(text);
      return store.together(() => document(plans.read(create(plan, 'Imported plan'))));
    },
    exportPlan({ id }: ById) {
      const { plan } = document(plans.read(id));
      return {
        fileName: `${fileNameOf(plan.name, 'plan')}.winterbench.json`,
        text: `${JSON.stringify(plan, null, 2)}\n`,
      };
    },
  };
}
