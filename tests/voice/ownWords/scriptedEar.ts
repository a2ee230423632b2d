// An open ear that is told what begins and ends, frame by frame, and how sure each stretch is: for limits that no sound meets exactly.
import type { Sounding } from '../../../src/voice/ownWords/endpoints.ts';
import { OwnWordsEar, type EarEvent } from '../../../src/voice/ownWords/ear.ts';
import type { SoundPiece, Stretch } from '../../../src/voice/ownWords/pieces.ts';
import type { Recogniser, Recognition } from '../../../src/voice/ownWords/recogniser.ts';

const SHAPES = {
  plain: { loud: () => 1, share: () => 1 },
  tone: { loud: () => 1, share: (b: number) => (b === 3 ? 1 : 0.001) },
  talk: { loud: (t: number) => 5 ** (Math.floor(t / 12) % 2), share: () => 1 },
  /** Talk with hardly any power where a voice has it, which is no syllable. */
  hiss: { loud: (t: number) => 5 ** (Math.floor(t / 12) % 2), share: (b: number) => (b < 8 ? 0.001 : 1) },
} as const;

const SURE = new WeakMap<object, number>();

/** A stretch of these frames of the ear, margins and all. */
export function stretch(begins: number, ends: number, sure = -9, shape: keyof typeof SHAPES = 'plain'): Stretch {
  const { loud, share } = SHAPES[shape];
  const length = ends - begins;
  const frames = Array.from({ length }, (_, t) => Float32Array.from({ length: 20 }, (__, b) => (t < 12 || t >= length - 12 ? 0 : loud(t - 12) * share(b))));
  const made: Stretch = { frames, noise: new Float32Array(20), begins, ends };
  SURE.set(made, sure);
  return made;
}
export const piece = (made: Stretch, later: SoundPiece['later'] = null, long = false): SoundPiece => ({ stretch: made, long, later });

const recogniser: Recogniser = {
  words: ['undo'],
  recognise: (sound) => ({ words: [{ word: 'undo' }], sureness: SURE.get(sound) ?? -9, evidence: {}, clearance: 20 }) as unknown as Recognition,
};

/** Ends that say what they are told to at the next frame. */
class Told {
  heard = 0;
  next: Sounding | null = null;
  private readonly others: Told[];
  constructor(others: Told[]) {
    this.others = others;
  }
  another(): Told {
    const other = new Told(this.others);
    this.others.push(other);
    return other;
  }
  push(): Sounding | null {
    this.heard += 1;
    const { next } = this;
    this.next = null;
    return next;
  }
}

const short = (event: EarEvent): string[] => {
  if (event.heard === 'beginning') return [];
  if (event.heard === 'nothing') return [`${event.because}, ${event.missed}`];
  return [`${event.heard} ${event.began.toFixed(2)} to ${event.ended.toFixed(2)} at ${event.at.toFixed(2)}`];
};

/** `room` and `panel`: so many frames pass; `ends` and `endsBeside`: in one more frame these pieces end. */
export function scriptedEar() {
  const beside: Told[] = [];
  const ends = new Told(beside);
  const ear = new OwnWordsEar(1000, recogniser);
  Object.assign(ear, { endpoints: ends });
  const owed = { room: 15, panel: 15 };
  const pass = (where: 'room' | 'panel', frames: number): string[] => {
    const samples = new Float32Array(frames === 0 ? 0 : owed[where] + 10 * frames);
    if (frames > 0) owed[where] = 0;
    return (where === 'room' ? ear.push(samples) : ear.beside(samples)).flatMap(short);
  };
  const ended = (pieces: readonly SoundPiece[], loudest = pieces[0], begins = pieces[0]?.stretch.begins ?? 0): Sounding | null =>
    loudest === undefined ? null : { sign: 'ended', pieces, loudest, begins };
  return {
    room: (frames: number) => pass('room', frames),
    panel: (frames: number) => pass('panel', frames),
    begins: () => {
      ends.next = { sign: 'began' };
      return pass('room', 1);
    },
    ends: (pieces: readonly SoundPiece[], loudest?: SoundPiece, begins?: number) => {
      ends.next = ended(pieces, loudest, begins);
      return pass('room', 1);
    },
    endsBeside: (pieces: readonly SoundPiece[], begins: number) => {
      pass('panel', 0);
      const last = beside.at(-1);
      if (last !== undefined) last.next = ended(pieces, pieces[0], begins);
      return pass('panel', 1);
    },
  };
}
