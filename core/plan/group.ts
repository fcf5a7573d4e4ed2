/** How far a figure can be trusted. */
export type Confidence = 'high' | 'medium' | 'low';

/** One number of a plant group with where it comes from. Units stand beside the field that holds it. */
export interface Figure {
  readonly value: number;
  readonly source: string;
  readonly confidence: Confidence;
}

/** A yes or no of a plant group with its reason. */
export interface Trait {
  readonly value: boolean;
  readonly reason: string;
  readonly source: string;
  readonly confidence: Confidence;
}

export type Habit = 'summer' | 'winter' | 'spring-and-autumn' | 'warm-season' | 'cool-season' | 'all-year';

/** A rest that helps flowering or health: 24-h mean below `below` [°C] for `weeks` [weeks]; water in words. */
export interface CoolRest {
  readonly below: Figure;
  readonly weeks: Figure;
  readonly water: string;
}

/**
 * Day length as a flowering cue: days shorter (short) or longer (long) than `critical` [h], `days` of them running
 * [d]; 24-h means at or under `coolBelow` [°C] do as well at any day length; none counts under `noneBelow` [°C].
 */
export interface DayLengthCue {
  readonly kind: 'none' | 'short' | 'long';
  readonly critical: Figure | null;
  readonly days: Figure | null;
  readonly coolBelow: Figure | null;
  readonly noneBelow: Figure | null;
}

/**
 * What a group of like plants needs. All temperatures are °C. `temperature` holds 24-h means of leaf
 * temperature; `damage` holds leaf temperatures borne for a few hours; `comfortAir` is daytime air, as a
 * grower would say it. Light is the daily light at the plant, inside the enclosure [mol m⁻² d⁻¹].
 */
export interface PlantGroup {
  readonly id: string;
  readonly name: string;
  readonly examples: string;
  readonly habit: Habit;
  /** Cardinal temperatures: growth nil, best band, growth falls (heat rest begins), growth nil again [°C, 24-h mean]. */
  readonly temperature: {
    readonly base: Figure;
    readonly optimumLow: Figure;
    readonly optimumHigh: Figure;
    readonly slow: Figure;
    readonly ceiling: Figure;
  };
  /** Leaf temperature borne for a few hours: cold in dry mix, cold when moist or soft, hot [°C]. */
  readonly damage: { readonly coldDry: Figure; readonly coldWet: Figure; readonly hot: Figure };
  /**
   * How cold hardens it: `gain` [K] hardier when fully hardened than when soft, beginning where the mean of recent
   * days falls below `below` [°C, 24-h mean] and complete `span` [K] under that. `damage.coldDry` is the hardened limit.
   */
  readonly hardening: { readonly gain: Figure; readonly below: Figure; readonly span: Figure };
  /**
   * Carbon gain by night temperature where the literature has a curve of its own: most at `night` [°C] when grown at a
   * mean of 18.5 °C, half at `cool` and `warm` [K] to either side; `night` moves by `shift` [K K⁻¹] with growth temperature.
   */
  readonly carbon: {
    readonly night: Figure;
    readonly cool: Figure;
    readonly warm: Figure;
    readonly shift: Figure;
  } | null;
  /** Lowest winter temperature a careful grower sets [°C]. */
  readonly winterHold: Figure;
  /** Compensation or hold, least for a compact plant when warm, good from–to, most before bleaching [mol m⁻² d⁻¹]. */
  readonly light: {
    readonly hold: Figure;
    readonly stretch: Figure;
    readonly good: Figure;
    readonly goodHigh: Figure;
    readonly most: Figure;
  };
  /** Whether it stands still, rather than stretches, when warm and below the hold light. */
  readonly canRestDim: Trait;
  /** Flowering cue by day length. */
  readonly dayLength: DayLengthCue;
  /** The cool rest it needs or profits from; null where none is known. */
  readonly rest: CoolRest | null;
  readonly flowering: {
    readonly words: string;
    /** Weeks from the cue (end of the cool rest, or enough days of the right length) to flower, from–to; null where unknown. */
    readonly weeksAfterCue: readonly [number, number] | null;
    readonly source: string;
  };
  /** Time constant of the plant's memory of temperature and light, and of the mix drying out [d]. */
  readonly inertiaDays: Figure;
  readonly waterDays: Figure;
  /**
   * Heat rest by dose: `days` days with a 24-h mean above `temperature.slow` and nights above 20 °C, or
   * `hotDays` days whose highest leaf temperature passes `hotDay` [°C], bring heat rest; days up to 5 K below
   * `hotDay` close it up. The plant declines after `declineDays` of the former and is dead after `killDays`.
   */
  readonly heatDose: {
    readonly days: Figure;
    readonly hotDay: Figure;
    readonly hotDays: Figure;
    readonly declineDays: Figure;
    readonly killDays: Figure;
  };
  /** Injury above freezing: degree-hours below `below` [°C] that injure, `dose` [K h]; null where not known. */
  readonly chill: { readonly below: Figure; readonly dose: Figure } | null;
  /** A wet mix colder than this for more than five days invites rot [°C, 24-h mean]. */
  readonly wetColdBelow: Figure;
  /** Months in which it is kept dry whatever the weather (1 January … 12, southern places shifted by six); null where none. */
  readonly dryMonths: { readonly from: Figure; readonly to: Figure } | null;
  /** Daytime air in which growers find it comfortable [°C]; null where no figure is in use. */
  readonly comfortAir: { readonly from: Figure; readonly to: Figure } | null;
}

/** A figure read in a named publication or page. */
export function published(value: number, source: string, confidence: Confidence = 'high'): Figure {
  return { value, source, confidence };
}

/** A figure inferred or computed from a named source that does not state it. */
export function derived(value: number, source: string, confidence: Confidence = 'medium'): Figure {
  return { value, source: `derived from ${source}`, confidence };
}

/** Common practice, or a placeholder set by judgement: no source. */
export function practice(value: number): Figure {
  return { value, source: 'common practice, no source', confidence: 'low' };
}

/** From memory of textbooks and extension leaflets, not read again. */
export function remembered(value: number, confidence: Confidence = 'low'): Figure {
  return { value, source: 'from memory', confidence };
}

/** It stands still in warm dim places; the reason in the grower's words (common practice, no source). */
export function standsStill(reason: string): Trait {
  return { value: true, reason, source: 'common practice, no source', confidence: 'low' };
}

/** It stretches in warm dim places; the reason in the grower's words. */
export function drawsUp(reason: string, source = 'common practice, no source'): Trait {
  return { value: false, reason, source, confidence: source.startsWith('common') ? 'low' : 'medium' };
}

/** Hardening of tender plants: the gain is placed by judgement at 1–3 K, all of it by a mean of 5 °C. */
export function hardensBy(gain: Figure, below = practice(15), span = practice(10)): PlantGroup['hardening'] {
  return { gain, below, span };
}

/** Tropical and forest plants: cold does not make them hardier (common practice, no source). */
export const neverHardens: PlantGroup['hardening'] = hardensBy(practice(0));

/**
 * Heat dose; day counts shaped by Erwin et al., in whose trial plants that could not bear a constant 28 °C died within
 * 10–15 weeks: rest after 14 days, decline after 42, death after 84.
 */
export function heatDose(
  hotDay: number,
  hotDays = 5,
  days = 14,
  declineDays = 42,
  killDays = 84,
): PlantGroup['heatDose'] {
  return {
    days: derived(days, 'Erwin et al., constant-temperature trial; placeholder', 'low'),
    hotDay: practice(hotDay),
    hotDays: practice(hotDays),
    declineDays: derived(declineDays, 'Erwin et al., constant-temperature trial; placeholder', 'low'),
    killDays: derived(killDays, 'Erwin et al., constant-temperature trial: dead within 10–15 weeks', 'low'),
  };
}

/** Chilling dose common to the tropical groups: degree-hours below 12 °C, injury expected at about 500 K h. */
export const tropicalChill: PlantGroup['chill'] = {
  below: published(
    12,
    'University of Florida extension, chilling of foliage plants (0 to 8–12 °C)',
    'medium',
  ),
  dose: practice(500),
};

/** No flowering cue by day length known. */
export const dayNeutral: DayLengthCue = {
  kind: 'none',
  critical: null,
  days: null,
  coolBelow: null,
  noneBelow: null,
};

/** A cue by day length alone, with how many days are needed where that is known. */
export function dayLengthCue(
  kind: 'short' | 'long',
  critical: Figure,
  days: Figure | null = null,
): DayLengthCue {
  return { kind, critical, days, coolBelow: null, noneBelow: null };
}

/** A flowering note; from memory where no source is given. */
export function flowering(
  words: string,
  weeksAfterCue: readonly [number, number] | null = null,
  source = 'from memory',
): PlantGroup['flowering'] {
  return { words, weeksAfterCue, source };
}
