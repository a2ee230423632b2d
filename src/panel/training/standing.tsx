// Where the person stands over their rounds, and what may be made of it: their own reliability in place of the usual one.
import { useState } from 'preact/hooks';
import { ENOUGH_FOR_LAPSES, lapseOf, reliabilityOf } from '../../practice/training/score.ts';
import { Tick } from '../parts/tick.tsx';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { useSession } from '../useSession.ts';

export function TrainingStanding() {
  const session = useSession();
  const [sure, ask] = useState(false);
  const { rounds, own } = session.settings.value.training;
  const last = rounds.at(-1);
  if (!last) return null;
  const say = words('training').standing;
  const reliability = reliabilityOf(rounds);
  const lapse = lapseOf(rounds);
  const forget = (): void => {
    ask(false);
    session.changeSettings({ training: { rounds: [], own: false } });
  };
  return (
    <section class="card" aria-labelledby="reliability">
      <h2 id="reliability">{say.title}</h2>
      <p>{run(say.reliability(reliability))}</p>
      <p class="muted small">{run(say.kept(rounds.length, last.at))}</p>
      {lapse === null ? (
        <p class="small">{say.tooFew(ENOUGH_FOR_LAPSES, reliability.of)}</p>
      ) : (
        <Tick label={say.own.label} note={say.own.note(lapse)} on={own} onChange={(on) => session.changeSettings({ training: { rounds, own: on } })} />
      )}
      {sure ? (
        <div class="row">
          <button type="button" onClick={forget}>
            {say.forgetNow}
          </button>
          <button type="button" onClick={() => ask(false)}>
            {say.keep}
          </button>
        </div>
      ) : (
        <button type="button" class="link" onClick={() => ask(true)}>
          {say.forget}
        </button>
      )}
    </section>
  );
}
