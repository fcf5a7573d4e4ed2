import type {
  DampAdvice,
  DampChoice,
  LampComparison,
  LampOption,
  LampPlacing,
  LampPlacings,
  LampView,
  NightInput,
  NightResult,
  Plan,
  Way,
  WaysResult,
  Wish,
} from '../../core/index.ts';
import type { SeasonParcel } from './season-parcel.ts';

/** Bytes of a weather file the plan refers to; sent once a worker before the first request that needs it. */
export interface WeatherMessage {
  readonly kind: 'weather';
  readonly weatherId: string;
  readonly name: string;
  readonly format: 'epw' | 'tmy3';
  readonly bytes: Uint8Array;
}

/** The placings of a lamp's hours, and the mean outdoor temperature of each hour of a winter's day [°C]. */
export interface FoundPlacings {
  readonly placings: LampPlacings;
  readonly outdoors: readonly number[];
}

/** What can be asked of the engine, by name: what goes in, what is told on the way, what comes out. */
export interface Requests {
  season: { ask: { plan: Plan }; piece: never; answer: SeasonParcel };
  night: { ask: { plan: Plan; input: NightInput }; piece: never; answer: NightResult };
  lamps: {
    ask: { plan: Plan; placeId: string; options: readonly LampOption[]; view: LampView };
    piece: never;
    answer: readonly LampComparison[];
  };
  placing: {
    ask: { plan: Plan; placeId: string; lampId: string };
    piece: LampPlacing;
    answer: FoundPlacings;
  };
  ways: { ask: { plan: Plan; wish: Wish }; piece: Way; answer: WaysResult };
  damp: { ask: { plan: Plan; placeId: string }; piece: DampChoice; answer: DampAdvice };
}
export type RequestName = keyof Requests;

export interface RequestMessage<N extends RequestName = RequestName> {
  readonly kind: 'request';
  readonly id: number;
  readonly name: N;
  readonly ask: Requests[N]['ask'];
}

export type ToWorker = WeatherMessage | RequestMessage;

export type FromWorker =
  | { readonly kind: 'piece'; readonly id: number; readonly piece: Requests[RequestName]['piece'] }
  | { readonly kind: 'done'; readonly id: number; readonly answer: unknown; readonly milliseconds: number }
  | { readonly kind: 'failed'; readonly id: number; readonly message: string };
