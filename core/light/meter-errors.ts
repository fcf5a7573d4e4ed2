import { lampTechnology } from '../plan/lamps.ts';
import type {
  Band,
  DaylightReading,
  MeterError,
  MeterKind,
  MeterReading,
  SkyState,
} from './meter-reading.ts';

/**
 * Relative errors of a reading, each about what nine readings of ten keep within. Those of instruments are from
 * memory of data sheets and class limits (CIE S 023: a class B illuminance meter within about 6–10 % in all).
 */
const instrument: Readonly<Record<'lux' | 'ppfd', Readonly<Record<MeterKind, number>>>> = {
  lux: { cheap: 0.15, good: 0.05, quantum: 0.08 },
  ppfd: { cheap: 0.2, good: 0.1, quantum: 0.06 },
};
const instrumentWords: Readonly<Record<MeterKind, string>> = {
  cheap: 'a cheap meter',
  good: 'a good meter',
  quantum: 'a quantum meter',
};

/** Light that comes aslant is read wrong, most by a cheap meter (from memory of cosine errors at 60°). */
const aslant: Readonly<Record<MeterKind, number>> = { cheap: 0.08, good: 0.03, quantum: 0.03 };

/** Lux a micromole of sun and sky: 52 of blue sky to 55 of the sun (Thimijan & Heins 1983; black body of 5,800 K). */
const daylightConversion = 0.05;

/** Spread of a lamp's lux a micromole by how sure the catalogue is of it (spread of published factors; derived). */
const lampConversion = { high: 0.05, medium: 0.08, low: 0.15 } as const;

/** Under this many lux a micromole the light lies on the skirts of the eye's curve, where lux meters stray most. */
const skirtLux = 20;
const skirtConversion = 0.4;

/** A spot under a roof changes with bars, gutters and the sun's angle; on a sill with the window (estimates, no source). */
const placeErrors: Readonly<Record<'under glass' | 'sill', Readonly<Record<SkyState, number>>>> = {
  'under glass': { clear: 0.12, broken: 0.1, overcast: 0.05 },
  sill: { clear: 0.25, broken: 0.2, overcast: 0.1 },
};
const unknownFacing: Readonly<Record<SkyState, number>> = { clear: 0.8, broken: 0.5, overcast: 0.1 };

/** Day-to-day spread of the day's sum under a sky (48 days at 52° N in February and March; derived). */
const levelErrors: Readonly<Record<SkyState, number>> = { clear: 0.12, broken: 0.5, overcast: 0.6 };

/**
 * How far one reading leads astray about the rest of the day, by sky and sun: set so that nine of ten 5-minute readings of
 * 48 days at 52° N in February and March hold their own day's sum. @param elevation of the sun [degrees]
 */
export function dayError(sky: SkyState, elevation: number): number {
  return sky === 'clear' ? 0.12 + 2.5 / elevation : 0.5 + 19 / elevation;
}

export const levelError = (sky: SkyState): number => levelErrors[sky];

/** Errors of the reading itself: the meter, the conversion to photons, the angle of the light. */
export function readingErrors(reading: MeterReading, elevation: number): MeterError[] {
  const { meter, unit, light } = reading;
  const kind = unit === 'ppfd' ? 'ppfd' : 'lux';
  const errors: MeterError[] = [
    { id: 'meter', words: `what ${instrumentWords[meter]} is good to`, share: instrument[kind][meter] },
  ];
  if (kind === 'lux') errors.push(conversionError(reading));
  const slant =
    light.kind === 'daylight'
      ? light.sky === 'clear'
        ? 1 + 2 * (1 - Math.sin((Math.max(0, elevation) * Math.PI) / 180))
        : 1.5
      : 1;
  const words =
    light.kind === 'daylight'
      ? 'light of a low sun and of the whole sky comes aslant'
      : 'light that comes aslant';
  errors.push({ id: 'angle', words, share: aslant[meter] * slant });
  return errors;
}

function conversionError({ light }: MeterReading): MeterError {
  if (light.kind === 'daylight') {
    return {
      id: 'conversion',
      words: 'lux to photons: sun and sky differ in colour',
      share: daylightConversion,
    };
  }
  const { luxPerMicromole } = lampTechnology(light.technology);
  return luxPerMicromole.value < skirtLux
    ? {
        id: 'conversion',
        words: 'lux to photons: a lux meter hardly sees red and blue',
        share: skirtConversion,
      }
    : {
        id: 'conversion',
        words: 'lux to photons: lamps of this kind differ in colour',
        share: lampConversion[luxPerMicromole.confidence],
      };
}

/** Errors of carrying daylight readings over the day: the sky at each sun's elevation [degrees], and the spot. */
export function spotErrors(reading: DaylightReading, elevations: readonly number[]): MeterError[] {
  const day =
    elevations.reduce((sum, elevation) => sum + dayError(reading.sky, elevation), 0) / elevations.length;
  const errors: MeterError[] = [
    { id: 'day', words: dayWords[reading.sky], share: day / Math.sqrt(elevations.length) },
  ];
  if (reading.where === 'under glass') {
    const share = placeErrors['under glass'][reading.sky];
    errors.push({ id: 'place', words: 'bars and gutters throw shadows that wander', share });
  } else if (reading.where === 'sill') {
    const known = reading.facing !== undefined && reading.facing !== null;
    const share = (known ? placeErrors.sill : unknownFacing)[reading.sky];
    const words = known ? 'the sun comes and leaves the window' : 'which way the window faces is not known';
    errors.push({ id: 'place', words, share });
  }
  return errors;
}

const dayWords: Readonly<Record<SkyState, string>> = {
  clear: 'haze and passing cloud in the rest of the day',
  broken: 'sun in and out through the rest of the day',
  overcast: 'cloud grows thick and thin through the rest of the day',
};

/** Errors taken as independent: root of the sum of their squares. */
export function together(errors: readonly { readonly share: number }[]): number {
  return Math.sqrt(errors.reduce((sum, { share }) => sum + share * share, 0));
}

/** The band of a figure: a relative error e makes it ÷ (1 + e) to × (1 + e), so that no light is below nought. */
export function bandOf(value: number, error: number): Band {
  return { value, low: value / (1 + error), high: value * (1 + error) };
}
