// Where the centre lies, and, for the curious, between what.
import type { ComponentChildren } from 'preact';
import { words } from '../../words/catalogue.ts';

interface Props {
  readonly centre: number;
  readonly interval: { readonly from: number; readonly to: number };
  /** The other facts, between the centre and the figures. */
  readonly children: ComponentChildren;
}

export function CentreFacts({ centre, interval, children }: Props) {
  const say = words('result').facts;
  return (
    <>
      <dl class="facts">
        <dt>{say.centre}</dt>
        <dd>{say.place(centre)}</dd>
        {children}
      </dl>
      <details class="small">
        <summary>{say.figures}</summary>
        <dl class="facts">
          <dt>{say.interval}</dt>
          <dd>{say.within(interval.from, interval.to)}</dd>
        </dl>
      </details>
    </>
  );
}
