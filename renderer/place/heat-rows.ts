import type { HeatPart } from '../../core/index.ts';

/** A line of the heat account [kWh], as a positive amount in or out. */
export interface HeatRow {
  readonly name: string;
  readonly kind: HeatPart['kind'];
  readonly season: number;
  readonly coldestNight: number;
}

/** Below this share of the largest line, a line joins "the rest". */
const restShare = 0.01;

function split(parts: readonly HeatPart[], sign: 1 | -1): HeatRow[] {
  const rows = parts
    .map((part) => ({
      name: part.name,
      kind: part.kind,
      season: Math.max(0, sign * part.season),
      coldestNight: Math.max(0, sign * part.coldestNight),
    }))
    .filter((row) => row.season > 0 || row.coldestNight > 0)
    .sort((a, b) => b.season - a.season || b.coldestNight - a.coldestNight);
  const most = Math.max(...rows.map((row) => row.season), 0);
  const mostNight = Math.max(...rows.map((row) => row.coldestNight), 0);
  const small = rows.filter(
    (row) => row.season < restShare * most && row.coldestNight < restShare * mostNight,
  );
  if (small.length < 2) return rows;
  const rest = small.reduce(
    (sum, row) => ({
      ...sum,
      season: sum.season + row.season,
      coldestNight: sum.coldestNight + row.coldestNight,
    }),
    {
      name: 'The rest',
      kind: 'storage' as HeatPart['kind'],
      season: 0,
      coldestNight: 0,
    },
  );
  return [...rows.filter((row) => !small.includes(row)), rest];
}

/** Heat out (where it goes) and heat in (where it comes from), largest first; they balance within rounding. */
export function heatAccount(parts: readonly HeatPart[]): { out: HeatRow[]; into: HeatRow[] } {
  return { out: split(parts, 1), into: split(parts, -1) };
}
