// What came out of a sweep and what to do about it, right after it and years later in the logbook.
import type { Oddity } from '../sweep/oddity.ts';
import type { CarriedOutcome, Outcome } from '../sweep/end/outcome.ts';
import type { Scale } from '../sweep/scale.ts';
import type { Seconds, Steps } from '../units.ts';

type Bare = Extract<Outcome, { found: 'past the limit' | 'beyond the scale' | 'nothing' }>['found'];

/** What a practice camera really was. Places on the range of corrections; `off` in steps. */
export type RevealedFact =
  | { readonly is: 'held'; readonly low: number; readonly high: number }
  | { readonly is: 'made wrong'; readonly how: Oddity; readonly named: boolean }
  | { readonly is: 'gap'; readonly low: number; readonly high: number; readonly from: number; readonly to: number }
  | { readonly is: 'moved'; readonly low: number; readonly high: number; readonly by: number }
  | { readonly is: 'value off'; readonly value: Steps; readonly off: number }
  | { readonly is: 'centre off'; readonly off: number }
  | { readonly is: 'not found' };

export interface ResultWords {
  readonly region: string;
  /** Of a value that was shifted on purpose from the one found. */
  readonly placed: (found: Steps, within: number) => string;
  /** The holds prefer neither of the two. */
  readonly between: (value: Steps, other: Steps) => string;
  readonly headline: Readonly<Record<Bare | 'no hold' | 'service', string>>;
  readonly noHold: string;
  readonly service: (outcome: CarriedOutcome) => string;
  readonly facts: {
    readonly centre: string;
    readonly place: (at: number) => string;
    readonly band: string;
    readonly range: (low: Steps, high: Steps) => string;
    readonly endsNotSeen: string;
    readonly seenInFocus: string;
    readonly visible: (end: Steps | null) => string;
    readonly halfWidth: string;
    readonly width: (half: number, from: number, to: number) => string;
    readonly figures: string;
    readonly interval: string;
    readonly within: (from: number, to: number) => string;
  };
  readonly drawing: {
    readonly said: (outcome: CarriedOutcome, scale: Scale) => string;
    readonly held: string;
    readonly beyond: string;
    /** Where nothing held in sharp focus. */
    readonly lies: string;
    readonly centre: string;
  };
  readonly holds: {
    readonly aside: string;
    readonly made: (count: number, time: Seconds) => string;
    /** Of those before the focus moved. */
    readonly spent: (count: number) => string;
  };
  readonly next: {
    readonly title: string;
    readonly enter: (value: Steps) => string;
    readonly enterMeanwhile: (value: Steps) => string;
    readonly marked: (value: Steps) => string;
    readonly check: string;
    readonly photographs: string;
    readonly focusAgain: string;
    readonly service: string;
    readonly mark: string;
    readonly lens: string;
    readonly plan: string;
    readonly otherwise: string;
    readonly allTheSame: string;
    readonly takeMarkBack: string;
    readonly backToSweep: string;
    readonly presses: string;
  };
  readonly width: {
    readonly workshop: string;
    readonly title: string;
    readonly why: string;
    readonly practice: string;
    readonly steps: readonly string[];
    readonly measure: string;
  };
  readonly checks: { readonly title: string; readonly of: Readonly<Record<Bare, readonly string[]>> };
  readonly practice: {
    readonly title: string;
    readonly revealed: (fact: RevealedFact) => string;
    /** The way to pictures that it takes. */ readonly pictures: string;
  };
}
