// A new sweep: which body, which lens, at which focal length and distance, and how carefully.
import { useState } from 'preact/hooks';
import { useSurroundings } from '../useSession.ts';
import { isSameSubject, subjectOf } from '../bench/subject.ts';
import { BodyPick } from './bodyPick.tsx';
import { keepTyped } from './keep.ts';
import { LensPick } from './lensPick.tsx';
import { MannerLine } from './mannerLine.tsx';
import { EMPTY_DRAFT, picksOf } from './draft.ts';
import { SituationPick } from './situationPick.tsx';
import { useFirstFault } from './useFirstFault.ts';

export function NewSweep() {
  const { session, start, bench, way } = useSurroundings();
  const noted = bench.noted.value;
  const draft = start.draft.value;
  const picks = picksOf(draft, session.kit.value, session.records.value);
  const [refusal, setRefusal] = useState('');
  const form = useFirstFault(draft.faults);
  const begin = async (event: Event): Promise<void> => {
    event.preventDefault();
    setRefusal('');
    const kept = keepTyped(draft, picks, session);
    start.change(kept.patch);
    if (kept.situation === null) return;
    const subject = subjectOf(session, start.draft.peek());
    const fits = noted !== null && typeof subject !== 'string' && isSameSubject(noted.subject, subject);
    const begun = await session.begin({ with: 'kit', situation: kept.situation, ...(fits && { bench: noted.bench }) });
    if (begun.ok) {
      start.change(EMPTY_DRAFT);
      bench.note(null);
    }
    else setRefusal(begun.sentence);
  };
  return (
    <form ref={form} class="card" aria-labelledby="new-sweep" noValidate onSubmit={(event) => void begin(event)}>
      <h2 id="new-sweep">New sweep</h2>
      <BodyPick picks={picks} />
      <LensPick picks={picks} />
      <SituationPick picks={picks} />
      <MannerLine />
      {(refusal || draft.faults.whole) && (
        <p class="fault" role="alert">
          {refusal || draft.faults.whole}
        </p>
      )}
      <button type="button" class="link" onClick={() => way.go({ at: 'bench' })}>
        {noted ? 'The rig is set up: look at the bench' : 'Set up the bench: distance, light, target'}
      </button>
      <button type="submit" class="chief">
        Begin the sweep
      </button>
    </form>
  );
}
