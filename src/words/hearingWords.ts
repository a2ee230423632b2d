// The hearing check: the microphone and the room, what was heard, and teaching the words.
import type { GroupName } from '../voice/wordGroups.ts';
import type { MicrophoneMissing } from './microphoneWords.ts';

export interface HearingWords {
  readonly title: string;
  /** Of sound; and of the words that are taught. */
  readonly stays: string;
  readonly kept: string;
  readonly room: {
    readonly title: string;
    readonly level: string;
    readonly listen: string;
    readonly toListen: string;
    readonly refused: Readonly<Record<MicrophoneMissing, string>>;
    readonly stand: string;
    readonly noSound: string;
    readonly gone: string;
    readonly muted: string;
  };
  readonly heard: {
    readonly noWord: string;
    readonly word: (word: string) => string;
    readonly perhaps: (word: string) => string;
  };
  readonly own: {
    readonly title: string;
    readonly about: (takes: number) => readonly string[];
    readonly learns: string;
    readonly group: (left: number, of: number) => string;
    /** `short` stands beside the word, which `teach` and `again` name for those who hear the page. */
    readonly teach: (word: string) => string;
    readonly again: (word: string) => string;
    readonly short: { readonly teach: string; readonly again: string };
    readonly is: {
      readonly notTaught: string;
      readonly taught: string;
      readonly learned: (more: number) => string;
    };
    readonly forgetLearned: string;
    readonly learnedForgotten: string;
    readonly erase: string;
    readonly erased: string;
    /** What is done by the words of each room, and how many of them are taught. */
    readonly rooms: Readonly<Record<'sweep' | 'walk' | 'logbook' | 'rest', string>>;
    readonly of: (taught: number, all: number) => string;
    /** What can be done by voice once a group is taught; the names of the person's own lenses are the last. */
    readonly groups: Readonly<Record<GroupName | 'lenses', { readonly name: string; readonly for: string }>>;
  };
  readonly lesson: {
    readonly say: (word: string) => string;
    readonly takes: (done: number, of: number) => string;
    readonly begin: string;
    readonly taught: (word: string) => string;
    readonly allTaught: string;
    readonly stop: string;
  };
}
