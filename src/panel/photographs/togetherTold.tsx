// What the pictures of a series show together: plain words first, the figures folded.
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { words } from '../../words/catalogue.ts';

interface Props {
  /** The first is the headline. */
  readonly sentences: readonly string[];
  /** What should be done about it. */
  readonly faults?: readonly string[];
  readonly figures?: readonly string[];
  /** A chart of it. */
  readonly children?: ComponentChildren;
  /** How it is kept. */
  readonly keep?: ComponentChildren;
}

export function TogetherTold({ sentences: [headline, ...more], faults = [], figures = [], children, keep }: Props) {
  const say = words('series');
  const title = useId();
  return (
    <section class="card" aria-labelledby={title}>
      <h2 id={title}>{say.result}</h2>
      <output>
        <strong>{headline}</strong>
      </output>
      {more.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {faults.map((sentence) => (
        <p key={sentence} class="fault">
          {sentence}
        </p>
      ))}
      {children}
      {figures.length > 0 && (
        <details>
          <summary>{say.figures}</summary>
          <ul class="small">
            {figures.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </details>
      )}
      {keep}
    </section>
  );
}
