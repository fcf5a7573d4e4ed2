import { limitingFactors, planEdits, planGroup } from '../../core/index.ts';
import type { Confidence, Lot, Plan, PlantGroup } from '../../core/index.ts';

/** The catalogue's figures on which a limiting factor turns: the edge of its state is as sure as the least sure of them. */
function figuresOf(group: PlantGroup, factor: string): readonly Confidence[] {
  const { temperature, light, dayLength } = group;
  switch (factor) {
    case 'cold':
      return [temperature.base.confidence, temperature.optimumLow.confidence];
    case 'heat':
      return [temperature.slow.confidence, temperature.ceiling.confidence];
    case 'dark':
      return [light.hold.confidence, light.stretch.confidence];
    case 'dry':
      return [group.waterDays.confidence];
    case 'day-length':
      return dayLength.critical ? [dayLength.critical.confidence] : [];
    default:
      return [light.good.confidence, temperature.optimumLow.confidence];
  }
}

const order: readonly Confidence[] = ['low', 'medium', 'high'];
const words: Record<Confidence, string> = {
  low: 'a grower’s estimate',
  medium: 'from handbooks',
  high: 'well founded',
};

/** How well founded the figures behind a lot's state are, in words; '' where the catalogue says nothing of it. */
export function founded(plan: Plan, lot: Lot, limiting: number): string {
  if (Object.keys(planEdits(plan, lot.group)).length > 0) return 'with your own figures';
  const group = planGroup(plan, lot.group);
  const found = group ? figuresOf(group, limitingFactors[limiting].id) : [];
  if (found.length === 0) return '';
  return words[order[Math.min(...found.map((confidence) => order.indexOf(confidence)))]];
}
