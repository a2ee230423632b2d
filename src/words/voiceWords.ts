// What the microphone mark and the voice sheet say, and what is said of a deaf ear.
import type { Deaf, RecognisedBy } from '../voice/deaf.ts';

type State = 'off' | 'ready' | 'begun' | 'asking' | 'opening' | 'listening' | 'speaking' | 'opens when pressed';

export interface VoiceWords {
  /** In the mark, which has room for twelve letters. */
  readonly mark: Readonly<Record<State, string>>;
  readonly markDeaf: Readonly<Record<Deaf, string>>;
  /** In the mark's second line. */
  readonly markSilent: Readonly<Record<'mute' | 'off', string>>;
  /** The mark and what a press does, for those who hear the screen: begins as the mark is written. */
  readonly marked: (shown: readonly string[], press: string) => string;
  /** Read to those who hear the screen, before what a press does. */
  readonly means: Readonly<Record<State, string>>;
  /** What is so, and what to do. */
  readonly deaf: Readonly<Record<Deaf, string>>;
  /** Said aloud in a sweep, to somebody who sees no screen. */
  readonly deafSaid: Readonly<Record<Deaf, string>>;
  readonly hearsAgain: string;
  /** What one press on the mark does. */
  readonly press: Readonly<Record<'sheet' | 'allow' | 'page' | 'teach' | 'here', string>>;
  /** Where the sound goes: before any yes. */
  readonly goes: Readonly<Record<RecognisedBy, string>>;
  readonly sheet: {
    readonly title: string;
    readonly offered: string;
    readonly allow: string;
    readonly allowAndTeach: string;
    readonly download: string;
    readonly downloadInstead: string;
    readonly downloading: string;
    readonly notDownloaded: string;
    readonly teachInstead: string;
    readonly asking: string;
    readonly once: string;
    readonly askAgain: string;
    readonly refused: string;
    readonly howToUnblock: string;
    readonly leaveOff: string;
    readonly on: string;
    readonly trial: string;
    readonly heard: (word: string) => string;
    readonly begin: string;
    readonly toSweep: string;
    readonly switchOff: string;
    readonly checkHearing: string;
    readonly again: string;
    readonly teach: (taught: number, of: number) => string;
    /** What will be said in the lesson. */
    readonly lesson: (words: readonly string[]) => string;
    readonly openLesson: string;
  };
}
