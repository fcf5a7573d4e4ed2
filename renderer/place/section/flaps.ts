import type { Place, Section, SectionPoint, Vent } from '../../../core/index.ts';
import { outlineOf } from './geometry.ts';

/** A vent in the roof or the side: a flap that swings out from `hinge`; shut, its free edge lies at `shut`. */
export interface Flap {
  readonly vent: Vent;
  readonly hinge: SectionPoint;
  readonly shut: SectionPoint;
  readonly open: SectionPoint;
}

/** A stretch of the cover, hinge end first, with the way out of it. */
interface Slope {
  readonly a: SectionPoint;
  readonly b: SectionPoint;
}

/** How far a flap is drawn open [degrees]. */
const openAngle = 38;

const lengthOf = ({ a, b }: Slope) => Math.hypot(b[0] - a[0], b[1] - a[1]);

const along = ({ a, b }: Slope, distance: number): SectionPoint => {
  const t = distance / lengthOf({ a, b });
  return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
};

/** Where flaps can hang, the usual first: each from its hinge downwards. */
function slopes(place: Place, section: Section, position: 'roof' | 'side'): Slope[] {
  const outline = outlineOf(section);
  const pieces = outline.slice(1).map((b, i): Slope => ({ a: outline[i], b }));
  const downwards = (slope: Slope): Slope => (slope.a[1] >= slope.b[1] ? slope : { a: slope.b, b: slope.a });
  const back = place.shape.kind === 'lean-to' || place.shape.kind === 'window-bay';
  if (place.shape.kind === 'window-bay') return [downwards(pieces[0])];
  if (place.shape.kind === 'tunnel') {
    const from = position === 'roof' ? [0.62, 0.38] : [0.12, 0.88];
    return from.map((share) => tunnelSlope(outline, share));
  }
  const upright = ({ a, b }: Slope) => Math.abs(b[0] - a[0]) < 1e-6;
  const usable = pieces.filter((piece) => upright(piece) === (position === 'side') && lengthOf(piece) > 1e-6);
  const front = usable.filter((piece) => piece.a[0] + piece.b[0] < section.width + 1e-9).map(downwards);
  const rear = usable.filter((piece) => piece.a[0] + piece.b[0] > section.width + 1e-9).map(downwards);
  // The base wall lies at the foot of a side and holds no flap: the highest piece comes first.
  front.sort((p, q) => q.a[1] - p.a[1]);
  rear.sort((p, q) => q.a[1] - p.a[1]);
  if (position === 'roof') {
    const lid =
      usable.length === 1
        ? usable.map((piece) => (piece.a[1] === piece.b[1] ? { a: piece.b, b: piece.a } : downwards(piece)))
        : [];
    return lid.length > 0 ? lid : [...rear, ...front];
  }
  return back ? front.slice(0, 1) : [...front.slice(0, 1), ...rear.slice(0, 1)];
}

/** The film's stretch at a share of the arc from the front foot, hinge above. */
function tunnelSlope(outline: readonly SectionPoint[], share: number): Slope {
  const at = share * (outline.length - 1);
  const low = Math.floor(at);
  const [a, b] = [outline[low], outline[low + 1]];
  return a[1] >= b[1] ? { a, b } : { a: b, b: a };
}

function swung(hinge: SectionPoint, shut: SectionPoint, inside: SectionPoint, angle: number): SectionPoint {
  const turn = (sign: number): SectionPoint => {
    const radians = (sign * angle * Math.PI) / 180;
    const [dx, dz] = [shut[0] - hinge[0], shut[1] - hinge[1]];
    return [
      hinge[0] + dx * Math.cos(radians) - dz * Math.sin(radians),
      hinge[1] + dx * Math.sin(radians) + dz * Math.cos(radians),
    ];
  };
  const far = ([x, z]: SectionPoint) => Math.hypot(x - inside[0], z - inside[1]);
  const [one, other] = [turn(1), turn(-1)];
  return far(one) > far(other) ? one : other;
}

/** Roof and side vents at their hinges. A flap is as deep as its area over the place's length, within what can be seen. */
export function flapsOf(place: Place, section: Section, least: number): Flap[] {
  const inside: SectionPoint = [section.width / 2, 0.4 * section.height];
  const taken = new Map<string, number>();
  return place.vents.flatMap((vent) => {
    if (vent.position === 'end') return [];
    const all = slopes(place, section, vent.position);
    const before = taken.get(vent.position) ?? 0;
    taken.set(vent.position, before + 1);
    const slope = all[before % all.length];
    const row =
      Math.floor(before / all.length) +
      (place.shape.kind === 'window-bay' && vent.position === 'side' ? 1 : 0);
    const size = lengthOf(slope);
    const deep = Math.min(
      Math.max(vent.area / section.length, least),
      place.shape.kind === 'tunnel' ? 0.9 * size : 0.3 * size,
    );
    const start = Math.min(0.06 * size + row * (deep + 0.05 * size), size - deep);
    const hinge = along(slope, start);
    const shut = along(slope, start + deep);
    return [{ vent, hinge, shut, open: swung(hinge, shut, inside, openAngle) }];
  });
}
