import type { Place } from '../plan/schema.ts';
import type { PlanSite } from '../plan/site.ts';
import { covering } from '../plan/coverings.ts';
import type { Covering } from '../plan/coverings.ts';
import { surfacesOf } from '../fabric/index.ts';
import { solarAbsorptance } from '../light/index.ts';
import type { Enclosure, Surface } from '../fabric/index.ts';
import { AIR, LEAF, POTS, UNDER, nodeCount } from './nodes.ts';
import { GROUND, NOTHING, OUTDOORS, ROOM } from './network.ts';
import type { Network } from './network.ts';
import { airDensity, airHeat } from './air.ts';
import { forcedConvection } from './convection.ts';
import { contentLinks, radiatingContents, underPlants } from './contents.ts';
import type { Element } from './elements.ts';
import { slices, surfacesFrom } from './elements.ts';
import { board, floorBuild } from './floors.ts';
import type { FloorBuild } from './floors.ts';
import { heaterNumbers } from './heaters.ts';
import { interiorSun } from './interior-sun.ts';
import { oilCapacity, oilFace, potCapacity, waterBody } from './masses.ts';

/** Conductance between the bay and the room through an open side [W m⁻² K⁻¹]: slow air in a bay; estimate, no source. */
const openExchange = 20;

/** Convection of the air inside water, oil and board walls is so good that their face nearly has their temperature [m² K W⁻¹]. */
const wellMixed = 0.007;

/** Air plus light contents: the heat capacity of the air times this (common practice in building models, no source). */
const airContents = 4;

/** Height of the air shut in under a fleece [m] (common practice, no source). */
const fleeceHeight = 0.25;

/** Roofs flatter than this hold snow [degrees] (common practice, no source). */
const snowSlides = 60;

/**
 * Builds a place's network from the plan.
 * @param pressure site pressure [Pa]
 * @param wetness share of the mix that evaporates as if wet, 0–1: dry pots hold less heat
 */
export function buildNetwork(place: Place, site: PlanSite, pressure: number, wetness = 0.12): Network {
  const fabric = surfacesOf(place);
  const floor = onGround(place, fabric) ? floorBuild(place, fabric) : null;
  const oil = new Map<number, number>();
  const elements = [...coverElements(place, fabric), ...floorElements(place, fabric, floor)];
  place.heaters.forEach((heater, index) => {
    if (heater.kind === 'oil-filled')
      oil.set(index, elements.push(oilElement(heater.name, heater.power)) - 1);
  });
  elements.push(...waterElements(place));
  const openArea = openSide(fabric);
  const things = [...radiatingContents(place), { area: openArea, absorptance: 1 }];
  const { surfaces, radiating } = surfacesFrom(elements, things);
  const links = contentLinks(place, fabric, radiating);
  const capacity = new Float64Array(nodeCount);
  const airCapacity = airDensity(10, pressure) * airHeat;
  capacity[AIR] = fabric.volume * airCapacity * airContents;
  capacity[POTS] = potCapacity(place, wetness);
  if (place.fleece !== null) capacity[UNDER] = place.growingArea * fleeceHeight * airCapacity;
  const sheltered = !fabric.surfaces.some(
    (surface) => surface.behind === 'outdoors' && surface.covering.use !== 'open',
  );
  return {
    ...surfaces,
    size: place.fleece === null ? LEAF + 1 : nodeCount,
    volume: fabric.volume,
    floorArea: fabric.floorArea,
    growingArea: place.growingArea,
    plantLevel: fabric.plantLevel,
    ridge: ridgeOf(fabric),
    capacity,
    ...links,
    groundConductance: floor === null ? 0 : floor.transmittance * fabric.floorArea,
    ...roomSide(place, openArea, radiating[2]),
    leakage: place.leakage * fabric.airShareOpen,
    leakageClosed: place.leakage * fabric.airShareClosed,
    leakageFromRoom: sheltered,
    windShare: sheltered ? 0 : site.windShare,
    vents: place.vents,
    door: place.door,
    fan: fanNumbers(place, sheltered),
    circulation:
      place.circulation === null
        ? null
        : {
            watts: place.circulation.watts,
            convection: forcedConvection(place.circulation.airSpeed),
          },
    heaters: heaterNumbers(place.heaters, oil),
    pressure,
    wetArea: place.growingArea,
  };
}

/** True where the place's own floor lies on the ground. */
function onGround(place: Place, fabric: Enclosure): boolean {
  return fabric.ownFloor && place.floor !== 'raised' && fabric.floorBehind === 'ground';
}

const openSide = (fabric: Enclosure) =>
  fabric.surfaces.reduce((sum, surface) => sum + (surface.covering.use === 'open' ? surface.area : 0), 0);

/** Height of the highest point over the floor [m]; a listed place's mean height. */
function ridgeOf(fabric: Enclosure): number {
  const tops = fabric.surfaces.flatMap((surface) => surface.polygon?.map((point) => point[2]) ?? []);
  return tops.length > 0 ? Math.max(...tops) : fabric.volume / fabric.floorArea;
}

/** The surfaces that are elements of the network, in the enclosure's order: all but open sides. */
export function coverSurfaces(fabric: Enclosure): Surface[] {
  return fabric.surfaces.filter((surface) => surface.covering.use !== 'open');
}

const behinds = { outdoors: OUTDOORS, room: ROOM, ground: GROUND, nothing: NOTHING } as const;

function coverElements(place: Place, fabric: Enclosure): Element[] {
  const sun = place.shape.kind === 'listed' ? interiorSun(fabric) : null;
  return coverSurfaces(fabric).map((surface): Element => {
    const wall = surface.part === 'wall';
    const whole = surface.resistanceOpen;
    const layers = surface.layers === null ? undefined : slices(surface.layers);
    const last = layers === undefined ? whole : layers[layers.length - 1].resistance / 2;
    return {
      name: surface.name,
      part: {
        name: wall ? 'back wall' : surface.name.replace(/ \d+$/, ''),
        kind: surface.behind === 'ground' ? 'ground' : wall && surface.behind === 'room' ? 'room' : 'surface',
      },
      area: surface.area,
      tilt: surface.tilt,
      behind: behinds[surface.behind],
      skyView: surface.skyView,
      emissivity: [surface.emissivityInsideOpen, surface.emissivityInsideClosed],
      longWave: [surface.longWaveOpen, surface.longWaveClosed],
      outsideEmissivity: surface.emissivityOutside,
      roughness: surface.covering.optics.kind === 'opaque' ? rough : 1,
      resistance: [whole, surface.resistanceClosed],
      ...(layers === undefined ? {} : { layers }),
      ...sunTaken(place, surface),
      holdsSnow: place.snow === 'left' && surface.behind === 'outdoors' && surface.tilt < snowSlides,
      ...(surface.behind === 'ground' ? { deepGround: surface.area / Math.max(last, 1e-3) } : {}),
      wallShare: sun === null ? (wall ? 1 : 0) : sun.surfaces[fabric.surfaces.indexOf(surface)],
    };
  });
}

/** Wind convection at walls as a multiple of that at glass: boards and render 1.52, brick 1.67 (DOE-2, from memory). */
const rough = 1.6;

/**
 * Sun taken up at the outer face and at the innermost layer (second skin, lining), as shares of what falls on the
 * surface. What two panes of one unit take up is all put at the outer face (with 0.42 of it at the inner one, noon
 * of 1 February in ASHRAE 140's case 600FF comes out 2.4 K over the programs' range).
 */
function sunTaken(place: Place, surface: Surface): { solarAbsorptance: number; solarInner: number } {
  const cover = surface.covering;
  const own = solarAbsorptance([cover]);
  if (!surface.transparent) return { solarAbsorptance: own, solarInner: 0 };
  const lined = Math.max(own, solarAbsorptance(layersOf(place, surface)));
  const inner = lined - own;
  return { solarAbsorptance: lined - inner, solarInner: inner };
}

/** The layers a surface's sun meets: cover, and second skin and lining where it is clear. */
function layersOf(place: Place, surface: Surface): Covering[] {
  if (!surface.transparent) return [surface.covering];
  const added = [place.secondSkin?.covering ?? null, place.lining];
  return [surface.covering, ...added.flatMap((id) => (id === null ? [] : [covering(id)]))];
}

/** The place's own floor: what plants stand on and what lies open, on the ground or over what is below. */
function floorElements(place: Place, fabric: Enclosure, floor: FloorBuild | null): Element[] {
  if (!fabric.ownFloor) return [];
  const { floorArea } = fabric;
  const planted = Math.min(0.98 * floorArea, place.growingArea);
  const ownShare = place.shape.kind === 'listed' ? interiorSun(fabric).floor : 0;
  const element = (area: number, under: boolean): Element => ({
    name: under ? 'floor under the plants' : 'floor',
    part: { name: 'Floor and ground', kind: 'ground' },
    area,
    tilt: 180,
    behind: floor === null ? ROOM : GROUND,
    emissivity: [0.9, 0.9],
    resistance: floor === null ? [board.resistance, board.resistance] : [0, 0],
    layers: floor === null ? [board] : floor.layers,
    ...(floor === null ? {} : { deepGround: floor.deepGround * area, edge: floor.edge * area }),
    floorShare: area / floorArea,
    wallShare: (ownShare * area) / floorArea,
    wetFace: (floor?.wetShare ?? 0) * area,
    ...(under ? { underPlants: underPlants(place, fabric, area) } : {}),
  });
  return [element(floorArea - planted, false), element(planted, true)];
}

function waterElements(place: Place): Element[] {
  return place.water.map((store) => {
    const body = waterBody(store);
    return {
      ...standing(store.name, body.area),
      layers: [{ resistance: 2 * wellMixed, capacity: body.capacity / body.area }],
      wetFace: body.openArea,
    };
  });
}

const oilElement = (name: string, power: number): Element => ({
  ...standing(name, oilFace * power),
  layers: [{ resistance: 2 * wellMixed, capacity: oilCapacity / oilFace }],
});

/** A thing that stands inside with nothing behind it. */
function standing(name: string, area: number): Element {
  return {
    name,
    part: { name: 'Stored', kind: 'surface' },
    area,
    tilt: 90,
    behind: NOTHING,
    emissivity: [0.9, 0.9],
    resistance: [0, 0],
  };
}

/** What an open side towards a room exchanges [W K⁻¹] and its radiating area [m²], curtain open and drawn. */
function roomSide(place: Place, openArea: number, radiating: number) {
  const open = { roomAir: openArea * openExchange, roomRadiant: radiating };
  if (place.curtain === null)
    return { ...open, roomAirClosed: open.roomAir, roomRadiantClosed: open.roomRadiant };
  const cloth = covering(place.curtain.covering);
  const conducted = 1 / (2 / 7.7 + cloth.resistance.value);
  const draught = 0.25 * openExchange * cloth.airShare.value;
  return {
    ...open,
    roomAirClosed: openArea * Math.min(openExchange, conducted + draught),
    roomRadiantClosed: radiating * cloth.longWaveTransmittance.value,
  };
}

function fanNumbers(place: Place, sheltered: boolean): Network['fan'] {
  const { fan } = place;
  if (fan === null) return null;
  const fromRoom = fan.draws === 'room' || (fan.draws === 'around' && sheltered);
  const { flow, onAt, band, watts, leastSpeed } = fan;
  return { flow, onAt, band, watts, leastSpeed, fromRoom };
}
