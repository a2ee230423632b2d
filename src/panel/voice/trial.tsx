// Voice is on: the same ear as a sweep's listens for its words, and shows what it heard; where it is deaf, why, and the way on.
import { useEffect, useState } from 'preact/hooks';
import type { Deaf } from '../../voice/deaf.ts';
import type { Word } from '../../sweep/inputs.ts';
import { useSession } from '../useSession.ts';
import { Download } from './download.tsx';
import { useMarkState } from './markTold.tsx';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';

const WORDS = ['holding', 'solid', 'delayed', 'flicker', 'nothing', 'undo', 'accept'] as const satisfies readonly Word[];

/** The browser's recogniser does not hear, and taught words need nothing of it. */
const OWN_HELP: readonly Deaf[] = [
  'no service',
  'no network',
  'no recogniser',
  'not on this computer',
  'to be downloaded',
  'being downloaded',
  'not usable',
  'no language',
];

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
      <p>{run([sheet.on, !session.sweep.value && sheet.begin])}</p>
      {state.is === 'deaf' ? (
        <>
          <p>{deaf[state.why]}</p>
          {state.why === 'to be downloaded' || state.why === 'being downloaded' ? (
            <Download isUnderWay={state.why === 'being downloaded'} />
          ) : (
            <button type="button" onClick={() => session.listenAgain(false)}>
              {sheet.again}
            </button>
          )}
          {OWN_HELP.includes(state.why) && (
            <button type="button" class="link" onClick={() => session.changeSettings({ voice: { listen: 'off', wish: 'own' } })}>
              {sheet.teachInstead}
            </button>
          )}
        </>
      ) : (
        <output class="trial">{heard ? sheet.heard(heard) : sheet.trial}</output>
      )}
      {listen !== 'off' && <p class="muted small">{run([goes[listen], sheet.once])}</p>}
      <button type="button" class="link" onClick={() => session.openPage('hearing.html')}>
        {sheet.checkHearing}
      </button>
      <button type="button" onClick={() => session.changeSettings({ voice: { listen: 'off' } })}>
        {sheet.switchOff}
      </button>
    </>
  );
}
