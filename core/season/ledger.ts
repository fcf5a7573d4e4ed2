import { nodeCount } from '../heat/index.ts';
import type { Drive, HeatState, Network } from '../heat/index.ts';
import type { HeatPart } from './result.ts';

const fixedParts: readonly { name: string; kind: HeatPart['kind'] }[] = [
  { name: 'Draughts, vents and water vapour', kind: 'air' },
  { name: 'Open to the room', kind: 'room' },
  { name: 'Sun', kind: 'sun' },
  { name: 'Lamps and fans', kind: 'lamps' },
  { name: 'Heaters', kind: 'heaters' },
  { name: 'Stored', kind: 'storage' },
];

/**
 * Where the heat goes, kept apart from the solve: every flow of every step is added up, and what comes in,
 * less what goes out and what is stored, must be nothing. Kept by day and by dark hours, so that any span can
 * be asked for.
 */
export class HeatLedger {
  readonly #network: Network;
  readonly #hours: number;
  readonly #perDay: number;
  readonly #days: number;
  readonly #names: readonly { name: string; kind: HeatPart['kind'] }[];
  /** Part under which each surface is booked. */
  readonly #partOf: Uint16Array;
  readonly #byDay: Float64Array;
  readonly #byNight: Float64Array;
  readonly #flow: Float64Array;
  readonly #nodesBefore = new Float64Array(nodeCount);
  readonly #layersBefore: Float64Array;
  /** Shares of the sun on floors and on walls that no surface takes up, 0 or 1. */
  readonly #noFloor: number;
  readonly #noWall: number;
  #residual = 0;
  #exchanged = 0;
  #started = false;

  constructor(network: Network, stepMinutes: number, days: number) {
    this.#network = network;
    this.#hours = stepMinutes / 60;
    this.#perDay = 1440 / stepMinutes;
    this.#days = days;
    const names: { name: string; kind: HeatPart['kind'] }[] = [];
    this.#partOf = Uint16Array.from(network.surfaceParts, (part) => {
      const found = names.findIndex((each) => each.name === part.name);
      return found >= 0 ? found : names.push(part) - 1;
    });
    this.#names = [...names, ...fixedParts];
    this.#byDay = new Float64Array(this.#names.length * days);
    this.#byNight = new Float64Array(this.#names.length * days);
    this.#flow = new Float64Array(this.#names.length);
    this.#layersBefore = new Float64Array(network.layerCapacity.length);
    this.#noFloor = 1 - network.floorShare.reduce((sum, share) => sum + share, 0);
    this.#noWall = 1 - network.wallShare.reduce((sum, share) => sum + share, 0);
  }

  /**
   * Adds one step; outward positive. The first step only sets the start of the store.
   * @param index of the step, counted from the season's first @param dark the sun is down
   */
  step(index: number, drive: Drive, state: HeatState, dark: boolean): void {
    const network = this.#network;
    const flow = this.#flow.fill(0);
    const at = this.#names.length - fixedParts.length;
    let out = 0;
    for (let i = 0; i < network.surfaceCount; i++) {
      flow[this.#partOf[i]] += state.surfaceHeat[i];
      out += state.surfaceHeat[i];
    }
    const sun =
      drive.sunLeaf + drive.sunPots + drive.sunFloor + drive.sunWall + drive.onFleece - this.#nowhere(drive);
    const lamps = drive.lampAir + drive.lampLeaf + drive.lampPots;
    let heaters = 0;
    for (let h = 0; h < network.heaters.length; h++) heaters += state.heaterPower[h];
    const stored = this.#stored(state);
    flow[at] = state.airHeat;
    flow[at + 1] = state.roomHeat;
    flow[at + 2] = -sun;
    flow[at + 3] = -lamps;
    flow[at + 4] = -heaters;
    flow[at + 5] += stored;
    out += state.airHeat + state.roomHeat;
    if (this.#started) {
      this.#residual += sun + lamps + heaters - out - stored;
      this.#exchanged += sun + lamps + heaters + Math.abs(out);
      this.#book(index, dark);
    }
    this.#started = true;
  }

  /** Sun meant for floors or walls where a place has none of them [W]. */
  #nowhere(drive: Drive): number {
    return drive.sunFloor * this.#noFloor + drive.sunWall * this.#noWall;
  }

  #stored(state: HeatState): number {
    const network = this.#network;
    let stored = 0;
    for (let i = 0; i < nodeCount; i++) {
      stored += network.capacity[i] * (state.temperature[i] - this.#nodesBefore[i]);
      this.#nodesBefore[i] = state.temperature[i];
    }
    for (let c = 0; c < network.layerCapacity.length; c++) {
      stored += network.layerCapacity[c] * (state.layer[c] - this.#layersBefore[c]);
      this.#layersBefore[c] = state.layer[c];
    }
    return this.#started ? stored / (this.#hours * 3600) : 0;
  }

  /** Books a step to its day, and where it is dark to the night that began at the noon before. */
  #book(index: number, dark: boolean): void {
    const scale = this.#hours / 1000;
    const day = Math.floor(index / this.#perDay);
    const night = Math.floor((index - this.#perDay / 2) / this.#perDay);
    for (let p = 0; p < this.#flow.length; p++) {
      this.#byDay[p * this.#days + day] += this.#flow[p] * scale;
      if (dark && night >= 0) this.#byNight[p * this.#days + night] += this.#flow[p] * scale;
    }
  }

  /** Net imbalance over the season as a share of all heat exchanged. */
  residual(): number {
    return this.#exchanged > 0 ? Math.abs(this.#residual) / this.#exchanged : 0;
  }

  /** The flows by part, those that carry anything. @param coldest day on whose evening the coldest night begins */
  parts(coldest: number): HeatPart[] {
    return this.#names.flatMap((part, p) => {
      const days = this.#byDay.slice(p * this.#days, (p + 1) * this.#days);
      const nights = this.#byNight.slice(p * this.#days, (p + 1) * this.#days);
      if (days.every((value) => value === 0)) return [];
      const season = days.reduce((sum, value) => sum + value, 0);
      return [{ ...part, season, coldestNight: nights[coldest], days, nights }];
    });
  }
}
