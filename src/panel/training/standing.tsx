// Where the person stands over their rounds, and what may be made of it: their own reliability in place of the usual one.
import { useState } from 'preact/hooks';
import { ENOUGH_FOR_LAPSES, lapseOf, reliabilityOf } from '../../practice/training/score.ts';
import { Tick } from '../parts/tick.tsx';
import { useSession } from '../useSession.ts';
import { reliabilityInWords } from './words.ts';

export function TrainingStanding() {
  const session = useSession();
  const [sure, ask] = useState(false);
  const { rounds, own } = session.settings.value.training;
  const last = rounds.at(-1);
  if (!last) return null;
  const reliability = reliabilityOf(rounds);
  const lapse = lapseOf(rounds);
  const forget = (): void => {
    ask(false);
    session.changeSettings({ training: { rounds: [], own: false } });
  };
  return (
    <section class="card" aria-labelledby="reliability">
      <h2 id="reliability">Your reliability</h2>
      <p>{reliabilityInWords(reliability)}</p>
      <p class="muted small">
        {rounds.length} {rounds.length === 1 ? 'round' : 'rounds'} kept, the newest of {dayOf(last.at)}. The last eight count, and of
        them only lights that are plain to see.
      </p>
      {lapse === null ? (
        <p class="small">
          After {ENOUGH_FOR_LAPSES} plain holds a sweep can reckon with your own slips; there are {reliability.of} so far.
        </p>
      ) : (
        <Tick
          label="Use my own reliability"
          note={`From the next sweep on it reckons with ${written(lapse)} % spoilt holds of yours in place of the usual 2 %.`}
          on={own}
          onChange={(on) => session.changeSettings({ training: { rounds, own: on } })}
        />
      )}
      {sure ? (
        <div class="row">
          <button type="button" onClick={forget}>
            Forget them
          </button>
          <button type="button" onClick={() => ask(false)}>
            Keep them
          </button>
        </div>
      ) : (
        <button type="button" class="link" onClick={() => ask(true)}>
          Forget my rounds
        </button>
      )}
    </section>
  );
}

const written = (share: number): string => String(Math.round(share * 1000) / 10);
const dayOf = (at: number): string => new Date(at).toLocaleDateString(undefined, { dateStyle: 'medium' });
