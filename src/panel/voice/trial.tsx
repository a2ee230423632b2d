// Voice is on: the same ear as a sweep's listens for its words, and shows what it heard; where it is deaf, why, and the way on.
import { useEffect, useState } from 'preact/hooks';
import type { Word } from '../../sweep/inputs.ts';
import { wordsOfInput } from '../../voice/became.ts';
import { useSession } from '../useSession.ts';
import { useMarkState } from './markTold.tsx';
import { DEAF, GOES, SHEET } from './words.ts';

const WORDS = ['holding', 'solid', 'delayed', 'flicker', 'nothing', 'undo', 'accept'] as const satisfies readonly Word[];

export function Trial() {
  const session = useSession();
  const [heard, setHeard] = useState<string | null>(null);
  const state = useMarkState();
  const { listen } = session.settings.value.voice;
  useEffect(
    () =>
      session.attend({
        words: WORDS,
        take(input) {
          if (input.told !== 'press') setHeard(wordsOfInput(input));
        },
      }),
    [session],
  );
  return (
    <>
      <p>
        {SHEET.on} {session.sweep.value ? '' : SHEET.begin}
      </p>
      {state.is === 'deaf' ? (
        <>
          <p>{DEAF[state.why]}</p>
          <button type="button" onClick={() => session.listenAgain(false)}>
            {SHEET.again}
          </button>
        </>
      ) : (
        <output class="trial">
          {heard ? SHEET.heard(heard) : SHEET.trial}
        </output>
      )}
      {listen !== 'off' && <p class="muted small">{GOES[listen]} {SHEET.once}</p>}
      <button type="button" class="link" onClick={() => session.openPage('hearing.html')}>
        {SHEET.checkHearing}
      </button>
      <button type="button" onClick={() => session.changeSettings({ voice: { listen: 'off' } })}>
        {SHEET.switchOff}
      </button>
    </>
  );
}
