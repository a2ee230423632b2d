// Asks for the microphone in a tab of its own, because a side panel can never show the browser's question. It says first
// what listening means, and follows the permission while it is open.
import { microphonePermission, openMicrophone } from '../platform/ear/microphone.ts';
import { LISTENING_MEANS } from '../voice/vocabulary/listening.ts';

type State = PermissionState | 'no microphone' | 'in use';

const SENTENCE: Record<State, string> = {
  prompt: 'When you press the button, the browser asks whether Sweepbook may use the microphone.',
  granted:
    'The microphone is allowed. Go back to the panel: it goes on by itself. If you allowed it for this time only, ' +
    'leave this tab open while you work, because the permission ends with it.',
  denied:
    'The microphone is blocked for Sweepbook. Open the site settings from the icon at the left of the address bar, set the microphone ' +
    'to “Allow”, and come back to this tab.',
  'no microphone': 'No microphone answers. Connect one and press the button again.',
  'in use': 'The microphone cannot be opened: another program has it. Close that program and press the button again.',
};

const means = document.querySelector('#means');
const state = document.querySelector('#state');
const ask = document.querySelector('button');

function show(now: State): void {
  if (means) means.textContent = LISTENING_MEANS;
  if (state) state.textContent = SENTENCE[now];
  if (ask) ask.hidden = now === 'granted' || now === 'denied';
}

const permission = await microphonePermission();
show(permission?.state ?? 'prompt');
permission?.addEventListener('change', () => show(permission.state));

async function askNow(): Promise<void> {
  const opened = await openMicrophone();
  // Only the permission was wanted here: the panel listens by itself.
  if (opened.ok) opened.track.stop();
  else if (opened.why === 'no microphone' || opened.why === 'in use') return show(opened.why);
  show((await microphonePermission())?.state ?? (opened.ok ? 'granted' : 'denied'));
}

ask?.addEventListener('click', () => void askNow());
// Somebody who said yes in the panel is not asked for the same yes again.
if (location.hash === '#ask' && permission?.state !== 'granted') await askNow();
