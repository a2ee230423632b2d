// The browser is killed at twenty random moments of one sweep, as a power cut would: in the middle of a hold, or within
// milliseconds of a verdict. What the panel had acknowledged, by asking for the next value, is there after each restart.
import { expect, onTestFinished, test } from 'vitest';
import { seededRandom, type Random } from '../../src/practice/random.ts';
import type { LogRecord } from '../../src/logbook/record.ts';
import { launchChromium } from './chromium.ts';
import { look, press, seatAt, until, untilPhase, type Seat } from './seat.ts';
import { beginWith, keys, holdOnce, shortenHolds, steadyEye, sweep, untilFound } from './sweeping.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

const CUTS = 20;
const SEED = 20261125;
const eye = steadyEye(-9, -3);

/** When the power goes: so long after sitting down, or so soon after a verdict key went down, in milliseconds. */
type Moment = { readonly after: number } | { readonly afterVerdict: number };

const moments = (random: Random): Moment[] =>
  Array.from({ length: CUTS }, (_, cut) => (cut % 2 === 0 ? { after: 4000 * random() } : { afterVerdict: 40 * random() }));

/** Sweeps on and on, past every offer, and calls back with the holds that were acknowledged. */
async function sweepOn(seat: Seat, verdict: () => void, acknowledged: (holds: readonly string[]) => void): Promise<never> {
  for (;;) {
    const { phase } = await untilPhase(seat, 'dialling', 'offered');
    if (phase === 'offered') {
      await press(seat, 'g');
      await untilPhase(seat, 'dialling');
    }
    const hand = {
      ...keys,
      tell: (...told: Parameters<typeof keys.tell>) => {
        verdict();
        return keys.tell(...told);
      },
    };
    acknowledged((await holdOnce(seat, eye, hand)).next.holds);
  }
}

test('killed at twenty random moments, it has every acknowledged hold after each restart, and the sweep goes on to its outcome', async () => {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  let acknowledged: readonly string[] = [];

  for (const [cut, when] of moments(seededRandom(SEED)).entries()) {
    const chromium = await launchChromium({ profile });
    const seat = seatAt(await chromium.openPanel());
    if (cut === 0) {
      await shortenHolds(seat);
      await beginWith(seat, { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' });
    }
    acknowledged = await stillThere(seat, acknowledged);
    await new Promise<void>((cutNow) => {
      const wait = (ms: number): void => void setTimeout(cutNow, ms);
      if ('after' in when) wait(when.after);
      // It ends when the browser is gone.
      sweepOn(
        seat,
        () => 'afterVerdict' in when && wait(when.afterVerdict),
        (holds) => (acknowledged = holds),
      ).catch(() => undefined);
    });
    await chromium.kill();
  }

  const chromium = await launchChromium({ profile });
  onTestFinished(chromium.close);
  const seat = seatAt(await chromium.openPanel());
  await stillThere(seat, acknowledged);
  const { outcome, journal } = await finish(seat);
  expect(outcome).toMatchObject({ found: 'band', low: -9, high: -3, chosen: -6 });
  expect(journal.filter(({ did }) => did === 'opened')).toHaveLength(1);
  expect(journal.filter(({ did }) => did === 'cut off').length).toBeGreaterThan(3);
}, 240_000);

/** Every acknowledged hold, and at most the one that was being told when the power went. */
async function stillThere(seat: Seat, acknowledged: readonly string[]): Promise<readonly string[]> {
  await untilPhase(seat, 'dialling', 'offered');
  const { holds } = await until(seat, `${acknowledged.length} holds`, (seen) => seen.holds.length >= acknowledged.length);
  expect(holds.slice(0, acknowledged.length)).toEqual(acknowledged);
  expect(holds.length - acknowledged.length).toBeLessThanOrEqual(1);
  return holds;
}

/** The sweep goes on to its accepted outcome, and the logbook has it once, with every hold. */
async function finish(seat: Seat): Promise<LogRecord> {
  await sweep(seat, eye, keys);
  const { holds } = await look(seat);
  await press(seat, 'a');
  expect(await untilFound(seat)).toBe(-6);
  const kept = (): Promise<LogRecord[]> =>
    seat.evaluate(async () => {
      const stored = Object.entries(await chrome.storage.local.get(null));
      return stored.flatMap(([key, value]) => (key.startsWith('record:') ? [value as LogRecord] : []));
    });
  // The result is drawn while its record is being written.
  await expect.poll(kept, { timeout: 10_000 }).not.toEqual([]);
  const records = await kept();
  const [record] = records;
  expect(records.map(({ outcome }) => outcome.tally.holds)).toEqual([holds.length]);
  return record!;
}
