// The strip in words, for those who hear the screen.
import { words } from '../../words/catalogue.ts';
import type { MarkedHold } from './marks.ts';

export function HoldList({ holds }: { readonly holds: readonly MarkedHold[] }) {
  const say = words('sweep').strip;
  return (
    <ol class="unseen" aria-label={say.label}>
      {holds.map((hold, index) => (
        <li key={index}>{say.hold({ value: hold.value, verdict: hold }, hold.counts)}</li>
      ))}
    </ol>
  );
}
