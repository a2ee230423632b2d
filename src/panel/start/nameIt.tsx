// A result that was kept without a name can get it here, the newest first.
import { useState } from 'preact/hooks';
import type { Subject } from '../../sweep/plan.ts';
import { toldOf } from '../told/open.ts';
import { Whose } from '../told/whose.tsx';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';

export function NameIt() {
  const session = useSession();
  const say = words('start').unnamed;
  const kit = session.kit.value;
  const [open, setOpen] = useState<string | null>(null);
  const lenses = new Set(kit.lenses.flatMap(({ id, standIn, retired }) => (standIn && retired === null ? [id] : [])));
  const waiting = kit.situations.filter(({ lens, standIn, retired }) => retired === null && (lenses.has(lens) || standIn));
  const records = session.records.value.filter(({ subject }) => waiting.some(({ id }) => id === subject.situation));
  const [newest] = records;
  if (!newest) return null;
  const { situation, lens } = newest.subject;
  const value = 'chosen' in newest.outcome ? newest.outcome.chosen : null;
  const others = new Set(records.map(({ subject }) => subject.situation)).size - 1;
  return (
    <section class="notice" aria-label={say.label}>
      <p>{say.waits(lens, value)}</p>
      {open === situation ? (
        <Whose key={situation} parts={toldOf({ situation } as Subject, kit)} atOnce tell={(told) => session.nameKept(situation, told)} />
      ) : (
        <button type="button" onClick={() => setOpen(situation)}>
          {say.label}
        </button>
      )}
      {others > 0 && <p class="small">{say.others(others)}</p>}
    </section>
  );
}
