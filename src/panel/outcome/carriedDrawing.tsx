// The scale with what was seen of the band, what the width says lies past the limit, and the centre with its interval.
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import { inTenths } from '../words/figures.ts';
import { carriedPlot } from './carriedPlot.ts';

interface Props {
  readonly outcome: CarriedOutcome;
  readonly scale: Scale;
}

export function CarriedDrawing({ outcome, scale }: Props) {
  const plot = carriedPlot(outcome, scale);
  const seen = outcome.visible === null ? 'no value held' : `held from ${writeSteps(outcome.visible)} to the limit`;
  const said = `The scale from ${writeSteps(scale.min)} to ${writeSteps(scale.max)}: ${seen}; the centre at about ${inTenths(outcome.centre)}.`;
  return (
    <figure class="carried">
      <svg viewBox={`0 0 ${plot.width} ${plot.height}`} role="img" aria-label={said}>
        {plot.held && <rect class="held" x={plot.held.x} y="20" width={plot.held.width} height="16" />}
        <rect class="beyond" x={plot.carried.x} y="20" width={plot.carried.width} height="16" />
        <path class="rule" d={`M${plot.scale.x} 42h${plot.scale.width}m0-5v10m${-plot.scale.width}-10v10`} />
        <path class="interval" d={`M${plot.interval.x} 12h${plot.interval.width}m0-4v8m${-plot.interval.width}-8v8`} />
        <path class="centre" d={`M${plot.centre} 5v36`} />
        <text x={plot.scale.x} y="63">
          {writeSteps(scale.min)}
        </text>
        <text x={plot.scale.x + plot.scale.width} y="63" text-anchor="end">
          {writeSteps(scale.max)}
        </text>
      </svg>
      <figcaption class="muted small">
        {plot.held && (
          <span>
            <i class="held" /> held
          </span>
        )}
        <span>
          <i class="beyond" /> {outcome.visible === null ? 'where the band lies' : 'past the limit'}
        </span>
        <span>
          <i class="centre" /> centre, 95 %
        </span>
      </figcaption>
    </figure>
  );
}
