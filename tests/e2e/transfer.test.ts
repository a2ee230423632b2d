// A band that runs past the scale, in the real side panel: offered, its width measured with the focus set aside, the
// centre carried over, and the page for the workshop; no screen of it has a fault.
import { expect, onTestFinished, test } from 'vitest';
import { shiftInside } from '../../src/practice/cameras.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { replay } from '../../src/sweep/transition.ts';
import { ranWith } from '../sweep/noiseFree.ts';
import { launchChromium } from './chromium.ts';
import { faults } from './faults.ts';
import { pictureFile, shownOn } from './screens.ts';
import { choose, press, seatAt, untilPhase, untilText } from './seat.ts';
import { keys, steadyEye, sweep } from './sweeping.ts';
import { practiceBand, practiceSweep, putUnderWay } from './underWay.ts';

/** Its true centre lies at +21.1. */
const SEED = 17;
const DRAWN = { band: 'past the limit' } as const;

test('a band past the limit is carried over to a centre beyond the scale, and its evidence is printed', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openPanel();
  const seat = seatAt(page);
  const { low, high } = practiceBand(SEED, DRAWN);
  await putUnderWay(chromium, [...ranWith(replay(practiceSweep(SEED, DRAWN)), low, high).journal]);
  await untilPhase(seat, 'offered');
  await press(seat, 'a');
  await untilText(seat, 'Find the centre by the width');
  expect(await faults(page, 'past-the-limit')).toEqual([]);

  await choose(seat, 'Measure the width');
  await untilPhase(seat, 'turning');
  await untilText(seat, 'With a real lens you would turn the ring in live view');
  expect(await faults(page, 'turning')).toEqual([]);
  // The one switch says that it is turned.
  await press(seat, 'PageDown');
  const shift = shiftInside({ seed: SEED, ...DRAWN }, USUAL_SCALE, 'absent');
  await sweep(seat, steadyEye(low + shift, high + shift), keys);
  expect(await faults(page, 'carried-offered')).toEqual([]);
  await press(seat, 'a');
  const found = await untilText(seat, 'Needs service');
  expect(found.text).toMatch(/The centre found is off by less than one step/);
  expect(await faults(page, 'carried')).toEqual([]);

  const opened = chromium.browser.waitForTarget((target) => target.url().includes('/workshop.html#'));
  await choose(seat, 'Page for the workshop');
  const workshop = await (await opened).asPage();
  await workshop.waitForSelector('table');
  expect(await shownOn(workshop)).toMatch(
    /Practice lens on Practice camera.*the pair needs service.*Corrections.*−20 to \+20.*In sharp focus, \d+ holds.*\+20steady.*With the focus set aside, \d+ holds/s,
  );
  expect(await faults(workshop, 'workshop')).toEqual([]);
  await workshop.setViewport({ width: 794, height: 1123 });
  await workshop.screenshot({ path: pictureFile('workshop-wide'), fullPage: true });
  for (const format of ['A4', 'Letter'] as const) {
    const pdf = Buffer.from(await workshop.pdf({ path: pictureFile(`workshop-${format}`).replace(/png$/, 'pdf'), format })).toString('latin1');
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1);
  }
});
