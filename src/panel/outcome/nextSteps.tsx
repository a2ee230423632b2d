// What to do with the value: enter it, then prove it. The panel cannot do either.
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';

export function NextSteps({ value }: { readonly value: Steps }) {
  return (
    <section aria-labelledby="next-steps">
      <h2 id="next-steps">What to do next</h2>
      <ol>
        <li>Enter {writeSteps(value)} in the camera for this lens, and see that its corrections are switched on.</li>
        <li>
          Prove it on photographs: focus through the viewfinder five times, defocusing before each, and compare them with one that
          was focused in live view.
        </li>
      </ol>
      <p class="muted small">Follow your camera maker{'\u2019'}s manual wherever it differs from this.</p>
    </section>
  );
}
