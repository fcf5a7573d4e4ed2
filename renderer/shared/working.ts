import type { Working } from '../../core/index.ts';

/** A working as plain text for a message or a notebook, one line a figure. */
export function workingText(working: Working): string {
  const line = (name: string, value: number | string, unit: string) => `${name}: ${value}${unit ? ` ${unit}` : ''}`;
  return [
    working.title,
    '',
    working.formula,
    '',
    'From',
    ...working.inputs.map((input) => `  ${line(input.name, input.value, input.unit)} (${input.origin})`),
    ...(working.steps.length > 0 ? ['', 'On the way'] : []),
    ...working.steps.map((step) => `  ${line(step.name, step.value, step.unit)}`),
    '',
    `Method: ${working.source}`,
  ].join('\n');
}
