// What came out: the value to enter as large as it was during the sweep, how sure it is, and below what to do with it the facts
// behind it.
import type { Steps } from '../../units.ts';
import type { BandOutcome } from '../../sweep/end/outcome.ts';
import { BigValue } from '../parts/bigValue.tsx';
import { words } from '../../words/catalogue.ts';
import { CentreFacts } from './centreFacts.tsx';
import { sureInWords } from './sure.ts';

interface Props {
  readonly outcome: BandOutcome;
  /** The value to enter; another than the one found where it was shifted on purpose. */
  readonly enter: Steps;
}

export function BandResult({ outcome: { chosen, other, within }, enter }: Props) {
  const say = words('result');
  const { caption, value } = words('sweep').face;
  return (
    <section class="result" aria-label={say.region}>
      <p class="caption">{caption.enter}</p>
      <BigValue label={value.enter} value={enter} />
      <p class="line">{enter === chosen ? sureInWords(within) : say.placed(chosen, within)}</p>
      {other !== null && enter === chosen && <p class="muted">{say.between(chosen, other)}</p>}
    </section>
  );
}

export function BandFacts({ outcome: { low, high, centre, interval, ends } }: { readonly outcome: BandOutcome }) {
  const say = words('result').facts;
  return (
    <CentreFacts centre={centre} interval={interval}>
      <dt>{say.band}</dt>
      <dd>
        {say.range(low, high)}
        {ends === 'believed' && <small>{say.endsNotSeen}</small>}
      </dd>
    </CentreFacts>
  );
}
