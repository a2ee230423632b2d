// @vitest-environment happy-dom
// Contract of the end of a sweep: the value to enter, how sure it is and what to do; or, without one, what to check.
import { cleanup, screen, waitFor, within } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { pictureSourceOf } from '../../src/panel/photographs/pictureSource.ts';
import { cameraOf } from '../../src/practice/cameras.ts';
import type { Outcome } from '../../src/sweep/end/outcome.ts';
import { revealed } from '../../src/panel/outcome/revealed.ts';
import { words } from '../../src/words/catalogue.ts';
import { understood } from '../../src/sweep/understood.ts';
import { steps } from '../../src/units.ts';
import { BAND } from '../bandOutcome.ts';
import { FakeSession, PLAN } from './fakeSession.ts';
import { button, click, key, partsRead, phase, show, text, type, toTheBench } from './show.tsx';

afterEach(cleanup);

const inWords = words('result').practice.revealed;

/** A sweep ended as the fake leaves it, shown with this outcome instead. */
async function ended(outcome: Partial<Outcome> & Pick<Outcome, 'found'>, plan = PLAN): Promise<FakeSession> {
  const session = new FakeSession({ plan }).open().hold('flicker', 0).hold('steady', 5);
  finish(session, outcome);
  return show(session);
}

function finish(session: FakeSession, outcome: Partial<Outcome> & Pick<Outcome, 'found'>): void {
  const state = session.sweep.value;
  if (state === null) throw new Error('There is no sweep.');
  session.sweep.value = { ...state, phase: { name: 'finished', at: session.now.value, outcome: { ...BAND, ...outcome } as Outcome } };
  session.understood.value = understood(session.sweep.value);
}

describe('a band', () => {
  test('with a share of the depth asked for at the bench, the value to enter is shifted on purpose and says so', async () => {
    const session = await show(new FakeSession());
    await toTheBench();
    await act(() => void type('Widest aperture', '1.8'));
    await act(() => void type('Share of the depth in front, %', '66'));
    await act(() => void click('Back'));
    await act(() => void click('Start'));
    await waitFor(() => expect(session.sweep.value).not.toBe(null));
    await act(() => finish(session, { found: 'band' }));
    await partsRead();
    const [, shifted] =
      /\+(\d+) instead of \+5, shifted on purpose to put 66% of the depth of field in front of the subject\. This is an estimate\./.exec(text()) ?? [];
    expect(Number(shifted)).toBeGreaterThan(5);
    expect(text()).toContain(`Enter +${shifted} in the camera`);
    expect(screen.getByLabelText<HTMLInputElement>('Value in the camera').value).toBe(`+${shifted}`);
    expect(screen.getByLabelText('Value to enter').textContent).toBe(`+${shifted}`);
    expect(text()).toContain('shifted on purpose from +5, which is 97% sure within one step');
    await act(() => key('e'));
    expect(session.entries.value.at(-1)).toMatchObject({ value: Number(shifted), record: 'sweep' });
  });

  test('a share that was kept with the sweep counts after the panel was closed, as soon as the aperture is known', async () => {
    const bench = { ticked: [], readings: [{ reads: 'placement', share: 0.66 }] };
    await ended({ found: 'band' }, { ...PLAN, bench });
    expect(text()).toContain('Enter the widest aperture at the bench to see the value that gives it.');
    expect(text()).toContain('Enter +5 in the camera');
  });

  test('its width is set against the depth of focus, as an estimate', async () => {
    await ended({ found: 'band' });
    expect(text()).toContain('The band spans about 50% of the depth of focus, an estimate. That is plausible.');
    cleanup();
    await ended({ found: 'band', low: steps(-15), high: steps(15) });
    expect(text()).toContain('That is wide. Check the aperture, the contrast of the target and the light.');
  });

  test('the value, how sure, the band, its centre and interval, the holds and the time', async () => {
    await ended({ found: 'band' });
    expect(screen.getByLabelText('Value to enter').textContent).toBe('+5');
    for (const part of ['97% sure within one step', '+2 to +9', '+5.5', '+4.8 to +6.3', '9 holds \u00b7 1 min 43 secs']) {
      expect(text()).toContain(part);
    }
  });

  test('what to do next: enter it, check it, and the maker\u2019s manual goes first', async () => {
    await ended({ found: 'band' });
    expect(text()).toMatch(/Enter \+5 in the camera.*Then mark it.*maker\u2019s manual/);
    await act(() => void click(/^Mark as entered/));
    expect(text()).toMatch(/\+5 is marked as entered in the camera.*Check it with photographs.*maker\u2019s manual/);
  });

  test('where the middle falls between two values the other choice is named', async () => {
    await ended({ found: 'band', other: steps(6) });
    expect(text()).toContain('The centre lies between +5 and +6');
  });

  test('the big number is called the value to enter, and the centre never shows it', async () => {
    await ended({ found: 'band' });
    expect(screen.getByRole('region', { name: 'Result' }).textContent).toMatch(/^Enter\+5/);
    expect(text()).toContain('Centre+5.5');
    expect(text()).not.toMatch(/centre\s*\+5(?!\.)/i);
  });

  test('less than a sweep asks for is said to be only so sure', async () => {
    await ended({ found: 'band', within: 0.41 });
    expect(text()).toContain('only 41% sure within one step');
  });

  test('ends that were not seen are said not to be', async () => {
    await ended({ found: 'band', ends: 'believed' });
    expect(text()).toContain('not both ends were held on both sides');
  });
});

describe('no value', () => {
  test.each([
    { found: 'past the limit', side: 'high', visible: steps(13), bound: 16.5 },
    { found: 'beyond the scale', side: 'above' },
    { found: 'nothing' },
  ] as const)('$found: no value to enter, but what to check', async (outcome) => {
    await ended(outcome);
    expect(screen.queryByLabelText('Value to enter')).toBeNull();
    expect(screen.getByRole('heading', { name: 'What to check' })).toBeTruthy();
    expect(text()).toContain('Focus again in live view');
  });

  test.each([
    { found: 'past the limit', side: 'both', visible: null, bound: null },
    { found: 'beyond the scale', side: 'below' },
  ] as const)('$found sends the pair to the maker if it stays so', async (outcome) => {
    await ended(outcome);
    expect(text()).toContain('the maker\u2019s service');
  });
});

describe('where to go from it', () => {
  test('back to the sweep takes the finish back', async () => {
    const session = new FakeSession().open().hold('steady', 5);
    session.input({ told: 'finish', by: 'key', heard: null });
    await show(session);
    expect(phase()).toBe('finished');
    await act(() => void click(/^Back to the sweep/));
    expect(phase()).toBe('dialling');
  });

  test('the undo key does the same', async () => {
    const session = new FakeSession().open().hold('steady', 5);
    session.input({ told: 'finish', by: 'key', heard: null });
    await show(session);
    await act(() => key('u'));
    expect(phase()).toBe('dialling');
  });

  test.each(['n', 'the button'])('%s leads to the next lens, whose name is typed there', async (how) => {
    const session = new FakeSession().open().hold('steady', 5);
    session.input({ told: 'finish', by: 'key', heard: null });
    await show(session);
    await act(() => void (how === 'n' ? key('n') : click('Next lens')));
    await partsRead();
    expect(screen.getByRole('heading', { name: 'Next lens' })).toBeTruthy();
    expect(document.activeElement).toBe(screen.getByLabelText('Name of the next lens'));
  });
});

describe('a practice sweep', () => {
  const plan = { ...PLAN, practice: { seed: 12 } };

  test('shows the true band, and how far off the value is', async () => {
    const { low, high } = cameraOf({ seed: 12 }, PLAN.scale, 'absent');
    await ended({ found: 'band', chosen: steps(Math.round((low + high) / 2)) }, plan);
    expect(text()).toMatch(/This practice camera is steady from \S+ to \S+\. Its true centre is \S+\./);
    expect(text()).toContain('is off by less than one step.');
    expect(text()).not.toContain('in the camera for this lens');
  });

  test('leads to pictures of the same practice camera, beside the value and the band that were found', async () => {
    await ended({ found: 'band' }, plan);
    await act(() => void click('Check it with practice pictures'));
    await partsRead();
    expect(text()).toContain('Simulated');
    expect(screen.getByLabelText<HTMLInputElement>('Value to check').value).toBe('+5');
    expect(pictureSourceOf(plan, BAND)).toEqual({
      seed: 12,
      scale: PLAN.scale,
      found: { value: BAND.chosen, band: { value: BAND.centre, low: BAND.interval.from, high: BAND.interval.to } },
    });
  });

  test('of a camera that something is wrong with, whose band is past the limit, or that is real, leads to none', () => {
    expect(pictureSourceOf({ ...PLAN, practice: { seed: 12, oddity: 'focus moves' } }, BAND)).toBeNull();
    expect(pictureSourceOf({ ...PLAN, practice: { seed: 12, band: 'past the limit' } }, BAND)).toBeNull();
    expect(pictureSourceOf(PLAN, BAND)).toBeNull();
  });

  test('a value far from the centre is said to be, in steps', () => {
    const { low, high } = cameraOf({ seed: 12 }, PLAN.scale, 'absent');
    const chosen = steps(Math.round((low + high) / 2) + 4);
    expect(
      revealed(plan, { ...BAND, chosen })
        ?.map(inWords)
        .at(-1),
    ).toMatch(/off by [34]\.\d steps\.$/);
  });

  test.each(['flickers everywhere', 'never lights', 'lights everywhere'] as const)('one made to be wrong, %s, says the fault and no band', (oddity) => {
    const odd = { ...PLAN, practice: { seed: 12, oddity } };
    const nothing = { found: 'nothing' as const, tally: BAND.tally };
    const named = { trouble: oddity, bayesFactor: 400, alike: 8, of: 8 } as const;
    expect(revealed(odd, nothing, [named])?.map(inWords)).toEqual([expect.stringMatching(/^This practice camera was made to .*\. The sweep named it\.$/)]);
    expect(revealed(odd, nothing, [])?.map(inWords)).toEqual([expect.stringContaining('did not meet it often enough')]);
  });

  test('one with a gap says where its band fails, and one whose focus moved where it held before and after', () => {
    const { low, high } = cameraOf({ seed: 12 }, PLAN.scale, 'absent');
    const told = (oddity: 'hole in the band' | 'focus moves') =>
      revealed({ ...PLAN, practice: { seed: 12, oddity } }, BAND)
        ?.map(inWords)
        .at(-1) ?? '';
    const figures = (sentence: string) => (sentence.match(/[+\u2212]?\d+(?:\.\d)?/g) ?? []).map((one) => Number(one.replace('\u2212', '-')));
    const [from, to, gapFrom, gapTo] = figures(told('hole in the band')) as [number, number, number, number];
    expect([from, to]).toEqual([Number(low.toFixed(1)), Number(high.toFixed(1))]);
    expect(from < gapFrom && gapFrom < gapTo && gapTo < to).toBe(true);
    const [first, , then] = figures(told('focus moves')) as [number, number, number];
    expect(Math.abs(then - first)).toBeCloseTo(4, 1);
  });

  test('real kit reveals nothing', async () => {
    expect(revealed(PLAN, { ...BAND, found: 'band' })).toBeNull();
  });
});

describe('a trouble', () => {
  /** Told at eight values or more that the light does this. */
  async function told(light: 'flicker' | 'dark'): Promise<FakeSession> {
    const session = new FakeSession().open();
    for (let count = 0; count < 12 && session.sweep.value?.phase.name === 'dialling'; count++) session.hold(light);
    return show(session);
  }

  test('is said once when the finish is offered for it, with its checks open, and the odds behind a fold', async () => {
    await told('flicker');
    expect(phase()).toBe('offered');
    expect(screen.getByLabelText('Now').textContent).toContain('Flickers everywhere');
    expect(text().match(/flickers everywhere/gi)).toHaveLength(1);
    const checks = screen.getByRole('region', { name: 'What to check, the likeliest first' });
    expect(within(checks).getAllByRole('listitem').length).toBeGreaterThan(3);
    expect(within(checks).getByText('Figures').closest('details')?.open).toBe(false);
    expect(checks.textContent).toMatch(/Put more light on the target.*All \d+ values looked the same\. Odds against any band: (\d+|more than 1,000) to 1/);
    expect(text()).toContain('More holds will not help.');
  });

  test('the chief button brings the checks into view and reads them', async () => {
    const session = await told('flicker');
    await act(() => void click('What to check'));
    expect(document.activeElement?.textContent).toBe('What to check, the likeliest first');
    expect(session.said.at(-1)).toMatch(/^What to check, the likeliest first\. Put more light on the target/);
  });

  test('stands in place of a result at the end, with what to check, and is kept with the record', async () => {
    const session = await told('dark');
    await act(() => key('a'));
    expect(text()).toContain('Dark everywhere');
    expect(text()).toMatch(/What to check, the likeliest first.*active point lies on the target.*maker\u2019s manual/);
    expect(text()).not.toContain('No steady light');
    expect(text().match(/dark everywhere/gi)).toHaveLength(1);
    expect(button('What to check').classList.contains('chief')).toBe(true);
    expect(screen.queryByLabelText('Value to enter')).toBeNull();
    expect(session.asRecord('one').outcome.found).toBe('nothing');
  });
});

describe('marking the value as entered', () => {
  const chief = (): string[] => [...document.querySelectorAll('button.chief')].map(({ textContent }) => textContent ?? '');

  test('it is shown as marked when the mark is on disk', async () => {
    const session = await ended({ found: 'band' });
    await act(() => void click(/^Mark as entered/));
    const keys = session.entries.value.map(({ id }) => `entry:${id}`);
    await act(() => void (session.unwritten.value = new Set(keys)));
    expect([chief(), text().includes('Check it with photographs')]).toEqual([['Mark as entered'], false]);
    await act(() => void (session.unwritten.value = new Set()));
    expect([chief().includes('Mark as entered'), text().includes('Check it with photographs')]).toEqual([false, true]);
  });

  test('it is the chief button, and then the next lens is', async () => {
    const session = await ended({ found: 'band' });
    expect(chief()).toEqual(['Mark as entered']);
    await act(() => void click(/^Mark as entered/));
    expect(session.entries.value).toMatchObject([{ value: 5, record: 'sweep', subject: PLAN.subject }]);
    expect(session.announcement.value).toBe('+5 is marked as entered in the camera. Undo takes the mark back.');
    expect(session.said).toEqual(['Plus five is marked as entered.']);
    expect(chief()).toEqual(['Next lens']);
  });

  test('the key, and a long press of the switch, do the same; done again it is not entered twice', async () => {
    const session = await ended({ found: 'band' });
    await act(() => key('e'));
    expect(session.entries.value).toHaveLength(1);
    await act(() => {
      session.contact('down');
      session.pass(1);
      session.contact('up');
    });
    expect(session.entries.value).toHaveLength(1);
    expect(session.said.at(-1)).toBe('Plus five is marked already.');
  });

  test('undo takes the mark back before the finish', async () => {
    const session = await ended({ found: 'band' });
    await act(() => key('e'));
    await act(() => key('u'));
    expect(session.entries.value).toEqual([]);
    expect(phase()).toBe('finished');
    expect(chief()).toEqual(['Mark as entered']);
    await act(() => key('u'));
    expect(phase()).toBe('dialling');
  });

  test('two presses of the switch go on to the next lens', async () => {
    const session = await ended({ found: 'band' });
    await act(() => {
      for (const move of ['down', 'up', 'down', 'up'] as const) session.contact(move);
    });
    expect(session.sweep.value).toBeNull();
  });

  test('after practice there is nothing to mark', async () => {
    const session = await ended({ found: 'band' }, { ...PLAN, practice: { seed: 12 } });
    expect(chief()).toEqual(['Next lens']);
    await act(() => key('e'));
    expect(session.entries.value).toEqual([]);
  });

  test('a sweep in which nothing was held has no value to enter', async () => {
    const session = new FakeSession().open();
    session.input({ told: 'finish', by: 'key', heard: null });
    await show(session);
    expect(text()).toContain('Without a hold there is no value to enter.');
    expect(screen.queryByLabelText('Value to enter')).toBeNull();
    expect(screen.queryByLabelText('Value in the camera')).toBeNull();
  });
});
