// @vitest-environment happy-dom
// Contract of the width transfer on the screens: offered where it can help, asked for in plain steps, and its result told
// with what to do.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { carriedPlot } from '../../src/panel/outcome/carriedPlot.ts';
import type { CarriedOutcome, Outcome } from '../../src/sweep/end/outcome.ts';
import type { Transfer } from '../../src/sweep/widthTransfer.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { seconds, steps } from '../../src/units.ts';
import { FakeSession, PLAN } from './fakeSession.ts';
import { button, click, key, phase, show, text } from './show.tsx';
import { CARRIED } from '../carriedOutcome.ts';

afterEach(cleanup);

const tally = { holds: 9, seconds: seconds(103) };
const interval = { from: 17, to: 24 };
const past = { found: 'past the limit', side: 'high', visible: steps(13), bound: 16.5, interval, tally } as const;
const both = { found: 'past the limit', side: 'both', visible: null, bound: null, interval, tally } as const;
const transfer: Transfer = { of: 'a', side: 'high', visible: steps(13), holds: [{ value: steps(13), verdict: { light: 'steady', arrows: 'none' } }] };
const carried: CarriedOutcome = { ...CARRIED, tally };

async function ended(outcome: Outcome, plan = PLAN): Promise<FakeSession> {
  const session = new FakeSession({ plan }).open();
  if (plan.transfer) session.input({ told: 'moved', by: 'key', heard: null });
  const state = session.hold('flicker', 0).hold('steady', 5).sweep.value;
  if (state === null) throw new Error('There is no sweep.');
  session.sweep.value = { ...state, phase: { name: 'finished', at: session.now.value, outcome } };
  return show(session);
}

test('past a limit the width may be measured, and the page for a workshop opened', async () => {
  const session = await ended(past);
  expect(text()).toContain('In live view, turn the focus ring a little');
  await act(() => void click('Page for the workshop'));
  await act(() => void click('Measure the width'));
  expect(session.asked).toEqual(['workshop.html#sweep', 'begin with transfer, sweep']);
});

test.each([
  ['where every value holds', both, PLAN],
  ['after a transfer', past, { ...PLAN, transfer }],
])('no width is offered to be measured %s', async (_, outcome, plan) => {
  await ended(outcome, plan);
  expect(screen.queryByRole('button', { name: 'Measure the width' })).toBeNull();
  expect(button('Page for the workshop')).toBeTruthy();
});

test('a practice camera keeps its true band back until the width is measured', async () => {
  const practice = { seed: 17, band: 'past the limit' } as const;
  await ended(past, { ...PLAN, practice });
  expect(text()).not.toContain('true centre is');
  cleanup();
  await ended({ ...carried, centre: 21 }, { ...PLAN, practice: { ...practice, shift: -20 }, transfer });
  expect(text()).toMatch(/Its true centre is \+21\.1.*The centre found is off by less than one step/);
});

test('it begins with what to do in live view, and goes on when the ring is turned, by key or by the one switch', async () => {
  const plan = { ...PLAN, transfer };
  await show(new FakeSession({ plan }).open());
  expect(phase()).toBe('turning');
  expect(text()).toContain('In live view, turn the ring a little, until the target is just off sharp.');
  expect(screen.queryByLabelText('Value to set')).toBeNull();
  await act(() => key('m'));
  expect(phase()).toBe('dialling');
  await act(() => key('u'));
  expect(phase()).toBe('turning');
  cleanup();
  const session = await show(new FakeSession({ plan }).open());
  await act(() => {
    key('PageDown');
    session.pass(1);
  });
  expect(phase()).toBe('dialling');
});

test('a centre on the scale is the value to enter, after focusing again', async () => {
  await ended(carried, { ...PLAN, transfer });
  expect(screen.getByLabelText('Value to enter').textContent).toBe('+18');
  expect(text()).toMatch(/Focus critically again in live view.*Enter \+18 in the camera.*\+17\.3 to \+19\.3/);
  expect(text()).not.toContain('service');
});

test('a centre past the scale sends the pair to a licensed service, with the nearest value until then', async () => {
  await ended({ ...carried, centre: 21.5, chosen: steps(20), service: true }, { ...PLAN, transfer });
  expect(screen.queryByLabelText('Value to enter')).toBeNull();
  expect(text()).toMatch(/Needs service.*about \+21\.5, past \+20.*Until it is serviced, enter \+20.*service that the maker licenses/);
});

test('where no value holds none is named', async () => {
  await ended({ ...carried, visible: null, centre: 28, chosen: steps(20), inside: false, service: true }, { ...PLAN, transfer });
  expect(text()).toContain('The light is steady at no correction.');
  expect(text()).not.toContain('enter +20');
});

test('the drawing keeps every part inside itself, on either side of the scale', () => {
  for (const outcome of [
    carried,
    { ...carried, centre: 28, visible: null, interval: { from: 25, to: 33 } },
    { ...carried, side: 'low', centre: -21, visible: steps(-15), interval: { from: -23, to: -20 } } as const,
  ]) {
    const { width, scale, held, carried: beyond, interval: whisker, centre } = carriedPlot(outcome, USUAL_SCALE);
    for (const span of [scale, beyond, whisker, ...(held ? [held] : [])]) {
      expect(span.x).toBeGreaterThanOrEqual(0);
      expect(span.x + span.width).toBeLessThanOrEqual(width);
    }
    expect(centre).toBeGreaterThanOrEqual(whisker.x);
    expect(centre).toBeLessThanOrEqual(whisker.x + whisker.width);
    expect(held === null).toBe(outcome.visible === null);
  }
});
