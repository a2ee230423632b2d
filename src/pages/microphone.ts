// Asks for the microphone in a tab of its own, because a side panel can never show the browser's question. It says first
// what listening means, and follows the permission while it is open.
import { microphonePermission, openMicrophone } from '../platform/ear/microphone.ts';
import { microphoneWords } from '../words/pages.ts';

type State = PermissionState | 'no microphone' | 'in use';

document.title = microphoneWords.title;
const means = document.querySelector('#means');
const state = document.querySelector('#state');
const ask = document.querySelector('button');
const title = document.querySelector('h1');
if (title) title.textContent = microphoneWords.title;
if (means) means.textContent = microphoneWords.means;
if (ask) ask.textContent = microphoneWords.allow;

function show(now: State): void {
  if (state) state.textContent = microphoneWords.state[now];
  if (ask) ask.hidden = now === 'granted' || now === 'denied';
}

const permission = await microphonePermission();
show(permission?.state ?? 'prompt');
permission?.addEventListener('change', () => show(permission.state));

async function askNow(): Promise<void> {
  const opened = await openMicrophone();
  // Only the permission was wanted here: the panel listens by itself.
  if (opened.ok) opened.value.stop();
  else if (opened.fault === 'no microphone' || opened.fault === 'in use') return show(opened.fault);
  show((await microphonePermission())?.state ?? (opened.ok ? 'granted' : 'denied'));
}

ask?.addEventListener('click', () => void askNow());
// Somebody who said yes in the panel is not asked for the same yes again.
if (location.hash === '#ask' && permission?.state !== 'granted') await askNow();
