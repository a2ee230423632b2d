// A trouble by its name: what was seen, what to check in order of likelihood, and in small print the figures behind it.
import type { SweepsDiffer } from '../../sweep/trouble/sweepsDiffer.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { evidenceInWords, nameOf, TROUBLE_CHECKS, troubleInWords } from '../../voice/checks.ts';

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
        <summary>What to check, the likeliest first</summary>
        <Checks of={found} />
      </details>
      <p class="small">{evidenceInWords(found)}</p>
    </section>
  );
}

export function Checks({ of }: { readonly of: Trouble | SweepsDiffer }) {
  return (
    <ol>
      {TROUBLE_CHECKS[of.trouble].map((check) => (
        <li key={check}>{check}</li>
      ))}
    </ol>
  );
}
