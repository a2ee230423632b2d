// Contract of the moment in which the microphone mark of the walk is still being read: its place is kept, so the title beside it has the
// size that it will have, and no word of it breaks. The moment is too short to be met; the line that stands in it is put there by hand.
import { expect, onTestFinished, test } from 'vitest';
import type { FirstWords } from '../../src/words/firstWords.ts';
import { launchChromium } from './chromium.ts';
import { inLanguage, OTHERS } from './languages/worn.ts';
import { choose, seatAt, until } from './seat.ts';
import { brokenWords } from './sizes.ts';
import { untilBench } from './walking.ts';

test('while the mark beside it is being read, the title of the walk breaks no word at 240 px in any language', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilBench(seat);
  await choose(seat, 'Walk through the set-up');
  await until(seat, 'the walk', ({ screen }) => screen === 'walk');
  await page.setViewport({ width: 240, height: 640 });
  await page.waitForSelector('.heading .voicemark');
  const found: string[] = [];
  for (const language of OTHERS.filter((one) => one !== 'ja')) {
    await inLanguage(page, language);
    const { opening } = ((await import(`../../src/words/${language}/first.ts`)) as { words: FirstWords }).words;
    await page.$eval(
      '.heading .voicemark, .heading p.muted',
      (mark, said) => {
        const line = document.createElement('p');
        line.className = 'muted';
        line.textContent = said;
        mark.replaceWith(line);
      },
      opening,
    );
    found.push(...(await brokenWords(page)).map((word) => `${language}: ${word}`));
  }
  expect(found).toEqual([]);
});
