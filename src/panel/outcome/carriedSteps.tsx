// What to do after a width transfer: the focus still stands aside, and a pair that the scale does not reach wants service.
import { writeSteps } from '../../sweep/scale.ts';
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import type { SweepState } from '../../sweep/state.ts';
import { EnterForm } from '../logbook/enterForm.tsx';

interface Props {
  readonly sweep: SweepState;
  readonly outcome: CarriedOutcome;
}

export function CarriedSteps({ sweep, outcome: { chosen, inside, service } }: Props) {
  const { subject, scale } = sweep.plan;
  return (
    <>
      <section aria-labelledby="next-steps">
        <h2 id="next-steps">What to do next</h2>
        <ol>
          <li>Focus critically again in live view: the ring still stands aside.</li>
          {inside && (
            <li>
              {service ? 'Until it is serviced, enter' : 'Enter'} {writeSteps(chosen)} in the camera for this lens, hold it once more, and prove it on
              photographs.
            </li>
          )}
          {service && (
            <li>
              Show the page for the workshop to a service that the maker licenses. Do not take lens or body apart: an adjustment by hand can leave
              them worse.
            </li>
          )}
        </ol>
        <p class="muted small">Follow your camera maker{'\u2019'}s manual wherever it differs from this.</p>
      </section>
      <EnterForm about={[{ subject, record: sweep.id }]} scale={scale} suggested={inside ? chosen : null} />
    </>
  );
}
