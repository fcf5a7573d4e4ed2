import { planGroups } from '../../../core/index.ts';
import type { Lot, Plan, Spot } from '../../../core/index.ts';
import { choice, number } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';

/** The groups a lot may be of: the user's own first, then the catalogue by name. */
export function groupOptions(plan: Plan): { value: string; name: string }[] {
  const own = new Set(plan.ownGroups.map((group) => group.id));
  const groups = planGroups(plan);
  const catalogue = groups.filter((group) => !own.has(group.id)).sort((a, b) => a.name.localeCompare(b.name));
  return [
    ...groups
      .filter((group) => own.has(group.id))
      .map(({ id, name }) => ({ value: id, name: `${name} (your own)` })),
    ...catalogue.map(({ id, name }) => ({ value: id, name })),
  ];
}

export const amountFields: readonly Field<Lot>[] = [
  number('plants', 'Plants', '', [1, 100000], {
    integer: true,
    empty: true,
    words: 'number of plants',
    hint: 'empty: not counted',
  }),
  number('area', 'Bench taken', 'm²', [0.001, 10000], { words: 'bench taken' }),
  choice('watering', 'Watering', [
    { value: 'by-season', name: 'by the season' },
    { value: 'dry', name: 'dry all winter' },
    { value: 'watered', name: 'always watered' },
  ]),
];

const everywhere = { value: 'all', name: 'everywhere' };

/** Where on the bench, for its light; levels only where a place it stands in has two. */
export function spotFields(twoLevels: boolean): readonly Field<Spot>[] {
  const fields: Field<Spot>[] = [
    choice('across', 'From front to back', [
      everywhere,
      { value: 'front', name: 'in front' },
      { value: 'middle', name: 'in the middle' },
      { value: 'back', name: 'at the back' },
    ]),
    choice('along', 'Along the bench', [
      everywhere,
      { value: 'middle', name: 'in the middle' },
      { value: 'ends', name: 'at both ends' },
    ]),
  ];
  if (!twoLevels) return fields;
  return [
    ...fields,
    choice('level', 'Shelf', [
      { value: 'all', name: 'both' },
      { value: 'lower', name: 'lower' },
      { value: 'upper', name: 'upper' },
    ]),
  ];
}

const spotWords = {
  front: 'in front',
  back: 'at the back',
  ends: 'at both ends',
  lower: 'on the lower shelf',
  upper: 'on the upper shelf',
} as const;

/** `in front, at both ends`; '' for the whole bench. */
export function wordsOfSpot({ across, along, level }: Spot): string {
  const parts = [
    across === 'all' ? '' : across === 'middle' ? 'in the middle of its depth' : spotWords[across],
    along === 'all' ? '' : along === 'middle' ? 'in the middle of its length' : spotWords[along],
    level === 'all' ? '' : spotWords[level],
  ];
  return parts.filter((part) => part !== '').join(', ');
}
