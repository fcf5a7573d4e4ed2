import type { DaylightReading, MeterReading } from '../../core/index.ts';
import type { Option } from '../forms/option.ts';

const options = <T extends string>(names: Record<T, string>): readonly Option[] =>
  Object.entries<string>(names).map(([value, name]) => ({ value, name }));

export const meterOptions = options<MeterReading['meter']>({
  cheap: 'a cheap meter or a telephone',
  good: 'a good lux meter',
  quantum: 'a quantum (plant light) meter',
});

export const unitOptions = options<MeterReading['unit']>({
  lux: 'lux',
  'foot-candle': 'foot-candles',
  ppfd: 'µmol (PPFD)',
});

export const skyOptions = options<DaylightReading['sky']>({
  clear: 'clear, sun out',
  broken: 'sun and cloud in turn',
  overcast: 'grey all over',
});

export const whereOptions = options<DaylightReading['where']>({
  sill: 'on a window sill',
  'under glass': 'under glass or film',
  outdoors: 'in the open',
});

export const facingOptions: readonly Option[] = [
  ...['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'].map(
    (name, index) => ({ value: String(index * 45), name }),
  ),
  { value: '', name: 'not known' },
];

/** The nearest of the eight winds to an azimuth, as an option's value. */
export const facingValue = (azimuth: number | null): string =>
  azimuth === null ? '' : String((Math.round(azimuth / 45) % 8) * 45);
