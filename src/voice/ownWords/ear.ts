// The open ear: samples in, what became of each sound out. A word stands alone: what follows close upon other talk is
// part of it, and a doubtful word is only believed when nothing follows it at once.
import { Frames, HOP } from './bands.ts';
import { BesidePanel } from './besidePanel.ts';
import { Endpoints, type Sounding } from './endpoints.ts';
import { LateOutput } from './lateOutput.ts';
import { MARGIN, type SoundPiece, type Stretch } from './pieces.ts';
import { isSyllable, isTalk, isTone } from './talk.ts';
import type { Recogniser, Recognition } from './recogniser.ts';

export type NotAWord =
  | 'too short'
  | 'too long'
  /** Talk just before or just after it. */
  | 'amid talk'
  /** It had begun when the panel itself still sounded. */
  | 'beside the panel'
  | 'unlike every word'
  /** It sounds like a taught word that does not count now. */
  | 'not now';

/** Times in seconds since the ear opened. */
export type EarEvent =
  | { readonly heard: 'beginning'; readonly at: number }
  | {
      /** `unsure`: ask again. */
      readonly heard: 'word' | 'unsure';
      readonly word: string;
      readonly sureness: number;
      readonly began: number;
      readonly ended: number;
      readonly at: number;
      /** For whoever judges how well it stood out, and whether it is a good take. */
      readonly stretch: Stretch;
      readonly recognition: Recognition;
    }
  | {
      readonly heard: 'nothing';
      readonly because: NotAWord;
      /** The word it would have been, where only what was around it spoke against it. */
      readonly missed: string | null;
      readonly at: number;
      readonly recognition: Recognition | null;
    };

/** Log odds from which a word is taken, and from which it is asked about. */
const TAKEN = 2.2;
const ASKED = 1;
/** Surer than this, nothing needs to be waited for. */
const CERTAIN = TAKEN + 1;
/** Frames in which a doubtful word must stay alone. */
const WAIT = 30;
/** Seconds of quiet that end other talk. */
const TALK_ENDS = 0.5;

interface Compared {
  readonly piece: SoundPiece;
  /** What came before it in the same piece, where that was left out. */
  readonly before: Stretch | null;
  readonly stretch: Stretch;
  readonly recognition: Recognition | null;
}

export type WordHeard = Extract<EarEvent, { heard: 'word' | 'unsure' }>;

export class OwnWordsEar {
  private readonly frames: Frames;
  private readonly endpoints = new Endpoints();
  private readonly recogniser: Recogniser;
  private readonly counts: () => readonly string[];
  private count = 0;
  private talkUntil = -Infinity;
  private readonly panel: BesidePanel;
  private readonly late = new LateOutput();
  /** The frame at which the ear heard again after the panel had sounded, and for how long that sound ran on. */
  private again = -Infinity;
  private ranOn = 0;
  private waiting: { verdict: WordHeard; until: number } | null = null;

  /** `counts`: the words that count now. */
  constructor(rate: number, recogniser: Recogniser, counts: () => readonly string[] = () => recogniser.words) {
    this.frames = new Frames(rate);
    this.panel = new BesidePanel(rate);
    this.recogniser = recogniser;
    this.counts = counts;
  }

  /** Any number of samples, in the order in which they came. */
  push(samples: Float32Array): EarEvent[] {
    this.panel.end();
    return this.frames.push(samples).flatMap((frame) => {
      this.count++;
      const sounding = this.endpoints.push(frame);
      const out = sounding === null ? [] : this.became(sounding);
      return [...this.waited(sounding), ...out];
    });
  }

  /**
   * Samples that came while the panel itself sounded: they are neither the room nor a beginning. A word in them counts where the
   * panel is not heard; otherwise it is told as missed. What waited stood alone.
   */
  beside(samples: Float32Array): EarEvent[] {
    if (!this.panel.sounds) {
      if (this.again > 0) this.late.note(this.ranOn);
      this.ranOn = 0;
      this.panel.begin(this.endpoints.another());
    }
    this.again = this.count;
    const { waiting } = this;
    this.waiting = null;
    const stood = waiting === null ? [] : [{ ...waiting.verdict, at: this.now }];
    return [...stood, ...this.panel.push(samples).flatMap(({ sounding, ago }) => this.saidBeside(sounding, ago))];
  }

  private saidBeside({ pieces }: Extract<Sounding, { sign: 'ended' }>, ago: number): EarEvent[] {
    const one = likeliestOf(pieces.map((piece) => this.compared(piece)));
    const { recognition, stretch } = one;
    const missed = this.missedIn(one);
    if (missed === null || recognition === null) return [];
    const { sureness } = recognition;
    this.panel.wasPerson();
    if (!this.panel.isUnheard || pieces.length > 1 || sureness < CERTAIN) return [this.nothing('beside the panel', recognition, missed)];
    const began = this.now - ago * HOP;
    const ended = began + (stretch.ends - stretch.begins) * HOP;
    return [{ heard: 'word', word: missed, sureness, began, ended, at: this.now, stretch, recognition }];
  }

  private get now(): number {
    return this.count * HOP;
  }

  /** A doubtful word is given up when something follows it, and told when nothing does. */
  private waited(sounding: Sounding | null): EarEvent[] {
    if (this.waiting === null) return [];
    const { verdict, until } = this.waiting;
    const followed = sounding?.sign === 'began';
    if (!followed && this.count < until) return [];
    this.waiting = null;
    if (!followed) return [{ ...verdict, at: this.now }];
    this.talkUntil = verdict.ended;
    return [this.nothing('amid talk', null, verdict.heard === 'word' ? verdict.word : null)];
  }

  private became(sounding: Sounding): EarEvent[] {
    if (sounding.sign === 'began') return [{ heard: 'beginning', at: this.now }];
    if (sounding.sign === 'slight') return [this.nothing('too short', null)];
    const runsOn = sounding.begins < this.again + MARGIN;
    if (runsOn) this.ranOn = sounding.pieces.at(-1)!.stretch.ends - MARGIN - this.again;
    return this.weighed(
      sounding.pieces.map((piece) => this.compared(piece)),
      sounding.loudest,
      runsOn || sounding.begins < this.again + this.late.frames,
    );
  }

  /** A piece is compared whole, and without a first burst where that alone is no word and no talk. */
  private compared(piece: SoundPiece): Compared {
    const { stretch, long, later } = piece;
    if (long) return { piece, before: null, stretch, recognition: null };
    const whole = { piece, before: null, stretch, recognition: this.recogniser.recognise(stretch) };
    if (later === null || sureOf(whole) >= TAKEN || isTalk(later.before)) return whole;
    const rest = { piece, before: later.before, stretch: later.stretch, recognition: this.recogniser.recognise(later.stretch) };
    return sureOf(rest) >= TAKEN ? rest : whole;
  }

  /** Of pieces that came without quiet between them one at most is a word, and none where another is talk. `beside`: they had begun when the panel sounded. */
  private weighed(all: readonly Compared[], loudest: SoundPiece, beside: boolean): EarEvent[] {
    const likeliest = likeliestOf(all);
    const one = sureOf(likeliest) >= ASKED ? likeliest : all.find(({ piece }) => piece === loudest)!;
    const [began, ended] = [one.stretch.begins * HOP, one.stretch.ends * HOP];
    for (const { stretch } of all) if (stretch.ends < one.stretch.ends && isTalk(stretch)) this.talkUntil = stretch.ends * HOP;
    const others = [...all.filter((other) => other !== one).map(({ piece }) => piece.stretch), ...(one.before === null ? [] : [one.before])];
    const amid = began - this.talkUntil < TALK_ENDS || others.some(isSyllable);
    const { long } = one.piece;
    if (!long && !amid && !beside) return this.told(one.stretch, one.recognition);
    if (isTalk(one.stretch) || (amid && !isTone(one.stretch))) this.talkUntil = ended;
    return [this.nothing(long ? 'too long' : beside ? 'beside the panel' : 'amid talk', one.recognition, this.missedIn(one))];
  }

  private missedIn({ recognition }: Compared): string | null {
    const word = recognition?.words[0]?.word;
    return recognition !== null && word !== undefined && recognition.sureness >= TAKEN && this.counts().includes(word) ? word : null;
  }

  private told(stretch: Stretch, recognition: Recognition | null): EarEvent[] {
    const began = stretch.begins * HOP;
    const ended = stretch.ends * HOP;
    const word = recognition?.words[0]?.word;
    if (recognition === null || word === undefined || recognition.sureness < ASKED) {
      if (isTalk(stretch)) this.talkUntil = ended;
      return [this.nothing('unlike every word', recognition)];
    }
    if (!this.counts().includes(word)) return [this.nothing('not now', recognition)];
    const verdict: WordHeard = {
      heard: recognition.sureness < TAKEN ? 'unsure' : 'word',
      word,
      sureness: recognition.sureness,
      began,
      ended,
      at: this.now,
      stretch,
      recognition,
    };
    if (recognition.sureness >= CERTAIN) return [verdict];
    this.waiting = { verdict, until: this.count + WAIT };
    return [];
  }

  private nothing(because: NotAWord, recognition: Recognition | null, missed: string | null = null): EarEvent {
    return { heard: 'nothing', because, missed, at: this.now, recognition };
  }
}

const sureOf = ({ recognition }: Compared): number => recognition?.sureness ?? -Infinity;
const likeliestOf = (all: readonly Compared[]): Compared => all.reduce((a, b) => (sureOf(b) > sureOf(a) ? b : a));
