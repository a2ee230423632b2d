// Counts the holds in which a person was coached, and says aloud what an eye at the viewfinder cannot read.
import { useEffect, useRef } from 'preact/hooks';
import type { SweepState } from '../../sweep/state.ts';
import { useSession } from '../useSession.ts';
import { coachedNow, isNew, type Coached } from './coaching.ts';
import { aloud } from '../../words/catalogue.ts';

export function useCoaching(sweep: SweepState, here: boolean): Coached | null {
  const session = useSession();
  const settings = session.settings.value;
  const coached = here ? coachedNow(sweep, settings, session.records.value) : null;
  const judged = sweep.holds.length + sweep.spent.length;
  const beforeRef = useRef(judged);
  const isCounted = here && sweep.plan.practice === null && isNew(settings, session.records.value);
  useEffect(() => {
    if (judged > beforeRef.current && isCounted) session.changeSettings({ coached: settings.coached + 1 });
    beforeRef.current = judged;
  }, [judged, isCounted, session, settings.coached]);

  const said = coached && saidNow(coached, session.ear.peek() === 'off');
  useEffect(() => {
    if (said !== null) session.sayShown(said, 'next');
  }, [said, session]);
  return coached;
}

/** After the end tone it would only keep the ear of a person who speaks from hearing the answer. */
function saidNow(coached: Coached, byHand: boolean): string | null {
  if (coached.shows === 'lights') return null;
  const say = aloud('firstHold').coach;
  if (coached.shows === 'buttons') return say.firstAloud;
  return coached.phase === 'judging' && !byHand ? null : say.steps[coached.phase].aloud;
}
