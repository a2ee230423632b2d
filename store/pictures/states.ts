// What the pictures of the listing show, in the order of the stores: how the panel comes there, and which part of it is shown larger beside it.
import type { Page } from 'puppeteer-core';
import { choose, press, until, untilPhase, untilText, type Seat } from '../../tests/e2e/seat.ts';
import { untilStart } from '../../tests/e2e/sweeping.ts';
import { drawn } from './drawn.ts';
import { sweepUnderWay } from './underWay.ts';

export interface Place {
  readonly panel: Page;
  readonly seat: Seat;
  /** Opens the panel anew, with this sweep under way. */
  readonly reopen: (live?: readonly unknown[]) => Promise<void>;
}

export interface State {
  readonly name: 'hold' | 'outcome' | 'lenses' | 'bench' | 'photograph';
  readonly theme: 'light' | 'dark';
  /** Finds its way in English; or, where time runs, by keys alone, as it comes anew in every language. */
  readonly come: (place: Place) => Promise<void>;
  /** Time runs: the phase that must still stand when the picture is taken. */
  readonly passing?: 'holding';
  /** It leaves a record in the logbook, so it comes after the others. */
  readonly records?: boolean;
  /** What is done last, in each language. */
  readonly atLast?: (place: Place) => Promise<void>;
  /** The element that the panel begins with, where it is scrolled. */
  readonly top?: string;
  /** What is shown larger: all that these name, together; from the last of those down, where not all of it is; and the ground that it stands on. */
  readonly larger: { readonly parts: string; readonly from?: string; readonly on?: 'ground' | 'raised' };
}

/** The hold has begun, and some of its time has run. */
const INTO_THE_HOLD = 1700;
/** Whose focus falls a little in front of the target, still sharp. */
const PRACTICE_CAMERA = 41;

export const STATES: readonly State[] = [
  {
    name: 'hold',
    theme: 'dark',
    passing: 'holding',
    come: async ({ panel, seat, reopen }) => {
      await reopen(sweepUnderWay(Date.now(), 6));
      await untilPhase(seat, 'dialling');
      // Keys are heard once what is late has come, too.
      await panel.waitForSelector('.strip');
      await drawn(panel);
      await press(seat, ' ');
      await untilPhase(seat, 'holding');
      await new Promise((later) => setTimeout(later, INTO_THE_HOLD));
    },
    larger: { parts: '.strip, .standing' },
  },
  {
    name: 'outcome',
    theme: 'light',
    records: true,
    come: async ({ panel, seat, reopen }) => {
      await reopen(sweepUnderWay(Date.now()));
      await untilPhase(seat, 'offered');
      await panel.waitForSelector('.strip');
      await drawn(panel);
      await press(seat, 'a');
      await untilPhase(seat, 'finished');
    },
    larger: { parts: '.strip' },
  },
  {
    name: 'lenses',
    theme: 'dark',
    come: async ({ panel, seat, reopen }) => {
      await reopen();
      await untilStart(seat);
      await choose(seat, 'Logbook');
      await until(seat, 'the logbook', ({ screen }) => screen === 'logbook');
      await panel.waitForSelector('.entries');
      await panel.$$eval('main details', (all) => all.forEach((one) => (one.open = true)));
      await panel.waitForSelector('main details select');
      await panel.select('main details select', 'b');
      await panel.waitForSelector('.glance svg[role="img"]');
      await panel.$$eval('main details', (all) => all.forEach((one) => (one.open = false)));
    },
    larger: { parts: '.glance > ul > li:nth-child(-n + 2)', on: 'raised' },
  },
  {
    name: 'bench',
    theme: 'light',
    come: async ({ seat, reopen }) => {
      await reopen();
      await untilStart(seat);
      await choose(seat, 'More');
      await untilText(seat, 'Set up the bench');
      await choose(seat, 'Set up the bench');
      await untilText(seat, '50 focal lengths');
    },
    larger: { parts: '.rig', from: '.rig .view' },
  },
  {
    name: 'photograph',
    theme: 'dark',
    come: async ({ seat, reopen }) => {
      await reopen();
      await untilStart(seat);
      await seat.evaluate((seed: number) => {
        crypto.getRandomValues = (numbers) => {
          if (numbers instanceof Uint32Array) numbers.fill(seed);
          return numbers;
        };
      }, PRACTICE_CAMERA);
      await choose(seat, 'Practice camera');
      await untilText(seat, 'A simulated body and lens');
      await choose(seat, 'Practice pictures');
      await untilText(seat, 'Simulated: the practice camera draws these pictures.');
    },
    // Pictures do not outlast a change of the settings.
    atLast: async ({ panel, seat }) => {
      await seat.click('button.chief');
      await panel.waitForSelector('.ramp-chart circle', { timeout: 90_000 });
    },
    top: '.pictures',
    larger: { parts: '.ramp-chart', on: 'raised' },
  },
];
