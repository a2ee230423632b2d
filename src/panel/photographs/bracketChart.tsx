// The line through a bracket with its band, and the centre where it meets the target. The sentences beside it say the same.
import type { BracketSeries, BracketTold } from '../../photographs/series/bracketSeries.ts';
import { words } from '../../words/catalogue.ts';
import { useWidth } from '../strip/useWidth.ts';
import { bracketPlotOf } from './bracketPlot.ts';

export function BracketChart({ series, told }: { readonly series: BracketSeries; readonly told: BracketTold }) {
  const say = words('series').bracket.chart;
  const [place, width] = useWidth<HTMLDivElement>();
  const plot = bracketPlotOf(series, told, width);
  const bottom = plot.height - 22;
  return (
    <figure class="bracket-chart">
      <figcaption class="small muted">{say.title}</figcaption>
      <div ref={place}>
        <svg width={width} height={plot.height} viewBox={`0 0 ${width} ${plot.height}`} role="img" aria-label={say.said(told)}>
          <path class="doubt" d={plot.band} />
          <path class="at-target" d={`M0 ${plot.target}H${width}`} />
          <path class="line" d={plot.line} />
          <path class="centre" d={`M${plot.centre.x} 0V${bottom}M${plot.centre.from} ${bottom - 2}H${plot.centre.to}`} />
          {plot.points.map(({ x, y, apart }, index) => (
            <circle key={index} class={apart ? 'apart' : ''} cx={x} cy={y} r="3" />
          ))}
          <text x="2" y="11">
            {say.behind}
          </text>
          <text x={width - 2} y={bottom - 6} class="end">
            {say.inFront}
          </text>
          {plot.marks.map(({ x, text }) => (
            <text key={text} x={x} y={plot.height - 4} class="middle">
              {text}
            </text>
          ))}
        </svg>
      </div>
    </figure>
  );
}
