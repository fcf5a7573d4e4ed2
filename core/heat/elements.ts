import type { WallLayer } from '../fabric/index.ts';
import { convectionCoefficients } from './convection.ts';
import type { GROUND, NOTHING, OUTDOORS, ROOM } from './network.ts';
import type { Surfaces } from './network.ts';
import { AIR, UNDER } from './nodes.ts';
import { carrollFactors, radiatingArea } from './radiant.ts';

/** One surface in words, before it becomes a column of the network's arrays. Units as in `Surfaces`. */
export interface Element {
  readonly name: string;
  readonly part: { readonly name: string; readonly kind: 'surface' | 'ground' | 'room' };
  readonly area: number;
  /** Tilt of the outer normal [degrees]: 0 a flat roof, 180 a floor. */
  readonly tilt: number;
  readonly behind: typeof OUTDOORS | typeof ROOM | typeof GROUND | typeof NOTHING;
  readonly skyView?: number;
  /** Emissivity and long-wave transmittance of the inner face, screen open and closed. */
  readonly emissivity: readonly [open: number, closed: number];
  readonly longWave?: readonly [open: number, closed: number];
  readonly outsideEmissivity?: number;
  /** Factor of the wind's convection at the outer face. */
  readonly roughness?: number;
  /** Whole resistance from face to face, screen open and closed [m² K W⁻¹]. */
  readonly resistance: readonly [open: number, closed: number];
  /** Layers that hold heat, from the inside out; their resistance is part of the whole. */
  readonly layers?: readonly SubLayer[];
  readonly solarAbsorptance?: number;
  readonly solarInner?: number;
  readonly holdsSnow?: boolean;
  readonly deepGround?: number;
  readonly edge?: number;
  readonly floorShare?: number;
  readonly wallShare?: number;
  readonly wetFace?: number;
  /** Floor under the plants: share of it that meets the air, conductance to pots or bench [W K⁻¹], whether a fleece shuts it in, and share of it that sees the cover. */
  readonly underPlants?: {
    readonly openShare: number;
    readonly toPots: number;
    readonly shutIn: boolean;
    readonly sees: number;
  };
}

/** A slice of a layer: resistance [m² K W⁻¹] and capacity [J m⁻² K⁻¹]. */
export interface SubLayer {
  readonly resistance: number;
  readonly capacity: number;
}

/** A slice answers within this time [s]; a layer is cut into as many as that takes. */
const sliceTime = 5400;
const mostSlices = 5;

/** Cuts layers into slices thin enough for a day's wave: R·C of a slice near an hour and a half, at most five a layer. */
export function slices(layers: readonly WallLayer[]): SubLayer[] {
  return layers.flatMap((layer) => {
    const resistance = layer.thickness / layer.conductivity;
    const capacity = layer.thickness * layer.capacity;
    const count = Math.min(
      mostSlices,
      Math.max(1, Math.ceil(Math.sqrt((resistance * capacity) / sliceTime))),
    );
    return Array.from({ length: count }, () => ({
      resistance: resistance / count,
      capacity: capacity / count,
    }));
  });
}

/** Other things that take part in the long-wave exchange: leaves, pots, an open side. */
export interface RadiatingThing {
  readonly area: number;
  readonly absorptance: number;
}

/**
 * Elements as the network's arrays, with radiating areas by Carroll's factors; returns those of the other things too [m²].
 */
export function surfacesFrom(
  elements: readonly Element[],
  things: readonly RadiatingThing[],
): { surfaces: Surfaces; radiating: number[] } {
  const count = elements.length;
  const array = (of: (element: Element, i: number) => number) => Float64Array.from(elements, of);
  const seen = elements.map((element) => element.area * (element.underPlants?.sees ?? 1));
  const factors = carrollFactors(
    [...seen, ...things.map((thing) => thing.area)].map((area) => Math.max(area, 1e-9)),
  );
  const reach = (element: Element, i: number, which: 0 | 1) =>
    radiatingArea(seen[i], absorptanceOf(element, which), factors[i]);
  const through = (element: Element, i: number, which: 0 | 1) => {
    const whole = absorptanceOf(element, which);
    return whole > 0 ? (reach(element, i, which) * (element.longWave?.[which] ?? 0)) / whole : 0;
  };
  const convection = elements.map((element) => convectionCoefficients(element.tilt));
  const opened = (element: Element) => element.underPlants?.openShare ?? 1;
  const layered = layerArrays(elements);
  const surfaces: Surfaces = {
    surfaceCount: count,
    surfaceNames: elements.map((element) => element.name),
    surfaceParts: elements.map((element) => element.part),
    area: array((element) => element.area),
    skyView: array((element) => element.skyView ?? 0),
    behind: Uint8Array.from(elements, (element) => element.behind),
    convectionUnstable: array((element, i) => convection[i].unstable * opened(element)),
    convectionStable: array((element, i) => convection[i].stable * opened(element)),
    facing: Int8Array.from(convection, (each) => each.facing),
    airNode: new Uint8Array(count).fill(AIR),
    airNodeFleece: Uint8Array.from(elements, (element) =>
      element.underPlants?.shutIn === true ? UNDER : AIR,
    ),
    toPots: array((element) => element.underPlants?.toPots ?? 0),
    radiantOpen: array((element, i) => reach(element, i, 0)),
    radiantClosed: array((element, i) => reach(element, i, 1)),
    throughOpen: array((element, i) => through(element, i, 0)),
    throughClosed: array((element, i) => through(element, i, 1)),
    outsideEmissivity: array((element) => element.outsideEmissivity ?? 0.9),
    roughness: array((element) => element.roughness ?? 1),
    resistanceOpen: layered.outermost(0),
    resistanceClosed: layered.outermost(1),
    insideEmissivity: array((element) => element.emissivity[1]),
    straightArea: array((element) => element.area * (element.longWave?.[1] ?? 0)),
    wholeResistance: array((element) => element.resistance[1]),
    solarAbsorptance: array((element) => element.solarAbsorptance ?? 0),
    solarInner: array((element) => element.solarInner ?? 0),
    holdsSnow: Uint8Array.from(elements, (element) => (element.holdsSnow === true ? 1 : 0)),
    deepGround: array((element) => element.deepGround ?? 0),
    edge: array((element) => element.edge ?? 0),
    floorShare: array((element) => element.floorShare ?? 0),
    wallShare: array((element) => element.wallShare ?? 0),
    wetFace: array((element) => element.wetFace ?? 0),
    layerFrom: layered.from,
    layerCount: layered.count,
    layerCapacity: layered.capacity,
    layerLink: layered.link,
  };
  const radiating = things.map((thing, i) =>
    radiatingArea(thing.area, thing.absorptance, factors[count + i]),
  );
  return { surfaces, radiating };
}

const absorptanceOf = (element: Element, which: 0 | 1) =>
  Math.min(1, element.emissivity[which] + (element.longWave?.[which] ?? 0));

/** Nodes in the middle of each slice; what of the whole resistance the slices do not make up (a lining) lies before the first. */
function layerArrays(elements: readonly Element[]) {
  const from = new Uint16Array(elements.length);
  const count = new Uint8Array(elements.length);
  const capacity: number[] = [];
  const link: number[] = [];
  elements.forEach((element, i) => {
    const layers = element.layers ?? [];
    from[i] = capacity.length;
    count[i] = layers.length;
    const inLayers = layers.reduce((sum, layer) => sum + layer.resistance, 0);
    let before = Math.max(0, element.resistance[0] - inLayers);
    for (const layer of layers) {
      before += layer.resistance / 2;
      link.push(element.area / Math.max(before, 1e-6));
      capacity.push(layer.capacity * element.area);
      before = layer.resistance / 2;
    }
  });
  const outermost = (which: 0 | 1) =>
    Float64Array.from(elements, (element) => {
      const last = element.layers?.at(-1);
      return last === undefined ? element.resistance[which] : last.resistance / 2;
    });
  return { from, count, capacity: Float64Array.from(capacity), link: Float64Array.from(link), outermost };
}
