// A new sweep: which body, which lens, at which focal length and distance, and how carefully.
import { useState } from 'preact/hooks';
import { UNREAD } from '../../unread.ts';
import { useSurroundings } from '../useSession.ts';
import { BodyPick } from './bodyPick.tsx';
import { LensPick } from './lensPick.tsx';
import { MannerLine } from './mannerLine.tsx';
import { EMPTY_DRAFT, picksOf } from './draft.ts';
import { SituationPick } from './situationPick.tsx';
import { useFirstFault } from './useFirstFault.ts';

export function NewSweep() {
  const { session, start, bench, way } = useSurroundings();
  const draft = start.draft.value;
  const picks = picksOf(draft, session.kit.value, session.records.value);
  const [refusal, setRefusal] = useState('');
  const form = useFirstFault(draft.faults);
  /** The situation that was typed, once it is in the kit; null while something does not fit. */
  const keepNew = async (): Promise<string | null> => {
    const newKit = await import('./newKit.tsx').catch(() => null);
    if (newKit === null) {
      setRefusal(UNREAD);
      return null;
    }
    const now = start.draft.peek();
    const kept = newKit.keepTyped(now, picksOf(now, session.kit.peek(), session.records.peek()), session);
    start.change(kept.patch);
    return kept.situation;
  };
  const byHand = async (): Promise<void> => {
    const situation = picks.situation?.id ?? (await keepNew());
    if (situation !== null) way.go({ at: 'situation', id: situation, byHand: true });
  };
  const begin = async (event: Event): Promise<void> => {
    event.preventDefault();
    setRefusal('');
    const situation = picks.situation?.id ?? (await keepNew());
    if (situation === null) return;
    const setUp = bench.peek().noted && (await import('../bench/setUpFor.ts').catch(() => null));
    const begun = await session.begin({ with: 'kit', situation, ...setUp?.setUpFor(situation, session.kit.peek(), bench) });
    if (!begun.ok) return setRefusal(begun.sentence);
    start.change(EMPTY_DRAFT);
    setUp?.forget(bench);
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
        Set up the bench
      </button>
      <button type="submit" class="chief">
        Begin the sweep
      </button>
      <button type="button" class="link" onClick={() => void byHand()}>
        Put a value in by hand instead
      </button>
    </form>
  );
}
