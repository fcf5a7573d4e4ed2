import type { LotSeason } from '../../core/index.ts';

/** The harms, each with a notch of its own form: those of cold cut from below, those of heat and light from above. */
export const harmKinds = ['frost', 'chill', 'heat', 'scorch', 'wetCold', 'decline'] as const;
export type HarmKind = (typeof harmKinds)[number];

export const harmNames: Record<HarmKind, string> = {
  frost: 'cold',
  chill: 'chill',
  heat: 'heat',
  scorch: 'scorch',
  wetCold: 'wet and cold',
  decline: 'lasting heat',
};

const chillDoses = new WeakMap<LotSeason, Float64Array>();

function chillOf(lot: LotSeason): Float64Array {
  const known = chillDoses.get(lot);
  if (known) return known;
  const doses = lot.chilled.map((injured, day) => (injured > 0 ? lot.chillLoad[day] : 0));
  chillDoses.set(lot, doses);
  return doses;
}

/** Daily doses of a harm; chill counts only on days on which what it carries injures. */
export function doseOf(lot: LotSeason, kind: HarmKind): Float64Array {
  const doses = {
    frost: lot.frostDose,
    chill: chillOf(lot),
    heat: lot.heatDose,
    scorch: lot.scorchDose,
    wetCold: lot.wetColdDose,
    decline: lot.declineDose,
  };
  return doses[kind];
}

const half = 3.5;

/** One notch at `x` in the edge of a ribbon `height` high [px]. */
export function notch(kind: HarmKind, x: number, height: number): string {
  const [left, right] = [(x - half).toFixed(1), (x + half).toFixed(1)];
  const at = x.toFixed(1);
  const depth = height * 0.55;
  const deep = (height - depth).toFixed(1);
  switch (kind) {
    case 'frost':
      return `M${left} ${height}L${at} ${deep}L${right} ${height}z`;
    case 'chill':
      return `M${left} ${height}A${half} ${depth.toFixed(1)} 0 0 1 ${right} ${height}z`;
    case 'wetCold':
      return `M${left} ${height}V${deep}L${at} ${height}L${right} ${deep}V${height}z`;
    case 'heat':
      return `M${left} 0L${at} ${depth.toFixed(1)}L${right} 0z`;
    case 'scorch':
      return `M${left} 0V${(depth * 0.7).toFixed(1)}H${right}V0z`;
    case 'decline':
      return `M${left} 0L${right} ${depth.toFixed(1)}V0z`;
  }
}
