import type { Plan } from '../plan/schema.ts';
import { daylight } from '../sun/index.ts';
import { monthStarts, wintersOf } from '../weather/index.ts';
import type { WeatherYear } from '../weather/index.ts';
import { outdoorDaily, prepareSiteYear } from '../season/index.ts';
import type { OutdoorDaily, SiteYear } from '../season/index.ts';
import type { FrostDay, SiteCard, SiteMonth } from './site-card-result.ts';
import { winterWords } from './site-card-words.ts';
import { cardYear, frostSpan } from './site-card-years.ts';
import type { CardYear } from './site-card-years.ts';
import { hardinessZone, ratingFor } from './site-card-zones.ts';

/** Years drawn for a card: the mean of yearly minima is then known to 0.4 K where they differ by 2 K. */
export const cardYears = 30;

/**
 * What a site's climate is to plants, from thirty years of weather without any place. The garden's frost hollow lowers
 * clear still nights as it does outdoors in the season. Drawn years leave out the one shown, which keeps to its normals.
 */
export function siteCard(plan: Plan, weather: WeatherYear): SiteCard {
  const year = prepareSiteYear(plan, weather, 'site card');
  const climate = plan.climate.kind === 'normals' ? plan.climate : null;
  const winters = wintersOf(climate, weather, plan.site);
  const { frostHollow } = year.site;
  const inWinter = winterDays(year);
  const drawn = winters.count === null;
  const years = Array.from({ length: winters.count ?? cardYears }, (_, index) =>
    cardYear(winters.winter(drawn ? index + 1 : index), frostHollow, inWinter),
  );
  const minima = years.map(({ minimum }) => minimum);
  const meanMinimum = mean(minima);
  const tenthMinimum = quantile(minima, 0.1);
  return {
    years: years.length,
    origin: winters.origin,
    frostHollow,
    meanMinimum,
    tenthMinimum,
    zone: hardinessZone(meanMinimum),
    rating: ratingFor(tenthMinimum).id,
    ...frosts(years),
    frostDays: mean(years.map(({ frostDays }) => frostDays)),
    hotDays: mean(years.map(({ hotDays }) => hotDays)),
    growingDegrees5: mean(years.map(({ growingDegrees5 }) => growingDegrees5)),
    growingDegrees10: mean(years.map(({ growingDegrees10 }) => growingDegrees10)),
    chillHours: mean(years.map(({ chillHours }) => chillHours)),
    months: monthsOfCard(years, year),
    winter: {
      from: monthDay(year.startDay + year.winter.from),
      to: monthDay(year.startDay + year.winter.to),
      words: winterWords(year.site.latitude, monthMeans(years)),
    },
  };
}

/** 1 for each day of the year, 1 January first, that is of the winter half-year. */
function winterDays({ startDay, winter }: SiteYear): Uint8Array {
  const days = new Uint8Array(365);
  for (let day = winter.from; day <= winter.to; day++) days[(startDay + day) % 365] = 1;
  return days;
}

/** Frost dates, each year run from the middle of the month whose nights are mildest. */
function frosts(years: readonly CardYear[]): Pick<SiteCard, 'firstFrost' | 'lastFrost' | 'frostFreeDays'> {
  const nights = monthly(years, ({ least }) => least);
  const mildest = nights.indexOf(Math.max(...nights));
  const summer = monthStarts[mildest] + 15;
  const spans = years.map(({ least }) => frostSpan(least, summer));
  const first = spans.map((span) => span?.first ?? Infinity);
  const last = spans.map((span) => span?.last ?? -Infinity);
  const day = (value: number) => (Number.isFinite(value) ? monthDay(summer + value) : null);
  const frostDay = (values: readonly number[], rare: number): FrostDay => ({
    median: day(quantile(values, 0.5)),
    oneInTen: day(quantile(values, rare)),
  });
  return {
    firstFrost: frostDay(first, 0.1),
    lastFrost: frostDay(last, 0.9),
    frostFreeDays: quantile(
      spans.map((span) => (span === null ? 365 : 364 - span.last + span.first)),
      0.5,
    ),
  };
}

function monthsOfCard(years: readonly CardYear[], year: SiteYear): SiteMonth[] {
  const least = monthly(years, (each) => each.least);
  const most = monthly(years, (each) => each.most);
  const photons = photonsPerMegajoule(year, outdoorDaily(year, 0));
  return least.map((value, month) => {
    const sun = daylight(`2025-${String(month + 1).padStart(2, '0')}-15`, year.site);
    return {
      least: value,
      most: most[month],
      dayLength: sun.hours,
      light: mean(years.map(({ radiation }) => radiation[month])) * photons[month],
    };
  });
}

/** Photons 400–700 nm of a megajoule of sunlight in each month of the shown year [mol MJ⁻¹], 0 where the sun stays down. */
function photonsPerMegajoule({ steps }: SiteYear, outdoor: OutdoorDaily): number[] {
  const perDay = 1440 / steps.stepMinutes;
  return Array.from({ length: 12 }, (_, month) => {
    const [from, to] = [monthStarts[month], monthStarts[month + 1]];
    const light = sum(outdoor.daylight.subarray(from, to));
    const megajoules =
      (sum(steps.globalHorizontal.subarray(from * perDay, to * perDay)) * steps.stepMinutes * 60) / 1e6;
    return megajoules > 0 ? light / megajoules : 0;
  });
}

/** Mean over all years of a daily series, by month. */
function monthly(years: readonly CardYear[], of: (year: CardYear) => Float64Array): number[] {
  return Array.from({ length: 12 }, (_, month) =>
    mean(
      years.map((year) => {
        const days = of(year).subarray(monthStarts[month], monthStarts[month + 1]);
        return sum(days) / days.length;
      }),
    ),
  );
}

function monthMeans(years: readonly CardYear[]): number[] {
  const most = monthly(years, (year) => year.most);
  return monthly(years, (year) => year.least).map((value, month) => 0.5 * (value + most[month]));
}

const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
const mean = (values: readonly number[]) => values.reduce((total, value) => total + value, 0) / values.length;

/** The nearest of the values below which a share of them lies; one in ten counts from its own side. */
function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((one, other) => (one < other ? -1 : one > other ? 1 : 0));
  const last = sorted.length - 1;
  return share > 0.5
    ? sorted[last - Math.floor((1 - share) * last + 1e-9)]
    : sorted[Math.floor(share * last)];
}

/** A day of a common year, counted from 1 January and taken round the ring, as `MM-DD`. */
function monthDay(dayOfYear: number): string {
  const day = dayOfYear % 365;
  const month = monthStarts.findIndex((start, k) => day >= start && day < monthStarts[k + 1]);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(month + 1)}-${two(day - monthStarts[month] + 1)}`;
}
