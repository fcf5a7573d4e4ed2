import { nodeCount } from './nodes.ts';
import type { Network } from './network.ts';
import { saturationRatio } from './air.ts';

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
  /** Sunshine on each cover surface [W m⁻²]. */
  readonly sunOnSurface: Float64Array;
  /** Sun absorbed inside by leaves, pots, floor and back wall [W] each. */
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
  /** Night screen closed, fleece laid, night set points in force, plants watered (0–1). */
  screenClosed: boolean;
  fleeceLaid: boolean;
  night: boolean;
  wetness: number;
  /** There is mains power: electric heaters and fans run. Flames burn without. */
  powered: boolean;
}

/** Temperatures and what the last step gave; reused from step to step. */
export interface HeatState {
  /** Node temperatures [°C]. */
  readonly temperature: Float64Array;
  /** Inner face temperature of each surface [°C] and condensation on it in the last step [W]. */
  readonly face: Float64Array;
  readonly condensation: Float64Array;
  /** Humidity ratio of the inside air, and that at saturation [kg kg⁻¹]. */
  humidity: number;
  saturation: number;
  /** Evaporation of the last step from mix and from the floor [W latent]. */
  evaporation: number;
  floorEvaporation: number;
  /** Heat given by each heater in the last step [W]. */
  readonly heaterPower: Float64Array;
  /** True where the heaters were at their limit and the air stayed below the set point. */
  short: boolean;
  /** True where water formed on a cover face in the last step. */
  condensing: boolean;
  /** Vent opening 0–1 and fan speed 0–1 of the last step. */
  vent: number;
  fan: number;
  /** Heat leaving through each surface [W] (long-wave straight through included), positive outwards. */
  readonly surfaceHeat: Float64Array;
  airHeat: number;
  groundHeat: number;
  roomHeat: number;
  wallHeat: number;
  /** Matrices and right-hand sides of the step. */
  readonly matrix: Float64Array;
  readonly right: Float64Array;
  readonly unit: Float64Array;
  /** Whether `unit` holds this step's answer to one watt in the air; it is worked out when first asked for. */
  unitKnown: boolean;
  readonly unitMat: Float64Array;
  /** Per-surface conductances kept between elimination and back-substitution. */
  readonly sumConductance: Float64Array;
  readonly outConductance: Float64Array;
  readonly outTemperature: Float64Array;
}

/** A state at one temperature throughout [°C], with air at `relativeHumidity` 0.7 of that temperature. */
export function initialState(network: Network, temperature: number, humidity: number): HeatState {
  const m = network.surfaceCount;
  return {
    temperature: new Float64Array(nodeCount).fill(temperature),
    face: new Float64Array(m).fill(temperature),
    condensation: new Float64Array(m),
    humidity,
    saturation: saturationRatio(temperature, network.pressure),
    evaporation: 0,
    floorEvaporation: 0,
    heaterPower: new Float64Array(Math.max(1, network.heaters.length)),
    short: false,
    condensing: false,
    vent: 0,
    fan: 0,
    surfaceHeat: new Float64Array(m),
    airHeat: 0,
    groundHeat: 0,
    roomHeat: 0,
    wallHeat: 0,
    matrix: new Float64Array(nodeCount * nodeCount),
    right: new Float64Array(nodeCount),
    unit: new Float64Array(nodeCount),
    unitKnown: false,
    unitMat: new Float64Array(nodeCount),
    sumConductance: new Float64Array(m),
    outConductance: new Float64Array(m),
    outTemperature: new Float64Array(m),
  };
}

/** An empty drive for a network with `surfaceCount` surfaces. */
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
    fleeceLaid: false,
    night: false,
    wetness: 0.3,
    powered: true,
  };
}
