import type { Lamp } from '../plan/lamp.ts';
import { lampWatts } from '../light/index.ts';
import type { LampOption, LampView } from './result.ts';

/** An option with its lamps scaled for a view. */
export interface ScaledOption {
  readonly option: LampOption;
  readonly lamps: readonly Lamp[];
  readonly scale: number;
}

/** What of a lamp changes when it is made `scale` times as strong: watts and light alike, its shape, hours and height kept. */
export function strengthOf(
  lamp: Lamp,
  scale: number,
): Pick<Lamp, 'watts' | 'wattsAtHalf' | 'light' | 'beam'> {
  return {
    watts: lamp.watts * scale,
    wattsAtHalf: lamp.wattsAtHalf === null ? null : lamp.wattsAtHalf * scale,
    ...scaledLight(lamp, scale),
  };
}

/** A lamp `scale` times as strong. */
export const scaledLamp = (lamp: Lamp, scale: number): Lamp =>
  scale === 1 ? lamp : { ...lamp, ...strengthOf(lamp, scale) };

function scaledLight({ light, beam }: Lamp, scale: number): Pick<Lamp, 'light' | 'beam'> {
  switch (light.kind) {
    case 'efficacy':
      return { light, beam };
    case 'lumens':
      return { light: { ...light, lumens: light.lumens * scale }, beam };
    case 'reading':
      return { light: { ...light, value: light.value * scale }, beam };
    case 'file': {
      if (beam.kind !== 'file') return { light, beam };
      const candela = beam.photometry.candela.map((value) => value * scale);
      return { light, beam: { ...beam, photometry: { ...beam.photometry, candela } } };
    }
  }
}

/**
 * Scales every option to the first that burns at all: to its daily light in winter as the season gives it (light
 * is proportional to watts, so one factor does), or to its watts. An option without light stays as it is.
 */
export function scaledOption(
  options: readonly LampOption[],
  view: Exclude<LampView, 'as-given'>,
  dailyLight: (lamps: readonly Lamp[]) => number,
): ScaledOption[] {
  const measure = (option: LampOption) =>
    view === 'equal-watts'
      ? option.lamps.reduce((sum, lamp) => sum + lampWatts(lamp), 0)
      : option.lamps.length === 0
        ? 0
        : dailyLight(option.lamps);
  const measured = options.map(measure);
  const target = measured.find((value) => value > 0) ?? 0;
  return options.map((option, index) => {
    const scale = measured[index] > 0 ? target / measured[index] : 1;
    return { option, scale, lamps: option.lamps.map((lamp) => scaledLamp(lamp, scale)) };
  });
}
