// @vitest-environment happy-dom
// Contract of the sweep screen: what a person sees, and can do, in each phase.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { PLAN, FakeSession } from './fakeSession.ts';
import { button, click, group, key, partsRead, phase, show, text, valueToSet } from './show.tsx';

afterEach(cleanup);

/** A person who knows what the switch is for. */
function sweep(): FakeSession {
  const session = new FakeSession().open();
  session.changeSettings({ coached: 2 });
  return session;
}

describe('dialling', () => {
  test('the value, the way to it from the value set now, and the reason are in sight', async () => {
    const session = await show(sweep().hold('dark', 0).hold('flicker', 10));
    const next = session.sweep.value?.phase;
    expect(phase()).toBe('dialling');
    expect(valueToSet()).toMatch(/^[+\u2212]?\d+$/);
    expect(text()).toMatch(/\d+ (up|down) from \+10/);
    expect(next).toHaveProperty('next.reason.because');
    expect(text()).toMatch(/above|between|below/);
  });

  test('a centre that is still unknown is said once, beside how many holds it will be', async () => {
    await show(sweep());
    expect(text()).toMatch(/centre still unknown.*about 0 of \d+ holds/);
    expect(text()).not.toContain('centre not certain yet');
  });

  test('the switch says that a press begins the hold, and a pointer going down begins it', async () => {
    const session = await show(sweep());
    const began = button(/begin the hold/);
    await act(() => void fireEvent.pointerDown(began, { button: 0, pointerId: 1 }));
    expect(session.sweep.value?.phase.name).toBe('holding');
    await act(() => void fireEvent.pointerUp(began, { pointerId: 1 }));
    expect(phase()).toBe('holding');
  });

  test('a click that no pointer and no key made, as a screen reader makes it, is a short press', async () => {
    await show(sweep());
    await act(() => void fireEvent.click(button(/begin the hold/)));
    expect(phase()).toBe('holding');
  });

  test('with a counted pace the person is told to wait for the count', async () => {
    const manner = { ...PLAN.manner, pace: { set: 'counted', toDial: 8 } } as typeof PLAN.manner;
    await show(new FakeSession({ plan: { ...PLAN, manner } }).open());
    expect(text()).toContain('then wait for the count');
  });
});

describe('holding', () => {
  const holding = async () => {
    const session = await show(sweep());
    await act(() => key(' '));
    return session;
  };

  test('the seconds left count down in whole seconds', async () => {
    const session = await holding();
    expect(text()).toContain('5seconds left');
    await act(() => void (session.now.value = (session.now.value + 3200) as typeof session.now.value));
    expect(text()).toContain('2seconds left');
  });

  test('each light is a word, a key and a button', async () => {
    await holding();
    const answers = group('Answers understood now');
    for (const [word, cap] of [
      ['solid', 'S'],
      ['delayed', 'D'],
      ['flicker', 'F'],
      ['nothing', 'N'],
    ] as const) {
      expect(answers.getByRole('button', { name: `${word} ${cap}` })).toBeTruthy();
    }
  });

  test('the switch says what a press, two presses and a long press mean', async () => {
    await holding();
    expect(button(/it flickered/).textContent).toMatch(/it came late.*it stayed dark/);
  });

  test('a key of a light ends the hold and shows what was told, with undo beside it', async () => {
    const session = await holding();
    await act(() => key('f'));
    expect(session.sweep.value?.holds.map(({ verdict }) => verdict.light)).toEqual(['flicker']);
    expect(group('Last heard').getByText('flicker')).toBeTruthy();
    await act(() => void fireEvent.click(group('Last heard').getByRole('button', { name: /undo/ })));
    expect(session.sweep.value?.holds).toEqual([]);
  });

  test('a key held down is told once', async () => {
    const session = await show(sweep());
    await act(() => {
      fireEvent.keyDown(document.body, { key: 'PageDown' });
      fireEvent.keyDown(document.body, { key: 'PageDown', repeat: true });
      fireEvent.keyDown(document.body, { key: 'PageDown', repeat: true });
      fireEvent.keyUp(document.body, { key: 'PageDown' });
    });
    expect(session.sweep.value?.journal.map(({ did }) => did)).toEqual(['opened', 'began']);
  });
});

describe('after the end tone', () => {
  test('it asks whether it held, and a press says so', async () => {
    const session = await show(sweep());
    await act(() => key('Enter'));
    await act(() => void session.pass(5));
    expect(phase()).toBe('judging');
    expect(text()).toContain('Was the light steady?');
    await act(() => key('Enter'));
    expect(session.sweep.value?.holds.at(-1)?.reading.counts).toBe('in');
  });
});

describe('offered', () => {
  const offered = async () => {
    const session = sweep();
    for (let n = 0; session.sweep.value?.phase.name === 'dialling' && n < 30; n++) {
      const { value } = session.sweep.value.phase.next;
      session.hold(value < -6 || value > 10 ? 'dark' : value < -3 || value > 6 ? 'late' : 'steady', value);
    }
    return show(session);
  };

  test('the centre takes the place of the value, with how sure it is, and a press accepts it', async () => {
    await offered();
    expect(phase()).toBe('offered');
    expect(text()).toMatch(/\d\d% sure within one step/);
    expect(button(/^accept press twice .*long press/)).toBeTruthy();
    await act(() => key('a'));
    expect(phase()).toBe('finished');
  });

  test('one may go on holding', async () => {
    await offered();
    await act(() => void click(/^go on G/));
    expect(phase()).toBe('dialling');
  });
});

describe('paused', () => {
  test('the value stays, and the switch resumes', async () => {
    await show(sweep());
    await act(() => key('p'));
    expect(phase()).toBe('paused');
    expect(text()).toContain('the sweep waits');
    await act(() => key('p'));
    expect(phase()).toBe('dialling');
  });

  test('leaving the screen pauses, and the start offers to go on', async () => {
    await show(sweep());
    await act(() => void click(/Leave for the start/));
    await partsRead();
    expect(text()).toContain('A sweep is unfinished');
    await act(() => void click('Go on with it'));
    expect(phase()).toBe('paused');
  });
});

describe('checking the focus', () => {
  const doubted = async () => {
    const session = sweep();
    const holdAs = (low: number, high: number) => {
      const at = session.sweep.value?.phase;
      if (!at || !('next' in at)) return;
      if (at.name === 'offered') session.input({ told: 'go on', by: 'key', heard: null });
      const { value } = at.next;
      session.hold(value >= low && value <= high ? 'steady' : 'dark', value);
    };
    for (let n = 0; n < 7; n++) holdAs(-3, 6);
    for (let n = 0; n < 30 && session.sweep.value?.phase.name !== 'checking'; n++) holdAs(9, 17);
    return show(session);
  };

  test('no value is asked for: the evidence is, and what to look at', async () => {
    await doubted();
    expect(phase()).toBe('checking');
    expect(screen.queryByLabelText('Value to set')).toBeNull();
    expect(text()).toMatch(/do not fit the first \d+\..*Odds that it moved: (more than )?[\d,]+ to 1/);
    expect(text()).toContain('live view');
  });

  test('same and shifted answer it', async () => {
    const session = await doubted();
    await act(() => key('m'));
    expect(session.sweep.value?.holds).toEqual([]);
    expect(phase()).toBe('dialling');
  });
});

describe('setting another value', () => {
  const entry = async () => {
    const session = await show(sweep());
    await act(() => key('v'));
    await partsRead();
    return session;
  };
  const field = () => screen.getByLabelText('Value');

  test('a value is stepped to or typed, and set', async () => {
    const session = await entry();
    await act(() => void fireEvent.input(field(), { target: { value: '-7' } }));
    await act(() => void click('One step up'));
    await act(() => void click('Set it'));
    expect(session.sweep.value?.phase).toMatchObject({ name: 'dialling', next: { value: -6 } });
    expect(valueToSet()).toBe('\u22126');
  });

  test('a value off the scale is told in a sentence, and stays as it was typed', async () => {
    await entry();
    await act(() => void fireEvent.input(field(), { target: { value: '31' } }));
    await act(() => void click('Set it'));
    expect(screen.getByRole('alert').textContent).toBe('Enter a whole number from \u221220 to +20.');
    expect(field()).toHaveProperty('value', '31');
  });

  test('while it is typed into, letters are no words', async () => {
    const session = await entry();
    field().focus();
    await act(() => key('p'));
    expect(session.sweep.value?.phase.name).toBe('dialling');
  });

  test('escape leaves it, and the suggestion stands', async () => {
    const session = await entry();
    await act(() => void fireEvent.keyDown(field(), { key: 'Escape' }));
    expect(screen.queryByLabelText('Value')).toBeNull();
    expect(session.sweep.value?.journal).toHaveLength(1);
  });
});
