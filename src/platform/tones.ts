// Five short tones, told apart by how their pitch moves. What sounds them is read when the panel stands: no tone comes before
// the person has pressed something.
import type { Tone } from '../sweep/effect.ts';
import { seconds, type Seconds } from '../units.ts';
import type { Note } from './sounding.ts';

export interface Tones {
  /** Sounds the tone `after` so many seconds, and tells how long it is; `loudness`: 0 to 1. */
  play(tone: Tone, after: Seconds, loudness: number): Seconds;
  /**
   * The same for a tone that is sure to be asked for then, unless it is cancelled: it sounds on time by the audio clock, however busy the
   * computer is. Asked for by `play` when it is due, it is not sounded twice.
   */
  foresee(tone: Tone, after: Seconds, loudness: number): void;
  /** Takes back what has been scheduled but not begun. */
  cancel(): void;
  /** To be called at a gesture of the person: before the first one a browser may keep sound back. */
  wake(): void;
  /** How much later than it is asked for sound comes out, as far as the browser knows. */
  late(): Seconds;
}

/** Up: press now. Down: let go. One high: noted. Low and twice: refused. One middle: the count. */
const NOTES: Record<Tone, readonly Note[]> = {
  begin: [
    { hertz: 587, from: 0, to: 0.08 },
    { hertz: 880, from: 0.09, to: 0.2 },
  ],
  end: [
    { hertz: 880, from: 0, to: 0.08 },
    { hertz: 587, from: 0.09, to: 0.2 },
  ],
  noted: [{ hertz: 1175, from: 0, to: 0.07 }],
  refused: [
    { hertz: 196, from: 0, to: 0.08 },
    { hertz: 196, from: 0.13, to: 0.21 },
  ],
  count: [{ hertz: 440, from: 0, to: 0.05 }],
};

export function createTones(): Tones {
  const sounding = import('./aloud.ts').then(({ createSounding }) => createSounding());
  // Where it cannot be read there are no tones, as where there is no sound: nothing waits for them.
  const late = { asked: (): Seconds => seconds(0) };
  sounding.then((read) => Object.assign(late, { asked: read.late })).catch(() => undefined);
  return {
    play(tone, after, loudness) {
      const notes = NOTES[tone];
      sounding.then(({ play }) => play(notes, after, loudness)).catch(() => undefined);
      return seconds(Math.max(...notes.map(({ to }) => to)));
    },
    foresee: (tone, after, loudness) => void sounding.then(({ foresee }) => foresee(NOTES[tone], after, loudness)).catch(() => undefined),
    late: () => late.asked(),
    wake: () => void sounding.then(({ wake }) => wake()).catch(() => undefined),
    cancel: () => void sounding.then(({ cancel }) => cancel()).catch(() => undefined),
  };
}
