import type { Crossing, FlowerOutlook } from '../plants/index.ts';
import type { Plan } from '../plan/schema.ts';
import type { Stay } from './stays.ts';

/**
 * What a season run gives. Days run from the season's first day (1 August, or 1 February south of the
 * equator) for 365 days; every daily series is a Float64Array of that length, a day being the site's
 * civil day in standard time. Every number is finite.
 */
export interface DailySeries {
  /** Least, mean and most inside air temperature of the day [°C]. */
  readonly airLeast: Float64Array;
  readonly airMean: Float64Array;
  readonly airMost: Float64Array;
  /** Mean of the inside air while the sun is up or the lamps are on [°C]. */
  readonly airDay: Float64Array;
  /** Least, mean and most leaf temperature, and its mean over the dark hours [°C]. */
  readonly leafLeast: Float64Array;
  readonly leafMean: Float64Array;
  readonly leafMost: Float64Array;
  readonly leafNight: Float64Array;
  /** Mean and least temperature of pots and mix, which is that of the roots [°C]. */
  readonly potMean: Float64Array;
  readonly potLeast: Float64Array;
  /** Daily light at plant level [mol m⁻² d⁻¹] from the sky and from lamps, averaged over the growing area. */
  readonly daylight: Float64Array;
  readonly lampLight: Float64Array;
  /** Hours of light that plants count as day: civil twilight to civil twilight joined with lamp hours [h]. */
  readonly photoperiod: Float64Array;
  /** Heat given by heaters [kWh d⁻¹] and electricity of lamps and fans [kWh d⁻¹]. */
  readonly heaterHeat: Float64Array;
  readonly lampElectricity: Float64Array;
  readonly fanElectricity: Float64Array;
  /** Running cost of the day in the plan's currency: heaters, lamps and fans, and of it the lamps. */
  readonly cost: Float64Array;
  readonly lampCost: Float64Array;
  /** Hours in which the air is at 90 % relative humidity or more, and in which water forms on the cover [h d⁻¹]. */
  readonly dampHours: Float64Array;
  readonly dewHours: Float64Array;
  /** Hours in which water forms on the leaves, and in which grey mould may start by the plan's `mouldRule` [h d⁻¹]. */
  readonly leafDewHours: Float64Array;
  readonly mouldHours: Float64Array;
  /** Hours in which the heaters run at full power and the air still falls below the set point [h d⁻¹]. */
  readonly shortfallHours: Float64Array;
}

export interface OutdoorDaily {
  readonly least: Float64Array;
  readonly mean: Float64Array;
  readonly most: Float64Array;
  /** Outdoor daily light on the horizontal [mol m⁻² d⁻¹] and day length, sunrise to sunset [h]. */
  readonly daylight: Float64Array;
  readonly dayLength: Float64Array;
}

/** Heat over the season by where it goes [kWh]; positive leaves the inside air and contents. */
export interface HeatPart {
  readonly name: string;
  readonly kind: 'surface' | 'air' | 'ground' | 'room' | 'sun' | 'lamps' | 'heaters' | 'fans' | 'storage';
  /** Net heat out over the season, and over its coldest night (dusk to dawn) [kWh]. */
  readonly season: number;
  readonly coldestNight: number;
  /** The same day by day, midnight to midnight, and over the dark hours from the noon of a day to the next noon [kWh]. */
  readonly days: Float64Array;
  readonly nights: Float64Array;
}

/** Air temperature by height and from the middle to the edge of the growing area at one instant [°C]. */
export interface Heights {
  readonly floor: number;
  readonly bench: number;
  readonly ridge: number;
  readonly middle: number;
  readonly edge: number;
}

/** What a burner takes over a season. */
export interface FuelUse {
  readonly heaterId: string;
  readonly name: string;
  readonly unit: 'kg' | 'litres';
  /** Over the season, and on the day that took most. */
  readonly amount: number;
  readonly mostInADay: number;
  /** Full bottle or tank, and how often it is emptied over the season; null where the plan has none. */
  readonly tank: number | null;
  readonly fillings: number | null;
}

/** One cause by which the network differs from the handbook sum: positive where the network needs more [W]. */
export interface HandbookReason {
  readonly words: string;
  readonly watts: number;
}

/** Steady heat loss by the handbook sum: Σ U·A·ΔT + 0.33·n·V·ΔT + perimeter. */
export interface HandbookLoss {
  /** Σ U·A, ventilation and perimeter conductances [W K⁻¹]. */
  readonly fabric: number;
  readonly air: number;
  readonly ground: number;
  /** Design inside and outside temperatures [°C] and the loss between them [W]. */
  readonly inside: number;
  readonly outside: number;
  readonly loss: number;
  /** The same need by the network for a steady night at the same temperatures and a clear sky [W]. */
  readonly network: number;
  /** What makes the difference, cause by cause, largest first; they add up to it. */
  readonly reasons: readonly HandbookReason[];
  /** Why the two differ, in words; null where they differ by less than 20 %. */
  readonly reason: string | null;
}

export type StateCode = 0 | 1 | 2 | 3 | 4 | 5 | 6;

export interface Transition {
  readonly day: number;
  readonly from: number;
  readonly to: number;
  /** The crossing that caused it, in words with its figures, and as figures. */
  readonly because: string;
  readonly crossing: Crossing;
}

export interface HarmTotals {
  /** Degree-hours beyond the limit over the season [K h] for frost, chill, heat; hours or days for the others. */
  readonly frost: number;
  readonly chill: number;
  readonly heat: number;
  readonly scorch: number;
  readonly wetCold: number;
  /** Days of decline from lasting heat [d]. */
  readonly decline: number;
  /** Hours below the cold damage limit of the group [h]. */
  readonly frostHours: number;
  /** Deepest frost [K], most chill carried at once [K h] and days on which it injured [d]. */
  readonly frostDepth: number;
  readonly chillLoad: number;
  readonly chilled: number;
}

/** What a lot lived through, a day an entry: leaf and pot temperatures [°C], light [mol m⁻² d⁻¹], day length [h]. */
export interface LotDays {
  readonly leafLeast: Float64Array;
  readonly leafMean: Float64Array;
  readonly leafMost: Float64Array;
  readonly leafNight: Float64Array;
  readonly potMean: Float64Array;
  readonly dailyLight: Float64Array;
  readonly photoperiod: Float64Array;
}

export interface LotSeason {
  readonly lotId: string;
  readonly groupId: string;
  /** Where it stands on the season's first day (a place or `outdoors`), and all its stays. */
  readonly placeId: string;
  readonly stays: readonly Stay[];
  /** What it lived through where it stood, day by day. */
  readonly lived: LotDays;
  /** Index into `plantStates` for each day. */
  readonly state: Uint8Array;
  /** Share of each state in days, indexed as `plantStates`. */
  readonly stateDays: Float64Array;
  readonly temperatureIndex: Float64Array;
  readonly lightIndex: Float64Array;
  readonly growthIndex: Float64Array;
  readonly waterIndex: Float64Array;
  /** Carbon gain by night temperature, 0–1; where development runs ahead of it, growth is soft. */
  readonly carbonIndex: Float64Array;
  /** By how much development runs ahead of carbon gain, 0–1. */
  readonly softness: Float64Array;
  /** Remembered mean temperature [°C] and daily light [mol m⁻² d⁻¹] that the state is read from. */
  readonly rememberedLeaf: Float64Array;
  readonly rememberedLight: Float64Array;
  /** Index into `limitingFactors` for each day, and the share of the whole lack of growth that is its, 0–1. */
  readonly limiting: Uint8Array;
  readonly limitingShare: Float64Array;
  /** Kelvin to warm (positive) or cool (negative) and mol m⁻² d⁻¹ to add for the next better state; 0 where none. */
  readonly marginKelvin: Float64Array;
  readonly marginLight: Float64Array;
  /**
   * How far the next worse state is: kelvin it may cool (negative) or warm (positive), and mol m⁻² d⁻¹ it may lose
   * (negative); 0 where no such change makes it worse.
   */
  readonly spareKelvin: Float64Array;
  readonly spareLight: Float64Array;
  /** How hardened it is, 0–1, and the leaf temperature at which cold damage begins on the day [°C]. */
  readonly hardening: Float64Array;
  readonly coldLimit: Float64Array;
  /** Daily light for each degree above the base, as remembered [mol m⁻² d⁻¹ K⁻¹]; 0 at and below the base. */
  readonly photothermal: Float64Array;
  /** 1 on days on which it may be repotted. */
  readonly repot: Uint8Array;
  readonly flowering: FlowerOutlook;
  /** Daily harm doses. */
  readonly frostDose: Float64Array;
  readonly chillDose: Float64Array;
  /** Chill it still carries [K h], and 1 on days on which that load injures it [d]. */
  readonly chillLoad: Float64Array;
  readonly chilled: Float64Array;
  /** How far the coldest leaf was below the cold limit [K]. */
  readonly frostDepth: Float64Array;
  readonly heatDose: Float64Array;
  readonly scorchDose: Float64Array;
  readonly wetColdDose: Float64Array;
  /** Days on which heat has lasted so long that the plant declines [d]. */
  readonly declineDose: Float64Array;
  /** Share of the way from the first decline to death by lasting heat, 0–1; 1 is dead, for good. */
  readonly declineShare: Float64Array;
  readonly harm: HarmTotals;
  readonly transitions: readonly Transition[];
  /** 1 on days on which the mix is wet, so that the wet limit of cold counts. */
  readonly wet: Uint8Array;
  /** 'water' 0, 'sparingly' 1, 'hold' 2 for each day. */
  readonly watering: Uint8Array;
}

export interface PlaceSeason {
  readonly placeId: string;
  readonly daily: DailySeries;
  /** Lots that stand here on any day of the season: see their `stays`. */
  readonly lots: readonly LotSeason[];
  readonly totals: {
    readonly heaterHeat: number;
    readonly heaterElectricity: number;
    readonly lampElectricity: number;
    readonly fanElectricity: number;
    readonly cost: number;
    readonly heaterCost: number;
    readonly lampCost: number;
    readonly fanCost: number;
    readonly leastAir: number;
    readonly leastLeaf: number;
    readonly frostHours: number;
    readonly dampHours: number;
    readonly dewHours: number;
    readonly leafDewHours: number;
    readonly mouldHours: number;
    /** Most carbon dioxide in the inside air [ppm]; 400 is the open air. */
    readonly mostCarbonDioxide: number;
    readonly shortfallHours: number;
    /** Most electricity drawn at once by heaters, lamps and fans [W]. */
    readonly peakWatts: number;
    /** Average photon flux density of all lamps on the growing area at their dimming [µmol m⁻² s⁻¹]. */
    readonly lampPpfd: number;
    /** Daylight at plant level as a share of outdoors over the season, 0–1. */
    readonly daylightShare: number;
  };
  readonly heat: readonly HeatPart[];
  /** Heights at the instant of the season's least inside air. */
  readonly heights: Heights;
  /** A line for each burner; empty where none burns. */
  readonly fuels: readonly FuelUse[];
  readonly handbook: HandbookLoss;
  /** Largest imbalance of the air-and-contents energy balance, as a share of heat exchanged. */
  readonly energyResidual: number;
}

export interface SeasonResult {
  /** The plan that was run. */
  readonly plan: Plan;
  readonly planName: string;
  readonly weatherName: string;
  /** Season's first day at 00:00 standard time [epoch ms UTC], number of days, its ISO date. */
  readonly startMs: number;
  readonly days: number;
  readonly startDate: string;
  /** The first day as day of a common year, 0 = 1 January. */
  readonly startDay: number;
  /** Half-year that is winter at the site: first and last day index. */
  readonly winterFrom: number;
  readonly winterTo: number;
  readonly outdoor: OutdoorDaily;
  /** Plants in the open: what they would live through there, and the lots that stand there on any day. */
  readonly outdoors: { readonly lived: LotDays; readonly lots: readonly LotSeason[] };
  /** Every lot once, in the plan's order. */
  readonly lots: readonly LotSeason[];
  readonly places: readonly PlaceSeason[];
  readonly totals: { readonly cost: number; readonly electricity: number; readonly heaterHeat: number };
  readonly notes: readonly string[];
}
