// The top of the start, which is true whatever is stored, as long as no sweep is under way. It stands in the page before any
// script runs (panel/early), so it reads nothing but what it is given.
import type { ComponentChildren } from 'preact';
import { Heading } from '../parts/heading.tsx';
import type { Place } from '../route.ts';
import { firstWords } from '../../words/first.ts';

interface Props {
  readonly go: (to: Place) => void;
  /** Stands at the end of the heading's line; its place is kept until it is there. */
  readonly beside?: ComponentChildren;
}

export const First = ({ go, beside }: Props) => (
  <>
    <Heading beside={<div class="markplace">{beside}</div>}>{firstWords().name}</Heading>
    <nav class="row" aria-label={firstWords().places}>
      {PLACES.map((at) => (
        <button key={at} type="button" class="link" onClick={() => go({ at })}>
          {firstWords().place[at]}
        </button>
      ))}
    </nav>
  </>
);

const PLACES = ['logbook', 'plan', 'kit', 'settings', 'help'] as const;
