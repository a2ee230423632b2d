// What a round came to, in words, and what to watch for in the next.
import { confusionOf } from '../../practice/training/score.ts';
import { LAST_LEVEL } from '../../practice/training/levels.ts';
import type { Training } from '../../practice/training/training.ts';
import { words } from '../../words/catalogue.ts';

export function RoundOver({ training }: { readonly training: Training }) {
  const confusion = confusionOf(training.holds);
  const say = words('training').round;
  return (
    <section class="result" aria-label={say.label}>
      <p class="headline">{say.right(confusion)}</p>
      {say.slips(confusion).map((slip) => (
        <p key={slip}>{slip}</p>
      ))}
      <p>{say.watchFor(confusion)}</p>
      <p class="muted small">{say.level(training.ladder.level, LAST_LEVEL)}</p>
    </section>
  );
}
