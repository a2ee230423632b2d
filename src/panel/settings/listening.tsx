// Words instead of keys: what listening means is said before the yes.
import { Tick } from '../parts/tick.tsx';
import { Ear } from '../sweep/ear.tsx';
import { useSession } from '../useSession.ts';
import { LISTENING_MEANS } from '../../voice/vocabulary/listening.ts';

export function Listening() {
  const session = useSession();
  const on = session.settings.value.voice.listen === 'browser';
  return (
    <section class="card" aria-labelledby="voice">
      <h2 id="voice">Voice</h2>
      <p>{LISTENING_MEANS}</p>
      {session.ear.value === 'unavailable' ? (
        <p>This browser cannot recognise speech. Keys, a pedal and the pointer do everything.</p>
      ) : (
        <Tick
          label="Listen for my words"
          on={on}
          onChange={(listen) => session.changeSettings({ voice: { listen: listen ? 'browser' : 'off' } })}
        />
      )}
      <Ear />
    </section>
  );
}
