// Sharpness along the ramp, with its peak where blur is least, and the depth of field behind it. The sentences beside it say the same.
import type { FocusReading } from '../../photographs/focusReading.ts';
import { words } from '../../words/catalogue.ts';
import { useWidth } from '../strip/useWidth.ts';
import { rampPlotOf } from './rampPlot.ts';

export function RampChart({ focus }: { readonly focus: FocusReading }) {
  const say = words('photographs').chart;
  const [place, width] = useWidth<HTMLDivElement>();
  const plot = width > 0 ? rampPlotOf(focus, width) : null;
  return (
    <figure class="ramp-chart">
      <figcaption class="small muted">{say.title}</figcaption>
      <div ref={place}>
        {plot && (
          <svg width={width} height={plot.height} viewBox={`0 0 ${width} ${plot.height}`} role="img" aria-label={say.said(focus)}>
            <rect class="depth" x={plot.depth.from} y="0" width={Math.max(1, plot.depth.to - plot.depth.from)} height={plot.height - 30} />
            <path class="at-target" d={`M${plot.target} 0V${plot.height - 30}`} />
            {plot.readings.map(({ x, y }, index) => (
              <circle key={index} cx={x} cy={y} r="1.5" />
            ))}
            <path class="focus" d={`M${plot.focus.x} 0V${plot.height - 30}M${plot.focus.from} 3H${plot.focus.to}`} />
            <text x={plot.target} y={plot.height - 18} class="middle">
              {say.target}
            </text>
            {plot.ends.map(({ x, at }, index) => (
              <text key={index} x={x} y={plot.height - 4} class={index === 0 ? 'start' : 'end'}>
                {say.depth(at)}
              </text>
            ))}
          </svg>
        )}
      </div>
    </figure>
  );
}
