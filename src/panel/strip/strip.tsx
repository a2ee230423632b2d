// The strip: the scale, what is believed of the centre, and every hold. Drawn by one component wherever a sweep is shown.
import { useMemo } from 'preact/hooks';
import { POINTING } from './arrowsShape.tsx';
import { HoldList } from './holdList.tsx';
import type { SweepState } from '../../sweep/state.ts';
import { layOut } from './geometry.ts';
import { LightShape } from './lightShape.tsx';
import { Locator } from './locator.tsx';
import { useStripMatter } from './matter.ts';
import { Ruler } from './ruler.tsx';
import { useWidth } from './useWidth.ts';

interface Props {
  readonly sweep: SweepState;
  /** With all of the scale from the first to the last, so that one state can be compared with the next. */
  readonly whole?: boolean;
}

export function Strip({ sweep, whole = false }: Props) {
  const matter = useStripMatter(sweep);
  const [place, width] = useWidth<HTMLDivElement>();
  const strip = useMemo(() => layOut(matter, width, whole), [matter, width, whole]);
  return (
    <div ref={place} class="strip">
      <svg width={width} height={strip.height} viewBox={`0 0 ${width} ${strip.height}`} aria-hidden="true">
        <path d={strip.hill} class="hill" />
        <Ruler strip={strip} width={width} />
        {strip.marks.map(({ light, counts, box, triangles }, index) => (
          <g key={index} class={`mark ${counts}`}>
            <LightShape light={light} box={box} />
            {triangles.map((triangle) => (
              <svg key={triangle.points} viewBox="0 0 6 10" class={triangle.filled ? 'filled' : 'hollow'} {...triangle.box}>
                <path d={POINTING[triangle.points]} />
              </svg>
            ))}
          </g>
        ))}
        {strip.locator && <Locator locator={strip.locator} />}
      </svg>
      <HoldList holds={matter.holds} />
    </div>
  );
}
