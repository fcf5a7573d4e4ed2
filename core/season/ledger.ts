import { nodeCount } from '../heat/index.ts';
import type { Drive, HeatState, Network } from '../heat/index.ts';
import type { HeatPart } from './result.ts';

const fixedParts: readonly { name: string; kind: HeatPart['kind'] }[] = [
  { name: 'Draughts, vents and water vapour', kind: 'air' },
  { name: 'Floor and ground', kind: 'ground' },
  { name: 'Open to the room', kind: 'room' },
  { name: 'Back wall', kind: 'room' },
  { name: 'Sun', kind: 'sun' },
  { name: 'Lamps and fans', kind: 'lamps' },
  { name: 'Heaters', kind: 'heaters' },
  { name: 'Stored', kind: 'storage' },
];

/**
 * Where the heat goes, kept apart from the solve: every flow of every step is added up, and what comes in,
 * less what goes out and what is stored, must be nothing.
 */
export class HeatLedger {
  readonly #network: Network;
  readonly #hours: number;
  readonly #night: { from: number; to: number };
  readonly #season: Float64Array;
  readonly #coldest: Float64Array;
  readonly #before = new Float64Array(nodeCount);
  readonly #flow: Float64Array;
  #residual = 0;
  #exchanged = 0;
  #started = false;

  constructor(network: Network, stepMinutes: number, coldestNight: { from: number; to: number }) {
    this.#network = network;
    this.#hours = stepMinutes / 60;
    this.#night = coldestNight;
    const count = network.surfaceCount + fixedParts.length;
    this.#season = new Float64Array(count);
    this.#coldest = new Float64Array(count);
    this.#flow = new Float64Array(count);
  }

  /** Adds one step; outward positive. The first step only sets the start of the store. */
  step(index: number, drive: Drive, state: HeatState): void {
    const network = this.#network;
    const flow = this.#flow;
    const m = network.surfaceCount;
    let out = 0;
    for (let i = 0; i < m; i++) {
      flow[i] = state.surfaceHeat[i];
      out += flow[i];
    }
    flow[m] = state.airHeat;
    flow[m + 1] = state.groundHeat;
    flow[m + 2] = state.roomHeat;
    flow[m + 3] = state.wallHeat;
    const sun = drive.sunLeaf + drive.sunPots + drive.sunFloor + drive.sunWall + drive.onFleece;
    const lamps = drive.lampAir + drive.lampLeaf + drive.lampPots;
    let heaters = 0;
    for (let h = 0; h < network.heaters.length; h++) heaters += state.heaterPower[h];
    flow[m + 4] = -sun;
    flow[m + 5] = -lamps;
    flow[m + 6] = -heaters;
    let stored = 0;
    for (let i = 0; i < nodeCount; i++) {
      if (this.#started) stored += network.capacity[i] * (state.temperature[i] - this.#before[i]);
      this.#before[i] = state.temperature[i];
    }
    stored /= this.#hours * 3600;
    flow[m + 7] = stored;
    out += flow[m] + flow[m + 1] + flow[m + 2] + flow[m + 3];
    if (this.#started) {
      this.#residual += sun + lamps + heaters - out - stored;
      this.#exchanged += sun + lamps + heaters + Math.abs(out);
      const night = index >= this.#night.from && index < this.#night.to;
      const scale = this.#hours / 1000;
      for (let i = 0; i < flow.length; i++) {
        this.#season[i] += flow[i] * scale;
        if (night) this.#coldest[i] += flow[i] * scale;
      }
    }
    this.#started = true;
  }

  /** Net imbalance over the season as a share of all heat exchanged. */
  residual(): number {
    return this.#exchanged > 0 ? Math.abs(this.#residual) / this.#exchanged : 0;
  }

  /** The flows by part; facets of one surface, numbered by their shape, are one part. */
  parts(): HeatPart[] {
    const m = this.#network.surfaceCount;
    const parts: HeatPart[] = [];
    const surfaces = new Map<string, { season: number; coldestNight: number }>();
    for (let i = 0; i < m; i++) {
      const name = this.#network.surfaceNames[i].replace(/ \d+$/, '');
      const sum = surfaces.get(name) ?? { season: 0, coldestNight: 0 };
      surfaces.set(name, {
        season: sum.season + this.#season[i],
        coldestNight: sum.coldestNight + this.#coldest[i],
      });
    }
    for (const [name, sum] of surfaces) parts.push({ name, kind: 'surface', ...sum });
    fixedParts.forEach((part, j) => {
      const season = this.#season[m + j];
      const coldestNight = this.#coldest[m + j];
      if (season !== 0 || coldestNight !== 0) parts.push({ ...part, season, coldestNight });
    });
    return parts;
  }
}
