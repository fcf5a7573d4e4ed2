import type {
  Certainty,
  DampAdvice,
  DampChoice,
  FlowerMeeting,
  FlowerWay,
  GroupRank,
  LampComparison,
  LampOption,
  LampPlacing,
  LampPlacings,
  LampView,
  NightInput,
  NightResult,
  PlaceRank,
  Plan,
  SiteCard,
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
  certainty: { ask: { plan: Plan }; piece: Certainty; answer: Certainty };
  rankPlaces: { ask: { plan: Plan; groupId: string }; piece: never; answer: readonly PlaceRank[] };
  rankGroups: { ask: { plan: Plan; placeId: string }; piece: never; answer: readonly GroupRank[] };
  /** Two lots by their ids. */
  flower: { ask: { plan: Plan; one: string; other: string }; piece: FlowerWay; answer: FlowerMeeting };
  siteCard: { ask: { plan: Plan }; piece: never; answer: SiteCard };
}
export type RequestName = keyof Requests;

export interface RequestMessage<N extends RequestName = RequestName> {
  readonly kind: 'request';
  readonly id: number;
  readonly name: N;
  readonly ask: Requests[N]['ask'];
}

/** Ends a question that looks between its pieces whether it is still wanted; it is then answered with a failure. */
export interface CancelMessage {
  readonly kind: 'cancel';
  readonly id: number;
}

export type ToWorker = WeatherMessage | RequestMessage | CancelMessage;

export type FromWorker =
  | { readonly kind: 'piece'; readonly id: number; readonly piece: Requests[RequestName]['piece'] }
  | { readonly kind: 'done'; readonly id: number; readonly answer: unknown; readonly milliseconds: number }
  | { readonly kind: 'failed'; readonly id: number; readonly message: string };
