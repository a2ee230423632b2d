// Five short tones, told apart by how their pitch moves, scheduled on the audio clock. Where there is no sound output
// the clock stands still and they are simply not heard: nothing waits for them.
import type { Tone } from '../sweep/effect.ts';
import { seconds, type Seconds } from '../units.ts';

export interface Tones {
  /** Sounds the tone `after` so many seconds, and tells how long it is; `loudness`: 0 to 1. */
  play(tone: Tone, after: Seconds, loudness: number): Seconds;
  /** Takes back what has been scheduled but not begun. */
  cancel(): void;
  /** To be called at a gesture of the person: before the first one a browser may keep sound back. */
  wake(): void;
}

interface Note {
  readonly hertz: number;
  readonly from: number;
  readonly to: number;
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
const LOUDEST = 0.25;
/** Long enough that a note does not click. */
const RAMP = 0.008;
const STANDS_STILL = 500;

export function createTones(): Tones {
  let context: AudioContext | null = null;
  const scheduled = new Map<OscillatorNode, number>();
  let last = { clock: 0, at: 0 };

  function play(tone: Tone, after: Seconds, loudness: number): Seconds {
    const notes = NOTES[tone];
    wake();
    if (context) {
      forgetUnheard(context);
      for (const note of notes) sound(context, note, context.currentTime + after, LOUDEST * loudness);
    }
    return seconds(Math.max(...notes.map(({ to }) => to)));
  }

  function wake(): void {
    context ??= openContext();
    if (context?.state === 'suspended') void context.resume();
  }

  /** A clock that stood still since the last tone would play all of them at once when it starts. */
  function forgetUnheard({ currentTime }: AudioContext): void {
    const at = performance.now();
    if (at - last.at > STANDS_STILL && currentTime === last.clock) drop(() => true);
    last = { clock: currentTime, at };
  }

  function drop(which: (begins: number) => boolean): void {
    for (const [oscillator, begins] of scheduled) {
      if (!which(begins)) continue;
      oscillator.disconnect();
      scheduled.delete(oscillator);
    }
  }

  function sound(audio: AudioContext, { hertz, from, to }: Note, at: number, loudness: number): void {
    const oscillator = new OscillatorNode(audio, { type: 'triangle', frequency: hertz });
    const gain = new GainNode(audio, { gain: 0 });
    gain.gain.setValueAtTime(0, at + from);
    gain.gain.linearRampToValueAtTime(loudness, at + from + RAMP);
    gain.gain.setValueAtTime(loudness, at + to - RAMP);
    gain.gain.linearRampToValueAtTime(0, at + to);
    oscillator.connect(gain).connect(audio.destination);
    oscillator.start(at + from);
    oscillator.stop(at + to);
    scheduled.set(oscillator, at + from);
    oscillator.addEventListener('ended', () => scheduled.delete(oscillator));
  }

  return {
    play,
    wake,
    cancel: () => drop((begins) => begins > (context?.currentTime ?? 0)),
  };
}

function openContext(): AudioContext | null {
  try {
    return new AudioContext({ latencyHint: 'interactive' });
  } catch {
    return null;
  }
}
