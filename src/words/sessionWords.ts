// What the session itself has to say: of what is stored and its copies, of values that travel, of what cannot be brought in,
// written down, erased or begun. Read before what is stored is.
import type { HandFault } from '../logbook/byHand.ts';
import type { Moment, Steps } from '../units.ts';
import type { Missed } from '../voice/deaf.ts';

/** A value from another computer that now stands in place of one here; `more`: how many others there are. */
export interface Overtaken {
  readonly lens: string;
  readonly body: string;
  readonly value: Steps;
  readonly old: Steps;
  readonly more: number;
}

export interface SessionWords {
  readonly stored: {
    /** `share`: of a large logbook, from 0 to 1. */
    readonly reading: (share: number) => string;
    readonly readAgain: string;
    readonly tooNew: string;
    /** `place`: the key under which it now lies. */
    readonly spoilt: (key: string, field: string | null, place: string) => string;
    readonly unread: string;
    readonly notOnDisk: string;
  };
  readonly copies: {
    readonly fault: Readonly<Record<'copies unread' | 'copy unread' | 'copy not kept', string>>;
    readonly offered: (at: Moment) => string;
    readonly bringBack: string;
  };
  readonly bringing: { readonly brokenOff: string; readonly notCopied: string; readonly tooNew: string };
  readonly sync: {
    readonly fault: Readonly<Record<'no sync', string>>;
    readonly unread: string;
    readonly noRoom: string;
    readonly notTakenOut: string;
    readonly tryAgain: string;
    readonly overtaken: (one: Overtaken) => string;
  };
  readonly erasing: {
    readonly elsewhere: string;
    readonly copiesUnread: string;
    readonly copyLeft: string;
    readonly notOnDisk: string;
  };
  /** What photographs showed, and the crops kept beside it. */
  readonly proofs: {
    readonly situationGone: string;
    readonly unfit: string;
    readonly gone: string;
    readonly copiesUnread: string;
    readonly copyLeft: string;
    readonly crops: Readonly<Record<'crops unread' | 'crops not kept' | 'crops not erased', string>>;
  };
  readonly byHand: (fault: HandFault) => string;
  readonly recordGone: string;
  /** Something of the program itself failed; `why`: what it says of it. */
  readonly unexpected: (why: string) => string;
  /** What became of something told, beside its words. */
  readonly became: Readonly<Record<'not here' | 'asked back' | 'said again' | 'help' | 'looked up' | 'not taken' | 'not clear' | 'too late', string>>;
  /** The far view was switched on or off. */
  readonly farView: Readonly<Record<'on' | 'off', string>>;
  /** Why a word that was heard was not taken, beside it. */
  readonly missed: Readonly<Record<Missed, string>>;
  /** What does not fit where something is told of a sweep. */
  readonly untold: {
    readonly noScale: string;
    readonly noSweep: string;
    readonly holdFirst: string;
    /** Held already, and not among these corrections. */
    readonly offTheScale: (value: Steps) => string;
    readonly arrowsSeen: string;
    readonly kitGone: string;
    readonly resultGone: string;
    readonly missing: Readonly<Record<'body' | 'lens' | 'length', string>>;
  };
  /** What stands in for a name that nobody has told; kept in the kit. */
  readonly standIn: { readonly body: string; readonly lens: (opened: Moment) => string };
  /** Why a sweep cannot begin. */
  readonly unplanned: Readonly<Record<'kit gone' | 'value off the scale' | 'sweep not kept yet' | 'no width', string>>;
  readonly unbegun: Readonly<Record<'under way' | 'begun elsewhere', string>>;
  /** What the practice camera is called in a journal. */
  readonly practice: { readonly body: string; readonly lens: string };
}
