// The strip in words, for those who hear the screen.
import { holdInWords } from '../words/holds.ts';
import type { MarkedHold } from './marks.ts';

export function HoldList({ holds }: { readonly holds: readonly MarkedHold[] }) {
  return (
    <ol class="unseen" aria-label="Holds so far">
      {holds.map((hold, index) => (
        <li key={index}>{holdInWords(hold)}</li>
      ))}
    </ol>
  );
}
