// What a width transfer gave: the value to enter where the scale still has it, or that the pair needs service, with the
// drawing and the facts behind it.
import type { Scale } from '../../sweep/scale.ts';
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import { BigValue } from '../parts/bigValue.tsx';
import { words } from '../../words/catalogue.ts';
import { CentreFacts } from './centreFacts.tsx';
import { CarriedDrawing } from './carriedDrawing.tsx';
import { sureInWords } from './sure.ts';

interface Props {
  readonly outcome: CarriedOutcome;
  readonly scale: Scale;
}

export function CarriedResult({ outcome }: Pick<Props, 'outcome'>) {
  return (
    <section class="result" aria-label={words('result').region}>
      <Headline outcome={outcome} />
    </section>
  );
}

export function CarriedFacts({ outcome, scale }: Props) {
  const { visible, centre, interval, halfWidth, halfInterval, ends } = outcome;
  const say = words('result').facts;
  return (
    <>
      <CarriedDrawing outcome={outcome} scale={scale} />
      <CentreFacts centre={centre} interval={interval}>
        <dt>{say.seenInFocus}</dt>
        <dd>{say.visible(visible)}</dd>
        <dt>{say.halfWidth}</dt>
        <dd>
          {say.width(halfWidth, halfInterval.from, halfInterval.to)}
          {ends === 'believed' && <small>{say.endsNotSeen}</small>}
        </dd>
      </CentreFacts>
    </>
  );
}

function Headline({ outcome }: { readonly outcome: CarriedOutcome }) {
  const { chosen, within, service } = outcome;
  if (!service) {
    const { caption, value } = words('sweep').face;
    return (
      <>
        <p class="caption">{caption.enter}</p>
        <BigValue label={value.enter} value={chosen} />
        <p class="line">{sureInWords(within)}</p>
      </>
    );
  }
  const say = words('result');
  return (
    <>
      <p class="headline">{say.headline.service}</p>
      <p>{say.service(outcome)}</p>
    </>
  );
}
