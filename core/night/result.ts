import type { HeatPart, Heights } from '../season/result.ts';

/** What the user says about tonight. Temperatures [°C], cloud in oktas 0–8 (null: unknown, taken as clear), wind at 10 m [m s⁻¹]. */
export interface NightInput {
  readonly dateISO: string;
  readonly duskTemperature: number;
  readonly low: number;
  readonly cloudOktas: number | null;
  readonly wind: number | null;
  /** Half-width of the forecast error [K]; 2 K where the user has not set it. */
  readonly band: number;
}

export interface NightLot {
  readonly lotId: string;
  readonly groupId: string;
  /** Temperature below which the group is harmed tonight [°C] (dry or moist as the season says) and the least leaf temperature. */
  readonly limit: number;
  readonly leastLeaf: number;
  /** Kelvin between the two; negative is harm. */
  readonly margin: number;
}

/** What a burner takes tonight. */
export interface FuelNight {
  readonly heaterId: string;
  readonly name: string;
  readonly unit: 'kg' | 'litres';
  readonly amount: number;
  /** Full bottle or tank; null where the plan has none. */
  readonly tank: number | null;
  /** When a tank that was full at dusk runs empty; null where it lasts or there is none. */
  readonly emptyAtMs: number | null;
}

/** Heat tonight by where it goes [kWh], positive outwards; the parts add up to nothing. */
export interface NightHeat {
  readonly name: string;
  readonly kind: HeatPart['kind'];
  readonly kwh: number;
}

export interface CheapAct {
  readonly id: 'fleece' | 'lining' | 'warm-water' | 'lamp-at-night' | 'screen' | 'small-heater';
  readonly words: string;
  /** Rise of the night's least leaf temperature [K] and what it costs tonight, in the plan's currency. */
  readonly kelvin: number;
  readonly cost: number;
}

export interface PlaceNight {
  readonly placeId: string;
  /** Every `stepMinutes` from `startMs`: inside air and leaf with the heaters there are, air with none, heat given [W]. */
  readonly air: Float64Array;
  readonly leaf: Float64Array;
  readonly airUnheated: Float64Array;
  readonly heaterPower: Float64Array;
  readonly airColdForecast: Float64Array;
  readonly airWarmForecast: Float64Array;
  readonly least: number;
  readonly leastMs: number;
  readonly leastUnheated: number;
  readonly lots: readonly NightLot[];
  /** Smallest margin over the lots [K]; +infinity never: null where the place is empty. */
  readonly margin: number | null;
  /** Power that would hold the neediest limit all night [W], 0 where none is needed. */
  readonly powerNeeded: number;
  readonly powerThere: number;
  /** First instant at which the heater there is no longer enough; null where it holds or none is needed. */
  readonly failsAtMs: number | null;
  readonly heaterKwh: number;
  readonly cost: number;
  /** Hours from a power cut at the coldest hour's eve (22:00) until the first lot is harmed; null where none is by morning. */
  readonly hoursToHarm: number | null;
  /** Heights at the instant of the least inside air. */
  readonly heights: Heights;
  readonly fuels: readonly FuelNight[];
  readonly heat: readonly NightHeat[];
  /** Hours with water on the cover and on the leaves, and most carbon dioxide [ppm]. */
  readonly dewHours: number;
  readonly leafDewHours: number;
  readonly mostCarbonDioxide: number;
  readonly acts: readonly CheapAct[];
  readonly verdict: 'safe' | 'close' | 'harm';
  readonly words: string;
}

/** Tonight in the open air: no heater, nothing but the sky over the plants that stand there. */
export interface OutdoorNight {
  /** Every `stepMinutes` from `startMs`: the leaf of a plant in the open [°C], and where the night is colder or warmer by the band. */
  readonly leaf: Float64Array;
  readonly leafColdForecast: Float64Array;
  readonly leafWarmForecast: Float64Array;
  readonly least: number;
  readonly leastMs: number;
  readonly lots: readonly NightLot[];
  /** Smallest margin over the lots [K]. */
  readonly margin: number;
  readonly verdict: 'safe' | 'close' | 'harm';
  readonly words: string;
}

export interface NightResult {
  readonly startMs: number;
  readonly stepMinutes: number;
  readonly n: number;
  readonly outdoor: Float64Array;
  readonly skyTemperature: Float64Array;
  readonly input: NightInput;
  /** Worst first. */
  readonly places: readonly PlaceNight[];
  /** Null where nothing stands outdoors on the night's date. */
  readonly outdoors: OutdoorNight | null;
}
