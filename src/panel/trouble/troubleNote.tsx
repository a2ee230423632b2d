// A trouble by its name: what was seen, what to check in order of likelihood, and behind a fold the figures. Where the screen
// has said it already, only what to check.
import type { SweepsDiffer } from '../../sweep/trouble/sweepsDiffer.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { evidenceInWords, nameOf, TROUBLE_CHECKS, troubleInWords } from '../../voice/checks.ts';
import { CHECK_WORDS, STEP_WORDS } from '../outcome/words.ts';
import { CHECKS_ID } from './whatToCheck.tsx';

interface Props {
  readonly found: Trouble | SweepsDiffer;
  /** During a sweep the list stays closed until somebody wants it. */
  readonly folded?: boolean;
}

export function TroubleNote({ found, folded = false }: Props) {
  const name = nameOf(found);
  return (
    <section class="notice" aria-label={name}>
      <h2>{name}</h2>
      {found.trouble !== 'sweeps differ' && <p>{troubleInWords(found)}</p>}
      <details open={!folded}>
        <summary>{CHECK_WORDS.heading}</summary>
        <Checks of={found} />
      </details>
      <Figures of={found} />
    </section>
  );
}

/** What to check for a trouble that the screen names elsewhere. */
export function WhatIsToBeChecked({ of }: { readonly of: Trouble }) {
  return (
    <section class="notice" aria-labelledby={CHECKS_ID}>
      <h2 id={CHECKS_ID} tabIndex={-1}>
        {CHECK_WORDS.heading}
      </h2>
      <Checks of={of} />
      <p class="muted small">{STEP_WORDS.manual}</p>
      <Figures of={of} />
    </section>
  );
}

const Figures = ({ of }: { readonly of: Trouble | SweepsDiffer }) => (
  <details class="small">
    <summary>{CHECK_WORDS.figures}</summary>
    <p>{evidenceInWords(of)}</p>
  </details>
);

function Checks({ of }: { readonly of: Trouble | SweepsDiffer }) {
  return (
    <ol>
      {TROUBLE_CHECKS[of.trouble].map((check) => (
        <li key={check}>{check}</li>
      ))}
    </ol>
  );
}
