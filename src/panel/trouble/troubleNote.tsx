// A trouble by its name: what was seen, what to check in order of likelihood, and behind a fold the figures. Where the screen
// has said it already, only what to check.
import type { SweepsDiffer } from '../../sweep/trouble/sweepsDiffer.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { words } from '../../words/catalogue.ts';
import { CHECKS_ID } from './whatToCheck.tsx';

interface Props {
  readonly found: Trouble | SweepsDiffer;
  /** During a sweep the list stays closed until somebody wants it. */
  readonly folded?: boolean;
}

export function TroubleNote({ found, folded = false }: Props) {
  const say = words('trouble');
  const name = say.name(found);
  return (
    <section class="notice" aria-label={name}>
      <h2>{name}</h2>
      {found.trouble !== 'sweeps differ' && <p>{say.seen(found)}</p>}
      <details open={!folded}>
        <summary>{say.toCheck.title}</summary>
        <Checks of={found} />
      </details>
      <Figures of={found} />
    </section>
  );
}

/** What to check for a trouble that the screen names elsewhere. */
export function WhatIsToBeChecked({ of }: { readonly of: Trouble }) {
  const say = words('trouble').toCheck;
  return (
    <section class="notice" aria-labelledby={CHECKS_ID}>
      <h2 id={CHECKS_ID} tabIndex={-1}>
        {say.title}
      </h2>
      <Checks of={of} />
      <p class="muted small">{say.manual}</p>
      <Figures of={of} />
    </section>
  );
}

const Figures = ({ of }: { readonly of: Trouble | SweepsDiffer }) => (
  <details class="small">
    <summary>{words('trouble').toCheck.figures}</summary>
    <p>{words('trouble').evidence(of)}</p>
  </details>
);

function Checks({ of }: { readonly of: Trouble | SweepsDiffer }) {
  return (
    <ol>
      {words('trouble').checks[of.trouble].map((check) => (
        <li key={check}>{check}</li>
      ))}
    </ol>
  );
}
