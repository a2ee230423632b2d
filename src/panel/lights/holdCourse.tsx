// The course of a hold as a bar, from its beginning to its end: where the light is on.
import { litStretches, showingOf, type ShownLight } from '../../practice/fourLights.ts';

/** In a box of 40 by 4 that is stretched to the room it has. */
export const HoldCourse = ({ light }: { readonly light: ShownLight }) => (
  <svg class="course" viewBox="0 0 40 4" preserveAspectRatio="none" aria-hidden="true">
    <rect class="whole" width="40" height="4" />
    {litStretches(showingOf(light)).map(({ from, to }) => (
      <rect key={from} class="stretch" x={40 * from} width={40 * (to - from)} height="4" />
    ))}
  </svg>
);
