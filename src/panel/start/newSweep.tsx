// A new sweep: which body, which lens, at which focal length and distance, and how carefully.
import { useState } from 'preact/hooks';
import { useSurroundings } from '../useSession.ts';
import { BodyPick } from './bodyPick.tsx';
import { keepTyped } from './keep.ts';
import { LensPick } from './lensPick.tsx';
import { MannerLine } from './mannerLine.tsx';
import { EMPTY_DRAFT, picksOf } from './draft.ts';
import { SituationPick } from './situationPick.tsx';
import { useFirstFault } from './useFirstFault.ts';

export function NewSweep() {
  const { session, start } = useSurroundings();
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
    const begun = await session.begin({ with: 'kit', situation: kept.situation });
    if (begun.ok) start.change(EMPTY_DRAFT);
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
      <button type="submit" class="chief">
        Begin the sweep
      </button>
    </form>
  );
}
