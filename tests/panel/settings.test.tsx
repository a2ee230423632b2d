// @vitest-environment happy-dom
// Contract of the settings and the help: each setting takes effect at once, and the help tells exactly what is understood.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { capOf, wordOfKey } from '../../src/panel/keys/keys.ts';
import { WORDS, type Word } from '../../src/sweep/inputs.ts';
import { PRESSES, understood } from '../../src/sweep/understood.ts';
import { words } from '../../src/words/catalogue.ts';
import { LISTENING_MEANS } from '../../src/words/en/listening.ts';
import { inPhase } from '../sweep/staged.ts';
import { FakeSession } from './fakeSession.ts';
import { seconds } from '../../src/units.ts';
import { click, partsRead, show, text, type } from './show.tsx';

afterEach(cleanup);

async function at(place: 'Settings' | 'Help', session = new FakeSession()): Promise<FakeSession> {
  await show(session);
  await act(() => void click(place));
  await partsRead();
  return session;
}
const toggle = (label: RegExp) => act(() => void fireEvent.click(screen.getByLabelText(label)));
const slide = (label: RegExp, value: number) => act(() => void fireEvent.input(screen.getByLabelText(label), { target: { value } }));

describe('settings', () => {
  test('the hold time is set from 3 to 15 seconds, with its value in sight', async () => {
    const session = await at('Settings');
    const slider = screen.getByLabelText(/Hold time: 5 s/);
    expect([slider.getAttribute('min'), slider.getAttribute('max')]).toEqual(['3', '15']);
    await slide(/Hold time/, 8);
    expect(session.settings.value.manner.holdTime).toBe(8);
    expect(text()).toContain('Hold time: 8 s');
  });

  test('a counted pace brings its time to dial', async () => {
    const session = await at('Settings');
    expect(screen.queryByLabelText(/Time to dial/)).toBeNull();
    await toggle(/^Counted/);
    await slide(/Time to dial/, 12);
    expect(session.settings.value.manner.pace).toEqual({ set: 'counted', toDial: 12 });
  });

  test('speech and tones are switched each on its own', async () => {
    const session = await at('Settings');
    await toggle(/Speak every value/);
    await toggle(/Tones/);
    expect(session.settings.value).toMatchObject({ sound: false, voice: { speak: false } });
  });

  test('what listening means is said before the yes', async () => {
    const session = await at('Settings');
    expect(text()).toContain(LISTENING_MEANS);
    await toggle(/By the browser’s own recogniser/);
    expect(session.settings.value.voice.listen).toBe('browser');
  });

  test('last values travel between computers only after a yes, and what leaves is said before it', async () => {
    const session = await at('Settings');
    expect(session.settings.value.logbook.sync).toBeNull();
    expect(text()).toMatch(/What leaves this computer is the last value of each situation, its date, the names of body and lens, .*the distance\./);
    await toggle(/Carry the last values/);
    expect(session.settings.value.logbook.sync).not.toBeNull();
    await toggle(/Carry the last values/);
    expect(session.settings.value.logbook.sync).toBeNull();
  });

  test('a browser without a recogniser is said to have none, and still offers taught words', async () => {
    const session = new FakeSession();
    session.browserRecognises = false;
    await at('Settings', session);
    expect(screen.queryByLabelText(/By the browser/)).toBeNull();
    expect(text()).toContain('This browser has no recogniser of its own.');
    await toggle(/By words I have taught/);
    expect(session.settings.value.voice.listen).toBe('own');
  });

  test('taught words are learned from only after a yes, which only they are asked for', async () => {
    const session = await at('Settings');
    expect(screen.queryByLabelText(/Learn from words/)).toBeNull();
    await toggle(/By words I have taught/);
    expect(session.settings.value.voice.learn).toBe(false);
    await toggle(/Learn from words that were right/);
    expect(session.settings.value.voice.learn).toBe(true);
  });

  test('while words are listened for, the ear may wait for a press of the switch', async () => {
    const session = await at('Settings');
    expect(screen.queryByLabelText(/When I press the switch/)).toBeNull();
    await toggle(/By words I have taught/);
    await toggle(/When I press the switch/);
    expect(session.settings.value.voice.open).toBe('pressed');
  });

  test('pace and voice of speech are chosen among what the computer has', async () => {
    const session = await at('Settings');
    const choose = (label: string, value: string) => act(() => void fireEvent.change(screen.getByLabelText(label), { target: { value } }));
    await choose('Pace of speech', '1.25');
    await choose('Speaking voice', 'Moor');
    expect(session.settings.value.voice).toMatchObject({ rate: 1.25, voice: 'Moor' });
  });
});

describe('the shortcut that opens the panel', () => {
  test('is changed on the browser’s own page', async () => {
    const session = await at('Settings');
    await act(() => void click('Change the shortcut'));
    expect(session.asked).toEqual(['shortcuts']);
  });

  test('where an extension may not open that page, it is said where it is', async () => {
    const session = new FakeSession();
    session.shortcutsOpen = false;
    await at('Settings', session);
    expect(screen.queryByText('Change the shortcut')).toBeNull();
    expect(text()).toContain('in the browser’s add-ons manager, behind the cog');
  });
});

describe('the settings as the browser’s list of extensions opens them', () => {
  const opened = async (session: FakeSession): Promise<string | undefined> => {
    await show(session, 'settings');
    return screen.getByRole('main').dataset['screen'];
  };

  test('stand there at once, with the start behind them', async () => {
    expect(await opened(new FakeSession())).toBe('settings');
    await act(() => void click('Back'));
    expect(screen.getByRole('main').dataset['screen']).toBe('start');
  });

  test('wait for a sweep that is under way here, and not for one that runs elsewhere', async () => {
    expect(await opened(new FakeSession().open())).toBe('sweep');
    cleanup();
    const follower = new FakeSession().open();
    follower.role.value = 'follower';
    expect(await opened(follower)).toBe('settings');
  });
});

describe('the search of the settings', () => {
  const find = (typed: string) => act(() => void type('Find a setting', typed));
  const found = (): string[] => [...document.querySelectorAll('search button')].map(({ textContent }) => textContent ?? '');

  test('every label on the screen, also of what only shows once something else is switched on, is found by its own words', async () => {
    const session = new FakeSession();
    session.changeSettings({ voice: { listen: 'own' }, manner: { pace: { set: 'counted', toDial: seconds(8) } } });
    await at('Settings', session);
    const rooms = document.querySelector('.rooms') ?? document.body;
    const labels = [...rooms.querySelectorAll('legend, .field > label, .option > span, small')].map(
      ({ firstChild, textContent }) => firstChild?.textContent ?? textContent ?? '',
    );
    expect(labels.length).toBeGreaterThan(25);
    for (const label of labels) {
      await find(label.replace(/ ?[:%].*$/, ''));
      expect([label, found()]).not.toEqual([label, []]);
    }
  });

  test('a found setting opens where it is and has the focus, and the search is empty again', async () => {
    await at('Settings');
    await find('count');
    expect(found()).toEqual(['Pace Working']);
    await act(() => void click('Pace Working'));
    const own = screen.getByLabelText(/^My own/);
    expect(own.closest('details')?.open).toBe(true);
    expect(document.activeElement).toBe(own);
    expect(screen.getByLabelText<HTMLInputElement>('Find a setting').value).toBe('');
  });

  test('those that bear the word in their label come before those that only explain themselves with it', async () => {
    await at('Settings');
    await find('hold');
    expect(found()[0]).toMatch(/^Hold time: 5\s.* Working$/);
    expect(found().length).toBeGreaterThan(1);
  });

  test('words that no setting has are said to fit none', async () => {
    await at('Settings');
    await find('zebra');
    expect(found()).toEqual([]);
    expect(text()).toContain('No setting fits. Try another word.');
  });
});

describe('help', () => {
  test('every word is there with its key', async () => {
    await at('Help');
    for (const word of WORDS) {
      const row = screen.getByRole('rowheader', { name: word === 'set' ? 'set plus six' : word }).closest('tr');
      expect(row?.textContent).toContain(capOf(word));
    }
  });

  test('every press of the one switch is there with what it means', async () => {
    await at('Help');
    const shown = screen.getAllByRole('definition').map(({ textContent }) => textContent?.trim());
    expect(shown).toEqual(Object.values(PRESSES).flatMap((presses) => presses.map(({ means }) => words('sweep').press.means[means])));
  });
});

describe('what is possible now', () => {
  const inTable = (): (string | null)[] => [...document.querySelectorAll('[aria-labelledby="now"] tbody th')].map(({ textContent }) => textContent);
  const written = (word: Word): string => (word === 'set' ? 'set plus six' : word);

  test('without a sweep there are the ways to begin one', async () => {
    await at('Help');
    expect(inTable()).toEqual([]);
    await act(() => void click('Name a lens and start'));
    expect(screen.getByRole('main').dataset['screen']).toBe('start');
  });

  test('with one that waits there is exactly what it understands, as its buttons have it, and the way back to it', async () => {
    const session = await show(new FakeSession().open().hold('dark'));
    await act(() => void click('Leave for the start. The sweep waits.'));
    await act(() => void click('Help'));
    await partsRead();
    const { words: now, presses } = session.understood.value!;
    expect(session.sweep.value?.phase.name).toBe('paused');
    expect(inTable()).toEqual(now.map(written));
    const shown = [...document.querySelectorAll('.presses-now li')].map(({ textContent }) => textContent?.trim());
    expect(shown).toEqual(presses.map(({ means }) => words('sweep').press.means[means]));
    await act(() => void click('Go on with the sweep'));
    expect(screen.getByRole('main').dataset['screen']).toBe('sweep');
  });

  test('in a sweep it stands behind one press, and follows the phase', async () => {
    const session = await show(new FakeSession().open());
    const more = screen.getByText('What you can do now').closest('details')!;
    const rows = (): (string | null)[] => [...more.querySelectorAll('tbody th')].map(({ textContent }) => textContent);
    expect(rows()).toEqual([]);
    await act(() => {
      more.open = true;
      more.dispatchEvent(new Event('toggle'));
    });
    expect(rows()).toEqual(session.understood.value!.words.map(written));
    await act(() => session.input({ told: 'hold', by: 'key', heard: null }));
    expect(session.sweep.value?.phase.name).toBe('holding');
    expect(rows()).toEqual(session.understood.value!.words.map(written));
  });
});

describe('keys', () => {
  test.each(['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'finished'] as const)('no two words understood in %s share a key', (phase) => {
    const { words } = understood(inPhase(phase));
    expect(new Set(words.map(capOf)).size).toBe(words.length);
    for (const word of words) expect(wordOfKey(keyOf(word), words)).toBe(word);
  });

  test('a key of a word that makes no sense now is none', () => {
    expect(wordOfKey('s', ['accept', 'undo'])).toBeNull();
    expect(wordOfKey('A', ['accept', 'undo'])).toBe('accept');
  });
});

const KEYS: Partial<Record<string, string>> = { '\u2190': 'ArrowLeft', '\u2192': 'ArrowRight', Space: ' ' };
const keyOf = (word: Word): string => KEYS[capOf(word)] ?? capOf(word);
