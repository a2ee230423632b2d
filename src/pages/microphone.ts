// Asks for the microphone in a tab of its own, because a side panel can never show the browser's question. It says first
// what listening means, and follows the permission while it is open.
import { microphonePermission, openMicrophone } from '../platform/ear/microphone.ts';
import { LISTENING_MEANS } from '../voice/vocabulary/listening.ts';

type State = PermissionState | 'no microphone';

const SENTENCE: Record<State, string> = {
  prompt: 'When you press the button, the browser asks whether Sweepbook may use the microphone.',
  granted:
    'The microphone is allowed. Go back to the panel: it listens as soon as a sweep runs. If you allowed it for this time only, ' +
    'leave this tab open while you work, because the permission ends with it.',
  denied:
    'The microphone is blocked for Sweepbook. Open the site settings from the icon at the left of the address bar, set the microphone ' +
    'to “Allow”, and come back to this tab.',
  'no microphone': 'No microphone answers. Connect one, or close the program that holds it, and press the button again.',
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

ask?.addEventListener('click', async () => {
  const opened = await openMicrophone();
  // Only the permission was wanted here: the panel listens by itself.
  if (opened.ok) opened.track.stop();
  else if (opened.why === 'none') return show('no microphone');
  show((await microphonePermission())?.state ?? (opened.ok ? 'granted' : 'denied'));
});
