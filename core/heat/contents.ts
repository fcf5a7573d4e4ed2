import type { Place } from '../plan/schema.ts';
import { covering } from '../plan/coverings.ts';
import type { Enclosure } from '../fabric/index.ts';
import { AIR, FLEECE, LEAF, POTS, STAR, UNDER } from './nodes.ts';
import { emptyMatrix } from './network.ts';
import { link } from './linear.ts';
import { leafBoundary, leafConvection, leafCover, leafEmissivity } from './leaf.ts';

/** Convection at pots [W m⁻² K⁻¹], free, mean of heat up and down (ISO 6946 annex A: 5.0 and 0.7). */
const potConvection = 3;

/** Faces of pots for each square metre of growing area: tops and sides in the air before them, and undersides (estimate). */
const topsAndSides = 1.2;
const undersides = 0.8;

/** Long-wave conductance between leaves and the mix under them [W m⁻² K⁻¹] (ISO 6946, 10 °C, 0.9). */
const leafToMix = 5.1 * 0.9;

/** Pots standing on a floor: share of it they cover, conductance through their base into it [W m⁻² K⁻¹] (mix of 0.4 W m⁻¹ K⁻¹, 5 cm from its middle; derived). */
const potBase = 0.6;
const baseConductance = 8;

/** Ties the fleece's nodes to the air while none is laid, so that the matrix can be solved [W K⁻¹]; it carries no heat that counts. */
const idle = 1;

/** Where plants stand: on the place's floor, or on a bench over it. */
export function standsOnGround(fabric: Enclosure): boolean {
  return fabric.plantLevel === 0;
}

/** True where a fleece comes down to the floor and shuts in what is under the plants. */
function shutsFloorIn(place: Place, fabric: Enclosure): boolean {
  return standsOnGround(fabric) || place.fleece?.hangs === 'floor';
}

/**
 * The floor under the plants: share that meets the air and conductance to pots [W m⁻² K⁻¹]. Pots on the ground
 * touch it; from a bench they only see it, and between them the floor sees the cover.
 */
export function underPlants(place: Place, fabric: Enclosure, area: number) {
  const shutIn = shutsFloorIn(place, fabric);
  if (!standsOnGround(fabric)) {
    return { openShare: 1, toPots: potBase * undersides * leafToMix * area, shutIn, sees: 1 - potBase };
  }
  const toPots = (potBase * baseConductance + (1 - potBase) * leafToMix) * area;
  return { openShare: 1 - potBase, toPots, shutIn, sees: 0 };
}

/** Radiating things of the contents, for the long-wave exchange: leaves and tops of pots. */
export function radiatingContents(place: Place): { area: number; absorptance: number }[] {
  const area = place.growingArea;
  return [
    { area: leafCover * area, absorptance: leafEmissivity },
    { area: (1 - leafCover) * area, absorptance: 0.9 },
  ];
}

/** Links among air, star, pots, leaf, fleece: conductances [W K⁻¹] and radiating areas [m²], without and with fleece laid. */
export interface ContentLinks {
  readonly fixed: Float64Array;
  readonly fixedFleece: Float64Array;
  readonly radiant: Float64Array;
  readonly radiantFleece: Float64Array;
  readonly leafArea: number;
  readonly leafToAir: number;
}

/** @param radiating radiating areas of leaves and tops [m²], in the order of `radiatingContents` */
export function contentLinks(place: Place, fabric: Enclosure, radiating: readonly number[]): ContentLinks {
  const area = place.growingArea;
  const onGround = standsOnGround(fabric);
  const stirred = place.circulation?.runs === 'always' ? place.circulation.airSpeed : 0;
  const leaf = 2 * Math.max(leafConvection, leafBoundary(stirred)) * leafCover * area;
  const canopy = (fixed: Float64Array, air: number) => {
    link(fixed, LEAF, air, leaf);
    link(fixed, LEAF, POTS, leafToMix * leafCover * area);
    link(fixed, POTS, air, potConvection * topsAndSides * area);
    if (!onGround)
      link(fixed, POTS, shutsFloorIn(place, fabric) ? air : AIR, potConvection * undersides * area);
  };
  const fixed = emptyMatrix();
  const radiant = emptyMatrix();
  canopy(fixed, AIR);
  link(radiant, LEAF, STAR, radiating[0]);
  link(radiant, POTS, STAR, radiating[1]);
  const links = { fixed, radiant, leafArea: leafCover * area, leafToAir: leaf };
  if (place.fleece === null) return { ...links, fixedFleece: fixed, radiantFleece: radiant };
  link(fixed, FLEECE, AIR, idle);
  link(fixed, UNDER, AIR, idle);
  return { ...links, ...underFleece(place, fabric, radiating, canopy) };
}

/** Fleece that hangs round a bench down to the floor [m²], the bench taken as a square. */
function hanging(place: Place, fabric: Enclosure): number {
  const down = standsOnGround(fabric) || place.fleece?.hangs !== 'floor' ? 0 : fabric.plantLevel;
  return 4 * Math.sqrt(place.growingArea) * down;
}

/**
 * Fleece over the plants, hanging down to the floor or to the bench: it holds back long-wave by what it does not
 * pass, stills the air between its threads, and shuts plants and pots in, with the floor under them where it comes down to it.
 */
function underFleece(
  place: Place,
  fabric: Enclosure,
  radiating: readonly number[],
  canopy: (fixed: Float64Array, air: number) => void,
): { fixedFleece: Float64Array; radiantFleece: Float64Array } {
  const { fleece } = place;
  const fixed = emptyMatrix();
  const radiant = emptyMatrix();
  if (fleece === null) return { fixedFleece: fixed, radiantFleece: radiant };
  const cloth = covering(fleece.covering);
  const area = place.growingArea;
  const through = cloth.longWaveTransmittance.value ** fleece.layers;
  const held = 1 - through - (1 - cloth.emissivityInside.value - cloth.longWaveTransmittance.value);
  const porous = potConvection * cloth.airShare.value ** fleece.layers;
  const cloths = area + hanging(place, fabric);
  canopy(fixed, UNDER);
  link(fixed, UNDER, AIR, porous * cloths);
  const half = 1 / (1 / potConvection + (cloth.resistance.value * fleece.layers) / 2);
  link(fixed, FLEECE, UNDER, half * cloths);
  link(fixed, FLEECE, AIR, half * cloths);
  const above = radiating[0] + radiating[1] + cloths - area;
  link(radiant, FLEECE, STAR, held * above);
  link(radiant, LEAF, FLEECE, held * leafCover * area);
  link(radiant, POTS, FLEECE, held * (1 - leafCover) * area);
  link(radiant, LEAF, STAR, through * radiating[0]);
  link(radiant, POTS, STAR, through * radiating[1]);
  return { fixedFleece: fixed, radiantFleece: radiant };
}
