// What came out: the value to use as large as it was during the sweep, how sure it is, and the facts behind it.
import { writeSteps } from '../../sweep/scale.ts';
import type { BandOutcome } from '../../sweep/end/outcome.ts';
import { BigValue } from '../parts/bigValue.tsx';
import { inPercent } from '../words/quantities.ts';
import { CentreFacts } from './centreFacts.tsx';

interface Props {
  readonly outcome: BandOutcome;
  /** The band has a gap: how sure the belief is of its centre means nothing then. */
  readonly gap: boolean;
}

export function BandResult({ outcome, gap }: Props) {
  const { low, high, centre, chosen, other, interval, within, ends } = outcome;
  const value = writeSteps(chosen);
  return (
    <>
      <section class="result" aria-label="Result">
        <p class="caption">The centre</p>
        <BigValue label="Value to enter" value={chosen} />
        <p class="line">{gap ? 'not sure: the band has a gap' : `${inPercent(within)} sure within one step`}</p>
        {other !== null && (
          <p class="muted">
            The middle falls between {value} and {writeSteps(other)}, and the holds prefer neither. {value} is nearer zero.
          </p>
        )}
      </section>
      <dl class="facts">
        <dt>Band</dt>
        <dd>
          {low === high ? value : `${writeSteps(low)} to ${writeSteps(high)}`}
          {ends === 'believed' && <small>its ends were not both held on both sides</small>}
        </dd>
        <CentreFacts centre={centre} interval={interval} />
      </dl>
    </>
  );
}
