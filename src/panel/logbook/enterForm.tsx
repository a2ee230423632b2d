// "It is in the camera": from then on the value is not only measured. What was entered before is kept.
import { useId, useState } from 'preact/hooks';
import { isNamed } from '../../sweep/named.ts';
import type { Subject, Unnamed } from '../../sweep/plan.ts';
import { isOnScale, writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { BodyWarnings } from '../kit/bodyWarnings.tsx';
import { Field } from '../parts/field.tsx';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { typedNumber } from '../words/typedNumber.ts';
import { circumstancesTold, ConditionFields, noCircumstances } from './conditionFields.tsx';

export interface EnterProps {
  /**
   * What it is entered for, several where they share one place in the camera; the sweep that goes on may still be without its name.
   * `record`: the one it rests on.
   */
  readonly about: readonly { readonly subject: Subject | Unnamed; readonly record: string | null }[];
  readonly scale: Scale;
  readonly suggested: Steps | null;
  /** The screen has warned of what the body cannot keep already. */
  readonly warned?: boolean;
}

export function EnterForm({ about, scale, suggested, warned = false }: EnterProps) {
  const session = useSession();
  const say = words('entered');
  const title = useId();
  const [typed, setTyped] = useState(suggested === null ? '' : writeSteps(suggested));
  const [told, setTold] = useState(() => noCircumstances(session.clock()));
  const [fault, setFault] = useState('');
  const [done, setDone] = useState('');
  const enter = async (event: Event): Promise<void> => {
    event.preventDefault();
    setDone('');
    const value = typedNumber(typed);
    if (!isOnScale(scale, value)) return setFault(say.offTheScale(scale));
    const circumstances = circumstancesTold(told, session.clock());
    if (!circumstances.ok) return setFault(circumstances.fault);
    const { at, conditions } = circumstances.value;
    const named = about.flatMap(({ subject, record }) => {
      const whose = isNamed(subject) ? subject : session.named();
      return whose ? [{ subject: whose, record }] : [];
    });
    const refused = named.map(({ subject, record }) => session.enter({ at, subject, value, record, conditions })).find(({ ok }) => !ok);
    setFault(refused && !refused.ok ? refused.fault : '');
    if (refused) return;
    if (await session.onDisk()) setDone(say.marked(value));
    else setFault(words('session').stored.notOnDisk);
  };
  return (
    <form class="card" aria-labelledby={title} noValidate onSubmit={(event) => void enter(event)}>
      <h2 id={title}>{say.title}</h2>
      {!warned && about.map(({ subject }) => isNamed(subject) && <BodyWarnings key={subject.situation} situation={subject.situation} />)}
      <Field label={say.value} text={typed} fault={fault} onTyped={setTyped} />
      <ConditionFields typed={told} onTyped={setTold} />
      <button type="submit">{say.mark}</button>
      <output class="small">{done}</output>
    </form>
  );
}
