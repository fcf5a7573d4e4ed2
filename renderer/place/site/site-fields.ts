import type { PlanSite } from '../../../core/index.ts';
import { choice, number, plain, share } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import type { Option } from '../../forms/option.ts';

export function whereFields(zones: readonly Option[]): readonly Field<PlanSite>[] {
  return [
    { kind: 'text', key: 'name', label: 'Name of the site', longest: 120, width: '14rem' },
    number('latitude', 'Latitude, north positive', '°', [-90, 90], { words: 'latitude' }),
    number('longitude', 'Longitude, east positive', '°', [-180, 180], { words: 'longitude' }),
    number('elevation', 'Height above the sea', 'm', [-430, 6000], { digits: 0, words: 'height' }),
    choice('timeZone', 'Time zone', zones),
  ];
}

export const aroundFields: readonly Field<PlanSite>[] = [
  number('frostHollow', 'Colder than the station on a clear still night by', 'K', [-5, 10], {
    hint: 'in a hollow 2 to 4 K, on a slope none',
    words: 'frost hollow',
  }),
  share('windShare', 'Wind here, of that in the open', [0, 150], {
    hint: 'open 100, among houses and hedges 50',
    words: 'wind',
  }),
  share('albedo', 'Ground around throws back', [0, 100], {
    hint: 'of the light: grass 20, snow 70',
    words: 'light thrown back by the ground',
  }),
];

type Snow = NonNullable<PlanSite['snow']>;
export const snowFields: readonly Field<Snow>[] = [
  number('depth', 'How deep', 'm', [0.01, 2], { words: 'depth of snow' }),
  plain('day', 'from', 'From', { words: 'first day of snow' }),
  plain('day', 'to', 'To', { words: 'last day of snow' }),
];

/** A hand's breadth through the two coldest months of the hemisphere (common practice, no source). */
export function firstSnow(latitude: number): Snow {
  return latitude >= 0
    ? { depth: 0.1, from: '12-20', to: '02-20' }
    : { depth: 0.1, from: '06-20', to: '08-20' };
}

export const skylineFields: readonly Field<PlanSite['horizon'][number]>[] = [
  number('azimuth', 'Towards (180 south)', '°', [0, 360]),
  number('elevation', 'It stands up to', '°', [0, 89]),
  share('passes', 'Lets light through', [0, 100], {
    hint: 'from here to the next point: a wall 0, bare trees about 50',
    words: 'light it lets through',
  }),
];
