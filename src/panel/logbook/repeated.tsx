// Two or more sweeps of one situation: what they say together, how far they scatter, and whether the last two differ by
// more than their intervals allow.
import { combine, compare, estimateOf, sweepsDiffer } from '../../logbook/combined.ts';
import type { Measured } from '../../logbook/measured.ts';
import { TroubleNote } from '../trouble/troubleNote.tsx';
import { inTenths } from '../words/figures.ts';

export function Repeated({ measured }: { readonly measured: readonly Measured[] }) {
  const estimates = measured.flatMap((one) => estimateOf(one) ?? []);
  const all = combine(estimates);
  const [before, last] = estimates.slice(-2);
  if (!all || !before || !last) return null;
  const { random, q, freedom, i2, tau2 } = all;
  const { apart, allowed, differ } = compare(before, last);
  const trouble = sweepsDiffer(estimates);
  const steps = (value: number): string => String(Number(value.toFixed(1)));
  return (
    <section class="card" aria-labelledby="repeated">
      <h2 id="repeated">{estimates.length} sweeps together</h2>
      {!trouble && (
        <p>
          Centre {inTenths(random.value)}, 95 % between {inTenths(random.from)} and {inTenths(random.to)}.
        </p>
      )}
      <p>
        The last two lie {steps(apart)} apart; chance allows {steps(allowed)}.{' '}
        {differ ? 'They differ by more.' : 'They agree.'}
      </p>
      <details class="small">
        <summary>Figures</summary>
        <p>
          Scatter Q {steps(q)} for {freedom}; {Math.round(i2 * 100)} % of it is more than chance; between sweeps {steps(Math.sqrt(tau2))} steps.
        </p>
      </details>
      {trouble && <TroubleNote found={trouble} />}
    </section>
  );
}
