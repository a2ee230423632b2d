// Teaching one word: take after take until there are enough good ones. A take that would spoil more than it helps is said
// to be one, with what to do, and is asked for again. The takes that agree with each other count, whichever came first.
import { clearnessOf } from '../../voice/ownWords/noiseMeter.ts';
import { withoutWord } from '../../voice/ownWords/forgetting.ts';
import { recogniserOf } from '../../voice/ownWords/recogniser.ts';
import { TakeRecording } from '../../voice/ownWords/recordTake.ts';
import { soundOf, takeOf, type Take } from '../../voice/ownWords/take.ts';
import { takeFaultOf } from '../../voice/ownWords/takeQuality.ts';
import { words } from '../../words/catalogue.ts';

export const TAKES_A_WORD = 5;
/** What takes set aside are called while they are compared. */
const ASIDE = '·aside';
/** Seconds after which a take is given up: nothing was heard. */
const PATIENCE = 8;

export interface LessonStep {
  readonly sentence: string;
  readonly advice: string | null;
}

export class Lesson {
  readonly word: string;
  taken: readonly Take[] = [];
  /** Refused for being unlike those taken, though like each other: the first take may itself have been the odd one. */
  private aside: readonly Take[] = [];
  private readonly rate: number;
  private readonly others: readonly Take[];
  private recording: TakeRecording;
  private seconds = 0;

  constructor(word: string, rate: number, taught: readonly Take[]) {
    this.word = word;
    this.rate = rate;
    this.others = withoutWord(taught, word);
    this.recording = new TakeRecording(rate);
  }

  /** What became of a take, once there is one. */
  push(samples: Float32Array): LessonStep | null {
    this.seconds += samples.length / this.rate;
    const recorded = this.recording.push(samples) ?? (this.seconds > PATIENCE ? this.recording.gaveUp() : null);
    if (recorded === null) return null;
    this.recording = new TakeRecording(this.rate);
    this.seconds = 0;
    const { stretch } = recorded;
    const compared = stretch && this.taken.length > 0 ? recogniserOf([...this.others, ...this.taken], this.rate).recognise(stretch) : null;
    let fault = takeFaultOf(this.word, recorded, compared);
    const take = stretch && takeOf(this.word, stretch);
    if (take && fault?.is === 'unlike the other takes' && this.setAside(take)) fault = null;
    else if (take && fault === null) this.taken = [...this.taken, take];
    const say = words('take');
    return { sentence: fault === null ? say.good : say.fault(this.word, fault), advice: stretch && say.heard[clearnessOf(stretch)] };
  }

  /** Keeps a take that is unlike those taken; true where those set aside agree, outnumber the others and so are taken in their place. */
  private setAside(take: Take): boolean {
    // One measure for both sides: those set aside stand as if they were another word.
    const rivals = recogniserOf([...this.taken, ...this.aside.map((one) => ({ ...one, word: ASIDE }))], this.rate).recognise(soundOf(take));
    this.aside = [...(rivals?.words[0]?.word === ASIDE ? this.aside : []), take];
    if (this.aside.length <= this.taken.length) return false;
    [this.taken, this.aside] = [this.aside, []];
    return true;
  }
}
