/** A day of the year `MM-DD`: median of years, and one year in ten; null where most years have none. */
export interface FrostDay {
  readonly median: string | null;
  readonly oneInTen: string | null;
}

/** What a site's climate is to plants, from many years. */
export interface SiteCard {
  /** Years looked at, and where they come from in words. */
  readonly years: number;
  readonly origin: string;
  /** How much colder than the station clear still nights were taken to be: the frost hollow of the site [K]. */
  readonly frostHollow: number;
  /** Mean of the yearly minima, and the minimum of one year in ten [°C]. */
  readonly meanMinimum: number;
  readonly tenthMinimum: number;
  /**
   * Hardiness zone of the US Department of Agriculture by the mean of yearly minima (`8b`), and the rating of the Royal
   * Horticultural Society that plants need to stand all but one winter in ten (`H4`).
   */
  readonly zone: string;
  readonly rating: string;
  /** First frost of autumn and last of spring, air at or below 0 °C; one in ten: the early first, the late last. */
  readonly firstFrost: FrostDay;
  readonly lastFrost: FrostDay;
  /** Frost-free days between, median of years; 365 where there is no frost. */
  readonly frostFreeDays: number;
  /** Days a year with air at or below 0 °C, and at or above 30 °C (mean of years). */
  readonly frostDays: number;
  readonly hotDays: number;
  /** Growing-degree sums above 5 and 10 °C [K d], and hours of the winter half-year from 0 to 7.2 °C [h], mean of years. */
  readonly growingDegrees5: number;
  readonly growingDegrees10: number;
  readonly chillHours: number;
  /** By month, January first: mean daily least and most air [°C], day length at mid-month, sunrise to sunset [h], outdoor daily light [mol m⁻² d⁻¹]. */
  readonly months: readonly SiteMonth[];
  /** Where the season's winter half-year lies, first and last day `MM-DD`, and by what it was found in words. */
  readonly winter: { readonly from: string; readonly to: string; readonly words: string };
}

export interface SiteMonth {
  readonly least: number;
  readonly most: number;
  readonly dayLength: number;
  readonly light: number;
}
