// What a plan is to hold: bodies, lenses, converters, ends of the zooms and distances.
import { useState } from 'preact/hooks';
import { situationsWanted, type Wanted } from '../../logbook/plan/wanted.ts';
import { words } from '../../words/catalogue.ts';
import { Empty } from '../empty/empty.ts';
import { Field } from '../parts/field.tsx';
import { Pick } from '../parts/pick.tsx';
import { Refusal } from '../parts/refusal.tsx';
import { Tick } from '../parts/tick.tsx';
import { useSurroundings } from '../useSession.ts';
import { typedDistances } from './typedDistances.ts';

const ENDS = ['both', 'wide', 'tele'] as const;

export function PlanForm({ onPlanned }: { readonly onPlanned: () => void }) {
  const say = words('plan').form;
  const { session, way } = useSurroundings();
  const kit = session.kit.value;
  const inUse = <Item extends { retired: number | null }>(items: readonly Item[]): Item[] => items.filter(({ retired }) => retired === null);
  const [bodies, lenses, converters] = [inUse(kit.bodies), inUse(kit.lenses), inUse(kit.converters)];
  const [chosen, setChosen] = useState<ReadonlySet<string>>(() => new Set(bodies.length === 1 ? bodies.map(({ id }) => id) : []));
  const [ends, setEnds] = useState<Wanted['ends']>('both');
  const [typed, setTyped] = useState('');
  const [refusal, setRefusal] = useState('');
  const list = (legend: string, items: readonly { id: string; name: string }[]) =>
    items.length > 0 && (
      <fieldset>
        <legend>{legend}</legend>
        {items.map(({ id, name }) => (
          <Tick
            key={id}
            label={name}
            on={chosen.has(id)}
            onChange={(on) => setChosen(new Set(on ? [...chosen, id] : [...chosen].filter((one) => one !== id)))}
          />
        ))}
      </fieldset>
    );
  const plan = (event: Event): void => {
    event.preventDefault();
    const distances = typedDistances(typed);
    if (!distances) return setRefusal(say.distances.fault);
    const among = (items: readonly { id: string }[]): string[] => items.map(({ id }) => id).filter((id) => chosen.has(id));
    const wanted = situationsWanted({ bodies: among(bodies), lenses: among(lenses), converters: among(converters), ends, distances }, kit);
    if (!wanted.ok) return setRefusal(say.fault(wanted.fault));
    const saved = wanted.value.map((situation) => session.saveSituation(situation));
    const refused = saved.find(({ ok }) => !ok);
    if (refused && !refused.ok) return setRefusal(refused.fault[0]?.sentence ?? say.unfit);
    session.planJob(saved.flatMap((one) => (one.ok ? [one.value] : [])));
    onPlanned();
  };
  if (bodies.length === 0 || lenses.length === 0) {
    return <Empty of="plan" onBegin={() => way.go({ at: 'kit' })} />;
  }
  return (
    <form class="stack" noValidate onSubmit={plan}>
      <Empty of="planned" />
      {list(say.bodies, bodies)}
      {list(say.lenses, lenses)}
      {list(say.converters, converters)}
      <Pick legend={say.zooms} options={ENDS.map((value) => ({ value, label: say.ends[value] }))} chosen={ends} onChoose={setEnds} />
      <Field label={say.distances.label} text={typed} hint={say.distances.hint} onTyped={setTyped} />
      <Refusal sentence={refusal} />
      <button type="submit" class="chief">
        {say.make}
      </button>
    </form>
  );
}
