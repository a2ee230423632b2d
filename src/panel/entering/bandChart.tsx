// The bands and what would be entered, drawn. The table below says the same in figures.
import type { MemoryPlace } from '../../logbook/entering/advice.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { Levels } from '../parts/levels.tsx';
import { useWidth } from '../strip/useWidth.ts';
import { bandPlotOf } from './bandPlot.ts';

const HALF = 6;

export function BandChart({ place }: { readonly place: MemoryPlace }) {
  const { chart } = words('entering');
  const [element, width] = useWidth<HTMLDivElement>();
  const plot = bandPlotOf(place, width);
  return (
    <div ref={element} class="bands">
      {plot && (
        <>
          <svg width={width} height={plot.height} aria-hidden="true">
            <Levels levels={plot.levels} width={width} />
            {plot.bands.map(({ id, x, top, bottom, centre, inside }) => (
              <g key={id} class={inside ? 'inside' : 'outside'}>
                <rect x={x - HALF} y={top} width={2 * HALF} height={bottom - top} rx="3" />
                <path d={`M${x - HALF} ${centre}h${2 * HALF}`} />
              </g>
            ))}
            {plot.logarithmic && <path class="chosen dashed" d={plot.logarithmic} />}
            <path class="chosen" d={plot.line} />
            {plot.marks.map(({ x, text }) => (
              <text key={text} class="mark" x={x} y={plot.height - 6}>
                {text}
              </text>
            ))}
          </svg>
          <p class="muted small">{run(place.two ? chart.two : chart.one[plot.along])}</p>
        </>
      )}
    </div>
  );
}
