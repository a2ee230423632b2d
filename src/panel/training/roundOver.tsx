// What a round came to, in words, and what to watch for in the next.
import { confusionOf } from '../../practice/training/score.ts';
import { LAST_LEVEL } from '../../practice/training/levels.ts';
import type { Training } from '../../practice/training/training.ts';
import { slipsInWords, watchFor } from './words.ts';

export function RoundOver({ training }: { readonly training: Training }) {
  const confusion = confusionOf(training.holds);
  const slips = slipsInWords(confusion);
  return (
    <section class="result" aria-label="This round">
      <p class="headline">
        {confusion.named} of {confusion.of} right
      </p>
      {slips.map((slip) => (
        <p key={slip}>{slip}</p>
      ))}
      <p>{watchFor(confusion)}</p>
      <p class="muted small">
        You are on level {training.ladder.level} of {LAST_LEVEL}.
      </p>
    </section>
  );
}
