// The arrows beside the light as they stand beside a mark of the strip: each on its side, hollow where the two were uneven.
import type { Arrows } from '../../sweep/verdict.ts';
import { trianglesOf, type Triangle } from './marks.ts';

/** In a box of 6 by 10. */
export const POINTING: Record<Triangle['points'], string> = { left: 'M5 2v6L1 5Z', right: 'M1 2v6l4-3Z' };

export const ArrowsShape = ({ arrows }: { readonly arrows: Arrows }) => (
  <svg class="arrows" viewBox="0 0 18 10" aria-hidden="true">
    {trianglesOf(arrows).map(({ points, filled }) => (
      <path key={points} class={filled ? 'filled' : 'hollow'} d={POINTING[points]} transform={points === 'left' ? '' : 'translate(12)'} />
    ))}
  </svg>
);
