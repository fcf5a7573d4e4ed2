import type { Network } from './network.ts';
import { OUTDOORS, ROOM } from './network.ts';
import { emptyDrive, initialState } from './state.ts';
import { saturationRatio } from './air.ts';
import { plainHeater } from './heaters.ts';
import { stepHeat } from './step.ts';

/** Standard films of the handbook method at a face of emissivity 0.837: inside 8, outside 23 [W m⁻² K⁻¹] (EN 673 / ISO 10292). */
const insideFilm = 8;
const outsideFilm = 23;

/** Long-wave that passes a film, 4σT³ of 10 °C for surroundings at air temperature [W m⁻² K⁻¹] (ISO 6946: 5.1): tabled U-values of films hold it. */
const straightThrough = 5.1;

/** What a face that shines less than glass takes off its film [W m⁻² K⁻¹]: 4.4 (0.837 − ε) / 0.837 (EN 673); a duller face adds nothing. */
function lessForShine(emissivity: number): number {
  return Math.max(0, (4.4 * (0.837 - emissivity)) / 0.837);
}

export interface HandbookSum {
  readonly fabric: number;
  readonly air: number;
  readonly ground: number;
  readonly room: number;
  readonly loss: number;
}

/**
 * Steady loss by the handbook sum [W]: Σ U·A·ΔT + 0.33·n·V·ΔT + ground, less what a room gives
 * (extension bulletins; ASABE EP406). Conductances in W K⁻¹. `groundConductance` by ISO 13370.
 */
export function handbookLoss(
  network: Network,
  groundConductance: number,
  inside: number,
  outside: number,
  room: number | null,
  groundOutside = outside,
): HandbookSum {
  let fabric = 0;
  let toRoom = network.roomAirClosed;
  for (let i = 0; i < network.surfaceCount; i++) {
    const resistance = network.wholeResistance[i];
    if (network.behind[i] === OUTDOORS) {
      const innerFilm = insideFilm - lessForShine(network.insideEmissivity[i]);
      const outerFilm = outsideFilm - lessForShine(network.outsideEmissivity[i]);
      fabric += network.area[i] / (1 / innerFilm + resistance + 1 / outerFilm);
      fabric += straightThrough * network.straightArea[i];
    } else if (network.behind[i] === ROOM && network.surfaceParts[i].kind !== 'ground') {
      toRoom += network.area[i] / (1 / insideFilm + resistance + 1 / insideFilm);
    }
  }
  const leak = 0.33 * network.leakageClosed * network.volume;
  const air = network.leakageFromRoom ? 0 : leak;
  if (network.leakageFromRoom) toRoom += leak;
  const difference = inside - outside;
  const roomDifference = room === null ? 0 : inside - room;
  const loss =
    (fabric + air) * difference +
    groundConductance * (inside - groundOutside) +
    (room === null ? 0 : toRoom * roomDifference);
  return {
    fabric,
    air,
    ground: groundConductance,
    room: room === null ? 0 : toRoom,
    loss: Math.max(0, loss),
  };
}

export interface SteadyConditions {
  readonly outdoor: number;
  readonly sky: number;
  readonly deepGround: number;
  readonly wind: number;
  readonly room: number | null;
  readonly fleeceLaid: boolean;
  readonly screenClosed: boolean;
}

/**
 * Power that holds an inside air temperature for ever under unchanging conditions at night [W], by the
 * network itself with one unlimited heater: steps of a million years, repeated until the radiant
 * coefficients, which follow one step behind, have settled.
 */
export function steadyPower(network: Network, inside: number, conditions: SteadyConditions): number {
  const heater = plainHeater(1e9, inside);
  const steady: Network = {
    ...network,
    heaters: [heater],
    vents: [],
    door: null,
    fan: null,
    wetFace: new Float64Array(network.surfaceCount),
  };
  const drive = emptyDrive(network, 1e13);
  drive.outdoor = conditions.outdoor;
  drive.sky = conditions.sky;
  drive.deepGround = conditions.deepGround;
  drive.wind = conditions.wind;
  drive.room = conditions.room ?? conditions.outdoor;
  drive.humidity = 0.8 * saturationRatio(conditions.outdoor, network.pressure);
  drive.roomHumidity = drive.humidity;
  drive.night = true;
  drive.wetness = 0;
  drive.fleeceLaid = conditions.fleeceLaid;
  drive.screenClosed = conditions.screenClosed;
  drive.curtainClosed = conditions.screenClosed;
  const state = initialState(steady, inside, drive.humidity);
  for (let round = 0; round < 30; round++) stepHeat(steady, state, drive);
  return state.heaterPower[0];
}
