// Holds in the real side panel beside a page that keeps every core of the computer busy, and when their tones were set to sound,
// by the audio clock.
import { cpus } from 'node:os';
import type { Page } from 'puppeteer-core';
import { launchChromium } from '../../e2e/chromium.ts';
import { press, seatAt, until, untilPhase, type Seat } from '../../e2e/seat.ts';
import { putUnderWay, sweepIn } from '../../e2e/underWay.ts';

/** Seconds by the audio clock: when the press that began the hold came, and when its end tone sounds. */
export interface TimedHold {
  readonly pressed: number;
  readonly ends: number;
  /** Seconds until the browser gave the press to the panel. */
  readonly waited: number;
}

export async function timedHolds(wanted: number, burning: boolean): Promise<TimedHold[]> {
  const chromium = await launchChromium();
  try {
    await putUnderWay(chromium, sweepIn('dialling'));
    const panel = await chromium.openPanel();
    if (burning) await burn((await chromium.browser.pages())[0]);
    await panel.evaluate(watchTones);
    const seat = seatAt(panel);
    const holds: TimedHold[] = [];
    // The first one opens the sound.
    for (let done = 0; done <= wanted; done++) {
      const hold = await held(panel, seat, done);
      if (done > 0) holds.push(hold);
    }
    return holds;
  } finally {
    await chromium.close();
  }
}

/** A press on the key, the whole hold, and a verdict that is then taken back, so that the sweep never ends. */
async function held(panel: Page, seat: Seat, done: number): Promise<TimedHold> {
  await untilPhase(seat, 'dialling');
  await press(seat, ' ');
  await untilPhase(seat, 'judging');
  const hold = await panel.evaluate(endOfHold);
  await press(seat, 'f');
  await until(seat, 'the verdict', ({ phase, holds }) => phase === 'dialling' && holds.length > 0);
  await press(seat, 'u');
  await until(seat, `the verdict taken back after ${done} holds`, ({ phase, holds }) => phase === 'dialling' && holds.length === 0);
  return hold;
}

/** As many busy workers as there are cores, and the page itself besides. */
async function burn(page: Page | undefined): Promise<void> {
  await page?.evaluate((cores) => {
    const busy = 'for (;;) Math.sqrt(Math.random());';
    const address = URL.createObjectURL(new Blob([busy], { type: 'text/javascript' }));
    const workers = Array.from({ length: cores }, () => new Worker(address));
    Object.assign(globalThis, { workers });
    const spin = (): void => {
      const until = performance.now() + 40;
      while (performance.now() < until) Math.sqrt(Math.random());
      setTimeout(spin);
    };
    spin();
  }, cpus().length);
}

interface Watched {
  context: BaseAudioContext | null;
  pressed: number;
  waited: number;
  /** Notes set to sound, by their pitch. */
  notes: { hertz: number; at: number }[];
}

/** Runs in the panel: notes what is set to sound, and where the audio clock stands at each press. */
function watchTones(): void {
  const watched: Watched = { context: null, pressed: NaN, waited: NaN, notes: [] };
  Object.assign(globalThis, { watched });
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (when = 0) {
    watched.context = this.context;
    watched.notes.push({ hertz: this.frequency.value, at: Math.max(when, this.context.currentTime) });
    start.call(this, when);
  };
  document.addEventListener(
    'keydown',
    ({ key, timeStamp }) => {
      if (key !== ' ') return;
      const { context } = watched;
      watched.notes = [];
      watched.waited = (performance.now() - timeStamp) / 1000;
      watched.pressed = context === null ? NaN : context.currentTime - watched.waited;
    },
    { capture: true },
  );
}

/** Runs in the panel, once the hold has ended: its end tone begins high and falls, the last of what was set to sound. */
async function endOfHold(): Promise<TimedHold> {
  const { watched } = globalThis as unknown as { watched: Watched };
  const HIGH = 880;
  const LOW = 587;
  const end = (): number | undefined => watched.notes.find(({ hertz }, index) => hertz === HIGH && watched.notes[index + 1]?.hertz === LOW)?.at;
  while (end() === undefined) await new Promise((go) => setTimeout(go, 10));
  return { pressed: watched.pressed, ends: end() ?? NaN, waited: watched.waited };
}
