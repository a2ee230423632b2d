// Plays a course in real time: redraws at each of its changes and at no other moment.
import { useEffect, useState } from 'preact/hooks';
import { lampAt, UNLIT, untilChange, type LampCourse, type LampMoment } from '../../practice/lamp.ts';
import type { Phase } from '../../sweep/state.ts';
import { between, seconds } from '../../units.ts';
import { useSession } from '../useSession.ts';

export function useLamp(course: LampCourse | null, phase: Phase): LampMoment {
  const { now } = useSession();
  const [shown, show] = useState<LampMoment>(UNLIT);
  useEffect(() => {
    if (course === null || !('since' in phase)) {
      show(UNLIT);
      return undefined;
    }
    let timer: ReturnType<typeof setTimeout> | undefined;
    const play = (elapsed: ReturnType<typeof seconds>): void => {
      show(lampAt(course, elapsed));
      const wait = untilChange(course, elapsed);
      if (wait !== null) timer = setTimeout(() => play(seconds(elapsed + wait)), wait * 1000);
    };
    play(between(phase.since, now.peek()));
    return () => clearTimeout(timer);
  }, [course, phase, now]);
  return shown;
}
