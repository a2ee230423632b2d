// New firmware or a visit to the service: values measured before it deserve another look.
import { useState } from 'preact/hooks';
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { useSession } from '../useSession.ts';

const WHAT = [
  { value: 'firmware', label: 'New firmware' },
  { value: 'service', label: 'Serviced' },
] as const;

export function Happened({ of }: { readonly of: string }) {
  const session = useSession();
  const [what, setWhat] = useState<'firmware' | 'service'>('firmware');
  const [note, setNote] = useState('');
  const [said, setSaid] = useState('');
  return (
    <details>
      <summary>Note new firmware or service</summary>
      <form
        class="card"
        aria-label="What happened"
        onSubmit={(event) => {
          event.preventDefault();
          const noted = session.noteOn({ of, what, note: note.trim(), at: session.clock() });
          setSaid(noted.ok ? 'Noted: what was measured before is due again.' : noted.sentence);
        }}
      >
        <Choose label="What happened" options={WHAT} chosen={what} onChoose={(chosen) => setWhat(chosen === 'service' ? 'service' : 'firmware')} />
        <Field label="Note" text={note} onTyped={setNote} />
        <button type="submit">Note it</button>
        <output class="small">{said}</output>
      </form>
    </details>
  );
}
