// What a sweep under way shows: the face, what is understood and heard, how far it has come, the focus in question. Read
// with the session's desk, as the session shows back what became of what is told.
import type { Care } from '../sweep/care.ts';
import type { Drift } from '../sweep/end/drift.ts';
import type { Rival } from '../sweep/end/story.ts';
import type { SweepEvent } from '../sweep/event.ts';
import type { Input, Press } from '../sweep/inputs.ts';
import type { Scale } from '../sweep/scale.ts';
import type { TurnWay } from '../sweep/transfer/turning.ts';
import type { PressMeaning } from '../sweep/understood.ts';
import type { Verdict } from '../sweep/verdict.ts';
import type { Steps } from '../units.ts';

interface Noted {
  readonly value: Steps;
  readonly verdict: Verdict;
}

export interface SweepWords {
  readonly leave: string;
  readonly leaveFarView: string;
  readonly setUp: string;
  readonly face: {
    readonly label: string;
    readonly hold: string;
    /** Label of the large figure. */
    readonly value: Readonly<Record<'set' | 'enter', string>>;
    readonly caption: Readonly<
      Record<'dialling' | 'holding' | 'judging' | 'paused' | 'checking' | 'turning' | 'enter' | 'past the limit' | 'beyond the scale' | 'nothing', string>
    >;
    readonly thenPress: string;
    readonly thenWait: string;
    readonly already: string;
    /** How far the dial is turned, and from where. */
    readonly way: (clicks: number, direction: 'up' | 'down', from: Steps) => string;
    /** The figure is drawn large. */
    readonly left: (seconds: number) => { readonly figure: string; readonly unit: string };
    readonly steady: string;
    readonly paused: string;
    readonly past: string;
    readonly lies: Readonly<Record<'above' | 'below', string>>;
    readonly centreAbout: (centre: number) => string;
    readonly toCheck: string;
    /** What only a tone tells otherwise. */
    readonly news: Readonly<Record<'holding' | 'judging', string>>;
  };
  readonly sure: (within: number) => string;
  /** Less sure than a sweep asks for. */
  readonly notYetSure: (within: number) => string;
  readonly offer: {
    readonly enough: (care: Care, look: boolean) => string;
    readonly asItStands: string;
    readonly noMoreHolds: string;
    readonly firstThis: string;
  };
  readonly standing: {
    readonly anywhere: string;
    readonly near: (value: Steps, within: number) => string;
    readonly centre: (centre: number) => string;
    readonly holds: (made: number) => string;
    /** `wanted`: what is still to be found out; null where that is said already. */
    readonly toCome: (made: number, all: number, wanted: 'centre' | 'ends' | null) => string;
  };
  readonly checkFocus: { readonly title: string; readonly why: (drift: Drift, rival?: Rival) => string; readonly look: string; readonly lookAside: string };
  readonly turnFocus: {
    readonly label: string;
    readonly title: Readonly<Record<TurnWay, string>>;
    readonly what: Readonly<Record<TurnWay, string>>;
    readonly leaveIt: string;
    readonly practice: string;
  };
  readonly setValue: {
    readonly title: string;
    readonly value: string;
    readonly up: string;
    readonly down: string;
    readonly set: string;
    readonly cancel: string;
    readonly offTheScale: (scale: Scale) => string;
  };
  readonly heard: {
    readonly label: string;
    readonly none: string;
    /** The words of an input: those that were heard, or those it stands for. */
    readonly told: (input: Input) => string;
    /** What an event did that was taken; `hold`: the last one after it. */
    readonly became: (event: SweepEvent, hold: Noted | null) => string;
  };
  readonly understood: { readonly answers: string; readonly arrows: string; readonly asides: string };
  /** What the one switch does, and what it tells: "press: it flickered". */
  readonly press: { readonly is: Readonly<Record<Press, string>>; readonly means: Readonly<Record<PressMeaning, string>> };
  /** The longest key, as it is called. */
  readonly space: string;
  readonly following: { readonly label: string; readonly what: string; readonly takeOver: string };
  readonly strip: {
    readonly label: string;
    /** "+7 late, right arrow: outside". */
    readonly hold: (hold: Noted, counts: 'in' | 'out') => string;
  };
}
