// Contract of hearing and of the one switch in a session.
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { moment } from '../../../src/units.ts';
import { phaseOf, sweeping } from './sweeping.ts';
import { Computer, settle } from './world.ts';

describe('words', () => {
  test('nothing listens until the person said yes to it, nor when no sweep runs', async () => {
    const { window } = await sweeping();
    expect(window.earOpen).toBe(false);
    window.session.changeSettings({ voice: { listen: 'browser' } });
    await settle();
    expect(window.earOpen).toBe(true);
    await window.tell('finish');
    expect(window.earOpen).toBe(false);
    expect((await new Computer().open()).earOpen).toBe(false);
  });

  test('a following window does not listen', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    const other = await computer.open();
    expect([window.earOpen, other.earOpen]).toEqual([true, false]);
  });

  test('a word that makes sense is taken with what was heard, and the rest of the utterance is dropped', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    await window.tell('holding');
    expect(window.ear?.onHeard([{ text: 'salad' }, { text: 'Flickers' }], true)).toBe(true);
    await settle();
    expect(window.session.sweep.value?.holds.at(-1)).toMatchObject({ by: 'voice', heard: 'flickers', verdict: { light: 'flicker' } });
    expect(window.session.heard.value).toMatchObject({ words: 'flickers', became: expect.stringMatching(/^flicker at 0$/), by: 'voice' });
    expect(computer.journal().at(-1)).toBe('judged');
  });

  test('other talk changes nothing and says nothing', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    expect(window.ear?.onHeard([{ text: 'mind the tripod' }], true)).toBe(false);
    await settle();
    expect(computer.log).toEqual([]);
  });

  test('a value without its sign is asked for again', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    expect(window.ear?.onHeard([{ text: 'set seven' }], true)).toBe(true);
    await settle();
    expect(computer.log).toEqual(['say Say that again.']);
    expect(window.session.heard.value).toMatchObject({ words: 'set seven', became: 'not clear' });
  });

  test('a microphone that was never allowed is told with the page that asks for it', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    window.ear?.onState('needs permission');
    window.ear?.onTrouble({ sentence: 'Not allowed yet.', needsPage: true });
    expect(window.session.ear.value).toBe('needs permission');
    window.session.troubles.value[0]?.remedy?.run();
    expect(computer.log).toContain('open microphone page');
    window.ear?.onTrouble(null);
    expect(window.session.troubles.value).toEqual([]);
  });
});

describe('one switch', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  async function start() {
    const { computer, window } = await sweeping();
    const wait = async (ms: number): Promise<void> => {
      computer.time = moment(computer.time + ms);
      await vi.advanceTimersByTimeAsync(ms);
      await settle();
    };
    const press = async (ms: number): Promise<void> => {
      window.session.contact('down');
      await wait(ms);
      window.session.contact('up');
      await settle();
    };
    return { computer, window, wait, press };
  }

  test('a whole hold by one switch: begin, and it came late', async () => {
    const { window, wait, press } = await start();
    window.session.contact('down');
    expect(phaseOf(window)).toBe('holding');
    expect(window.session.pressed.value).not.toBeNull();
    window.session.contact('up');
    expect(window.session.pressed.value).toBeNull();
    await wait(1500);
    await press(80);
    await wait(100);
    await press(80);
    expect(window.session.sweep.value?.holds.at(-1)).toMatchObject({ by: 'switch', verdict: { light: 'late' } });
  });

  test('a single press is told after the time for a second one', async () => {
    const { window, wait, press } = await start();
    await press(80);
    await wait(1500);
    await press(80);
    expect(phaseOf(window)).toBe('holding');
    await wait(400);
    expect(window.session.sweep.value?.holds.at(-1)?.verdict.light).toBe('flicker');
  });

  test('a long press in dialling takes back the hold it began and the verdict before it', async () => {
    const { computer, window, wait, press } = await start();
    await window.tell('holding');
    await window.tell('flicker');
    await press(700);
    await wait(10);
    expect(phaseOf(window)).toBe('dialling');
    expect(window.session.sweep.value?.holds).toEqual([]);
    expect(computer.journal()).toEqual(['opened', 'began', 'judged', 'began', 'undid', 'undid']);
  });
});
