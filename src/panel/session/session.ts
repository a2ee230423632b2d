// What the screens know of the world: a session with the sweep under way, the kit, the logbook and the settings as
// signals, and everything a person can do to them. Screens never reach past it to the browser.
import type { ReadonlySignal } from '@preact/signals';
import type { KitItem, KitList } from '../../kit/change.ts';
import type { Kit } from '../../kit/kit.ts';
import type { HandRecord } from '../../logbook/byHand.ts';
import type { Conditions } from '../../logbook/conditions.ts';
import type { Entry } from '../../logbook/entry.ts';
import type { KitNote } from '../../logbook/kitNote.ts';
import type { Library } from '../../logbook/library.ts';
import type { JobPlan } from '../../logbook/plan/jobPlan.ts';
import type { ProofRecord } from '../../logbook/proofRecord.ts';
import type { LogRecord } from '../../logbook/record.ts';
import type { HandDraft } from '../../logbook/recordByHand.ts';
import type { Microphone } from '../../platform/ear/asking.ts';
import type { Deaf } from '../../voice/deaf.ts';
import type { EarState } from '../../platform/ear/owner.ts';
import type { Installed } from '../../platform/installed.ts';
import type { CropFault, CropPair } from '../../platform/keptCrops.ts';
import type { CopyFault } from '../../platform/snapshots.ts';
import type { Page } from '../../platform/tabs.ts';
import type { TakesFault } from '../../platform/takes.ts';
import type { InWords } from '../../words/inWords.ts';
import type { Proof } from '../../photographs/proof.ts';
import type { Result } from '../../result.ts';
import type { SoundHeard } from './tryingSound.ts';
import type { Settings } from '../../settings.ts';
import type { By } from '../../sweep/event.ts';
import type { Care } from '../../sweep/care.ts';
import type { StoredBench } from '../../sweep/storedBench.ts';
import type { Asked, Input, Word } from '../../sweep/inputs.ts';
import type { Order, Pace } from '../../sweep/manner.ts';
import type { Subject } from '../../sweep/plan.ts';
import type { SweepState } from '../../sweep/state.ts';
import type { Understood } from '../../sweep/understood.ts';
import type { ArrowDisplay } from '../../sweep/verdict.ts';
import type { Moment, Seconds, Steps } from '../../units.ts';
import type { OwnWords, Take } from '../../voice/ownWords/take.ts';

/** `owner`: this panel may run a sweep. `follower`: another window runs it, this one shows it. `asking`: not yet known. */
export type Role = 'owner' | 'follower' | 'asking';

export type { EarState };

export type { SoundHeard };

/** Something that went wrong, in one sentence that says what to do; `remedy` does it. */
export interface Mishap {
  readonly id: string;
  readonly sentence: string;
  readonly remedy: { readonly label: string; readonly run: () => void } | null;
}

/** The last thing the panel took in, and what became of it: voice, key, switch and pointer alike. */
export interface Heard {
  readonly words: string;
  readonly became: string;
  readonly by: By;
  readonly at: Moment;
}

/** A field that does not fit, and the sentence to show beside it; `field` is null when it is about the whole. */
export interface Fault {
  readonly field: string | null;
  readonly sentence: string;
}
export type Saved = Result<string, readonly Fault[]>;

/** What the start screen asks of something new, before it is checked. Lengths are in millimetres. */
export interface BodyDraft {
  readonly name: string;
  readonly scale: { readonly min: number; readonly max: number; readonly step: number };
  readonly arrows: ArrowDisplay;
}
export interface LensDraft {
  readonly name: string;
}
export interface SituationDraft {
  readonly body: string;
  readonly lens: string;
  readonly converter: string | null;
  readonly focalLength: number;
  readonly distance: number;
}

/** One of the kit, by its id, or one by the name it is called by, new or known. */
export type Called = { readonly id: string } | { readonly name: string };

/** What may be told of a sweep before or while it goes on, each part when it is known. Lengths are in millimetres. */
export interface Description {
  readonly body?: Called;
  readonly lens?: Called;
  /** An id of the kit; null: the lens is straight on the body. */
  readonly converter?: string | null;
  readonly focalLength?: number;
  /** Null: fifty focal lengths. */
  readonly distance?: number | null;
  readonly scale?: BodyDraft['scale'];
  readonly arrows?: ArrowDisplay;
}
export type Described = Result<unknown, { readonly of: keyof Description | null; readonly sentence: string }>;

export interface SettingsPatch {
  readonly manner?: Partial<{ care: Settings['manner']['care']; order: Order; pace: Pace; holdTime: Seconds }>;
  readonly voice?: Partial<Settings['voice']>;
  readonly sound?: boolean;
  readonly loudness?: number;
  readonly soundChecked?: boolean;
  readonly logbook?: Partial<Settings['logbook']>;
  readonly training?: Settings['training'];
  readonly coached?: Settings['coached'];
  readonly language?: Partial<Settings['language']>;
  readonly look?: Partial<Settings['look']>;
}

/** Everything of the logbook in place of what is here, or joined with it; both after a copy of what was here. */
export type Bringing = 'merge' | 'replace';

/** What a sweep is to be about. */
export type Beginning =
  /**
   * `start`: the value the body is set to now; without it, the one entered last, or the value nearest zero. `care`:
   * without it, that of the settings.
   */
  | { readonly with: 'kit'; readonly situation: string; readonly start?: number; readonly care?: Care; readonly bench?: StoredBench }
  /** Whatever was told of it by now, down to nothing: the rest may be told later. */
  | { readonly with: 'told'; readonly about: Description; readonly bench?: StoredBench }
  /** The width of a band that this record of the logbook found past a limit or beyond the scale. */
  | { readonly with: 'transfer'; readonly record: string }
  /** Without a seed a new practice camera is drawn. `odd`: with something wrong that the person is to find out. */
  | { readonly with: 'practice'; readonly seed?: number; readonly arrows: ArrowDisplay; readonly band?: 'past the limit'; readonly odd?: boolean };

/** `name`: the lens that was said; null where it is still to be typed. */
export interface LeftFor {
  readonly name: string | null;
}

/** Something beside the sweep that a person talks to by word, key and switch, such as the set-up walk. */
export interface Attendant {
  readonly words: readonly Word[];
  take(input: Input): void;
}

export interface Session {
  /** Resolves when what was stored has been read; before that everything is empty. */
  readonly ready: Promise<void>;
  /** How much of a large logbook has been read, from 0 to 1; null when it is small or read. */
  readonly reading: ReadonlySignal<number | null>;
  /** How far a large logbook that is brought in is, from 0 to 1; null when none is. */
  readonly bringing: ReadonlySignal<number | null>;
  /** The live sweep, if any; it stays until `leave`. */
  readonly sweep: ReadonlySignal<SweepState | null>;
  readonly role: ReadonlySignal<Role>;
  readonly kit: ReadonlySignal<Kit>;
  /** Newest first. */
  readonly records: ReadonlySignal<readonly LogRecord[]>;
  readonly byHand: ReadonlySignal<readonly HandRecord[]>;
  /** What was entered in the cameras. */
  readonly entries: ReadonlySignal<readonly Entry[]>;
  /** What happened to the kit. */
  readonly notes: ReadonlySignal<readonly KitNote[]>;
  /** What photographs showed. */
  readonly proofs: ReadonlySignal<readonly ProofRecord[]>;
  readonly settings: ReadonlySignal<Settings>;
  /** What is to be measured in the job under way; null when nothing is planned. */
  readonly plan: ReadonlySignal<JobPlan | null>;
  /** When the newest backup file was written; null when none was. */
  readonly backedUp: ReadonlySignal<Moment | null>;
  /** The keys of the store whose newest value is not on disk yet. */
  readonly unwritten: ReadonlySignal<ReadonlySet<string>>;
  /** When all that was told so far is on disk: nothing is called saved before. False where it is known and told that it is not yet. */
  onDisk(): Promise<boolean>;
  readonly troubles: ReadonlySignal<readonly Mishap[]>;
  /** The latest prompt in words, for aria-live; empty before the first, and once it has been heard. */
  readonly announcement: ReadonlySignal<string>;
  readonly heard: ReadonlySignal<Heard | null>;
  readonly ear: ReadonlySignal<EarState>;
  /** Why nothing is heard although it is listened for; null while nothing stands in the way. */
  readonly deaf: ReadonlySignal<Deaf | null>;
  /** What was last said could not be spoken: no voice on this computer answers. */
  readonly mute: ReadonlySignal<boolean>;
  /** The words, keys and presses that make sense right now; null without a sweep. */
  readonly understood: ReadonlySignal<Understood | null>;
  /** What the person was asked last about a press; it stands while the hold it came in is under way. */
  readonly pressAsked: ReadonlySignal<Asked | null>;
  /** Since when the one switch is down, while it is; for the screen to show that the press is felt. */
  readonly pressed: ReadonlySignal<Moment | null>;
  /** Ticks about ten times a second while a hold is under way, and stands still otherwise. */
  readonly now: ReadonlySignal<Moment>;

  /** Everything a person does during a sweep, but for the one switch. */
  input(input: Input): void;
  /** The one switch went down or came up: keydown and keyup of its keys, or a pointer on its button; `waited`: how long ago. */
  contact(move: 'down' | 'up', waited?: Seconds): void;
  begin(beginning: Beginning): Promise<Result>;
  /** Away from the sweep, back to the start. One that is not finished is finished first, so nothing is lost. */
  leave(): void;
  /** On from a result: to the next of the plan, a lens of this name, or one to be named. */
  nextLens(name?: string): void;
  /** What the sweep was left for; null while one goes on, or where it was left for the start. */
  readonly leftFor: ReadonlySignal<LeftFor | null>;
  /** Tells more of the sweep that goes on or has just finished here; on disk before anything is said. */
  describe(told: Description): Described;
  /** Whose result the sweep of this panel brings; where nobody has said so, a stand-in that can be named later. */
  named(): Subject | null;
  /** Names what was kept under a stand-in. */
  nameKept(situation: string, told: Description): Described;
  /** The situation of a description that leaves nothing open, in the kit from now on. */
  situationFor(about: Description): Saved;
  /** The value that the result on the screen asks to be entered; null: the one that was found. */
  propose(value: Steps | null): void;
  saveBody(draft: BodyDraft): Saved;
  saveLens(draft: LensDraft): Saved;
  saveSituation(draft: SituationDraft): Saved;
  /** Saves an item of the kit; an empty id makes it new. `seen`: its `changed` when the form was opened. */
  putKit<List extends KitList>(list: List, item: KitItem[List], seen: Moment | null): Saved;
  /** Puts an item of the kit away, or back. */
  retireKit(list: KitList, id: string, away: boolean): Saved;
  /** Plans these situations, in the order that moves and swaps least; none: the plan is given up. */
  planJob(situations: readonly string[]): void;
  /** A value was entered in the camera. */
  enter(entry: Omit<Entry, 'id'>): Result;
  /** A value is put in without a sweep. */
  writeByHand(draft: HandDraft): Result;
  /** How it was when this sweep was done. */
  tellConditions(record: string, conditions: Conditions): Result;
  /** Something happened to a body, lens or converter. */
  noteOn(note: Omit<KitNote, 'id'>): Result;
  /**
   * Keeps what photographs of this situation showed, and gives the id it has; on disk when it resolves. `practice`: they were of the
   * practice camera.
   */
  keepProof(situation: string, proof: Proof, crops: CropPair): Promise<Result<string>>;
  /** Erases it with its crops, also from the copies. */
  eraseProof(id: string): Promise<Result>;
  /** Its two crops; null where there are none, or no longer. */
  cropsOf(record: ProofRecord): Promise<Result<CropPair | null, CropFault>>;
  /** Erases the two crops of it; the figures stay. */
  eraseCrops(id: string): Promise<Result>;
  /** Joins another logbook with this one, or puts it in its place; a copy is kept first, and without one nothing is done. */
  bring(library: Library, how: Bringing): Promise<Result>;
  /** When the copies were taken, newest first. */
  copies(): Promise<Result<readonly Moment[], CopyFault>>;
  /** Puts the logbook back as it was then; what is here now becomes a copy. */
  bringBack(at: Moment): Promise<Result>;
  /** A backup file was written, of the logbook as it was then. */
  backUp(at: Moment): void;
  /** Says this aloud at once, whatever was being said, if speaking is on; and announces it. */
  say(words: InWords): void;
  /** Says it when what is being said has been said. */
  sayNext(words: InWords): void;
  /** Says what the screen shows in a place of its own, so that it is not announced: at once, or as `sayNext` does. */
  sayShown(sentence: string, when: 'now' | 'next'): void;
  /** The time now, for what is dated. */
  clock(): Moment;
  changeSettings(patch: SettingsPatch): void;
  /** The patterns of the words the person taught. */
  taught(): Promise<Result<readonly Take[], TakesFault>>;
  /** Those of every language. */
  taughtInAll(): Promise<Result<readonly OwnWords[], TakesFault>>;
  /** Brings taught words in beside those here; a word taught in both stays, or is replaced. */
  bringTaught(words: readonly OwnWords[], how: Bringing): Promise<Result<undefined, TakesFault>>;
  /** Erases every word that was heard and kept with the holds, also in the copies. */
  eraseHeard(): Promise<Result>;
  /** Last values travel between the person's computers, or no longer do. */
  syncValues(on: boolean): void;
  /** Makes this panel the one that runs the sweep. */
  takeOver(): void;
  /**
   * Opens the page that asks for the microphone, as a side panel cannot ask, the one that checks hearing, the licences, or
   * one that prints: the card of a body, what to enter for a lens, the target of a situation.
   */
  openPage(page: Page): void;
  /** Asking for the microphone, and what stands in the way of it. */
  microphone(): Promise<Microphone>;
  /** Tries again at once to hear; `here`: in place of the other window that listens. */
  listenAgain(here: boolean): void;
  /** Sounds the tones of a hold and speaks a value, as they are set. */
  trySound(): Promise<SoundHeard>;
  /** The browser has a recogniser of its own. */
  readonly browserRecognises: boolean;
  /** What is installed, and what of it has been seen. */
  readonly installed: Installed;
  /** The names of this computer's voices that speak the language, once the browser has found them. */
  voices(): Promise<readonly string[]>;
  /** From now on the attendant gets every word and press, until the returned function is called. */
  attend(attendant: Attendant): () => void;
  /** Stores with the sweep under way how its rig was set up; false after its first hold. */
  noteBench(bench: StoredBench): boolean;
  dismiss(troubleId: string): void;
}
