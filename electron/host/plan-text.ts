import { parsePlan } from '../../core/index.ts';
import type { Plan } from '../../core/index.ts';
import { longestPlanText } from '../contract.ts';
import { Refusal } from './refusal.ts';
import type { PlanText } from './store/plans.ts';

/** Checks anything as a plan; refuses with paths and reasons. */
export function checkedPlan(input: unknown, whose = 'This plan'): Plan {
  const reading = parsePlan(input);
  if (reading.ok) return reading.plan;
  const count = reading.problems.length;
  const message = `${whose} cannot be used: ${count === 1 ? 'one thing in it is' : `${count} things in it are`} wrong.`;
  throw new Refusal('refused', message, reading.problems);
}

/** Reads a plan from text, such as a file that was exported before. */
export function planFromText(text: string, whose = 'This plan'): Plan {
  if (text.length > longestPlanText) {
    const millions = (text.length / 1e6).toFixed(1);
    throw new Refusal(
      'too-large',
      `${whose} cannot be used: it has ${millions} million characters, and a plan has at most ${longestPlanText / 1e6} million.`,
    );
  }
  let input: unknown;
  try {
    input = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    throw new Refusal('refused', `${whose} cannot be used: it is not a plan file (${error.message}).`);
  }
  return checkedPlan(input, whose);
}

/** What the store keeps of a checked plan. */
export function planText(plan: Plan): PlanText {
  const document = JSON.stringify(plan);
  if (document.length > longestPlanText) throw new Refusal('too-large', 'This plan is too large to be kept.');
  return {
    document,
    schemaVersion: plan.schemaVersion,
    name: plan.name,
    siteName: plan.site.name,
    places: plan.places.length,
  };
}
