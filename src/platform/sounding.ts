// Sounds notes, scheduled on the audio clock. Where there is no sound output the clock stands still and they are simply not
// heard: nothing waits for them.
import { seconds, type Seconds } from '../units.ts';

/** From when to when, in seconds after it was asked for. */
export interface Note {
  readonly hertz: number;
  readonly from: number;
  readonly to: number;
}

interface Sounding {
  /** `loudness`: 0 to 1. */
  play(notes: readonly Note[], after: Seconds, loudness: number): void;
  /** Schedules notes that `play` is going to ask for when they are due. */
  foresee(notes: readonly Note[], after: Seconds, loudness: number): void;
  /** Takes back what has been scheduled but not begun. */
  cancel(): void;
  wake(): void;
  /** How much later than it is asked for sound comes out, as far as the browser knows; 0 where it does not. */
  late(): Seconds;
}

const LOUDEST = 0.25;
/** Long enough that a note does not click. */
const RAMP = 0.008;
const STANDS_STILL = 500;
/** Seconds: what was foreseen and begins within them is left to begin. A timer and the audio clock are never further apart, unless one stood still. */
const ABOUT_TO = 0.1;

export function createSounding(): Sounding {
  let context: AudioContext | null = null;
  const scheduled = new Map<OscillatorNode, number>();
  let last = { clock: 0, at: 0 };
  let foreseen: { readonly notes: readonly Note[]; readonly begins: number } | null = null;

  function play(notes: readonly Note[], after: Seconds, loudness: number): void {
    wake();
    if (!context) return;
    forgetUnheard(context);
    if (foreseen?.notes === notes) {
      const isComing = isDue(context);
      if (!isComing) dropForeseen();
      foreseen = null;
      if (isComing) return;
    }
    schedule(context, notes, after, loudness);
  }

  function foresee(notes: readonly Note[], after: Seconds, loudness: number): void {
    wake();
    if (!context) return;
    dropForeseen();
    foreseen = { notes, begins: context.currentTime + after };
    schedule(context, notes, after, loudness);
  }

  function schedule(audio: AudioContext, notes: readonly Note[], after: Seconds, loudness: number): void {
    for (const note of notes) sound(audio, note, audio.currentTime + after, LOUDEST * loudness);
  }

  /** What was foreseen has begun, or is about to. */
  const isDue = ({ currentTime }: AudioContext): boolean => foreseen !== null && foreseen.begins <= currentTime + ABOUT_TO;

  function dropForeseen(): void {
    const from = foreseen?.begins;
    if (from !== undefined) drop((begins) => begins >= from);
    foreseen = null;
  }

  function cancel(): void {
    if (!context) return;
    const { currentTime } = context;
    const isSpared = isDue(context);
    drop((begins) => begins > currentTime && !(isSpared && begins >= (foreseen?.begins ?? Infinity)));
    if (!isSpared) foreseen = null;
  }

  function wake(): void {
    context ??= openContext();
    if (context?.state === 'suspended') void context.resume();
  }

  /** A clock that stood still since the last tone would play all of them at once when it starts. */
  function forgetUnheard({ currentTime }: AudioContext): void {
    const at = performance.now();
    if (at - last.at > STANDS_STILL && currentTime === last.clock) {
      drop(() => true);
      foreseen = null;
    }
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
    foresee,
    wake,
    late: () => seconds(context?.outputLatency ?? 0),
    cancel,
  };
}

function openContext(): AudioContext | null {
  try {
    return new AudioContext({ latencyHint: 'interactive' });
  } catch {
    return null;
  }
}
