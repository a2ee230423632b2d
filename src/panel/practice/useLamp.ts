// Plays a course in real time: redraws at each of its changes and at no other moment.
import { useEffect, useState } from 'preact/hooks';
import { lampAt, UNLIT, untilChange, type LampCourse, type LampMoment } from '../../practice/lamp.ts';
import { between, seconds, type Moment } from '../../units.ts';
import { useSession } from '../useSession.ts';

export function useLamp(course: LampCourse | null, phase: { readonly name: string; readonly since?: Moment }): LampMoment {
  const { now } = useSession();
  const [shown, show] = useState<LampMoment>(UNLIT);
  useEffect(() => {
    const { since } = phase;
    if (course === null || since === undefined) {
      show(UNLIT);
      return undefined;
    }
    let timer: ReturnType<typeof setTimeout> | undefined;
    const play = (elapsed: ReturnType<typeof seconds>): void => {
      show(lampAt(course, elapsed));
      const wait = untilChange(course, elapsed);
      if (wait !== null) timer = setTimeout(() => play(seconds(elapsed + wait)), wait * 1000);
    };
    play(between(since, now.peek()));
    return () => clearTimeout(timer);
  }, [course, phase, now]);
  return shown;
}
