// The scale with what was seen of the band, what the width says lies past the limit, and the centre with its interval.
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import { words } from '../../words/catalogue.ts';
import { carriedPlot } from './carriedPlot.ts';

interface Props {
  readonly outcome: CarriedOutcome;
  readonly scale: Scale;
}

export function CarriedDrawing({ outcome, scale }: Props) {
  const plot = carriedPlot(outcome, scale);
  const say = words('result').drawing;
  return (
    <figure class="carried">
      <svg viewBox={`0 0 ${plot.width} ${plot.height}`} role="img" aria-label={say.said(outcome, scale)}>
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
            <i class="held" /> {say.held}
          </span>
        )}
        <span>
          <i class="beyond" /> {outcome.visible === null ? say.lies : say.beyond}
        </span>
        <span>
          <i class="centre" /> {say.centre}
        </span>
      </figcaption>
    </figure>
  );
}
