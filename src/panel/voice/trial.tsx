// Voice is on: the same ear as a sweep's listens for its words, and shows what it heard; where it is deaf, why, and the way on.
import { useEffect, useState } from 'preact/hooks';
import type { Word } from '../../sweep/inputs.ts';
import { useSession } from '../useSession.ts';
import { useMarkState } from './markTold.tsx';
import { words } from '../../words/catalogue.ts';

const WORDS = ['holding', 'solid', 'delayed', 'flicker', 'nothing', 'undo', 'accept'] as const satisfies readonly Word[];

export function Trial() {
  const session = useSession();
  const [heard, setHeard] = useState<string | null>(null);
  const state = useMarkState();
  const { sheet, goes, deaf } = words('voice');
  const { listen } = session.settings.value.voice;
  useEffect(
    () =>
      session.attend({
        words: WORDS,
        take(input) {
          if (input.told !== 'press') setHeard(words('sweep').heard.told(input));
        },
      }),
    [session],
  );
  return (
    <>
      <p>
        {sheet.on} {session.sweep.value ? '' : sheet.begin}
      </p>
      {state.is === 'deaf' ? (
        <>
          <p>{deaf[state.why]}</p>
          <button type="button" onClick={() => session.listenAgain(false)}>
            {sheet.again}
          </button>
        </>
      ) : (
        <output class="trial">{heard ? sheet.heard(heard) : sheet.trial}</output>
      )}
      {listen !== 'off' && (
        <p class="muted small">
          {goes[listen]} {sheet.once}
        </p>
      )}
      <button type="button" class="link" onClick={() => session.openPage('hearing.html')}>
        {sheet.checkHearing}
      </button>
      <button type="button" onClick={() => session.changeSettings({ voice: { listen: 'off' } })}>
        {sheet.switchOff}
      </button>
    </>
  );
}
