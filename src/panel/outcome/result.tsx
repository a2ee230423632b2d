// What came out: the value to enter as large as it was during the sweep, how sure it is, and below what to do with it the facts
// behind it.
import type { Steps } from '../../units.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { BandOutcome } from '../../sweep/end/outcome.ts';
import { BigValue } from '../parts/bigValue.tsx';
import { inPercent } from '../words/quantities.ts';
import { CentreFacts } from './centreFacts.tsx';
import { sureInWords } from './sure.ts';
import { ENTER, RESULT_WORDS } from './words.ts';

interface Props {
  readonly outcome: BandOutcome;
  /** The value to enter; another than the one found where it was shifted on purpose. */
  readonly enter: Steps;
}

export function BandResult({ outcome: { chosen, other, within }, enter }: Props) {
  const found = writeSteps(chosen);
  return (
    <section class="result" aria-label={RESULT_WORDS.region}>
      <p class="caption">{ENTER}</p>
      <BigValue label="Value to enter" value={enter} />
      <p class="line">{enter === chosen ? sureInWords(within) : RESULT_WORDS.placed({ found, percent: inPercent(within) })}</p>
      {other !== null && enter === chosen && <p class="muted">{RESULT_WORDS.between({ value: found, other: writeSteps(other) })}</p>}
    </section>
  );
}

export function BandFacts({ outcome: { low, high, centre, interval, ends } }: { readonly outcome: BandOutcome }) {
  return (
    <CentreFacts centre={centre} interval={interval}>
      <dt>{RESULT_WORDS.band}</dt>
      <dd>
        {low === high ? writeSteps(low) : RESULT_WORDS.bandFrom({ low: writeSteps(low), high: writeSteps(high) })}
        {ends === 'believed' && <small>{RESULT_WORDS.endsNotSeen}</small>}
      </dd>
    </CentreFacts>
  );
}
