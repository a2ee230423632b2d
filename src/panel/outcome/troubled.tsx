// A result that gives no value to enter: what was seen, and what to check before the next sweep.
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { words } from '../../words/catalogue.ts';
import { CHECKS_ID } from '../trouble/whatToCheck.tsx';

type Bare = Extract<Outcome, { found: 'past the limit' | 'beyond the scale' | 'nothing' }>;

export function DoubtfulResult({ trouble }: { readonly trouble: Trouble }) {
  const say = words('trouble');
  return <Headed headline={say.name(trouble)} means={say.seen(trouble)} />;
}

export function BareResult({ outcome }: { readonly outcome: Bare }) {
  const say = words('result');
  if (outcome.found === 'nothing' && outcome.tally.holds === 0) return <Headed headline={say.headline['no hold']} means={say.noHold} />;
  return <Headed headline={say.headline[outcome.found]} means={words('spoken').outcome(outcome).written} />;
}

const Headed = ({ headline, means }: { readonly headline: string; readonly means: string }) => (
  <section class="result" aria-label={words('result').region}>
    <p class="headline">{headline}</p>
    <p>{means}</p>
  </section>
);

export function PlainChecks({ outcome }: { readonly outcome: Bare }) {
  const say = words('result').checks;
  if (outcome.tally.holds === 0) return null;
  return (
    <section aria-labelledby={CHECKS_ID}>
      <h2 id={CHECKS_ID} tabIndex={-1}>
        {say.title}
      </h2>
      <ul>
        {say.of[outcome.found].map((check) => (
          <li key={check}>{check}</li>
        ))}
      </ul>
    </section>
  );
}
