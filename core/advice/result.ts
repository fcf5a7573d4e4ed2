import type { Lamp } from '../plan/equipment.ts';

/** A wish: one sentence made of choices. Weeks are day indices of the season. */
export type Wish =
  | {
      readonly kind: 'keep-growing';
      readonly lotId: string;
      readonly fromDay: number;
      readonly toDay: number;
    }
  | {
      readonly kind: 'safe-rest';
      readonly lotId: string;
      readonly neverBelow: number;
      readonly weeks: number;
    }
  | { readonly kind: 'hold-temperature'; readonly placeId: string; readonly temperature: number }
  | { readonly kind: 'daily-light'; readonly placeId: string; readonly least: number };

export type LeverId = 'lamp-hours' | 'lamp-power' | 'heater-set-point' | 'lining' | 'fleece';

export interface StateShift {
  readonly lotId: string;
  /** Days gained (positive) or lost in each state, indexed as `plantStates`. */
  readonly days: readonly number[];
  readonly frostHours: number;
}

export interface Way {
  readonly lever: LeverId;
  readonly placeId: string;
  /** In the grower's words, with the figure: "Lamp on 14 h 30 a day instead of 10 h". */
  readonly words: string;
  readonly from: number;
  readonly to: number;
  readonly unit: string;
  readonly fulfils: boolean;
  /** How far from the wish it stays where it does not fulfil it, in words; '' where it does. */
  readonly shortfall: string;
  /** Extra cost a season: running, and purchase spread over its life, in the plan's currency. */
  readonly runningCost: number;
  readonly purchaseCost: number;
  readonly purchase: number;
  readonly electricity: number;
  readonly shifts: readonly StateShift[];
  readonly cautions: readonly string[];
  /** The plan with the change made; `applyWay` gives it. */
  readonly change: PlanChange;
}

/** A change to one place that the interface can try and keep. */
export interface PlanChange {
  readonly placeId: string;
  readonly lampIndex?: number;
  readonly lamp?: Partial<Lamp>;
  readonly addLamp?: Lamp;
  readonly heaterSetPoint?: number;
  /** Power of the heater to buy where there is none [W]: up to 100 W a tube, above it a fan heater. */
  readonly heaterPower?: number;
  readonly lining?: string | null;
  readonly fleece?: { readonly covering: string; readonly layers: number } | null;
}

export interface WaysResult {
  readonly wish: Wish;
  readonly already: boolean;
  readonly now: string;
  readonly ways: readonly Way[];
  readonly outOfReach: boolean;
}

export interface LampOption {
  readonly name: string;
  readonly lamps: readonly Lamp[];
}

export interface LampComparison {
  readonly name: string;
  readonly watts: number;
  readonly average: number;
  readonly least: number;
  readonly most: number;
  /** Least over average, 0–1. */
  readonly evenness: number;
  /** mol m⁻² d⁻¹ at the option's own hours, lamps alone. */
  readonly dailyLight: number;
  readonly hours: number;
  readonly photonsOnArea: number;
  readonly kwhWinter: number;
  readonly costWinter: number;
  readonly heaterCostWinter: number;
  readonly costPerMole: number;
  /** Years to repay the dearer purchase against the first option; null where it never does. */
  readonly yearsToRepay: number | null;
  /** Change of the winter's mean daytime air, and of its mean nightly least, against the first option [K]. */
  readonly airDayChange: number;
  readonly airNightChange: number;
  readonly price: number;
  /** State in mid-winter and days growing in winter of each lot in the place. */
  readonly lots: readonly {
    readonly lotId: string;
    readonly midWinterState: number;
    readonly growingDays: number;
  }[];
  /** Photon flux density map over the growing area, row by row [µmol m⁻² s⁻¹]. */
  readonly map: Float64Array;
  readonly columns: number;
  readonly rows: number;
  readonly areaLength: number;
  readonly areaWidth: number;
}
