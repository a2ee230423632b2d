// A person's first holds in real browsers: keys that go to the page are told of at once and never booked, a press that may be
// meant for the camera's button is asked about, and the switch keeps its place while a sweep goes on. What is counted is printed.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import type { SweepEvent } from '../../src/sweep/event.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { launchFirefox } from './firefox.ts';
import { clickInPage, openSecondWindow, typeInWindow } from './firefox-privileged.ts';
import { firefoxWindow } from './firefox-window.ts';
import { journalAt } from './journal.ts';
import { look, press, seatAt, seatAtSidebar, until, untilPhase, type Seat } from './seat.ts';
import { opened } from '../sweep/staged.ts';
import { moment } from '../../src/units.ts';
import { putUnderWay } from './underWay.ts';
import { double, long, pedal, short } from './switching.ts';

/** The bound: a person has pressed the next key by then. */
const AT_ONCE = 300;
const ELSEWHERE = 'Keys go to the page: click the panel.';

const realSweep = (): [SweepEvent] => [{ ...opened({ arrows: 'absent' }), at: moment(Date.now()) }];
const pause = (time: number): Promise<void> => new Promise((go) => setTimeout(go, time));

type Times = Partial<Record<'left' | 'shown' | 'said', number>>;
type Noting = Window & { times: Times };

/** Notes in the panel when the keys are gone, when the loss is on the screen, and when the panel sets out to say it: the computers of the tests have no voice. */
const noteTimes = (seat: Seat): Promise<void> =>
  seat.evaluate(() => {
    const noting = window as unknown as Noting;
    noting.times = {};
    const note = (what: keyof Times): void => void (noting.times[what] ??= Date.now());
    window.addEventListener('blur', () => note('left'));
    new MutationObserver(() => {
      if (document.querySelector('[data-keys="elsewhere"]')) note('shown');
    }).observe(document, { subtree: true, childList: true });
    const cancel = speechSynthesis.cancel.bind(speechSynthesis);
    speechSynthesis.cancel = () => {
      if (!document.hasFocus()) note('said');
      cancel();
    };
  });

/** The person leaves the panel for the page, at the moment that is given, if one is: how long until that is shown and said, in milliseconds. */
async function lossTold(where: string, seat: Seat, leave: () => Promise<number | void>): Promise<number> {
  await noteTimes(seat);
  const given = await leave();
  await untilKeysShown(seat, ELSEWHERE);
  const { left: noted = Infinity, shown = Infinity, said = Infinity } = await seat.evaluate(() => (window as unknown as Noting).times);
  const left = given ?? noted;
  console.log(`${where}: keys lost, shown after ${shown - left} ms, to be said after ${said - left} ms`);
  return Math.max(shown, said) - left;
}

const keysShown = (seat: Seat): Promise<string> => seat.evaluate(() => document.querySelector('[data-keys]')?.textContent ?? '');

async function untilKeysShown(seat: Seat, sentence: string): Promise<void> {
  await until(seat, sentence, ({ text }) => text.includes(sentence));
}

async function chromiumPanel(): Promise<{ chromium: Chromium; web: Page; panel: Page; seat: Seat }> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const [web] = await chromium.browser.pages();
  await web!.goto('data:text/html,<title>A page</title><textarea autofocus style="width:90%25;height:300px"></textarea>');
  await putUnderWay(chromium, realSweep());
  const panel = await chromium.openPanel();
  const seat = seatAt(panel);
  await untilPhase(seat, 'dialling');
  await pause(300);
  return { chromium, web: web!, panel, seat };
}

test('Chromium: keys lost to the page, and to another tab’s, are told of within 300 ms, none is booked, and it says that it hears again', async () => {
  const { chromium, web, panel, seat } = await chromiumPanel();
  // Without a screen every window of Chromium has the keys: the second window is Firefox's part.
  const second = await chromium.browser.newPage();
  for (const [whither, page] of [
    ['page', web],
    ['page of another tab', second],
  ] as const) {
    await panel.bringToFront();
    await panel.mouse.click(20, 300);
    await pause(200);
    const leave = async (): Promise<void> => {
      await page.bringToFront();
      await page.mouse.click(100, 100);
    };
    expect(await lossTold(`Chromium, to the ${whither}`, seat, leave)).toBeLessThan(AT_ONCE);
    for (const key of ['Space', 'KeyF', 'KeyS', 'KeyU'] as const) await page.keyboard.press(key);
    expect((await journalAt(seat)).map(({ did }) => did)).toEqual(['opened']);
    await panel.bringToFront();
    await panel.mouse.click(20, 300);
    await untilKeysShown(seat, 'Keys reach the panel again.');
  }
  expect((await look(seat)).phase).toBe('dialling');
});

test('Chromium: in the middle of a hold the notice stays until the keys are back, and the hold waits for its answer', async () => {
  const { web, panel, seat } = await chromiumPanel();
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  await web.bringToFront();
  await untilPhase(seat, 'judging');
  expect(await keysShown(seat)).toBe(ELSEWHERE);
  await panel.bringToFront();
  await panel.mouse.click(20, 300);
  await press(seat, 's');
  await until(seat, 'the hold', ({ holds }) => holds.length === 1);
});

/** Gives the lights of the holds that are left. */
const earlyAndKept = async (seat: Seat): Promise<readonly string[]> => {
  const foot = pedal(seat, ' ');
  const did = async (): Promise<string[]> => (await journalAt(seat)).map((event) => event.did);
  // A second press, "to end the hold".
  await short(foot);
  await untilPhase(seat, 'holding');
  await short(foot);
  await until(seat, 'the question', ({ text }) => text.includes('Did it flicker already?'));
  await expect.poll(did).toEqual(['opened', 'began']);
  // Left alone, the hold goes on to its end.
  await untilPhase(seat, 'judging');
  await short(foot);
  await until(seat, 'a steady hold', ({ phase, holds }) => phase === 'dialling' && holds.length === 1);
  // Kept down from the beginning.
  await foot.down();
  await until(seat, 'what is said of it', ({ text }) => text.includes('keep only the camera\u2019s button pressed'));
  await pause(1900);
  await foot.up();
  expect((await look(seat)).phase).toBe('holding');
  await expect.poll(async () => (await did()).slice(-2)).toEqual(['judged', 'began']);
  // Asked, and the same press again.
  await untilPhase(seat, 'judging');
  await long(foot);
  await until(seat, 'two holds', ({ phase, holds }) => phase === 'dialling' && holds.length === 2);
  await short(foot);
  await untilPhase(seat, 'holding');
  await short(foot);
  await until(seat, 'the question', ({ text }) => text.includes('Did it flicker already?'));
  await pause(300);
  await short(foot);
  expect((await until(seat, 'three holds', ({ holds }) => holds.length === 3)).holds.at(-1)).toContain('flickering: outside');
  // Undo by the one switch.
  await long(foot);
  await double(foot);
  return (await until(seat, 'two holds again', ({ phase, holds }) => phase === 'dialling' && holds.length === 2)).holds;
};

test('Chromium: a press too soon is asked about, a switch kept down books and undoes nothing, and undo by the switch finds what there is', async () => {
  const { seat } = await chromiumPanel();
  expect(await earlyAndKept(seat)).toEqual([expect.stringContaining('steady: inside'), expect.stringContaining('failed: outside')]);
});

const firefoxPanel = async () => {
  const firefox = await launchFirefox();
  onTestFinished(firefox.close);
  const sidebar = await firefox.openSidebar();
  await sidebar.waitFor(() => document.querySelector('main')?.dataset['screen'] === 'start');
  await sidebar.click('h1');
  const seat = seatAtSidebar(sidebar);
  await until(seat, 'the start', ({ screen }) => screen === 'start');
  await seat.evaluate((live) => browser.storage.local.set({ live }), realSweep());
  await untilPhase(seat, 'dialling');
  await pause(300);
  return { firefox, sidebar, seat };
};

test('Firefox: keys lost to the page, and to a second window, are told of within 300 ms, none is booked, and it says that it hears again', async () => {
  const { firefox, sidebar, seat } = await firefoxPanel();
  const window = await firefoxWindow(firefox.browser);
  expect(await lossTold('Firefox, to the page', seat, async () => void (await window.call(clickInPage)))).toBeLessThan(AT_ONCE);
  for (const key of [' ', 'f', 's', 'u']) await window.call(typeInWindow, key);
  expect((await journalAt(seat)).map(({ did }) => did)).toEqual(['opened']);
  await sidebar.click('.heard');
  await untilKeysShown(seat, 'Keys reach the panel again.');
  expect(await lossTold('Firefox, to a second window', seat, async () => Number(await window.call(openSecondWindow)))).toBeLessThan(AT_ONCE);
  expect((await journalAt(seat)).map(({ did }) => did)).toEqual(['opened']);
});

test('Firefox: a press too soon is asked about, a switch kept down books and undoes nothing, and undo by the switch finds what there is', async () => {
  const { seat } = await firefoxPanel();
  expect(await earlyAndKept(seat)).toEqual([expect.stringContaining('steady: inside'), expect.stringContaining('failed: outside')]);
});

/** Watches where the switch stands, frame by frame, and in which phase. */
const watchSwitch = (seat: Seat): Promise<void> =>
  seat.evaluate(() => {
    const watched = globalThis as unknown as { tops: Record<string, number[]> };
    watched.tops = {};
    const frame = (): void => {
      const top = document.querySelector('button.switch')?.getBoundingClientRect().top;
      const phase = document.querySelector('main')?.dataset['phase'];
      if (top !== undefined && phase) (watched.tops[phase] ??= []).push(top + scrollY);
      requestAnimationFrame(frame);
    };
    frame();
  });
const topsIn = (seat: Seat): Promise<Record<string, number[]>> => seat.evaluate(() => (globalThis as unknown as { tops: Record<string, number[]> }).tops);

test.each([
  ['the side panel', null],
  ['a tab of 240 px', 240],
] as const)('in %s the switch does not move by a pixel in a whole sweep, notices and all', async (where, width) => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const [web] = await chromium.browser.pages();
  await putUnderWay(chromium, realSweep());
  const page = width === null ? await chromium.openPanel() : await chromium.openTab('panel.html', { width, height: 700 });
  const seat = seatAt(page);
  await untilPhase(seat, 'dialling');
  await page.waitForSelector('.switch');
  await watchSwitch(seat);
  const foot = pedal(seat, ' ');
  const seen: string[] = [];
  const notice = async (part: string): Promise<void> => {
    await until(seat, part, ({ text }) => text.includes(part));
    seen.push(part);
  };
  await notice('The browser finds no voice');
  for (const light of ['f', 's', 'n', 'd'] as const) {
    await short(foot);
    await untilPhase(seat, 'holding');
    await short(foot);
    await notice('Did it flicker already?');
    if (light === 's') {
      await web!.bringToFront();
      await notice(ELSEWHERE);
      await page.bringToFront();
      await page.mouse.click(20, 300);
      await notice('Keys reach the panel again.');
      await untilPhase(seat, 'judging');
      await pause(150);
    }
    await press(seat, light);
    await untilPhase(seat, 'dialling');
  }
  await seat.evaluate(() => document.querySelector<HTMLButtonElement>('[aria-label="Dismiss"]')?.click());
  await press(seat, 'v');
  await until(seat, 'the entry of a value', ({ text }) => text.includes('Set it'));
  await pause(200);
  await page.keyboard.press('Escape');
  await press(seat, 'p');
  await untilPhase(seat, 'paused');
  await pause(150);
  await press(seat, 'p');
  await untilPhase(seat, 'dialling');
  const tops = await topsIn(seat);
  const all = Object.values(tops).flat();
  const shift = Math.max(...all) - Math.min(...all);
  console.log(
    `${where}: largest shift of the switch ${shift} px over ${all.length} frames in ${Object.keys(tops).join(', ')}, with ${new Set(seen).size} kinds of notices`,
  );
  expect(shift).toBe(0);
});
