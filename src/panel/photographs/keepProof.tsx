// Keeping what photographs showed in the logbook: its figures and two crops, once. The pictures themselves are let go with the screen.
import { createContext } from 'preact';
import { useContext, useRef, useState } from 'preact/hooks';
import { keptAlready } from '../../logbook/keptAlready.ts';
import type { Proof } from '../../photographs/proof.ts';
import type { CropPair } from '../../platform/keptCrops.ts';
import type { Result } from '../../result.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';

interface Props {
  /** What the pictures are of; null where that is not known, and nothing can be kept. */
  readonly situation: string | null;
  /** Of a check, the value that was checked must be told first. */
  readonly proof: Proof | 'no value';
  readonly crops: CropPair;
}

/** Whether the pictures below are those of a practice camera, which are never kept. */
export const NeverKept = createContext(false);

export function KeepProof({ situation, proof, crops }: Props) {
  const say = words('photographs').keep;
  if (useContext(NeverKept)) return null;
  if (situation === null) return <p class="muted small">{say.noSituation}</p>;
  return proof === 'no value' ? <p class="muted small">{say.noValue}</p> : <Keep situation={situation} proof={proof} crops={crops} />;
}

function Keep({ situation, proof, crops }: { readonly situation: string; readonly proof: Proof; readonly crops: CropPair }) {
  const session = useSession();
  const say = words('photographs').keep;
  const button = useRef<HTMLButtonElement>(null);
  // Not drawn: the second of two quick presses comes before anything is drawn anew.
  const busyRef = useRef(false);
  const [fault, setFault] = useState('');
  // While it is kept or erased, what stood before is shown, until the disk has it.
  const [meanwhile, setMeanwhile] = useState<{ readonly kept: ReturnType<typeof keptAlready> } | null>(null);
  const known = keptAlready(session.proofs.value, situation, proof);
  const kept = meanwhile ? meanwhile.kept : known;
  const change = async (changing: () => Promise<Result<unknown>>): Promise<void> => {
    if (busyRef.current) return;
    busyRef.current = true;
    setMeanwhile({ kept });
    const changed = await changing();
    busyRef.current = false;
    setMeanwhile(null);
    setFault(changed.ok ? '' : changed.fault);
    // The one that was pressed may be gone.
    button.current?.focus();
  };
  return (
    <>
      <p class="muted small">{say.what([crops.reference, crops.shot].filter((crop) => crop !== null).length)}</p>
      <button
        ref={button}
        type="button"
        aria-disabled={kept !== null}
        onClick={() => kept === null && void change(() => session.keepProof(situation, proof, crops))}
      >
        {kept === null ? say.label : say.done}
      </button>
      <output class="small">{kept !== null && say.kept}</output>
      {kept !== null && (
        <button type="button" class="link" onClick={() => void change(() => session.eraseProof(kept.id))}>
          {say.erase}
        </button>
      )}
      {fault !== '' && <p role="alert">{fault}</p>}
    </>
  );
}
