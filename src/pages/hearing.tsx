// The hearing check: whether the person stands out from the room, what is heard of each word, and teaching the words. In a
// tab of its own, because only there can the browser ask for the microphone. Whoever comes from the panel to teach the first
// words (#first) is asked at once, and then taught one word after the other.
import { render } from 'preact';
import { wearRememberedTheme } from '../platform/theme.ts';
import { takesIn } from '../platform/takes.ts';
import { firstWordsIn } from '../voice/wordGroups.ts';
import { readWords, words } from '../words/catalogue.ts';
import { vocabulary } from '../words/taught.ts';
import { wearPageLanguages } from './pageLanguage.ts';
import { createCheck } from './hearing/check.ts';
import { CheckView } from './hearing/checkView.tsx';
import { groupsToTeach } from './hearing/groups.ts';

wearRememberedTheme();

/** Not awaited by the script itself: whatever it reads on demand waits until the script has run. */
async function draw(): Promise<void> {
  const place = document.querySelector('main');
  if (!place) return;
  await wearPageLanguages();
  await readWords('hearing', 'store', 'take');
  document.title = words('hearing').title;
  const check = createCheck(takesIn(() => vocabulary().tag));
  render(<CheckView check={check} groups={await groupsToTeach()} />, place);
  await check.begin();
  if (location.hash !== '#first') return;
  await check.listen();
  const taught = new Set(check.takes.value.map(({ word }) => word));
  if (check.listens.value) check.teach(firstWordsIn(vocabulary()).filter((word) => !taught.has(word)));
}

void draw();
