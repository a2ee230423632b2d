// What opens in a tab after the first install: which button opens the panel, by which keys, and what to begin with.
import { render } from 'preact';
import { wearRememberedTheme } from '../platform/theme.ts';
import { openingKeys } from '../platform/toolbar.ts';
import { readWords, words } from '../words/catalogue.ts';
import { wearPageLanguages } from './pageLanguage.ts';

/** `keys`: null where the browser has given the shortcut to none. */
function WelcomePage({ keys }: { readonly keys: string | null }) {
  const say = words('welcome');
  return (
    <main>
      <h1>{say.title}</h1>
      <svg viewBox="0 0 360 92" role="img" aria-label={say.picture}>
        <path class="window" d="M.5 91V13a12 12 0 0 1 12-12h335a12 12 0 0 1 12 12v78" />
        <rect class="dim" x="16" y="18" width="226" height="24" rx="12" />
        <path class="dim" d="M268 20h6a4 4 0 1 1 8 0h6v7a4 4 0 1 1 0 8v7h-20v-7a4 4 0 1 0 0-8z" />
        <rect class="button" x="304" y="13" width="34" height="34" rx="8" />
        <rect class="band" x="313" y="21" width="18" height="8" rx="1.5" />
        <path class="scale" d="M311.5 34v5M315.5 34v5M319.5 34v5M323.5 34v5M327.5 34v5M331.5 34v5" />
        <path class="dim" d="M0 56h360v1H0z" />
      </svg>
      <p>{say.button}</p>
      <p class="muted">{say.hidden}</p>
      {keys !== null && <p>{say.shortcut(keys)}</p>}
      <p>{say.first}</p>
    </main>
  );
}

/** Not awaited by the script itself: whatever it reads on demand waits until the script has run. */
async function draw(): Promise<void> {
  await wearPageLanguages();
  await readWords('welcome');
  document.title = words('welcome').title;
  const place = document.querySelector('#welcome');
  if (place) render(<WelcomePage keys={await openingKeys()} />, place);
}

wearRememberedTheme();
void draw();
