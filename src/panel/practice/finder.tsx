// The practice camera's viewfinder: its focus light and arrows, as a real one would show them during the hold.
import { useMemo } from 'preact/hooks';
import { lampOf, type LampMoment } from '../../practice/lamp.ts';
import type { SweepState } from '../../sweep/state.ts';
import { words } from '../../words/catalogue.ts';
import { useLamp } from './useLamp.ts';

export function Viewfinder({ sweep }: { readonly sweep: SweepState }) {
  const course = useMemo(() => lampOf(sweep), [sweep]);
  return <FinderView {...useLamp(course, sweep.phase)} withArrows={sweep.plan.arrows !== 'absent'} />;
}

type Seen = Pick<LampMoment, 'lit' | 'arrows'> & { readonly withArrows: boolean };

export function FinderView({ lit, arrows, withArrows }: Seen) {
  const left = arrows === 'left' || arrows === 'both';
  const right = arrows === 'right' || arrows === 'both';
  return (
    <div class="finder">
      <svg viewBox="-60 -20 120 40" role="img" aria-label={words('practice').light(lit, arrows)} data-lit={lit} data-arrows={arrows}>
        {withArrows && (
          <>
            <path class={left ? 'on' : 'off'} d="M-32-10v20l-16-10Z" />
            <path class={right ? 'on' : 'off'} d="M32-10v20l16-10Z" />
          </>
        )}
        <circle class={lit ? 'on' : 'off'} r="13" />
      </svg>
    </div>
  );
}
