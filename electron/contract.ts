/**
 * Every call the user interface can make on its host, in one table: name, input schema, output type.
 * Both shells, the preload script and the tests derive from it. The renderer imports its types only.
 */
import * as v from 'valibot';
import type { NightInput, Plan, Problem } from '../core/index.ts';

/** Longest plan text read, in characters; a full plan of 24 places and 200 lots takes under 200 000. */
export const longestPlanText = 10_000_000;
/** Longest weather file read [bytes]; an EPW year takes under 2 000 000. */
export const longestWeatherBytes = 20_000_000;

export interface PlanSummary {
  readonly id: string;
  readonly name: string;
  readonly siteName: string;
  /** Number of places in the plan. */
  readonly places: number;
  /** When it was last changed [epoch ms UTC]. */
  readonly changedMs: number;
}

/** A plan as it is open: what is shown, and what undo and redo would take back or bring back. */
export interface PlanDocument {
  readonly id: string;
  readonly plan: Plan;
  /** Grows with every change, undo and redo. */
  readonly revision: number;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** What the change was called, such as `Lamp on 12 h`; null where there is nothing to undo or redo. */
  readonly undoWords: string | null;
  readonly redoWords: string | null;
}

export interface PlanList {
  readonly openPlanId: string;
  readonly plans: readonly PlanSummary[];
}

export interface WeatherRecord {
  readonly id: string;
  /** Name of the station, or its position where the file does not name it. */
  readonly name: string;
  readonly fileName: string;
  readonly format: 'epw' | 'tmy3';
  /** Position of the station [degrees north, degrees east, m]. */
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  /** Mean temperature of the year [°C] and its global radiation on the horizontal [kWh m⁻²]. */
  readonly meanTemperature: number;
  readonly globalRadiation: number;
  /** What was filled in or is doubtful in the file, in words. */
  readonly notes: readonly string[];
  readonly importedMs: number;
}

export interface WeatherFile {
  readonly record: WeatherRecord;
  /** The file as it was imported, byte for byte. */
  readonly base64: string;
}

export interface Start extends PlanList {
  readonly preferences: Preferences;
  /** True on the very first start, when the demonstration plan has just been put there. */
  readonly firstStart: boolean;
  readonly shell: 'desktop' | 'local';
  readonly version: string;
  /** Something the user must be told, such as a damaged file set aside; null otherwise. */
  readonly notice: string | null;
}

export const preferencesSchema = v.strictObject({
  theme: v.picklist(['system', 'light', 'dark']),
  temperature: v.picklist(['system', 'C', 'F']),
  length: v.picklist(['system', 'm', 'ft']),
  firstDay: v.picklist(['system', 'monday', 'sunday', 'saturday']),
  motion: v.picklist(['system', 'reduced']),
  /** ISO 4217 code given to new plans; null follows the system. */
  currency: v.nullable(v.pipe(v.string(), v.regex(/^[A-Z]{3}$/, 'expected an ISO 4217 code such as EUR'))),
});
export type Preferences = v.InferOutput<typeof preferencesSchema>;

export const firstPreferences: Preferences = {
  theme: 'system',
  temperature: 'system',
  length: 'system',
  firstDay: 'system',
  motion: 'system',
  currency: null,
};

const id = v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9-]{0,63}$/, 'expected an identifier'));
const byId = v.strictObject({ id });
const none = v.nullish(v.strictObject({}));
const phrase = v.pipe(v.string(), v.minLength(1), v.maxLength(200));
/** Any object; the host checks it as a plan and answers with paths and reasons. */
const plan = v.custom<Plan>((input) => typeof input === 'object' && input !== null, 'expected a plan');

/** Scanned without backtracking: the usual pattern overflows the stack on files of some megabytes. */
function isBase64(text: string): boolean {
  const end = text.indexOf('=');
  return (
    text.length % 4 === 0 && !/[^A-Za-z0-9+/=]/.test(text) && (end === -1 || /^={1,2}$/.test(text.slice(end)))
  );
}

const celsius = v.pipe(v.number(), v.minValue(-80), v.maxValue(60));
/** Named `NightInput` in the engine; the schema is held to that type by `satisfies` below. */
export const nightInputSchema = v.strictObject({
  dateISO: v.pipe(v.string(), v.isoDate()),
  duskTemperature: celsius,
  low: celsius,
  cloudOktas: v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(8))),
  wind: v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(60))),
  band: v.pipe(v.number(), v.minValue(0), v.maxValue(15)),
}) satisfies v.GenericSchema<unknown, NightInput>;

/** A day of a common year, `MM-DD`: seasons have no 29 February. */
const monthDay = v.pipe(
  v.string(),
  v.regex(
    /^(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|02-(?:0[1-9]|1\d|2[0-8]))$/,
    'expected a day as MM-DD',
  ),
);
/** Text for a calendar; any script and any sign, since the writer escapes it. */
const line = v.pipe(v.string(), v.minLength(1), v.maxLength(500));
const passage = v.pipe(v.string(), v.maxLength(4000));

/**
 * A calendar to write as a file for other calendars. Days are of the site's civil calendar; `startsOn` is the
 * season's first day and `year` the civil year it lies in, so that a task's `on` before `startsOn` is the next year's.
 */
export const calendarFileSchema = v.strictObject({
  title: phrase,
  /** Name in the time-zone data base, as the plan's site has it. */
  timeZone: v.pipe(v.string(), v.minLength(1), v.maxLength(64), v.check(isTimeZone, 'expected a time zone')),
  year: v.pipe(v.number(), v.integer(), v.minValue(1970), v.maxValue(2999)),
  startsOn: monthDay,
  tasks: v.pipe(
    v.array(
      v.strictObject({
        /** The task's own id; an event is known by it again in the next file. */
        id: v.pipe(v.string(), v.maxLength(200), v.regex(/^[a-z0-9][a-z0-9-]*$/, 'expected an identifier')),
        on: monthDay,
        /** Last day, itself counted; null for a single day. */
        until: v.nullable(monthDay),
        /** True for the flowers of the season after: a year later. */
        nextSeason: v.optional(v.boolean(), false),
        summary: line,
        description: passage,
        location: v.pipe(v.string(), v.maxLength(500)),
        /** Kind of task in words, such as `Water`. */
        category: v.optional(line),
      }),
    ),
    v.minLength(1, 'expected at least one task'),
    v.maxLength(20_000),
    v.check((tasks) => new Set(tasks.map(({ id }) => id)).size === tasks.length, 'expected each id once'),
  ),
});

function isTimeZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en-GB', { timeZone: name });
    return true;
  } catch {
    return false;
  }
}

/** One line of the table. `output` is a type only: nothing is there at run time. */
export interface Call<S extends v.GenericSchema, Output> {
  readonly input: S;
  readonly output?: Output;
}
const answers =
  <Output>() =>
  <S extends v.GenericSchema>(input: S): Call<S, Output> => ({ input });

export const contract = {
  /** First call of an interface. */
  start: answers<Start>()(none),
  listPlans: answers<PlanList>()(none),
  readPlan: answers<PlanDocument>()(byId),
  /** Makes the plan the one that opens at the next start. */
  openPlan: answers<PlanDocument>()(byId),
  createPlan: answers<PlanDocument>()(v.strictObject({ plan })),
  /**
   * Autosave: every call makes a version. With a `mergeKey` equal to that of the last version, saved a
   * few seconds ago, the last version is replaced (a slider being dragged is one change).
   */
  savePlan: answers<PlanDocument>()(
    v.strictObject({
      id,
      plan,
      words: phrase,
      mergeKey: v.optional(v.pipe(v.string(), v.maxLength(200))),
    }),
  ),
  undo: answers<PlanDocument>()(byId),
  redo: answers<PlanDocument>()(byId),
  /** Puts a plan away; `restorePlan` brings it back. Another plan is open afterwards. */
  deletePlan: answers<PlanList>()(byId),
  restorePlan: answers<PlanList>()(byId),
  importPlan: answers<PlanDocument>()(v.strictObject({ text: v.string() })),
  exportPlan: answers<{ readonly fileName: string; readonly text: string }>()(byId),
  importWeather: answers<WeatherRecord>()(
    v.strictObject({
      name: phrase,
      base64: v.pipe(v.string(), v.check(isBase64, 'expected the file in base64')),
    }),
  ),
  listWeather: answers<readonly WeatherRecord[]>()(none),
  readWeather: answers<WeatherFile>()(byId),
  readPreferences: answers<Preferences>()(none),
  /** Changes the preferences named and keeps the others. */
  writePreferences: answers<Preferences>()(v.partial(preferencesSchema)),
  rememberNight: answers<null>()(v.strictObject({ night: nightInputSchema })),
  lastNight: answers<NightInput | null>()(none),
  /** The season's tasks as a calendar file (iCalendar): all-day events. */
  calendarFile: answers<{ readonly fileName: string; readonly text: string }>()(calendarFileSchema),
} as const satisfies Record<string, Call<v.GenericSchema, unknown>>;

export type CallName = keyof typeof contract;
export const callNames = Object.keys(contract) as readonly CallName[];
export type CallInput<K extends CallName> = v.InferInput<(typeof contract)[K]['input']>;
export type CheckedInput<K extends CallName> = v.InferOutput<(typeof contract)[K]['input']>;
export type CallOutput<K extends CallName> = Exclude<(typeof contract)[K]['output'], undefined>;

type Arguments<K extends CallName> =
  undefined extends CallInput<K> ? [input?: CallInput<K>] : [input: CallInput<K>];

/** What the interface works with: a call gives its output, or rejects with an Error that carries a `HostFailure`. */
export type Host = {
  readonly [K in CallName]: (...input: Arguments<K>) => Promise<CallOutput<K>>;
};

/** Why a call was refused. */
export interface HostFailure {
  readonly code: 'refused' | 'not-found' | 'unknown-call' | 'too-large' | 'store' | 'internal';
  /** Plain words for the user. */
  readonly message: string;
  /** Paths into the plan, or `line 12` of a file, each with its reason. */
  readonly problems?: readonly Problem[];
}

/** What crosses the wire in both shells. */
export type Answer<Output = unknown> =
  { readonly ok: true; readonly value: Output } | { readonly ok: false; readonly error: HostFailure };

/** `window.winterbench` in the desktop shell; POST `/call/<name>` answers the same in the loopback shell. */
export type Bridge = {
  readonly [K in CallName]: (...input: Arguments<K>) => Promise<Answer<CallOutput<K>>>;
};
