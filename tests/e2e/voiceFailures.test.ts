// What fails around the browser's real recogniser, in the real side panel: each time no verdict that nobody said, a lost word
// asked for again or one sentence that says what to do, and keys that work throughout.
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { SweepEvent } from '../../src/sweep/event.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { answer, murmuring } from './murmuring.ts';
import { look, press, seatAt, until, untilPhase, type Seat } from './seat.ts';
import { startSpeechService, type Listening, type SpeechService } from './speech-service.ts';
import { agreeToListening, beginWith, holdOnce, keys, shortenHolds } from './sweeping.ts';

const KIT = { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' };

/** The ways an utterance can come to nothing. */
const FAILURES = {
  'an end without a result': ({ close }: Listening) => close(),
  'an answer that matches nothing': async ({ send, close }: Listening) => {
    send({ results: [{ final: true, alternatives: [] }] });
    await close();
  },
  'a connection that breaks off': ({ breakOff }: Listening) => Promise.resolve(breakOff()),
  'no answer and no end': () => Promise.resolve(),
} as const;
type Failure = keyof typeof FAILURES;

/** How long a person waits before they say a word again, in ms, and how often they do. */
const PATIENCE = 1500;
const TIMES_SAID = 12;

/** A service that fails as it is told to, or answers with the word it is told, once. */
class Moody {
  failing: Failure | null = null;
  word: string | null = null;
  failures = 0;
  /** Utterances that are being listened to at this moment, and the most there ever were at once. */
  open = 0;
  mostOpen = 0;

  async answer(listening: Listening): Promise<void> {
    this.open++;
    this.mostOpen = Math.max(this.mostOpen, this.open);
    await listening.heard;
    if (this.failing) {
      await FAILURES[this.failing](listening);
      this.failures++;
    } else {
      await answer(listening, () => {
        const { word } = this;
        this.word = null;
        return Promise.resolve(word);
      });
    }
    this.open--;
  }
}

const verdicts = async ({ worker }: Chromium): Promise<string[]> => {
  const { live } = (await worker.evaluate(() => chrome.storage.local.get('live'))) as { live: SweepEvent[] };
  return live.flatMap((event) => (event.did === 'judged' ? [`${event.by} ${event.verdict.light}`] : []));
};

const listening = (seat: Seat) => until(seat, 'the ear open', ({ text }) => text.includes('listening') && !text.includes('not listening'));

describe('the service', () => {
  const moody = new Moody();
  let service: SpeechService;
  let chromium: Chromium;
  let seat: Seat;

  beforeAll(async () => {
    service = await startSpeechService((one) => moody.answer(one));
    chromium = await launchChromium({ args: [...murmuring(afterAll), ...service.args] });
    seat = seatAt(await chromium.openPanel());
    await shortenHolds(seat);
    await agreeToListening(seat);
    await beginWith(seat, KIT);
  });
  beforeEach(() => {
    moody.failing = null;
    moody.word = null;
  });
  afterAll(async () => {
    await chromium.close();
    await service.close();
  });

  /** Says a word, and again while nothing comes of it: the panel does not listen while it sounds. */
  async function sayUntil(word: string, phase: string): Promise<void> {
    for (let said = 0; said < TIMES_SAID; said++) {
      moody.word = word;
      const patience = performance.now() + PATIENCE;
      while (performance.now() < patience) {
        if ((await look(seat)).phase === phase) return;
        await new Promise((go) => setTimeout(go, 50));
      }
    }
    throw new Error(`“${word}” was said ${TIMES_SAID} times and did not lead to ${phase}.`);
  }

  test.each(Object.keys(FAILURES) as Failure[])('%s: nothing is judged, keys hold and judge meanwhile, and the next word is heard', async (failure) => {
    await listening(seat);
    const before = await verdicts(chromium);
    const { failures } = moody;
    moody.failing = failure;
    // Twice: after the first the panel listens again by itself.
    await expect.poll(() => moody.failures, { timeout: 25_000 }).toBeGreaterThan(failures + 1);
    await holdOnce(seat, () => 'nothing', keys);
    moody.failing = null;
    await sayUntil('holding', 'holding');
    await sayUntil('flicker', 'dialling');
    await expect.poll(() => verdicts(chromium)).toEqual([...before, 'key dark', 'voice flicker']);
  });

  test('a word that is lost after the end tone is asked for again, and then the hold itself', async () => {
    const before = await verdicts(chromium);
    moody.failing = 'an end without a result';
    await press(seat, ' ');
    await until(seat, 'the question', ({ announcement }) => announcement.endsWith('Did it hold?'));
    await until(seat, 'the hold again', ({ announcement }) => announcement.startsWith('No answer came, so it does not count.'));
    moody.failing = null;
    moody.word = 'holding';
    await untilPhase(seat, 'judging');
    moody.word = 'solid';
    await expect.poll(() => verdicts(chromium)).toEqual([...before, 'voice steady']);
  });
});
