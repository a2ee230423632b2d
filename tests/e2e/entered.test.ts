// From the offer to the value marked as entered, and on: by one press each, by one key each, by one word each; in a real Chromium
// and a real Firefox. What it took is counted and printed.
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium, type Chromium } from './chromium.ts';
import { launchFirefox } from './firefox.ts';
import { answer, murmuring } from './murmuring.ts';
import { look, press, seatAt, seatAtSidebar, until, untilPhase, untilText, type Seat } from './seat.ts';
import { startSpeechService } from './speech-service.ts';
import { agreeToListening, untilFound } from './sweeping.ts';
import { putUnderWay, sweepIn } from './underWay.ts';

const MARKED = 'is marked as entered in the camera.';
const MARK = 'button[aria-label="Mark as entered"]';
const NEXT = 'button[aria-label="Next lens"]';

/** Counts what the person does. */
function counted() {
  const did: string[] = [];
  return {
    did,
    async do(what: string, act: () => Promise<void>): Promise<void> {
      did.push(what);
      await act();
    },
  };
}

interface Way {
  readonly accept: () => Promise<void>;
  readonly mark: () => Promise<void>;
  readonly next: () => Promise<void>;
}

const byPointer = (seat: Seat): Way => ({
  accept: () => seat.click('button.switch'),
  mark: () => seat.click(MARK),
  next: () => seat.click(NEXT),
});

const byKey = (seat: Seat): Way => ({
  accept: () => press(seat, 'a'),
  mark: () => press(seat, 'e'),
  next: () => press(seat, 'n'),
});

/** How many actions it took from the offer to the value marked. */
async function acceptedAndEntered(where: string, seat: Seat, { accept, mark, next }: Way): Promise<number> {
  const person = counted();
  await untilPhase(seat, 'offered');
  await person.do('accept', accept);
  const found = await untilFound(seat);
  expect((await look(seat)).text).toContain('Then mark it.');
  await person.do('mark', mark);
  await untilText(seat, MARKED);
  console.log(`${where}: accepted and entered in ${person.did.length} (${person.did.join(', ')}), value ${found}`);
  await next();
  await until(seat, 'the next lens', ({ screen }) => screen === 'next');
  return person.did.length;
}

const entries = ({ worker }: Chromium): Promise<readonly unknown[]> =>
  worker.evaluate(async () => Object.entries(await chrome.storage.local.get()).flatMap(([key, value]) => (key.startsWith('entry:') ? [value] : [])));

test('Chromium: one press accepts and one marks, or one key each, and undo takes the mark back first', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const seat = seatAt(await chromium.openPanel());
  await until(seat, 'the start', ({ screen }) => screen === 'start');
  await putUnderWay(chromium, sweepIn('offered'));
  expect(await acceptedAndEntered('Chromium, pointer', seat, byPointer(seat))).toBe(2);
  await expect.poll(() => entries(chromium)).toHaveLength(1);

  await chromium.worker.evaluate(() => chrome.storage.local.clear());
  await putUnderWay(chromium, sweepIn('offered'));
  await untilPhase(seat, 'offered');
  await press(seat, 'a');
  await untilPhase(seat, 'finished');
  await press(seat, 'e');
  await untilText(seat, MARKED);
  await press(seat, 'u');
  await until(
    seat,
    'the mark taken back',
    ({ phase, text, announcement }) => phase === 'finished' && !text.includes(MARKED) && announcement.startsWith('The mark is taken back'),
  );
  await expect.poll(() => entries(chromium)).toEqual([]);
  await press(seat, 'u');
  expect(await acceptedAndEntered('Chromium, keys', seat, byKey(seat))).toBe(2);
});

test('Chromium: one word accepts, one marks and one goes on', async () => {
  const said: string[] = [];
  let seat: Seat | null = null;
  const wordNow = async (): Promise<string | null> => {
    if (seat === null) return null;
    const { phase, text } = await look(seat);
    if (phase === 'offered') return 'accept';
    if (phase !== 'finished') return null;
    return text.includes(MARKED) ? 'next' : 'entered';
  };
  const service = await startSpeechService((listening) =>
    answer(listening, async () => {
      const word = await wordNow();
      if (word !== null) said.push(word);
      return word;
    }),
  );
  onTestFinished(service.close);
  const chromium = await launchChromium({ args: [...murmuring(onTestFinished), ...service.args] });
  onTestFinished(chromium.close);
  const mine = seatAt(await chromium.openPanel());
  await agreeToListening(mine);
  await putUnderWay(chromium, sweepIn('offered'));
  await untilPhase(mine, 'offered');
  seat = mine;
  await until(mine, 'the next lens', ({ screen }) => screen === 'next');
  const words = [...new Set(said)];
  console.log(`Chromium, voice: accepted, entered and on by ${words.length} words (${words.join(', ')}); said ${said.length} times`);
  expect(words).toEqual(['accept', 'entered', 'next']);
  await expect.poll(() => entries(chromium)).toHaveLength(1);
});

test('Firefox: one press accepts and one marks, and one key each', async () => {
  const firefox = await launchFirefox();
  onTestFinished(firefox.close);
  const sidebar = await firefox.openSidebar();
  await sidebar.waitFor(() => document.querySelector('main')?.dataset['screen'] === 'start');
  await sidebar.click('h1');
  const seat = seatAtSidebar(sidebar);
  for (const [name, way] of [
    ['pointer', byPointer(seat)],
    ['keys', byKey(seat)],
  ] as const) {
    await until(seat, 'no sweep', ({ screen }) => screen === 'start' || screen === 'next');
    await seat.evaluate((live) => browser.storage.local.set({ live }), [...sweepIn('offered')]);
    expect(await acceptedAndEntered(`Firefox, ${name}`, seat, way)).toBe(2);
    await seat.evaluate(() => browser.storage.local.clear());
  }
});
