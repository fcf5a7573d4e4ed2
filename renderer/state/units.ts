/**
 * Figures as the user reads and types them. The engine works in SI (°C, m, µmol m⁻² s⁻¹, mol m⁻² d⁻¹); these
 * functions are the one place where a preference for °F or feet, or a currency, comes in.
 */
export interface UnitPreferences {
  readonly temperature: 'C' | 'F';
  readonly length: 'm' | 'ft';
}

/** One foot and one inch [m], and one square foot [m²]: exact by the international yard agreement of 1959. */
const metresPerFoot = 0.3048;
const metresPerInch = 0.0254;
/** Lux per µmol m⁻² s⁻¹ of sun and sky light: 54 (Thimijan & Heins 1983, HortScience 18:818, table 3). */
export const luxPerMicromoleDaylight = 54;

/** A space that a line never breaks at. */
const fixedSpace = '\u00a0';
const minus = '−';

/** Formatters are kept: making one costs more than all the rest of a sheet's figures. */
const formatters = new Map<string, Intl.NumberFormat>();

function formatter(digits: number, currency: string | null): Intl.NumberFormat {
  const key = `${digits} ${currency}`;
  const known = formatters.get(key);
  if (known) return known;
  const places = { minimumFractionDigits: digits, maximumFractionDigits: digits };
  const made = new Intl.NumberFormat(
    undefined,
    currency ? { style: 'currency', currency, ...places } : places,
  );
  formatters.set(key, made);
  return made;
}

/** A plain number with `digits` decimals and a true minus sign. */
export function formatNumber(value: number, digits = 0): string {
  const rounded = Number(value.toFixed(digits));
  const text = formatter(digits, null).format(Math.abs(rounded));
  return rounded < 0 ? minus + text : text;
}

export function temperatureValue(celsius: number, preferences: UnitPreferences): number {
  return preferences.temperature === 'F' ? celsius * 1.8 + 32 : celsius;
}

export function temperatureUnit(preferences: UnitPreferences): string {
  return preferences.temperature === 'F' ? '°F' : '°C';
}

/** `3.4 °C` or `38.1 °F`. */
export function formatTemperature(celsius: number, preferences: UnitPreferences, digits = 0): string {
  return `${formatNumber(temperatureValue(celsius, preferences), digits)}${fixedSpace}${temperatureUnit(preferences)}`;
}

/** A difference of temperatures [K], with its sign: `+2.5 °C` or `+4.5 °F`. */
export function formatTemperatureChange(kelvin: number, preferences: UnitPreferences, digits = 1): string {
  const value = preferences.temperature === 'F' ? kelvin * 1.8 : kelvin;
  const sign = Number(value.toFixed(digits)) > 0 ? '+' : '';
  return `${sign}${formatNumber(value, digits)}${fixedSpace}${temperatureUnit(preferences)}`;
}

export function formatLength(metres: number, preferences: UnitPreferences, digits = 2): string {
  const feet = preferences.length === 'ft';
  return `${formatNumber(feet ? metres / metresPerFoot : metres, feet ? 1 : digits)}${fixedSpace}${feet ? 'ft' : 'm'}`;
}

export function formatArea(squareMetres: number, preferences: UnitPreferences, digits = 2): string {
  const feet = preferences.length === 'ft';
  const value = feet ? squareMetres / metresPerFoot ** 2 : squareMetres;
  return `${formatNumber(value, feet ? 1 : digits)}${fixedSpace}${feet ? 'ft²' : 'm²'}`;
}

/** An amount in an ISO 4217 currency; whole units from 100 up. */
export function formatMoney(amount: number, currency: string): string {
  const digits = Math.abs(amount) >= 100 ? 0 : 2;
  const rounded = Number(amount.toFixed(digits));
  return formatter(digits, currency)
    .format(rounded === 0 ? 0 : rounded)
    .replace('-', minus);
}

/** Daily light [mol m⁻² d⁻¹]. */
export function formatLight(mol: number, digits = 1): string {
  return `${formatNumber(mol, digits)}${fixedSpace}mol`;
}

/** Photon flux density [µmol m⁻² s⁻¹]. */
export function formatPhotons(micromol: number): string {
  return `${formatNumber(micromol)}${fixedSpace}µmol`;
}

export function formatPower(watts: number): string {
  return watts >= 10000
    ? `${formatNumber(watts / 1000, 1)}${fixedSpace}kW`
    : `${formatNumber(watts)}${fixedSpace}W`;
}

export function formatEnergy(kilowattHours: number): string {
  return `${formatNumber(kilowattHours, Math.abs(kilowattHours) < 10 ? 1 : 0)}${fixedSpace}kWh`;
}

/** Hours as `10 h` or `10 h 30`. */
export function formatHours(hours: number): string {
  const minutes = Math.round(Math.abs(hours) * 60);
  const rest = minutes % 60;
  const sign = hours < 0 && minutes > 0 ? minus : '';
  const text = `${sign}${Math.floor(minutes / 60)}${fixedSpace}h`;
  return rest === 0 ? text : `${text}${fixedSpace}${String(rest).padStart(2, '0')}`;
}

export type QuantityReading =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly reason: string };

type Conversion = (value: number) => number;
const same: Conversion = (value) => value;
const times =
  (factor: number): Conversion =>
  (value) =>
    value * factor;

/** What may be typed behind a number, for each unit of a field, and how it becomes that unit. Factors exact unless said. */
const conversions: Record<string, Record<string, Conversion>> = {
  '°C': { c: same, '°c': same, f: (f) => (f - 32) / 1.8, '°f': (f) => (f - 32) / 1.8, k: (k) => k - 273.15 },
  K: { '°c': same, c: same, '°f': times(1 / 1.8), f: times(1 / 1.8), k: same },
  'K h': { '°c h': same, '°f h': times(1 / 1.8) },
  m: {
    m: same,
    cm: times(0.01),
    mm: times(0.001),
    ft: times(metresPerFoot),
    "'": times(metresPerFoot),
    in: times(metresPerInch),
    '"': times(metresPerInch),
  },
  'm²': {
    'm²': same,
    m2: same,
    sqm: same,
    'ft²': times(metresPerFoot ** 2),
    ft2: times(metresPerFoot ** 2),
    sqft: times(metresPerFoot ** 2),
  },
  'm³': {
    'm³': same,
    m3: same,
    l: times(0.001),
    'ft³': times(metresPerFoot ** 3),
    ft3: times(metresPerFoot ** 3),
  },
  litres: { litres: same, litre: same, l: same, 'm³': times(1000), m3: times(1000), gal: times(4.54609) },
  W: { w: same, kw: times(1000) },
  h: { h: same, min: times(1 / 60) },
  'm/s': { 'm/s': same, 'km/h': times(1 / 3.6), mph: times(0.44704), kn: times(0.514444) },
  'm³/h': { 'm³/h': same, m3h: same, 'm3/h': same, 'l/s': times(3.6), cfm: times(1.699011) },
  µmol: {
    µmol: same,
    umol: same,
    lux: times(1 / luxPerMicromoleDaylight),
    lx: times(1 / luxPerMicromoleDaylight),
    klux: times(1000 / luxPerMicromoleDaylight),
  },
  mol: { mol: same },
};

function unitFamily(unit: string): string {
  if (unit.startsWith('µmol m')) return 'µmol';
  if (unit.startsWith('mol m')) return 'mol';
  return unit;
}

/** The unit a bare number is taken to have: the preferred one of the field's kind. */
function bareUnit(family: string, preferences: UnitPreferences): string {
  if ((family === '°C' || family === 'K') && preferences.temperature === 'F') return 'f';
  if (family === 'K h' && preferences.temperature === 'F') return '°f h';
  if (family === 'm' && preferences.length === 'ft') return 'ft';
  if (family === 'm²' && preferences.length === 'ft') return 'ft²';
  if (family === 'm³' && preferences.length === 'ft') return 'ft³';
  return '';
}

/**
 * Reads what was typed into a field whose engine unit is `unit`: `68F`, `2 ft`, `2'6"`, `400 lux`, `1,5`.
 * A bare number is in the preferred unit of that kind.
 */
export function parseQuantity(text: string, unit: string, preferences: UnitPreferences): QuantityReading {
  const family = unitFamily(unit);
  const known = conversions[family] ?? {};
  const typed = text.trim().replaceAll(minus, '-').replaceAll(fixedSpace, ' ').replaceAll('μ', 'µ');
  if (typed === '') return { ok: false, reason: 'a number is missing' };
  const feetInches = family === 'm' ? /^(\d+)\s*(?:'|ft)\s*(\d+(?:[.,]\d+)?)\s*(?:"|in)?$/.exec(typed) : null;
  if (feetInches) {
    const inches = Number(feetInches[2].replace(',', '.'));
    return { ok: true, value: Number(feetInches[1]) * metresPerFoot + inches * metresPerInch };
  }
  const match = /^([+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+))\s*(.*)$/.exec(typed);
  if (!match) return { ok: false, reason: `“${text.trim()}” is not a number` };
  const value = Number(match[1].replace(',', '.'));
  const suffix = (match[2].trim() || bareUnit(family, preferences)).toLowerCase();
  if (suffix === '') return { ok: true, value };
  if (suffix === unit.toLowerCase()) return { ok: true, value };
  const convert = known[suffix];
  if (!convert) {
    const offered = Object.keys(known).slice(0, 4).join(', ');
    const hint = offered === '' ? (unit === '' ? '' : `; it is in ${unit}`) : `; use ${offered}`;
    return { ok: false, reason: `the unit “${match[2].trim()}” does not fit here${hint}` };
  }
  return { ok: true, value: convert(value) };
}

/** A value in engine units as text to put into a field in the preferred unit, without the unit. */
export function fieldText(value: number, unit: string, preferences: UnitPreferences, digits = 3): string {
  const trim = (number: number) => String(Number(number.toFixed(digits)));
  const bare = bareUnit(unitFamily(unit), preferences);
  if (bare === '') return trim(value);
  if (bare === 'f') return trim(unit === 'K' ? value * 1.8 : value * 1.8 + 32);
  return trim(value / conversions[unitFamily(unit)][bare](1));
}

/** The unit shown beside a field; a difference of temperatures is in degrees as growers say them. */
export function fieldUnit(unit: string, preferences: UnitPreferences): string {
  if (unit === 'K') return temperatureUnit(preferences);
  if (unit === 'K h') return `${temperatureUnit(preferences)}${fixedSpace}h`;
  const bare = bareUnit(unitFamily(unit), preferences);
  return bare === '' ? unit : bare === 'f' ? '°F' : bare;
}
