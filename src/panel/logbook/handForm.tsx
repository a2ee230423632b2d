// A value without a sweep: both ends of a band that was measured on paper, or just the value the camera has now.
import { useState } from 'preact/hooks';
import { middleOf } from '../../logbook/byHand.ts';
import type { Subject } from '../../sweep/plan.ts';
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import { Field } from '../parts/field.tsx';
import { Pick } from '../parts/pick.tsx';
import { useSession } from '../useSession.ts';
import { inTenths } from '../words/figures.ts';
import { typedNumber } from '../words/typedNumber.ts';
import { circumstancesTold, ConditionFields, noCircumstances } from './conditionFields.tsx';

interface Props {
  readonly subject: Subject;
  readonly scale: Scale;
  readonly open?: boolean;
}

const KNOWN = [
  { value: 'band', label: 'Both ends of the band' },
  { value: 'value', label: 'Only the value in the camera now' },
] as const;

export function HandForm({ subject, scale, open = false }: Props) {
  const session = useSession();
  const [known, setKnown] = useState<'band' | 'value'>('band');
  const [one, setOne] = useState('');
  const [other, setOther] = useState('');
  const [value, setValue] = useState('');
  const [picked, setPicked] = useState<string | null>(null);
  const [told, setTold] = useState(() => noCircumstances(session.clock()));
  const [said, setSaid] = useState({ fault: '', done: '' });
  const bothTyped = one.trim() !== '' && other.trim() !== '';
  const middle = bothTyped ? middleOf(scale, typedNumber(one), typedNumber(other)) : null;
  const choices: readonly number[] = middle?.ok ? middle.value.choices : [];
  const chosen = choices.find((choice) => String(choice) === picked) ?? choices[0] ?? Number.NaN;

  const write = (event: Event): void => {
    event.preventDefault();
    const circumstances = circumstancesTold(told, session.clock());
    if (!circumstances.ok) return setSaid({ fault: circumstances.sentence, done: '' });
    const typed =
      known === 'band'
        ? ({ known, one: typedNumber(one), other: typedNumber(other), chosen } as const)
        : ({ known, chosen: typedNumber(value) } as const);
    const { at, conditions } = circumstances;
    const written = session.writeByHand({ subject, scale, at, conditions, typed });
    setSaid(written.ok ? { fault: '', done: 'Written into the logbook.' } : { fault: written.sentence, done: '' });
  };

  return (
    <details open={open}>
      <summary>Put a value in by hand</summary>
      <form class="card" aria-label="By hand" noValidate onSubmit={write}>
        <Pick legend="What is known" options={KNOWN} chosen={known} onChoose={setKnown} />
        {known === 'band' ? (
          <>
            <Field label="One end" text={one} onTyped={setOne} />
            <Field label="Other end" text={other} onTyped={setOther} />
            {middle?.ok && <p>The centre is {inTenths(middle.value.centre)}.</p>}
            {choices.length > 1 && (
              <Pick
                legend="Both are as near; which do you take?"
                options={choices.map((choice) => ({ value: String(choice), label: writeSteps(choice) }))}
                chosen={String(chosen)}
                onChoose={setPicked}
              />
            )}
            {middle && !middle.ok && <p class="fault small">{middle.sentence}</p>}
          </>
        ) : (
          <Field label="Value in force" text={value} onTyped={setValue} />
        )}
        <ConditionFields typed={told} onTyped={setTold} />
        {said.fault && (
          <p class="fault small" role="alert">
            {said.fault}
          </p>
        )}
        <button type="submit">Write it down</button>
        <output class="small">{said.done}</output>
      </form>
    </details>
  );
}
