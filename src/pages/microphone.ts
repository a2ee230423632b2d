// Asks for the microphone in a tab of its own, because a side panel can never show the browser's question. It says first
// what listening means, and follows the permission while it is open.
import { wearRememberedTheme } from '../platform/theme.ts';
import { microphonePermission, openMicrophone } from '../platform/ear/microphone.ts';
import { readWords, words } from '../words/catalogue.ts';
import { wearPageLanguages } from './pageLanguage.ts';

type State = PermissionState | 'no microphone' | 'in use';

const state = document.querySelector('#state');
const ask = document.querySelector('button');

function show(now: State): void {
  if (state) state.textContent = words('microphone').state[now];
  if (ask) ask.hidden = now === 'granted' || now === 'denied';
}

async function askNow(): Promise<void> {
  const opened = await openMicrophone();
  // Only the permission was wanted here: the panel listens by itself.
  if (opened.ok) opened.value.stop();
  else if (opened.fault === 'no microphone' || opened.fault === 'in use') return show(opened.fault);
  show((await microphonePermission())?.state ?? (opened.ok ? 'granted' : 'denied'));
}

/** Not awaited by the script itself: whatever it reads on demand waits until the script has run. */
async function draw(): Promise<void> {
  await wearPageLanguages();
  await readWords('microphone');
  const { title, means, allow } = words('microphone');
  document.title = title;
  for (const [place, text] of [
    ['h1', title],
    ['#means', means],
    ['button', allow],
  ] as const) {
    const element = document.querySelector(place);
    if (element) element.textContent = text;
  }
  const permission = await microphonePermission();
  show(permission?.state ?? 'prompt');
  permission?.addEventListener('change', () => show(permission.state));
  ask?.addEventListener('click', () => void askNow());
  // Somebody who said yes in the panel is not asked for the same yes again.
  if (location.hash === '#ask' && permission?.state !== 'granted') await askNow();
}

wearRememberedTheme();
void draw();
