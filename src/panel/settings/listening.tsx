// Words instead of keys: who recognises them, and what that means, is said before the yes.
import { useState } from 'preact/hooks';
import { Pick } from '../parts/pick.tsx';
import { Tick } from '../parts/tick.tsx';
import { VoiceMark } from '../voice/mark.tsx';
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';

export function Listening() {
  const session = useSession();
  const say = words('settings').listening;
  const { listen, open, learn } = session.settings.value.voice;
  return (
    <section class="card" aria-labelledby="voice">
      <h2 id="voice">{say.title}</h2>
      <Pick
        legend={say.by}
        options={(session.browserRecognises ? RECOGNISERS : OURS).map((value) => ({ value, ...say.recognisers[value] }))}
        chosen={listen}
        onChoose={(chosen) => session.changeSettings({ voice: { listen: chosen } })}
      />
      {!session.browserRecognises && <p class="muted small">{say.noRecogniser}</p>}
      {listen !== 'off' && (
        <Pick
          legend={say.open}
          options={OPENINGS.map((value) => ({ value, ...say.openings[value] }))}
          chosen={open}
          onChoose={(chosen) => session.changeSettings({ voice: { open: chosen } })}
        />
      )}
      {listen === 'own' && <Tick {...say.learn} on={learn} onChange={(on) => session.changeSettings({ voice: { learn: on } })} />}
      <button type="button" class="link" onClick={() => session.openPage('hearing.html')}>
        {say.check}
      </button>
      <VoiceMark />
      <EraseHeard />
    </section>
  );
}

/** What was heard is kept with each hold, to see later what was mistaken for what. */
function EraseHeard() {
  const session = useSession();
  const say = words('settings').listening;
  const [said, setSaid] = useState('');
  const erase = async (): Promise<void> => {
    const erased = await session.eraseHeard();
    setSaid(erased.ok ? say.erased : erased.fault);
  };
  return (
    <>
      <p class="muted small">{say.kept}</p>
      <button type="button" onClick={() => void erase()}>
        {say.erase}
      </button>
      {said && <p role="alert">{said}</p>}
    </>
  );
}

const RECOGNISERS = ['off', 'own', 'here', 'browser'] as const;
/** Those that need nothing of the browser. */
const OURS = ['off', 'own'] as const;
const OPENINGS = ['always', 'pressed'] as const;
