// An outcome that gives no value to enter: what was seen, and what to check before the next sweep.
import type { BandOutcome, CarriedOutcome, Outcome } from '../../sweep/end/outcome.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { evidenceInWords, nameOf, troubleInWords } from '../../voice/checks.ts';
import { outcomeInWords } from '../../voice/outcomes.ts';
import { Checks } from '../trouble/troubleNote.tsx';

type Troubled = Exclude<Outcome, BandOutcome | CarriedOutcome>;

interface Props {
  readonly outcome: Troubled;
  /** What the holds tell to be wrong, where they do. */
  readonly cause: Trouble | undefined;
}

export function TroubledResult({ outcome, cause }: Props) {
  if (cause) return <Caused cause={cause} />;
  return (
    <>
      <section class="result" aria-label="Result">
        <p class="headline">{HEADLINE[outcome.found]}</p>
        <p>{outcomeInWords(outcome).written}</p>
      </section>
      <h2>What to check</h2>
      <ul>
        {CHECKS[outcome.found].map((check) => (
          <li key={check}>{check}</li>
        ))}
      </ul>
    </>
  );
}

function Caused({ cause }: { readonly cause: Trouble }) {
  return (
    <>
      <section class="result" aria-label="Result">
        <p class="headline">{nameOf(cause)}</p>
        <p>{troubleInWords(cause)}</p>
        <p class="muted small">{evidenceInWords(cause)}</p>
      </section>
      <h2>What to check, the likeliest first</h2>
      <Checks of={cause} />
      <p class="muted small">Follow your camera maker{'\u2019'}s manual wherever it differs from this.</p>
    </>
  );
}

const HEADLINE: Record<Troubled['found'], string> = {
  'past the limit': 'Past the limit',
  'beyond the scale': 'Beyond the scale',
  nothing: 'Nothing held',
};

const FOCUS = 'Focus again in live view at full aperture, enlarged, and switch the lens to manual without touching the ring.';
const TARGET = 'Stand the target square to the camera, evenly lit, with more contrast than its surroundings.';
const SERVICE = 'If it comes out the same again, the pair needs the maker\u2019s service.';

/** Common practice, no source. */
const CHECKS: Record<Troubled['found'], readonly string[]> = {
  'past the limit': [
    FOCUS,
    'See that the body holds no other correction, such as one for all lenses.',
    SERVICE,
  ],
  'beyond the scale': [FOCUS, 'See that the body holds no other correction, such as one for all lenses.', SERVICE],
  nothing: [
    FOCUS,
    TARGET,
    'See that the active point is on the target, and that the lens opens wide enough for the viewfinder to focus.',
    'On a body set to focus from a rear button, that button lights the focus light, not the half-press.',
    'See that the light you watched is the focus light and not the exposure lock.',
  ],
};
