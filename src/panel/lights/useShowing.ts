// Plays the four lights in real time, all from one beginning: redraws at each change and at no other moment, and not at all
// for a person who wants nothing to move.
import { useEffect, useState } from 'preact/hooks';
import { FOUR_LIGHTS, isLit, showingOf, untilNextChange, type ShownLight } from '../../practice/fourLights.ts';
import { between, seconds } from '../../units.ts';
import { keepsStill } from '../parts/keepsStill.ts';
import { useSession } from '../useSession.ts';

const COURSES = FOUR_LIGHTS.map(showingOf);

/** Which lights are on; null where they are to stand still. */
export function useShowing(): Readonly<Record<ShownLight, boolean>> | null {
  const { clock } = useSession();
  const [elapsed, setElapsed] = useState(seconds(0));
  const still = keepsStill();
  useEffect(() => {
    if (still) return undefined;
    const began = clock();
    let timer: ReturnType<typeof setTimeout> | undefined;
    const play = (now: ReturnType<typeof seconds>): void => {
      setElapsed(now);
      const wait = untilNextChange(COURSES, now);
      timer = setTimeout(() => play(seconds(Math.max(now + wait, between(began, clock())))), wait * 1000);
    };
    play(seconds(0));
    return () => clearTimeout(timer);
  }, [clock, still]);
  if (still) return null;
  const [steady, late, flicker, dark] = COURSES.map((course) => isLit(course, elapsed));
  return { steady: steady ?? false, late: late ?? false, flicker: flicker ?? false, dark: dark ?? false };
}
