// Plays a whole sweep of the practice camera as a person would: reads the value to set, holds, watches the light, tells
// it by key, accepts the result. Each hold is printed, and pictures are kept.
import type { Page } from 'puppeteer-core';
import { picture } from '../e2e/screens.ts';
import { choose, look, press, seatAt, until, untilPhase, untilText, type Look } from '../e2e/seat.ts';
import { keys, practiceEye, sweep, untilFound, written, type Word } from '../e2e/sweeping.ts';

const SAW: Record<Word, string> = {
  solid: 'on at once and unbroken',
  delayed: 'came on late',
  flicker: 'flickered',
  nothing: 'stayed dark',
};

export async function playSweep(panel: Page): Promise<void> {
  const seat = seatAt(panel);
  const pictures = [await picture(panel, 'try-1-start')];
  await choose(seat, 'Practice camera');
  await choose(seat, 'Practise');
  await untilPhase(seat, 'dialling');
  let asked = await until(seat, 'the first value', ({ announcement }) => announcement.startsWith('Set '));

  const watch = practiceEye(seat);
  let holds = 0;
  const eye = async (value: number): Promise<Word> => {
    holds += 1;
    console.log(`${holds}. Set ${written(value)}: ${reasonIn(asked)}`);
    const saw = await watch(value);
    console.log(`   The light ${saw === 'solid' ? 'was ' : ''}${SAW[saw]}.`);
    if (saw === 'solid' && pictures.length === 1) pictures.push(await picture(panel, 'try-2-light'));
    return saw;
  };
  await sweep(seat, eye, keys, (_told, next) => {
    console.log(`   Noted: ${next.holds.at(-1) ?? ''}`);
    asked = next;
  });
  pictures.push(await picture(panel, 'try-3-offered'));
  console.log(`\n${(await look(seat)).announcement}`);

  await press(seat, 'a');
  await untilFound(seat);
  await untilText(seat, 'This practice camera is steady');
  const revealed = await seat.evaluate(() =>
    Array.from(document.querySelectorAll('[aria-label="The practice camera"] p'), (sentence) => sentence.textContent).join(' '),
  );
  pictures.push(await picture(panel, 'try-4-outcome'));
  console.log(`Accepted. ${revealed}`);
  console.log(`\nPictures:\n${pictures.map((path) => `  ${path}`).join('\n')}`);
}

/** Why this value, from "Flicker. Set +7: halfway between …". */
const reasonIn = ({ announcement }: Look): string => /Set [^:]+: (.*)$/.exec(announcement)?.[1] ?? announcement;
