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

export function createSounding(): Sounding {
  let context: AudioContext | null = null;
  const scheduled = new Map<OscillatorNode, number>();
  let last = { clock: 0, at: 0 };

  function play(notes: readonly Note[], after: Seconds, loudness: number): void {
    wake();
    if (context) {
      forgetUnheard(context);
      for (const note of notes) sound(context, note, context.currentTime + after, LOUDEST * loudness);
    }
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
    late: () => seconds(context?.outputLatency ?? 0),
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
