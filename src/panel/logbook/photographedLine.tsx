// What photographs showed, as one line of the history: the figures, and behind it the two crops and the ways to erase either.
import { useEffect, useState } from 'preact/hooks';
import type { ProofRecord } from '../../logbook/proofRecord.ts';
import type { CropPair } from '../../platform/keptCrops.ts';
import type { Result } from '../../result.ts';
import { words } from '../../words/catalogue.ts';
import { BlobPicture } from '../photographs/blobPicture.tsx';
import { useSession } from '../useSession.ts';

export function PhotographedLine({ record }: { readonly record: ProofRecord }) {
  const say = words('situation').history.photographed;
  const [open, setOpen] = useState(false);
  return (
    <>
      <b>{say.showed(record)}</b> {say.by(record)}
      <small>{say.facts(record)}</small>
      <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>{say.more}</summary>
        {open && <Kept record={record} />}
      </details>
    </>
  );
}

/** `null`: there are none. */
type Crops = 'reading' | CropPair | null;

function Kept({ record }: { readonly record: ProofRecord }) {
  const session = useSession();
  const say = words('situation').history.photographed;
  const [crops, setCrops] = useState<Crops>('reading');
  const [fault, setFault] = useState('');
  useEffect(() => {
    let left = false;
    const read = async (): Promise<void> => {
      const found = await session.cropsOf(record);
      if (left) return;
      setCrops(found.ok ? found.value : null);
      if (!found.ok) setFault(words('session').proofs.crops[found.fault]);
    };
    void read();
    return () => {
      left = true;
    };
  }, [session, record]);
  const erase = async (erasing: Promise<Result>, done: () => void): Promise<void> => {
    const erased = await erasing;
    setFault(erased.ok ? '' : erased.fault);
    if (erased.ok) done();
  };
  return (
    <div class="stack">
      {crops === null && fault === '' && <p class="muted small">{say.noCrops}</p>}
      {crops !== null && crops !== 'reading' && (
        <>
          <figure class="kept-crops">
            <figcaption class="small muted">{say.crops(crops.reference !== null)}</figcaption>
            <div class="crops">
              {crops.reference && <BlobPicture blob={crops.reference} alt={say.crop.reference} />}
              {crops.shot && <BlobPicture blob={crops.shot} alt={say.crop.shot} />}
            </div>
          </figure>
          <button type="button" onClick={() => void erase(session.eraseCrops(record.id), () => setCrops(null))}>
            {say.eraseCrops}
          </button>
        </>
      )}
      <button type="button" onClick={() => void erase(session.eraseProof(record.id), () => undefined)}>
        {say.erase}
      </button>
      {fault && <p role="alert">{fault}</p>}
    </div>
  );
}
