// The narrowing, drawn: what lies before the stop that is shown, that stop, and what is to come.
import { useMemo } from 'preact/hooks';
import type { Scale } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { useWidth } from '../strip/useWidth.ts';
import { narrowingOf, type FilmStop } from './narrowing.ts';

interface Props {
  readonly stops: readonly FilmStop[];
  readonly scale: Scale;
  /** The stop that is shown. */
  readonly at: number;
}

export function NarrowingDrawing({ stops, scale, at }: Props) {
  const [place, width] = useWidth<HTMLDivElement>();
  const { height, rows } = useMemo(() => narrowingOf(stops, scale, width), [stops, scale, width]);
  const [first, last] = [stops[0], stops.at(-1)];
  return (
    <div ref={place} class="narrowing">
      <svg width={width} height={height} role="img" aria-label={first && last && words('record').replay.narrowing(first.interval, last.interval)}>
        {rows.map(({ y, left, right, hold }, index) => (
          <g key={index} class={index < at ? 'been' : index === at ? 'shown' : 'to-come'}>
            <path d={`M${left} ${y}H${Math.max(right, left + 1)}`} />
            {hold && <circle class={hold.counts} cx={hold.x} cy={y} r="2.2" />}
          </g>
        ))}
      </svg>
    </div>
  );
}
