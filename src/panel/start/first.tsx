// The part of the start that is true whatever is stored, as long as no sweep is under way. It stands in the page before any
// script runs (panel/early), so it reads nothing but what it is given. The bench measures when what bears the mark is drawn.
import type { ComponentChildren } from 'preact';
import { Heading } from '../parts/heading.tsx';
import type { Place } from '../route.ts';

interface Props {
  readonly go: (to: Place) => void;
  /** Stands at the end of the heading's line; its place is kept until it is there. */
  readonly beside?: ComponentChildren;
}

export const First = ({ go, beside }: Props) => (
  <>
    <Heading beside={<div class="place">{beside}</div>}>Sweepbook</Heading>
    <nav class="row" aria-label="More">
      {PLACES.map(({ at, label }) => (
        <button key={at} type="button" class="link" elementtiming="first" onClick={() => go({ at })}>
          {label}
        </button>
      ))}
    </nav>
  </>
);

const PLACES = [
  { at: 'logbook', label: 'Logbook' },
  { at: 'plan', label: 'Plan' },
  { at: 'kit', label: 'Kit' },
  { at: 'settings', label: 'Settings' },
  { at: 'help', label: 'Help' },
] as const;
