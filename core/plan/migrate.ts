import { planSchemaVersion } from './schema.ts';

export type Migration =
  { readonly ok: true; readonly plan: unknown } | { readonly ok: false; readonly message: string };

/** Brings a plan of an older schema version to the present one; one from the future is refused. */
export function migratePlan(input: unknown): Migration {
  if (typeof input !== 'object' || input === null) return { ok: true, plan: input };
  const version = (input as { schemaVersion?: unknown }).schemaVersion;
  if (typeof version === 'number' && version > planSchemaVersion) {
    return {
      ok: false,
      message: `this plan was written by a newer Winterbench (plan version ${version}; this one reads up to ${planSchemaVersion})`,
    };
  }
  if (version === 1) return { ok: true, plan: toPresent(toSecond(input)) };
  return { ok: true, plan: version === 2 || version === 3 ? toPresent(input) : input };
}

/** Version 2 keeps vents as a list; version 1 had one kind or null. */
function toSecond(plan: object): object {
  const { places } = plan as { places?: unknown };
  if (!Array.isArray(places)) return { ...plan, schemaVersion: 2 };
  return { ...plan, schemaVersion: 2, places: places.map(ventsAsList) };
}

/** Versions 3 and 4 only add fields, each of which means what the version before did where it is missing. */
function toPresent(plan: object): object {
  return { ...plan, schemaVersion: 4 };
}

function ventsAsList(place: unknown): unknown {
  if (typeof place !== 'object' || place === null) return place;
  const { vents } = place as { vents?: unknown };
  if (Array.isArray(vents)) return place;
  return { ...place, vents: vents === null || vents === undefined ? [] : [vents] };
}
