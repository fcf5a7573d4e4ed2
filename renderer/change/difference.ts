import { plantStates } from '../../core/index.ts';
import type { LotSeason, SeasonResult } from '../../core/index.ts';

export interface LotDifference {
  readonly lotId: string;
  /** Days gained (positive) or lost in each state that changes, largest first; `code` indexes `plantStates`. */
  readonly states: readonly { readonly code: number; readonly days: number }[];
  readonly frostHours: number;
}

export interface Difference {
  readonly lots: readonly LotDifference[];
  readonly cost: number;
  /** Electricity and heat from heaters of all kinds [kWh]. */
  readonly electricity: number;
  readonly heat: number;
  readonly frostHours: number;
}

function lotDifference(before: LotSeason, after: LotSeason): LotDifference {
  const states = plantStates
    .map((_, code) => ({ code, days: after.stateDays[code] - before.stateDays[code] }))
    .filter((state) => Math.abs(state.days) >= 1)
    .sort((a, b) => b.days - a.days);
  return { lotId: after.lotId, states, frostHours: after.harm.frostHours - before.harm.frostHours };
}

/** What a change does to a season: only lots that it touches are named. */
export function differenceOf(before: SeasonResult, after: SeasonResult): Difference {
  const formerLots = new Map(before.lots.map((lot) => [lot.lotId, lot] as const));
  const lots = after.lots.flatMap((lot) => {
    const former = formerLots.get(lot.lotId);
    return former ? [lotDifference(former, lot)] : [];
  });
  return {
    lots: lots.filter((lot) => lot.states.length > 0 || Math.abs(lot.frostHours) >= 0.5),
    cost: after.totals.cost - before.totals.cost,
    electricity: after.totals.electricity - before.totals.electricity,
    heat: after.totals.heaterHeat - before.totals.heaterHeat,
    frostHours: lots.reduce((sum, lot) => sum + lot.frostHours, 0),
  };
}
