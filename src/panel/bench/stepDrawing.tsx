// The small drawing of a step of the walk, said in words for those who do not see it.
import type { StepPicture } from '../../optics/setUp/stepPicture.ts';
import { words } from '../../words/catalogue.ts';
import { STEP_STROKES } from './stepStrokes.ts';

export const StepDrawing = ({ picture }: { readonly picture: StepPicture }) => (
  <svg class="step-drawing" viewBox="0 0 96 64" role="img" aria-label={words('setUp').pictures[picture]}>
    {STEP_STROKES[picture].map(([part, d]) => (
      <path key={part} class={part} d={d} />
    ))}
  </svg>
);
