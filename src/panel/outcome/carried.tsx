// What a width transfer gave: the value to enter where the scale still has it, or that the pair needs service, with the
// drawing and the facts behind it.
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import { BigValue } from '../parts/bigValue.tsx';
import { inTenths } from '../words/figures.ts';
import { CentreFacts } from './centreFacts.tsx';
import { CarriedDrawing } from './carriedDrawing.tsx';
import { sureInWords } from './sure.ts';
import { ENTER, RESULT_WORDS } from './words.ts';

interface Props {
  readonly outcome: CarriedOutcome;
  readonly scale: Scale;
}

export function CarriedResult({ outcome }: Pick<Props, 'outcome'>) {
  return (
    <section class="result" aria-label={RESULT_WORDS.region}>
      <Headline outcome={outcome} />
    </section>
  );
}

export function CarriedFacts({ outcome, scale }: Props) {
  const { visible, centre, interval, halfWidth, halfInterval, ends } = outcome;
  return (
    <>
      <CarriedDrawing outcome={outcome} scale={scale} />
      <CentreFacts centre={centre} interval={interval}>
        <dt>Seen in focus</dt>
        <dd>{visible === null ? 'no value held' : `held from ${writeSteps(visible)} to the limit`}</dd>
        <dt>Half the width</dt>
        <dd>
          {halfWidth.toFixed(1)}, between {halfInterval.from.toFixed(1)} and {halfInterval.to.toFixed(1)}
          {ends === 'believed' && <small>{RESULT_WORDS.endsNotSeen}</small>}
        </dd>
      </CentreFacts>
    </>
  );
}

function Headline({ outcome: { chosen, centre, within, inside, service } }: { readonly outcome: CarriedOutcome }) {
  if (!service) {
    return (
      <>
        <p class="caption">{ENTER}</p>
        <BigValue label="Value to enter" value={chosen} />
        <p class="line">{sureInWords(within)}</p>
      </>
    );
  }
  return (
    <>
      <p class="headline">Needs service</p>
      <p>
        The centre lies at about {inTenths(centre)}, past {writeSteps(chosen)}, where the scale ends.{' '}
        {inside ? `${writeSteps(chosen)} comes nearest, and the light still holds there.` : 'The light holds at no correction of this body.'}
      </p>
    </>
  );
}
