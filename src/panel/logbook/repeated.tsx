// Two or more sweeps of one situation: what they say together, how far they scatter, and whether the last two differ by
// more than their intervals allow.
import { combine, compare, estimateOf, sweepsDiffer } from '../../logbook/combined.ts';
import type { Measured } from '../../logbook/measured.ts';
import { TroubleNote } from '../trouble/troubleNote.tsx';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';

export function Repeated({ measured }: { readonly measured: readonly Measured[] }) {
  const say = words('situation').repeated;
  const estimates = measured.flatMap((one) => estimateOf(one) ?? []);
  const all = combine(estimates);
  const [before, last] = estimates.slice(-2);
  if (!all || !before || !last) return null;
  const trouble = sweepsDiffer(estimates);
  return (
    <section class="card" aria-labelledby="repeated">
      <h2 id="repeated">{say.title(estimates.length)}</h2>
      {!trouble && <p>{say.centre(all.random)}</p>}
      <p>{run(say.last(compare(before, last)))}</p>
      {trouble && <TroubleNote found={trouble} />}
    </section>
  );
}
