// New firmware or a visit to the service: values measured before it deserve another look.
import { useState } from 'preact/hooks';
import { words } from '../../words/catalogue.ts';
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { useSession } from '../useSession.ts';

const WHAT = ['firmware', 'service'] as const;

export function Happened({ of }: { readonly of: string }) {
  const say = words('kit').happened;
  const session = useSession();
  const [what, setWhat] = useState<'firmware' | 'service'>('firmware');
  const [note, setNote] = useState('');
  const [said, setSaid] = useState('');
  const noteIt = async (): Promise<void> => {
    const noted = session.noteOn({ of, what, note: note.trim(), at: session.clock() });
    if (!noted.ok) return setSaid(noted.fault);
    setSaid((await session.onDisk()) ? say.saved : words('session').stored.notOnDisk);
  };
  return (
    <details>
      <summary>{say.open}</summary>
      <form
        class="card"
        aria-label={say.form}
        onSubmit={(event) => {
          event.preventDefault();
          void noteIt();
        }}
      >
        <Choose
          label={say.what}
          options={WHAT.map((value) => ({ value, label: say.is[value] }))}
          chosen={what}
          onChoose={(chosen) => setWhat(chosen === 'service' ? 'service' : 'firmware')}
        />
        <Field label={say.note} text={note} onTyped={setNote} />
        <button type="submit">{say.save}</button>
        <output class="small">{said}</output>
      </form>
    </details>
  );
}
