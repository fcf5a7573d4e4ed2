export type PlantStateId =
  'growing' | 'slow' | 'resting-cold' | 'resting-heat' | 'resting-dim' | 'resting-dry' | 'stretching';

export type LimitingId = 'none' | 'cold' | 'heat' | 'dark' | 'dry' | 'day-length';

export interface PlantState {
  readonly id: PlantStateId;
  readonly name: string;
  /** One letter for ribbons in grey and in print. */
  readonly letter: string;
  readonly words: string;
}

/** The seven states in the order of their codes 0–6. */
export const plantStates: readonly PlantState[] = [
  {
    id: 'growing',
    name: 'Growing',
    letter: 'G',
    words: 'New growth, compact and well coloured. Water when the mix has dried.',
  },
  { id: 'slow', name: 'Slow', letter: 'S', words: 'Alive and compact, little new growth. Water sparingly.' },
  {
    id: 'resting-cold',
    name: 'Resting from cold',
    letter: 'C',
    words: 'Too cool to grow; a safe rest while it stays dry and above its frost limit.',
  },
  {
    id: 'resting-heat',
    name: 'Resting from heat',
    letter: 'H',
    words: 'Too hot for too long: closed up and waiting for cooler nights. Shade and air, little water.',
  },
  {
    id: 'resting-dim',
    name: 'Resting from dark',
    letter: 'D',
    words: 'Warm enough but too dim to grow; it stands still. Keep it nearly dry.',
  },
  {
    id: 'resting-dry',
    name: 'Held dry',
    letter: 'N',
    words: 'Warmth would let it grow, but it has no water and waits.',
  },
  {
    id: 'stretching',
    name: 'Stretching',
    letter: 'L',
    words: 'Warm but short of light: it draws up pale and soft. More light, or cooler and drier.',
  },
];

export const growing = 0;
export const slow = 1;
export const restingCold = 2;
export const restingHeat = 3;
export const restingDim = 4;
export const restingDry = 5;
export const stretching = 6;

export interface LimitingFactor {
  readonly id: LimitingId;
  readonly name: string;
  readonly words: string;
}

/** What holds a plant back, in the order of the codes 0–5. */
export const limitingFactors: readonly LimitingFactor[] = [
  { id: 'none', name: 'nothing', words: 'Nothing holds it back.' },
  { id: 'cold', name: 'cold', words: 'Cold holds it: the mean of day and night is too low.' },
  {
    id: 'heat',
    name: 'heat',
    words: 'Heat holds it: the mean of day and night is too high, or days have been too hot.',
  },
  {
    id: 'dark',
    name: 'lack of light',
    words: 'Lack of light holds it: too little light in a day for its warmth.',
  },
  { id: 'dry', name: 'dry mix', words: 'Lack of water holds it: the mix has been dry for long.' },
  {
    id: 'day-length',
    name: 'day length',
    words: 'It grows, but the length of the day keeps it from setting flower.',
  },
];

export const limitedByNothing = 0;
export const limitedByCold = 1;
export const limitedByHeat = 2;
export const limitedByDark = 3;
export const limitedByDry = 4;
export const limitedByDayLength = 5;

/** The words of a limiting factor's code. */
export function limitingWords(code: number): string {
  const factor = limitingFactors[code];
  if (factor === undefined) throw new RangeError(`expected a limiting factor from 0 to 5, got ${code}`);
  return factor.words;
}

/** The harms, apart from the states, with what each is counted in. */
export const plantHarms = [
  {
    id: 'frost',
    name: 'Cold damage',
    unit: 'K h',
    words: 'Leaf below the temperature the plant bears, wet or dry.',
  },
  {
    id: 'chill',
    name: 'Chill',
    unit: 'K h',
    words: 'Above freezing but too cold for a tropical plant; shows after days.',
  },
  { id: 'heat', name: 'Burning heat', unit: 'K h', words: 'Leaf hotter than its tissue bears.' },
  {
    id: 'scorch',
    name: 'Scorch',
    unit: 'mol m⁻² d⁻¹',
    words: 'More light in a day than it bears or is used to.',
  },
  {
    id: 'wetCold',
    name: 'Wet cold',
    unit: 'days',
    words: 'Wet and cold for more than five days: roots rot.',
  },
  {
    id: 'decline',
    name: 'Decline from heat',
    unit: 'days',
    words: 'Hot by day and night for weeks on end: it weakens, and dies if it goes on.',
  },
] as const;
