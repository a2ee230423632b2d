// A result that gives no value to enter: what was seen, and what to check before the next sweep.
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { nameOf, troubleInWords } from '../../voice/checks.ts';
import { outcomeInWords } from '../../voice/outcomes.ts';
import { CHECKS_ID } from '../trouble/whatToCheck.tsx';
import { CHECK_WORDS, FACE_WORDS, RESULT_WORDS } from './words.ts';

type Bare = Extract<Outcome, { found: 'past the limit' | 'beyond the scale' | 'nothing' }>;

export function DoubtfulResult({ trouble }: { readonly trouble: Trouble }) {
  return <Headed headline={nameOf(trouble)} means={troubleInWords(trouble)} />;
}

export function BareResult({ outcome }: { readonly outcome: Bare }) {
  if (outcome.found === 'nothing' && outcome.tally.holds === 0) return <Headed headline={RESULT_WORDS.noHold} means={RESULT_WORDS.noHoldMeans} />;
  return <Headed headline={HEADLINE[outcome.found]} means={outcomeInWords(outcome).written} />;
}

const Headed = ({ headline, means }: { readonly headline: string; readonly means: string }) => (
  <section class="result" aria-label={RESULT_WORDS.region}>
    <p class="headline">{headline}</p>
    <p>{means}</p>
  </section>
);

export function PlainChecks({ outcome }: { readonly outcome: Bare }) {
  if (outcome.tally.holds === 0) return null;
  return (
    <section aria-labelledby={CHECKS_ID}>
      <h2 id={CHECKS_ID} tabIndex={-1}>
        {CHECK_WORDS.plain}
      </h2>
      <ul>
        {CHECKS[outcome.found].map((check) => (
          <li key={check}>{check}</li>
        ))}
      </ul>
    </section>
  );
}

const HEADLINE: Record<Bare['found'], string> = {
  'past the limit': FACE_WORDS.past,
  'beyond the scale': FACE_WORDS.beyond,
  nothing: FACE_WORDS.nothing,
};

const FOCUS = 'Focus again in live view at full aperture, enlarged, and switch the lens to manual without touching the ring.';
const TARGET = 'Stand the target square to the camera, evenly lit, with more contrast than its surroundings.';
const SERVICE = 'If it comes out the same again, the pair needs the maker\u2019s service.';
const OTHER = 'See that the body holds no other correction, such as one for all lenses.';

/** Common practice, no source. */
const CHECKS: Record<Bare['found'], readonly string[]> = {
  'past the limit': [FOCUS, OTHER, SERVICE],
  'beyond the scale': [FOCUS, OTHER, SERVICE],
  nothing: [
    FOCUS,
    TARGET,
    'See that the active point is on the target, and that the lens opens wide enough for the viewfinder to focus.',
    'On a body set to focus from a rear button, that button lights the focus light, not the half-press.',
    'See that the light you watched is the focus light and not the exposure lock.',
  ],
};
