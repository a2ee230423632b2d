// What a plan is to hold: bodies, lenses, converters, ends of the zooms and distances.
import { useState } from 'preact/hooks';
import { Distance } from '../../kit/lengths.ts';
import { situationsWanted, type Wanted } from '../../logbook/plan/wanted.ts';
import { failed, got, type Result } from '../../result.ts';
import type { Millimetres } from '../../units.ts';
import { inMillimetresTyped } from '../start/typedKit.ts';
import { Field } from '../parts/field.tsx';
import { Pick } from '../parts/pick.tsx';
import { Tick } from '../parts/tick.tsx';
import { useSurroundings } from '../useSession.ts';
import * as v from 'valibot';

const ENDS = [
  { value: 'both', label: 'Both ends' },
  { value: 'wide', label: 'Wide only' },
  { value: 'tele', label: 'Tele only' },
] as const;

export function PlanForm({ onPlanned }: { readonly onPlanned: () => void }) {
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
          <Tick key={id} label={name} on={chosen.has(id)} onChange={(on) => setChosen(new Set(on ? [...chosen, id] : [...chosen].filter((one) => one !== id)))} />
        ))}
      </fieldset>
    );
  const plan = (event: Event): void => {
    event.preventDefault();
    const distances = distancesTyped(typed);
    if (!distances.ok) return setRefusal(distances.sentence);
    const among = (items: readonly { id: string }[]): string[] => items.map(({ id }) => id).filter((id) => chosen.has(id));
    const wanted = situationsWanted({ bodies: among(bodies), lenses: among(lenses), converters: among(converters), ends, distances: distances.value }, kit);
    if (!wanted.ok) return setRefusal(wanted.sentence);
    const saved = wanted.value.map((situation) => session.saveSituation(situation));
    const refused = saved.find(({ ok }) => !ok);
    if (refused && !refused.ok) return setRefusal(refused.faults[0]?.sentence ?? 'This does not fit. Check what you chose.');
    session.planJob(saved.flatMap((one) => (one.ok ? [one.id] : [])));
    onPlanned();
  };
  if (bodies.length === 0 || lenses.length === 0) {
    return (
      <>
        <p>A plan is made from your kit: add a body and a lens first.</p>
        <button type="button" class="chief" onClick={() => way.go({ at: 'kit' })}>
          To the kit
        </button>
      </>
    );
  }
  return (
    <form class="stack" noValidate onSubmit={plan}>
      <p class="muted small">Choose what is to be measured. The order is found so that the tripod moves least, then kit is swapped least.</p>
      {list('Bodies', bodies)}
      {list('Lenses', lenses)}
      {list('Also with', converters)}
      <Pick legend="Zooms" options={ENDS} chosen={ends} onChoose={setEnds} />
      <Field label="Distances, m" text={typed} hint="Such as 2.5 8. Empty: fifty focal lengths each." onTyped={setTyped} />
      {refusal && (
        <p class="fault" role="alert">
          {refusal}
        </p>
      )}
      <button type="submit" class="chief">
        Make the plan
      </button>
    </form>
  );
}

/** Distances in metres, apart by spaces or semicolons. */
function distancesTyped(text: string): Result<Millimetres[]> {
  const distances = text.split(/[\s;]+|,\s+/).filter((part) => part !== '').map(inMillimetresTyped);
  const fault = distances.map((distance) => v.safeParse(Distance, distance)).find(({ success }) => !success);
  return fault ? failed('Enter distances in metres, from 0.05 to 500, with a space between them.') : got([...new Set(distances)]);
}
