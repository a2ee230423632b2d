// Where the centre lies, and, for the curious, between what.
import type { ComponentChildren } from 'preact';
import { inTenths } from '../words/figures.ts';
import { CENTRE, RESULT_WORDS } from './words.ts';

interface Props {
  readonly centre: number;
  readonly interval: { readonly from: number; readonly to: number };
  /** The other facts, between the centre and the figures. */
  readonly children: ComponentChildren;
}

export function CentreFacts({ centre, interval, children }: Props) {
  return (
    <>
      <dl class="facts">
        <dt>{CENTRE}</dt>
        <dd>{inTenths(centre)}</dd>
        {children}
      </dl>
      <details class="small">
        <summary>{RESULT_WORDS.figures}</summary>
        <dl class="facts">
          <dt>{RESULT_WORDS.interval}</dt>
          <dd>{RESULT_WORDS.intervalFrom({ from: inTenths(interval.from), to: inTenths(interval.to) })}</dd>
        </dl>
      </details>
    </>
  );
}
