// Whether the panel is listening, in a word and a shape: filled only while it really hears.
import type { EarState } from '../session/session.ts';
import { useSession } from '../useSession.ts';

const WORD: Record<EarState, string> = {
  off: 'voice off',
  unavailable: 'no voice here',
  'needs permission': 'allow mic',
  starting: 'about to listen',
  listening: 'listening',
  'deaf while speaking': 'speaking',
  waiting: 'not listening',
};

export function Ear() {
  const session = useSession();
  const ear = session.ear.value;
  if (ear === 'off') return null;
  if (ear === 'needs permission') {
    return (
      <button type="button" class="link small" aria-label="allow mic: opens the page that asks for it" onClick={() => session.openMicrophonePage()}>
        {WORD[ear]}
      </button>
    );
  }
  return (
    <span class="ear" data-ear={ear}>
      <svg width="12" height="14" viewBox="0 0 12 14" aria-hidden="true">
        <rect x="3.5" y="1" width="5" height="7" rx="2.5" class="capsule" />
        <path d="M1.5 6a4.5 4.5 0 0 0 9 0M6 10.5V13" />
      </svg>
      {WORD[ear]}
    </span>
  );
}
