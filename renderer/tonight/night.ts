import type { CheapAct, NightInput, NightLot, NightResult, Plan, PlaceNight } from '../../core/index.ts';
import { formatHours, formatTemperatureChange } from '../state/units.ts';
import type { UnitPreferences } from '../state/units.ts';
import { standsTonight } from './traces.ts';
import type { NightTraces } from './traces.ts';

/** The three plain choices for the sky, with the oktas each stands for and the oktas that read as it. */
export const cloudChoices = [
  { id: 'clear', words: 'Clear', oktas: 1, from: 0, to: 2 },
  { id: 'broken', words: 'Half cloudy', oktas: 4, from: 3, to: 6 },
  { id: 'overcast', words: 'Overcast', oktas: 8, from: 7, to: 8 },
] as const;

/** What a line of a night chart shows; the band is between the milder and the colder forecast. */
export type NightLineKind = 'air' | 'unheated' | 'leaf' | 'outdoor' | 'band' | 'limit';

/** The civil date at the site [ISO 8601] at an instant. */
export function dateAt(ms: number, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('en', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(ms);
  const part = (type: string) => parts.find((one) => one.type === type)?.value ?? '';
  return `${part('year')}-${part('month')}-${part('day')}`;
}

/** Clock time at the site, such as `03:40`. */
export function clockAt(ms: number, timeZone: string): string {
  return new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' }).format(ms);
}

/** A forecast to begin with where none has been typed yet: a clear night as cold as a usual winter brings. */
export function firstNight(plan: Plan, dateISO: string): NightInput {
  const low = plan.climate.kind === 'normals' ? plan.climate.typicalLow : -5;
  return { dateISO, duskTemperature: low + 8, low, cloudOktas: 1, wind: 1, band: 2 };
}

/** What the low is of, and what the site's frost hollow [K] does to it; a site above the cold air has one below nothing. */
export function lowHint(frostHollow: number, units: UnitPreferences): string {
  const whose = 'As the station or the forecast has it.';
  if (frostHollow === 0) return whose;
  const hollow = formatTemperatureChange(Math.abs(frostHollow), units).replace('+', '');
  return frostHollow > 0
    ? `${whose} Your frost hollow, up to ${hollow} on a clear, still night, comes off it.`
    : `${whose} Your slope above the cold air, up to ${hollow} on a clear, still night, is added.`;
}

/** Why the engine cannot work with a forecast, in words; null where it can. */
export function nightProblem(input: NightInput): string | null {
  if (input.low > input.duskTemperature) {
    return 'The forecast low is above the temperature at dusk. Lower it, or raise the one at dusk.';
  }
  return null;
}

/** The full hours of the night by the site's clock [epoch ms UTC], each with the index of the step nearest to it. */
export function hourSteps(night: NightResult, timeZone: string): { step: number; ms: number }[] {
  const stepMs = night.stepMinutes * 60_000;
  const past = Number(clockAt(night.startMs, timeZone).slice(3)) * 60_000 + (night.startMs % 60_000);
  const first = past === 0 ? night.startMs : night.startMs - past + 3_600_000;
  const steps = [];
  for (let ms = first; ms <= night.startMs + (night.n - 1) * stepMs; ms += 3_600_000) {
    steps.push({ step: Math.round((ms - night.startMs) / stepMs), ms });
  }
  return steps;
}

/** Acts worth doing, best first: those that warm the leaf by a tenth of a kelvin or more. */
export function worthwhile(acts: readonly CheapAct[]): CheapAct[] {
  return acts.filter((act) => act.kelvin >= 0.1).sort((a, b) => b.kelvin - a.kelvin);
}

/** The lowest and highest temperature [°C] a chart has to show; at least 8 K apart, far-off limits left out. */
export function nightExtent(night: NightResult, traces: NightTraces): [number, number] {
  const { air, leaf, unheated, colder, milder } = traces;
  const series = [night.outdoor, air, leaf, unheated, colder, milder].filter((values) => values !== null);
  const least = Math.min(...series.map((values) => values.reduce((a, b) => Math.min(a, b), Infinity)));
  const most = Math.max(...series.map((values) => values.reduce((a, b) => Math.max(a, b), -Infinity)));
  const limits = traces.lots.map((lot) => lot.limit).filter((limit) => limit > least - 4);
  const bottom = Math.min(least, ...limits);
  return [bottom, Math.max(most, bottom + 8, ...limits)];
}

/** What the summary calls the open air, apart from its places. */
const openAir = 'what stands outdoors';

/** The whole night in one sentence, before the places. */
export function nightSummary(night: NightResult, plan: Plan): string {
  const nameOf = (place: PlaceNight | null) =>
    place === null ? openAir : (plan.places.find((one) => one.id === place.placeId)?.name ?? 'a place');
  const named = (verdict: PlaceNight['verdict']) =>
    standsTonight(night)
      .filter((place) => (place ?? night.outdoors)?.verdict === verdict)
      .map(nameOf);
  const [harm, close, safe] = [named('harm'), named('close'), named('safe')];
  if (harm.length + close.length === 0) return allSafe(night);
  const parts: string[] = [];
  if (harm.length > 0) parts.push(`In danger tonight: ${harm.join(', ')}.`);
  if (close.length > 0) parts.push(`Close: ${close.join(', ')}.`);
  if (safe.length > 0)
    parts.push(safe.length === 1 ? `${capital(safe[0])} is safe.` : 'The others are safe.');
  return parts.join(' ');
}

const capital = (words: string) => words[0].toLocaleUpperCase() + words.slice(1);

function allSafe({ places, outdoors }: NightResult): string {
  if (outdoors === null) return 'Every place is safe tonight.';
  return places.length === 0
    ? 'What stands outdoors is safe tonight.'
    : 'Every place is safe tonight, and so is what stands outdoors.';
}

/** Limits that share a temperature (to 0.1 K) become one line with the names of all lots that have it. */
export function limitLines(lots: readonly NightLot[], plan: Plan): { limit: number; names: string }[] {
  const byLimit = new Map<number, string[]>();
  for (const lot of lots) {
    const limit = Math.round(lot.limit * 10) / 10;
    const name = plan.lots.find((one) => one.id === lot.lotId)?.name ?? 'plants';
    byLimit.set(limit, [...(byLimit.get(limit) ?? []), name]);
  }
  return [...byLimit]
    .map(([limit, names]) => ({
      limit,
      names: names.length > 2 ? `${names[0]} and ${names.length - 1} more` : names.join(', '),
    }))
    .sort((a, b) => b.limit - a.limit);
}

/** What to say of the heaters: need against what is there, and until when they hold. */
export function heaterWords(place: PlaceNight, timeZone: string, power: (watts: number) => string): string {
  if (place.powerNeeded <= 0)
    return place.powerThere > 0 ? `Not needed (${power(place.powerThere)} there)` : 'None needed';
  const need = `Needs ${power(place.powerNeeded)}`;
  if (place.powerThere <= 0) return `${need}; no heater here`;
  if (place.failsAtMs !== null) {
    return `${need}, has ${power(place.powerThere)}: holds until ${clockAt(place.failsAtMs, timeZone)}`;
  }
  if (place.verdict === 'harm') {
    return `${need}, has ${power(place.powerThere)}: strong enough, but its thermostat is set too low`;
  }
  return `${need}, has ${power(place.powerThere)}: holds all night`;
}

/** What a power cut does; `null` hours are no harm by morning, 0 is harm that is there already. */
export function powerCutWords(hoursToHarm: number | null): string {
  if (hoursToHarm === null) return 'No harm by morning';
  return hoursToHarm > 0 ? `Harm after ${formatHours(hoursToHarm)}` : 'Harm is there already by then';
}

/** Usual cautions for the heaters of a place and for the acts advised; deferring to local rules and licensed practice. */
export function heaterCautions(kinds: readonly string[], acts: readonly CheapAct[] = []): string[] {
  const cautions: string[] = [];
  const plugged = acts.some((act) => act.id === 'small-heater' || act.id === 'lamp-at-night');
  if (kinds.some((kind) => kind === 'propane' || kind === 'paraffin')) {
    cautions.push(
      'Flame inside: keep a gap open for fresh air, stand it level and clear of film, fleece and leaves, and never sleep beside it. Fumes kill; fit a carbon monoxide alarm.',
    );
  }
  if (
    plugged ||
    kinds.some((kind) => kind === 'fan' || kind === 'tubular' || kind === 'oil-filled' || kind === 'heat-mat')
  ) {
    cautions.push(
      'Electric heat among water: an outdoor-rated socket behind a residual-current device, no coiled or chained leads, nothing draped over the heater.',
    );
  }
  if (acts.some((act) => act.id === 'warm-water')) {
    cautions.push(
      'Hot water scalds: fill the canister where it will stand, lid tight, on the floor and not on a bench.',
    );
  }
  return cautions;
}
