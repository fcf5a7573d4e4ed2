import type { Crossing } from '../plants/index.ts';
import { lightNeeded, plantStates, thresholdsOf } from '../plants/index.ts';
import type { Transition } from '../season/result.ts';
import type { LotInSeason } from './calendar-lot.ts';

export function crossingOf({ lot, numbers }: LotInSeason, transition: Transition): Crossing {
  const given = (transition as { crossing?: Crossing }).crossing;
  if (given !== undefined) return given;
  const at = thresholdsOf(numbers);
  const { day, from, to } = transition;
  const id = plantStates[to].id;
  const was = plantStates[from].id;
  const warm = { series: 'mean of day and night, as remembered', value: lot.rememberedLeaf[day], unit: '°C' };
  const light = { series: 'daily light, as remembered', value: lot.rememberedLight[day], unit: 'mol/m²' };
  if (id === 'resting-cold') return { ...warm, threshold: at.coldBegins, way: 'fell below' };
  if (was === 'resting-cold') return { ...warm, threshold: at.coldEnds, way: 'rose above' };
  if (id === 'resting-heat') return { ...warm, threshold: at.heatBegins, way: 'rose above' };
  if (was === 'resting-heat') return { ...warm, threshold: at.heatEnds, way: 'fell below' };
  if (id === 'resting-dim' || id === 'stretching')
    return { ...light, threshold: 0.9 * lightNeeded(numbers, at, warm.value), way: 'fell below' };
  return { ...light, threshold: numbers.lightGood, way: id === 'slow' ? 'fell below' : 'rose above' };
}
