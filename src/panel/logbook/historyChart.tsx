// The history as a plain chart: dots with their 95 % intervals for what was measured, squares and a line for what stood in
// the camera, and the drift with what is in doubt about it. The list below says the same in words, and a sentence the drift.
import { useMemo } from 'preact/hooks';
import type { History } from '../../logbook/history.ts';
import { words } from '../../words/catalogue.ts';
import { Levels } from '../parts/levels.tsx';
import { useWidth } from '../strip/useWidth.ts';
import { plotOf } from './historyPlot.ts';

export function HistoryChart({ history }: { readonly history: History }) {
  const [place, width] = useWidth<HTMLDivElement>();
  const plot = useMemo(() => plotOf(history, width), [history, width]);
  const say = words('situation').history;
  return (
    <div ref={place} class="chart">
      {plot && (
        <>
          <svg width={width} height={plot.height} aria-hidden="true">
            {plot.trend && <path class="doubt" d={plot.trend.doubt} />}
            <Levels levels={plot.levels} width={width} />
            <path class="months" d={plot.months.map((x) => `M${x} ${plot.height - 22}v5`).join('')} />
            {plot.days.map(({ x, at, anchor }) => (
              <text key={anchor} x={x} y={plot.height - 4} class={anchor}>
                {words('logbook').day(at)}
              </text>
            ))}
            <path class="drift" d={plot.drift} />
            {plot.trend && <path class="trend" d={plot.trend.path} />}
            <path class="in-force" d={plot.inForce} />
            {plot.entered.map(({ id, x, y }) => (
              <rect key={id} x={x - 4} y={y - 4} width="8" height="8" />
            ))}
            {plot.measured.map(({ id, x, y, from, to }) => (
              <g key={id}>
                <path class="interval" d={`M${x} ${from}V${to}M${x - 4} ${from}h8M${x - 4} ${to}h8`} />
                <circle cx={x} cy={y} r="4" />
              </g>
            ))}
          </svg>
          {plot.trend && <p>{say.drifted(plot.trend)}</p>}
          <p class="muted small">{plot.trend ? say.chartWithDrift : say.chart}</p>
        </>
      )}
    </div>
  );
}
