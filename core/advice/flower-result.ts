import type { Move } from '../plan/schema.ts';

/** How one of two groups is kept so that both flower together. */
export interface FlowerKeeping {
  readonly lotId: string;
  /** Where it stands on the season's first day and its moves, as the plan would hold them. */
  readonly placeId: string;
  readonly moves: readonly Move[];
  /** Days between which its flowers may be expected; may lie beyond the season's last day. */
  readonly window: { readonly from: number; readonly to: number };
  /** Days of harm this keeping adds to what the plan has, 0 or less where it adds none; at most a week, never of frost, heat or chill. */
  readonly harmDays: number;
}

/** A way to bring two windows together. */
export interface FlowerWay {
  readonly one: FlowerKeeping;
  readonly other: FlowerKeeping;
  /** A place kept warmer or cooler for it: its id, and kelvin added to its set points; null where nothing is heated otherwise. */
  readonly warmth: { readonly placeId: string; readonly kelvin: number; readonly cost: number } | null;
  /** Days both flower. */
  readonly overlap: number;
  /** Moves and set points that are changed against the plan. */
  readonly changes: number;
  readonly words: string;
}

export interface FlowerMeeting {
  /** As the plan stands: each window, null where the cue is not met or not known, and why in words. */
  readonly now: {
    readonly one: { readonly from: number; readonly to: number } | null;
    readonly other: { readonly from: number; readonly to: number } | null;
    readonly words: string;
  };
  /** Best first; empty where nothing found brings them together. */
  readonly ways: readonly FlowerWay[];
  /** Why there is none, in words; null where there is one. */
  readonly whyNot: string | null;
}
