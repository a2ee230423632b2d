// Words instead of keys: who recognises them, and what that means, is said before the yes.
import { useState } from 'preact/hooks';
import { Pick, type Option } from '../parts/pick.tsx';
import { Tick } from '../parts/tick.tsx';
import { VoiceMark } from '../voice/mark.tsx';
import { useSession } from '../useSession.ts';
import type { Settings } from '../../settings.ts';
import { LISTENING_MEANS } from '../../voice/vocabulary/listening.ts';

type Voice = Settings['voice'];

export function Listening() {
  const session = useSession();
  const { listen, open, learn } = session.settings.value.voice;
  return (
    <section class="card" aria-labelledby="voice">
      <h2 id="voice">Voice</h2>
      <Pick
        legend="Listen for my words"
        options={session.browserRecognises ? RECOGNISERS : RECOGNISERS.filter(({ value }) => value === 'off' || value === 'own')}
        chosen={listen}
        onChoose={(chosen) => session.changeSettings({ voice: { listen: chosen } })}
      />
      {!session.browserRecognises && <p class="muted small">This browser has no recogniser of its own.</p>}
      {listen !== 'off' && (
        <Pick
          legend="The ear is open"
          options={OPENINGS}
          chosen={open}
          onChoose={(chosen) => session.changeSettings({ voice: { open: chosen } })}
        />
      )}
      {listen === 'own' && (
        <Tick label="Learn from words that were right" note={LEARNING_MEANS} on={learn} onChange={(on) => session.changeSettings({ voice: { learn: on } })} />
      )}
      <button type="button" class="link" onClick={() => session.openPage('hearing.html')}>
        Hearing check: microphone, noise, and teaching your words
      </button>
      <VoiceMark />
      <EraseHeard />
    </section>
  );
}

/** What was heard is kept with each hold, to see later what was mistaken for what. */
function EraseHeard() {
  const session = useSession();
  const [said, setSaid] = useState('');
  const erase = async (): Promise<void> => {
    const erased = await session.eraseHeard();
    setSaid(erased.ok ? 'What was heard is erased. Holds and verdicts are all there.' : erased.sentence);
  };
  return (
    <>
      <p class="muted small">The words heard in a sweep are kept with its holds, in this browser and in backup files. Sound is never kept.</p>
      <button type="button" onClick={() => void erase()}>
        Erase the words that were heard
      </button>
      {said && <p role="alert">{said}</p>}
    </>
  );
}

const RECOGNISERS: readonly Option<Voice['listen']>[] = [
  { value: 'off', label: 'No', note: 'Keys, the pedal and the pointer do everything.' },
  { value: 'own', label: 'By words I have taught', note: 'Recognised here; nothing leaves this computer. Teach them in the hearing check.' },
  { value: 'here', label: 'By the browser, on this computer only', note: 'Where the browser has it ready; nothing is downloaded for it.' },
  { value: 'browser', label: 'By the browser’s own recogniser', note: LISTENING_MEANS },
];

const LEARNING_MEANS =
  'A word that was taken, and not taken back, becomes a further pattern of it, from the next sweep on. The hearing check can forget them.';

const OPENINGS: readonly Option<Voice['open']>[] = [
  { value: 'always', label: 'While a sweep runs' },
  { value: 'pressed', label: 'When I press the switch', note: 'For noisy rooms: hold or tap it, then speak. It tells nothing else then.' },
];
