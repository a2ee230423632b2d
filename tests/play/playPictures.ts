// Plays a bracket of practice pictures with the camera whose sweep is just over: each picture is printed with what it shows, then what all of
// them say beside the band, and what is true of the camera.
import type { Page } from 'puppeteer-core';
import { picture } from '../e2e/screens.ts';
import { choose, seatAt, until, untilText } from '../e2e/seat.ts';

/** Drawing and reading eleven pictures takes its time. */
const PATIENCE = 180_000;

export async function playPictures(panel: Page): Promise<void> {
  const seat = seatAt(panel);
  console.log('\nNow pictures of the same practice camera: a bracket of corrections around that value.\n');
  await choose(seat, 'Check it with practice pictures');
  await untilText(seat, 'Simulated');
  await seat.click('input[value="bracket"]');
  await choose(seat, 'Take the pictures');
  await until(seat, 'the result', ({ text }) => text.includes('What the pictures show together'), PATIENCE);
  const sentencesIn = (selector: string): Promise<string[]> => panel.$$eval(selector, (found) => found.map(({ textContent }) => textContent ?? ''));
  for (const told of await panel.$$eval('.pictures > li', (items) =>
    items.map((item) =>
      [item.querySelector('h2')?.textContent, item.querySelector('select')?.selectedOptions[0]?.textContent, item.querySelector('p')?.textContent].join('   '),
    ),
  ))
    console.log(told);
  console.log(`\n${(await sentencesIn('output strong, .card output ~ p')).join('\n')}`);
  await choose(seat, 'What this practice camera really is');
  const [truth] = (await sentencesIn('.card details p')).filter((sentence) => sentence.startsWith('Its true centre'));
  console.log(truth ?? '');
  console.log(`\nPicture:\n  ${await picture(panel, 'try-5-pictures')}`);
}
