// A replay as a film: one stop after another by itself, until it is halted or over. Where nothing may move by itself there is
// no film, and the slider is there all the same.
import { useEffect, useState } from 'preact/hooks';
import { keepsStill } from '../parts/keepsStill.ts';

/** Long enough to see what one hold changed. */
const A_STOP_MS = 1100;

interface Film {
  readonly at: number;
  readonly plays: boolean;
  /** Shows one stop, and halts the film. */
  show(at: number): void;
  /** Plays on, from the beginning where it is over; or halts. Null where nothing may move. */
  readonly turn: (() => void) | null;
}

/** `last`: the last of the stops, which are counted from 0. */
export function useFilm(last: number): Film {
  const [at, setAt] = useState(0);
  const [playing, setPlaying] = useState(false);
  const plays = playing && at < last;
  useEffect(() => {
    if (!plays) return undefined;
    const timer = setTimeout(() => setAt(at + 1), A_STOP_MS);
    return () => clearTimeout(timer);
  }, [plays, at]);
  const turn = (): void => {
    if (!plays && at === last) setAt(0);
    setPlaying(!plays);
  };
  const show = (stop: number): void => {
    setPlaying(false);
    setAt(stop);
  };
  return { at, plays, show, turn: keepsStill() ? null : turn };
}
