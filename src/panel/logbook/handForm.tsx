// A value without a sweep: both ends of a band that was measured on paper, or just the value the camera has now.
import { useState } from 'preact/hooks';
import { middleOf } from '../../logbook/byHand.ts';
import type { Subject } from '../../sweep/plan.ts';
import type { Scale } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { Field } from '../parts/field.tsx';
import { Pick } from '../parts/pick.tsx';
import { Refusal } from '../parts/refusal.tsx';
import { useSession } from '../useSession.ts';
import { typedNumber } from '../words/typedNumber.ts';
import { circumstancesTold, ConditionFields, noCircumstances } from './conditionFields.tsx';

interface Props {
  readonly subject: Subject;
  readonly scale: Scale;
  readonly open?: boolean;
}

const KNOWN = ['band', 'value'] as const;

export function HandForm({ subject, scale, open = false }: Props) {
  const say = words('situation').byHand;
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

  const write = async (event: Event): Promise<void> => {
    event.preventDefault();
    const circumstances = circumstancesTold(told, session.clock());
    if (!circumstances.ok) return setSaid({ fault: circumstances.fault, done: '' });
    const typed =
      known === 'band' ? ({ known, one: typedNumber(one), other: typedNumber(other), chosen } as const) : ({ known, chosen: typedNumber(value) } as const);
    const { at, conditions } = circumstances.value;
    const written = session.writeByHand({ subject, scale, at, conditions, typed });
    if (!written.ok) return setSaid({ fault: written.fault, done: '' });
    setSaid((await session.onDisk()) ? { fault: '', done: say.saved } : { fault: words('session').stored.notOnDisk, done: '' });
  };

  return (
    <details open={open}>
      <summary>{say.open}</summary>
      <form class="card" aria-label={say.form} noValidate onSubmit={(event) => void write(event)}>
        <Pick legend={say.known} options={KNOWN.map((one) => ({ value: one, label: say.is[one] }))} chosen={known} onChoose={setKnown} />
        {known === 'band' ? (
          <>
            <Field label={say.one} text={one} onTyped={setOne} />
            <Field label={say.other} text={other} onTyped={setOther} />
            {middle?.ok && <p>{say.centre(middle.value.centre)}</p>}
            {choices.length > 1 && (
              <Pick
                legend={say.which}
                options={choices.map((choice) => ({ value: String(choice), label: say.choice(choice) }))}
                chosen={String(chosen)}
                onChoose={setPicked}
              />
            )}
            {middle && !middle.ok && <p class="fault small">{words('session').byHand(middle.fault)}</p>}
          </>
        ) : (
          <Field label={say.value} text={value} onTyped={setValue} />
        )}
        <ConditionFields typed={told} onTyped={setTold} />
        <Refusal sentence={said.fault} small />
        <button type="submit">{say.save}</button>
        <output class="small">{said.done}</output>
      </form>
    </details>
  );
}
