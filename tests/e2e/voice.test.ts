// A whole sweep by voice: the browser's real recogniser over a fake microphone, answered on loopback with the words that
// a person at the viewfinder would say. No answer comes before its time: "solid" only after the end tone.
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { journalOf } from './journal.ts';
import { answer, murmuring } from './murmuring.ts';
import { look, press, seatAt, until, untilMark, untilPhase, untilText, type Seat } from './seat.ts';
import { startSpeechService } from './speech-service.ts';
import { agreeToListening, beginWith, holdOnce, keys, shortenHolds, steadyEye, untilFound } from './sweeping.ts';

const TOO_EARLY = /^solid → Not yet: hold for \S+ more seconds?\.$/u;
const KIT = { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' };

test('words alone run a sweep to its accepted outcome, and “solid” before the time is up is refused', async () => {
  const eye = steadyEye(2, 8);
  let seat: Seat | null = null;
  const said: string[] = [];
  const becameOf = new Set<string>();
  const wordNow = async (): Promise<string | null> => {
    if (seat === null) return null;
    const { phase, value, lastHeard } = await look(seat);
    becameOf.add(lastHeard);
    if (phase === 'dialling') return 'holding';
    if (phase === 'offered') return 'accept';
    if (value === null) return null;
    const word = await eye(value);
    if (phase === 'judging') return word;
    if (phase !== 'holding') return null;
    // Said until it was refused: the panel does not listen while it sounds.
    return word !== 'solid' || ![...becameOf].some((became) => TOO_EARLY.test(became)) ? word : null;
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
  await shortenHolds(mine);
  await agreeToListening(mine);
  await beginWith(mine, KIT);
  await untilMark(mine, 'listening');

  seat = mine;
  const heardFirst = await until(mine, 'the first word', ({ lastHeard }) => lastHeard !== 'No answer yet');
  expect(heardFirst.lastHeard).toBe('holding \u2192 hold at 0');
  expect(await untilFound(mine)).toBe(5);
  expect(said).toEqual(expect.arrayContaining(['holding', 'solid', 'delayed', 'accept']));
  expect([...becameOf]).toContainEqual(expect.stringMatching(TOO_EARLY));

  await expect.poll(async () => (await journalOf(chromium)).some(({ did }) => did === 'finished')).toBe(true);
  const journal = await journalOf(chromium);
  expect(journal.flatMap((event) => ('by' in event && event.by !== 'voice' ? [event] : []))).toEqual([]);
  const solids = journal.flatMap((event, index) => {
    const held = event.did === 'judged' && event.verdict.light === 'steady';
    const began = journal.slice(0, index).findLast(({ did }) => did === 'began');
    return held && began ? [(event.at - began.at) / 1000] : [];
  });
  expect(solids.length).toBeGreaterThan(2);
  expect(Math.min(...solids)).toBeGreaterThanOrEqual(2.95);
});

test('where the speech service does not answer one sentence says so, and the keys still run the sweep', async () => {
  const noService = ['--host-resolver-rules=MAP www.google.com:443 127.0.0.1:9'];
  const chromium = await launchChromium({ args: [...murmuring(onTestFinished), ...noService] });
  onTestFinished(chromium.close);
  const seat = seatAt(await chromium.openPanel());
  await agreeToListening(seat);
  await beginWith(seat, KIT);
  await untilMark(seat, 'no service');
  await untilText(seat, 'The browser’s recogniser does not answer. Check the network');
  const { next } = await holdOnce(seat, () => 'flicker', keys);
  expect(next.holds).toHaveLength(1);
  await press(seat, 'x');
  await untilPhase(seat, 'finished');
});
