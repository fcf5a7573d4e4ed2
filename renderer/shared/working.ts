import type { Explanation } from '../../core/index.ts';

/** A working as plain text for a message or a notebook, one line a figure. */
export function workingText(working: Explanation): string {
  return [
    working.title,
    '',
    working.formula,
    '',
    'From',
    ...working.inputs.map(
      ({ name, value, unit, origin }) => `  ${name}: ${value}${unit ? ` ${unit}` : ''} (${origin})`,
    ),
    ...(working.steps.length > 0 ? ['', 'On the way', ...working.steps.map((step) => `  ${step}`)] : []),
    '',
    working.result,
    '',
    `Method: ${working.source}`,
  ].join('\n');
}
