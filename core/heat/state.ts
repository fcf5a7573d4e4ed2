import { nodeCount } from './nodes.ts';
import type { Network } from './network.ts';
import { outdoorCarbonDioxide, saturationRatio } from './air.ts';

/** What the outdoors, the clock and the devices give for one step; one object is refilled each step. */
export interface Drive {
  /** Step length [s]. */
  seconds: number;
  /** Outdoor dry-bulb, sky and deep-ground temperature [°C], wind at 10 m [m s⁻¹], outdoor humidity ratio [kg kg⁻¹]. */
  outdoor: number;
  sky: number;
  deepGround: number;
  wind: number;
  humidity: number;
  /** Room temperature [°C]; equals outdoor where there is no room. */
  room: number;
  roomHumidity: number;
  /** Depth of snow that lies on the roof [m]; 0 where none lies. */
  snowDepth: number;
  /** Sunshine on the outer face of each surface [W m⁻²]. */
  readonly sunOnSurface: Float64Array;
  /** Sun absorbed inside by leaves, pots, floors and walls [W] each. */
  sunLeaf: number;
  sunPots: number;
  sunFloor: number;
  sunWall: number;
  /** Sun and lamp light held back by a fleece and taken up by it [W]; 0 where none is laid. */
  onFleece: number;
  /** Lamp and fan heat to the air, to leaves and to pots [W]. */
  lampAir: number;
  lampLeaf: number;
  lampPots: number;
  /** Night screen closed, curtain drawn, fleece laid, door open, circulation fan running, night set points in force. */
  screenClosed: boolean;
  curtainClosed: boolean;
  fleeceLaid: boolean;
  doorOpen: boolean;
  circulating: boolean;
  night: boolean;
  /** 1 where a heater's set point holds, 0 where only its frost watch does. */
  readonly heaterOn: Uint8Array;
  /** Share of mix that evaporates as if wet, 0–1. */
  wetness: number;
  /** There is mains power: electric heaters and fans run. Flames burn without. */
  powered: boolean;
}

/** Temperatures and what the last step gave; reused from step to step. */
export interface HeatState {
  /** Node temperatures [°C]. */
  readonly temperature: Float64Array;
  /** Inner and outer face of each surface and the nodes of its layers [°C]; condensation on the inner face in the last step [W]. */
  readonly face: Float64Array;
  readonly outer: Float64Array;
  readonly layer: Float64Array;
  readonly condensation: Float64Array;
  /** Condensation on leaves in the last step [W]. */
  leafCondensation: number;
  /** How latent heat of faces, leaves and mix falls with their own temperature [W K⁻¹], so that dew and wet faces settle within a step. */
  readonly latentSlope: Float64Array;
  leafSlope: number;
  mixSlope: number;
  /** Latent heat each face took up in the last step [W]; negative where it evaporated. */
  readonly latentHeat: Float64Array;
  /** Humidity ratio of the inside air, and that at saturation [kg kg⁻¹]. */
  humidity: number;
  saturation: number;
  /** Carbon dioxide of the inside air [ppm by volume]. */
  carbonDioxide: number;
  /** Evaporation of the last step from mix [W latent], and from each wet face [W latent]. */
  evaporation: number;
  readonly faceEvaporation: Float64Array;
  /** Heat given by each heater in the last step [W]. */
  readonly heaterPower: Float64Array;
  /** True where the heaters were at their limit and the air stayed below the set point. */
  short: boolean;
  /** True where water formed on a cover face, and on the leaves, in the last step. */
  condensing: boolean;
  leafWet: boolean;
  /** Opening of all vents together 0–1 and fan speed 0–1 of the last step. */
  vent: number;
  fan: number;
  /** Heat leaving through each surface [W] (long-wave straight through included), positive outwards. */
  readonly surfaceHeat: Float64Array;
  airHeat: number;
  roomHeat: number;
  /** Matrices and right-hand sides of the step. */
  readonly matrix: Float64Array;
  readonly right: Float64Array;
  readonly unit: Float64Array;
  /** Whether `unit` holds this step's answer to one watt in the air; it is worked out when first asked for. */
  unitKnown: boolean;
  readonly unitHeater: Float64Array;
  /** Heaters in the order in which they are called, filled each step. */
  readonly heaterOrder: Uint8Array;
  /** Part of the step's wind in the convection at outer faces [W m⁻² K⁻¹]. */
  windConvection: number;
  /** Kept between elimination and back-substitution, surface by surface and layer by layer. */
  readonly film: Float64Array;
  readonly outConductance: Float64Array;
  readonly outTemperature: Float64Array;
  readonly toAir: Float64Array;
  readonly toStar: Float64Array;
  readonly sum: Float64Array;
  readonly source: Float64Array;
  readonly passing: Float64Array;
  readonly passingTo: Float64Array;
  readonly layerTotal: Float64Array;
  readonly layerRight: Float64Array;
}

/** A state at one temperature throughout [°C] with a humidity ratio [kg kg⁻¹]. */
export function initialState(network: Network, temperature: number, humidity: number): HeatState {
  const m = network.surfaceCount;
  const layers = network.layerCapacity.length;
  const surfaceArray = () => new Float64Array(m);
  return {
    temperature: new Float64Array(nodeCount).fill(temperature),
    face: surfaceArray().fill(temperature),
    outer: surfaceArray().fill(temperature),
    layer: new Float64Array(layers).fill(temperature),
    condensation: surfaceArray(),
    leafCondensation: 0,
    latentSlope: surfaceArray(),
    leafSlope: 0,
    mixSlope: 0,
    latentHeat: surfaceArray(),
    humidity,
    saturation: saturationRatio(temperature, network.pressure),
    carbonDioxide: outdoorCarbonDioxide,
    evaporation: 0,
    faceEvaporation: surfaceArray(),
    heaterPower: new Float64Array(Math.max(1, network.heaters.length)),
    short: false,
    condensing: false,
    leafWet: false,
    vent: 0,
    fan: 0,
    surfaceHeat: surfaceArray(),
    airHeat: 0,
    roomHeat: 0,
    matrix: new Float64Array(nodeCount * nodeCount),
    right: new Float64Array(nodeCount),
    unit: new Float64Array(nodeCount),
    unitKnown: false,
    unitHeater: new Float64Array(nodeCount),
    heaterOrder: new Uint8Array(Math.max(1, network.heaters.length)),
    windConvection: 0,
    film: surfaceArray(),
    outConductance: surfaceArray(),
    outTemperature: surfaceArray(),
    toAir: surfaceArray(),
    toStar: surfaceArray(),
    sum: surfaceArray(),
    source: surfaceArray(),
    passing: surfaceArray(),
    passingTo: surfaceArray(),
    layerTotal: new Float64Array(layers),
    layerRight: new Float64Array(layers),
  };
}

/** An empty drive for a network: mild, dark, still, everything off, heaters by their set points. */
export function emptyDrive(network: Network, seconds: number): Drive {
  return {
    seconds,
    outdoor: 0,
    sky: 0,
    deepGround: 10,
    wind: 0,
    humidity: 0.004,
    room: 20,
    roomHumidity: 0.006,
    snowDepth: 0,
    sunOnSurface: new Float64Array(network.surfaceCount),
    sunLeaf: 0,
    sunPots: 0,
    sunFloor: 0,
    sunWall: 0,
    onFleece: 0,
    lampAir: 0,
    lampLeaf: 0,
    lampPots: 0,
    screenClosed: false,
    curtainClosed: false,
    fleeceLaid: false,
    doorOpen: false,
    circulating: network.circulation !== null,
    night: false,
    heaterOn: new Uint8Array(Math.max(1, network.heaters.length)).fill(1),
    wetness: 0.3,
    powered: true,
  };
}
