// What fails around the browser's real recogniser, in the real side panel: each time no verdict that nobody said, a lost word
// asked for again or one sentence that says what to do, and keys that work throughout.
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { launchChromium, type Chromium } from './chromium.ts';
import { verdictsOf } from './journal.ts';
import { answer, murmuring, sayUntil } from './murmuring.ts';
import { press, seatAt, until, untilMark, untilPhase, type Seat } from './seat.ts';
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

/** A service that fails as it is told to, or answers with the word it is told, once. */
class Moody {
  failing: Failure | null = null;
  word: string | null = null;
  failures = 0;

  async answer(listening: Listening): Promise<void> {
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
  }
}

const listening = (seat: Seat) => untilMark(seat, 'listening');

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

  test.each(Object.keys(FAILURES) as Failure[])('%s: nothing is judged, keys hold and judge meanwhile, and the next word is heard', async (failure) => {
    await listening(seat);
    const before = await verdictsOf(chromium);
    const { failures } = moody;
    moody.failing = failure;
    // Twice: after the first the panel listens again by itself.
    await expect.poll(() => moody.failures, { timeout: 25_000 }).toBeGreaterThan(failures + 1);
    await holdOnce(seat, () => 'nothing', keys);
    moody.failing = null;
    await sayUntil(seat, moody, 'holding', 'holding');
    await sayUntil(seat, moody, 'flicker', 'dialling');
    await expect.poll(() => verdictsOf(chromium)).toEqual([...before, 'key dark', 'voice flicker']);
  });

  test('a word that is lost after the end tone is asked for again, and then the hold itself', async () => {
    const before = await verdictsOf(chromium);
    moody.failing = 'an end without a result';
    await press(seat, ' ');
    await until(seat, 'the question', ({ announcement }) => announcement.endsWith('Was the light steady?'));
    await until(seat, 'the hold again', ({ announcement }) => announcement.startsWith('No answer came, so the hold does not count.'));
    moody.failing = null;
    await sayUntil(seat, moody, 'holding', 'holding');
    await untilPhase(seat, 'judging');
    // One steady light among dark ones may also make the panel ask about the focus.
    await sayUntil(seat, moody, 'solid', 'dialling', 'checking');
    await expect.poll(() => verdictsOf(chromium)).toEqual([...before, 'voice steady']);
  });
});
