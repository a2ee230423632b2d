// How it was during a sweep, told afterwards: it stands in the history beside what was found.
import { useState } from 'preact/hooks';
import type { LogRecord } from '../../logbook/record.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { CircumstanceFields, circumstancesOf, circumstancesTold } from './conditionFields.tsx';
import { Refusal } from '../parts/refusal.tsx';

export function HowItWas({ record: { id, conditions } }: { readonly record: LogRecord }) {
  const say = words('record').conditions;
  const session = useSession();
  const [typed, setTyped] = useState(() => circumstancesOf(conditions ?? null, session.clock()));
  const [said, setSaid] = useState({ fault: '', done: '' });
  const keep = async (event: Event): Promise<void> => {
    event.preventDefault();
    const told = circumstancesTold(typed, session.clock());
    const kept = told.ok ? session.tellConditions(id, told.value.conditions) : told;
    if (!kept.ok) return setSaid({ fault: kept.fault, done: '' });
    setSaid((await session.onDisk()) ? { fault: '', done: say.saved } : { fault: words('session').stored.notOnDisk, done: '' });
  };
  return (
    <details>
      <summary>{say.open(Boolean(conditions))}</summary>
      <form class="card" aria-label={say.form} noValidate onSubmit={(event) => void keep(event)}>
        <CircumstanceFields typed={typed} dated={false} onTyped={setTyped} />
        <Refusal sentence={said.fault} small />
        <button type="submit">{say.save}</button>
        <output class="small">{said.done}</output>
      </form>
    </details>
  );
}
