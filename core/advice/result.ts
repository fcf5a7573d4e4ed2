import type { Lamp } from '../plan/equipment.ts';
import type { BurnRisk, FieldLevel } from '../light/index.ts';

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

/**
 * How options are set side by side: as they are given; every option's watts scaled until the lamps' daily light
 * on the area is the first lit option's; or until the watts of all lamps are the first lit option's.
 */
export type LampView = 'as-given' | 'equal-light' | 'equal-watts';

/** One calendar month of the winter half-year. */
export interface LampMonth {
  /** 1 January … 12 December. */
  readonly month: number;
  readonly kwh: number;
  readonly cost: number;
  readonly heaterCost: number;
}

export interface LampComparison {
  readonly name: string;
  /** The lamps as they were run: scaled where the view asks for it. */
  readonly lamps: readonly Lamp[];
  /** What watts and light were multiplied by for the view; 1 as given. */
  readonly scale: number;
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
  /** The winter's months in order, and the dearest of them all running. */
  readonly months: readonly LampMonth[];
  /** Heat given by heaters in winter [kWh]. */
  readonly heaterKwhWinter: number;
  /** Purchase price worn off by the hours burnt in a winter: price × hours ÷ life. */
  readonly wearWinter: number;
  /** Daily light of daylight and lamps together, mean of the winter [mol m⁻² d⁻¹]. */
  readonly dailyLightWithDay: number;
  /** Hottest leaf of the winter [°C]. */
  readonly leafMost: number;
  readonly burn: BurnRisk;
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
    /** What holds it back on most winter days: index into `limitingFactors`. */
    readonly limiting: number;
  }[];
  /** Photon flux density map over the growing area, row by row [µmol m⁻² s⁻¹]. */
  readonly map: Float64Array;
  readonly columns: number;
  readonly rows: number;
  readonly areaLength: number;
  readonly areaWidth: number;
  /** The light of each level of plants, the lower one first. */
  readonly levels: readonly FieldLevel[];
}

/** One point of the chart of daily light against cost. */
export interface LampChartPoint {
  readonly height: number;
  readonly dimming: number;
  /** Mean over the growing area [mol m⁻² d⁻¹], and the lamps' electricity in a month of 30 days. */
  readonly dailyLight: number;
  readonly evenness: number;
  readonly kwhMonth: number;
  readonly costMonth: number;
}

/** A placing of a lamp's hours, run through the season. Costs and energies are of the whole season. */
export interface LampPlacing {
  /** The lamp with its hours so placed. */
  readonly lamp: Lamp;
  readonly on: string;
  readonly off: string;
  readonly second: { readonly on: string; readonly off: string } | null;
  /** For a lamp that lengthens the natural day: at which end; null for one by the clock. */
  readonly end: 'dawn' | 'dusk' | 'both' | null;
  readonly lampKwh: number;
  readonly lampCost: number;
  readonly heaterKwh: number;
  readonly heaterCost: number;
  /** Lamps, heaters and fans together, and what that saves against the hours as they are (negative: costs more). */
  readonly cost: number;
  readonly saves: number;
  readonly savesKwh: number;
  /** Longest day of the plants in winter [h]. */
  readonly longestDay: number;
  /** Lots whose winter states change: days growing more (positive) or fewer. */
  readonly lots: readonly { readonly lotId: string; readonly growingDays: number }[];
  /** Why it is not proposed though cheaper; null where nothing speaks against it. */
  readonly against: string | null;
}

export interface LampPlacings {
  readonly placeId: string;
  readonly lampId: string;
  readonly hours: number;
  readonly now: LampPlacing;
  /** Cheapest first, those with something against them last. */
  readonly placings: readonly LampPlacing[];
  /** The cheapest that saves and has nothing against it; null where the hours as they are do best. */
  readonly proposed: LampPlacing | null;
}

export type * from './certainty-result.ts';
export type * from './calendar-result.ts';
export type * from './rank-result.ts';
export type * from './flower-result.ts';
export type * from './site-card-result.ts';
