// @vitest-environment happy-dom
// Contract of the end of a sweep: the value to enter, how sure it is and what to do; or, without one, what to check.
import { cleanup, screen, waitFor } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { cameraOf } from '../../src/practice/cameras.ts';
import type { Outcome } from '../../src/sweep/end/outcome.ts';
import { revealedInWords } from '../../src/panel/outcome/revealed.ts';
import { seconds, steps } from '../../src/units.ts';
import { FakeSession, PLAN } from './fakeSession.ts';
import { click, key, partsRead, phase, show, text, type, toTheBench } from './show.tsx';

afterEach(cleanup);

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
}

const BAND = {
  low: steps(2),
  high: steps(9),
  centre: 5.5,
  chosen: steps(5),
  other: null,
  interval: { from: 4.75, to: 6.25 },
  within: 0.974,
  ends: 'seen',
  tally: { holds: 9, seconds: seconds(103) },
} as const;

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
    const [, shifted] = /\+(\d+) instead of \+5, shifted on purpose to put 66 % of the depth of field in front of the subject: an estimate\./.exec(text()) ?? [];
    expect(Number(shifted)).toBeGreaterThan(5);
    expect(text()).toContain(`Enter +${shifted} in the camera`);
    expect(screen.getByLabelText<HTMLInputElement>('Value in the camera').value).toBe(`+${shifted}`);
    expect(screen.getByLabelText('Value to enter').textContent).toBe('+5');
  });

  test('a share that was kept with the sweep counts after the panel was closed, as soon as the aperture is known', async () => {
    const bench = { ticked: [], readings: [{ reads: 'placement', share: 0.66 }] };
    await ended({ found: 'band' }, { ...PLAN, bench });
    expect(text()).toContain('enter the widest aperture at the bench to see the value shifted for it.');
    expect(text()).toContain('Enter +5 in the camera');
  });

  test('its width is set against the depth of focus, as an estimate', async () => {
    await ended({ found: 'band' });
    expect(text()).toContain('The band spans about 50 % of the depth of focus, an estimate: that is plausible.');
    cleanup();
    await ended({ found: 'band', low: steps(-15), high: steps(15) });
    expect(text()).toContain('that is wide; check the aperture, the contrast of the target and the light.');
  });

  test('the value, how sure, the band, its centre and interval, the holds and the time', async () => {
    await ended({ found: 'band' });
    expect(screen.getByLabelText('Value to enter').textContent).toBe('+5');
    for (const part of ['97 % sure within one step', '+2 to +9', '+5.5', '+4.8 to +6.3', '9 holds in 1 min 43 s']) {
      expect(text()).toContain(part);
    }
  });

  test('what to do next: enter it, prove it, and the maker\u2019s manual goes first', async () => {
    await ended({ found: 'band' });
    expect(text()).toMatch(/Enter \+5 in the camera.*Prove it on photographs.*maker\u2019s manual/);
  });

  test('where the middle falls between two values the other choice is named', async () => {
    await ended({ found: 'band', other: steps(6) });
    expect(text()).toContain('The middle falls between +5 and +6');
  });

  test('ends that were not seen are said not to be', async () => {
    await ended({ found: 'band', ends: 'believed' });
    expect(text()).toContain('its ends were not both held on both sides');
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
    await act(() => void click('Back to the sweep'));
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
    expect(text()).toMatch(/This practice camera holds from \S+ to \S+; its true centre is \S+\./);
    expect(text()).toContain('is off by less than one step.');
    expect(text()).not.toContain('in the camera for this lens');
  });

  test('a value far from the centre is said to be, in steps', () => {
    const { low, high } = cameraOf({ seed: 12 }, PLAN.scale, 'absent');
    const chosen = steps(Math.round((low + high) / 2) + 4);
    expect(revealedInWords(plan, { ...BAND, found: 'band', chosen })?.comparison).toMatch(/off by [34]\.\d steps\.$/);
  });

  test('one with something wrong says what it was, and whether the sweep named it', () => {
    const odd = { ...PLAN, practice: { seed: 12, oddity: 'never lights' as const } };
    const nothing = { found: 'nothing' as const, tally: BAND.tally };
    const named = { trouble: 'never lights', bayesFactor: 400, alike: 8, of: 8 } as const;
    expect(revealedInWords(odd, nothing, [named])?.wrong).toBe('It was made to stay dark. The sweep named it.');
    expect(revealedInWords(odd, nothing, [])?.wrong).toContain('did not meet it often enough');
  });

  test('real kit reveals nothing', async () => {
    expect(revealedInWords(PLAN, { ...BAND, found: 'band' })).toBeNull();
  });
});

describe('a trouble', () => {
  /** Told at eight values or more that the light does this. */
  async function told(light: 'flicker' | 'dark'): Promise<FakeSession> {
    const session = new FakeSession().open();
    for (let count = 0; count < 12 && session.sweep.value?.phase.name === 'dialling'; count++) session.hold(light);
    return show(session);
  }

  test('is named on the face when the finish is offered for it, with checks that open and the odds', async () => {
    await told('flicker');
    expect(phase()).toBe('offered');
    expect(screen.getByLabelText('Now').textContent).toContain('Flickers everywhere');
    const note = screen.getByRole('region', { name: 'Flickers everywhere' });
    expect(note.textContent).toMatch(/Put more light on the target.*of \d+ values looked so; odds (\d+|more than 1000) to 1/);
    expect(text()).toContain('Accept to see what to check');
  });

  test('stands in place of a result at the end, with what to check, and is kept with the record', async () => {
    const session = await told('dark');
    await act(() => key('a'));
    expect(text()).toContain('Never lights');
    expect(text()).toMatch(/What to check, the likeliest first.*active point lies on the target.*maker\u2019s manual/);
    expect(text()).not.toContain('Nothing held');
    expect(session.asRecord('one').outcome.found).toBe('nothing');
  });
});
