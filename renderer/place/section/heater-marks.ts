import type { Heater } from '../../../core/index.ts';

/** A rectangle of the paper [px]. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Lines of a heater: its body in ink over paper, what warms in warm ink, a flame where it burns. */
export interface HeaterMark {
  readonly body: string;
  readonly warm: string;
  readonly flame: string;
}

const rectanglePath = ({ x, y, w, h }: Rectangle) => `M${x} ${y}h${w}v${h}h${-w}Z`;
const circle = (x: number, y: number, r: number) =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
const times = (count: number, mark: (i: number) => string) =>
  Array.from({ length: count }, (_, i) => mark(i)).join('');

/** A flame standing on (x, y), h tall. */
const flame = (x: number, y: number, h: number) =>
  `M${x} ${y - h}q${h * 0.42} ${h * 0.45} ${h * 0.28} ${h * 0.78}q${-h * 0.28} ${h * 0.4} ${-h * 0.56} 0q${-h * 0.14} ${-h * 0.33} ${h * 0.28} ${-h * 0.78}Z`;

/** A wheel of blades in a box on feet. */
function fanHeater({ x, y, w, h }: Rectangle): HeaterMark {
  const [cx, cy, r] = [x + w / 2, y + h * 0.46, Math.min(w, h) * 0.34];
  const blades = times(3, (i) => {
    const a = (i * 2 * Math.PI) / 3 - Math.PI / 2;
    return `M${cx} ${cy}L${cx + r * Math.cos(a)} ${cy + r * Math.sin(a)}`;
  });
  const feet = `M${x + w * 0.15} ${y + h * 0.9}V${y + h}M${x + w * 0.85} ${y + h * 0.9}V${y + h}`;
  return { body: rectanglePath({ x, y, w, h: h * 0.9 }) + feet, warm: circle(cx, cy, r) + blades, flame: '' };
}

/** Two long tubes over one another, end on to their brackets. */
function tubes({ x, y, w, h }: Rectangle): HeaterMark {
  const r = h * 0.2;
  const tube = (top: number) =>
    `M${x + r} ${top}h${w - 2 * r}a${r} ${r} 0 0 1 0 ${2 * r}h${-(w - 2 * r)}a${r} ${r} 0 0 1 0 ${-2 * r}Z`;
  const brackets = `M${x + w * 0.2} ${y}v${h}M${x + w * 0.8} ${y}v${h}`;
  return { body: tube(y + h * 0.06) + tube(y + h * 0.54), warm: brackets, flame: '' };
}

/** Upright fins with rounded heads, on feet. */
function fins({ x, y, w, h }: Rectangle): HeaterMark {
  const count = 5;
  const wide = w / count;
  const fin = (i: number) =>
    `M${x + i * wide + wide * 0.1} ${y + h * 0.92}V${y + wide * 0.4}a${wide * 0.4} ${wide * 0.4} 0 0 1 ${wide * 0.8} 0V${y + h * 0.92}Z`;
  const warm = `M${x} ${y + h * 0.2}h${w}M${x} ${y + h * 0.78}h${w}`;
  return { body: times(count, fin) + `M${x + w * 0.1} ${y + h}h${w * 0.8}`, warm, flame: '' };
}

/** A burner with its bottle beside it. */
function bottled({ x, y, w, h }: Rectangle): HeaterMark {
  const b = w * 0.36;
  const bottle = `M${x} ${y + h}V${y + h * 0.34}q0 ${-h * 0.16} ${b * 0.34} ${-h * 0.18}v${-h * 0.12}h${b * 0.32}v${h * 0.12}q${b * 0.34} ${h * 0.02} ${b * 0.34} ${h * 0.18}V${y + h}Z`;
  const box: Rectangle = { x: x + w * 0.48, y: y + h * 0.22, w: w * 0.52, h: h * 0.78 };
  const hose = `M${x + b * 0.66} ${y + h * 0.08}H${box.x + box.w * 0.3}V${box.y}`;
  return {
    body: bottle + rectanglePath(box),
    warm: hose,
    flame: flame(box.x + box.w / 2, box.y + box.h * 0.86, box.h * 0.66),
  };
}

/** A chimney over a round tank, with a carrying loop. */
function paraffin({ x, y, w, h }: Rectangle): HeaterMark {
  const tank = `M${x} ${y + h}V${y + h * 0.78}q0 ${-h * 0.1} ${w * 0.14} ${-h * 0.1}h${w * 0.72}q${w * 0.14} 0 ${w * 0.14} ${h * 0.1}V${y + h}Z`;
  const chimney = `M${x + w * 0.2} ${y + h * 0.68}L${x + w * 0.28} ${y + h * 0.14}h${w * 0.44}L${x + w * 0.8} ${y + h * 0.68}`;
  const loop = `M${x + w * 0.28} ${y + h * 0.14}q${w * 0.22} ${-h * 0.28} ${w * 0.44} 0`;
  return { body: tank + chimney + loop, warm: '', flame: flame(x + w / 2, y + h * 0.62, h * 0.36) };
}

/** A long case: a wheel that draws air, a coil, and the two pipes to the part outdoors. */
function heatPump({ x, y, w, h }: Rectangle): HeaterMark {
  const r = h * 0.27;
  const [cx, cy] = [x + w * 0.27, y + h * 0.45];
  const turns = 4;
  const step = (w * 0.4) / turns;
  const coil = times(
    turns + 1,
    (i) => `${i === 0 ? 'M' : 'L'}${x + w * 0.52 + i * step} ${cy + (i % 2 === 0 ? r : -r)}`,
  );
  const pipes = `M${x + w * 0.8} ${y + h * 0.88}v${h * 0.12}M${x + w * 0.88} ${y + h * 0.88}v${h * 0.12}`;
  const cross = `M${cx - r} ${cy}h${2 * r}M${cx} ${cy - r}v${2 * r}`;
  return {
    body: rectanglePath({ x, y, w, h: h * 0.88 }) + pipes,
    warm: circle(cx, cy, r) + cross + coil,
    flame: '',
  };
}

/** A wire laid to and fro at the pots' feet. */
function mat({ x, y, w, h }: Rectangle, small: boolean): HeaterMark {
  const step = small ? 4 : 8;
  const count = Math.max(2, Math.floor(w / step));
  const wire = times(
    count + 1,
    (i) => `${i === 0 ? 'M' : 'L'}${x + (i * w) / count} ${y + h - 0.6 - (i % 2) * (small ? 2.5 : 4)}`,
  );
  return { body: '', warm: wire, flame: '' };
}

export function heaterMark(kind: Heater['kind'], box: Rectangle, small: boolean): HeaterMark {
  switch (kind) {
    case 'fan':
      return fanHeater(box);
    case 'tubular':
      return tubes(box);
    case 'oil-filled':
      return fins(box);
    case 'propane':
      return bottled(box);
    case 'paraffin':
      return paraffin(box);
    case 'heat-pump':
      return heatPump(box);
    case 'heat-mat':
      return mat(box, small);
  }
}
