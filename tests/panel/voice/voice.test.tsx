// @vitest-environment happy-dom
// Contract of the microphone mark, the voice sheet and the sound check on the screen: what is so is said, one press does what
// helps, and nothing is on without a clear yes.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { Deaf } from '../../../src/voice/deaf.ts';
import { words as SOUND } from '../../../src/words/en/sound.ts';
import { words } from '../../../src/words/en/voice.ts';
import { firstWordsIn } from '../../../src/voice/wordGroups.ts';
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';
import { FakeSession } from '../fakeSession.ts';
import { button, click, key, partsRead, show, text } from '../show.tsx';

const FIRST_WORDS = firstWordsIn(ENGLISH_WRITTEN);

afterEach(cleanup);

const mark = (): HTMLElement => {
  const found = document.querySelector<HTMLElement>('.voicemark');
  if (!found) throw new Error('There is no mark.');
  return found;
};
const stage = (): string | undefined => document.querySelector<HTMLElement>('[data-stage]')?.dataset['stage'];
const press = async (name: string | RegExp): Promise<void> => {
  await act(() => void click(name));
  await partsRead();
};
/** The sheet looks at the permission and the words again and again. */
const looksAgain = async (): Promise<void> => {
  await act(() => new Promise((go) => setTimeout(go, 700)));
  await partsRead();
};
const sheet = async (session = new FakeSession()): Promise<FakeSession> => {
  await show(session);
  await act(() => mark().click());
  await partsRead();
  await act(() => vi.dynamicImportSettled());
  return session;
};
const voice = (session: FakeSession) => session.settings.value.voice;

/** Where help is elsewhere than on the sheet, what one press does. */
const DIRECT: Partial<Record<Deaf, string>> = {
  'not asked': 'ask for the microphone',
  blocked: 'microphone.html',
  'no words': 'hearing.html#first',
  'words unreadable': 'hearing.html#first',
  'another window': 'listen here',
};

describe('the mark', () => {
  test('says on the start screen and in a sweep that voice is off', async () => {
    const session = await show(new FakeSession());
    expect([mark().dataset['voice'], mark().textContent?.trim()]).toEqual(['off', 'voice off']);
    await act(() => void session.open());
    await partsRead();
    expect([mark().dataset['voice'], mark().textContent?.trim()]).toEqual(['off', 'voice off']);
  });

  test.each(Object.keys(words.deaf) as Deaf[])(
    'in a sweep deaf because of “%s” shows it in words and a shape, tells the sentence, and one press does what helps',
    async (why) => {
      const session = new FakeSession();
      session.changeSettings({ voice: { listen: 'browser' } });
      session.deaf.value = why;
      await show(session.open());
      expect([mark().dataset['deaf'], mark().textContent?.trim()]).toEqual([why, words.markDeaf[why]]);
      expect(screen.getByLabelText('Voice').textContent).toBe(words.deaf[why]);
      await act(() => mark().click());
      await partsRead();
      const ways = DIRECT[why] ? [DIRECT[why], undefined, session.sweep.value?.phase.name] : [undefined, 'on', 'paused'];
      expect([session.asked[0], stage(), session.sweep.value?.phase.name]).toEqual(ways);
      expect(text()).toContain(words.deaf[why]);
    },
  );

  test('where the panel can show no question it opens the tab that asks at once', async () => {
    const session = new FakeSession();
    session.changeSettings({ voice: { listen: 'browser' } });
    session.deaf.value = 'not asked';
    session.mic.asked = { why: 'not asked', atOnce: true };
    await show(session.open());
    await act(() => mark().click());
    await partsRead();
    expect(session.asked).toEqual(['ask for the microphone', 'microphone.html#ask']);
  });

  test('a question that was answered with no opens nothing', async () => {
    const session = new FakeSession();
    session.changeSettings({ voice: { listen: 'browser' } });
    session.deaf.value = 'not asked';
    session.mic.asked = { why: 'not asked', atOnce: false };
    await show(session.open());
    await act(() => mark().click());
    await partsRead();
    expect(session.asked).toEqual(['ask for the microphone']);
  });

  test('tells that nothing is spoken, and that all sound is off, without a notice that moves anything', async () => {
    const session = await show(new FakeSession().open());
    await act(() => void (session.mute.value = true));
    await partsRead();
    expect(mark().textContent?.trim()).toBe('voice off not spoken');
    expect(screen.queryByRole('alert')).toBeNull();
    await act(() => session.changeSettings({ sound: false, voice: { speak: false } }));
    expect(mark().textContent?.trim()).toBe('voice off sound off');
    expect(screen.getByLabelText('Voice').textContent).toContain(SOUND.off);
  });
});

describe('the sheet', () => {
  test('offers what the browser would have to download, downloads it at a press, and says while it does and where it failed', async () => {
    const session = new FakeSession();
    session.mic.downloadable = true;
    session.mic.allowed = 'granted';
    await sheet(session);
    await press(words.sheet.downloadInstead);
    await looksAgain();
    expect(voice(session)).toMatchObject({ listen: 'here', wish: 'none' });
    await act(() => void (session.deaf.value = 'to be downloaded'));
    expect(text()).toContain(words.deaf['to be downloaded']);
    await press(words.sheet.download);
    expect(session.asked).toContain('download');
    expect(screen.getByLabelText(words.sheet.downloading).tagName).toBe('PROGRESS');
    await act(() => session.mic.downloaded(false));
    await partsRead();
    expect(screen.getByRole('alert').textContent).toBe(words.sheet.notDownloaded);
    await act(() => void (session.deaf.value = 'being downloaded'));
    expect(screen.getByLabelText(words.sheet.downloading).tagName).toBe('PROGRESS');
  });

  test.each(['no service', 'no network', 'not usable', 'no language', 'not on this computer'] as const)(
    'where the browser’s recogniser is of no use (%s) leads to words of one’s own at one press',
    async (why) => {
      const session = new FakeSession();
      session.changeSettings({ voice: { listen: 'browser' } });
      session.mic.allowed = 'granted';
      session.deaf.value = why;
      await sheet(session);
      await press(words.sheet.teachInstead);
      await looksAgain();
      expect([voice(session).listen, voice(session).wish, stage()]).toEqual(['off', 'own', 'teaching']);
    },
  );

  test('says where the sound goes before the yes, and is on when the browser has allowed it, with the way to begin below', async () => {
    const session = await sheet();
    expect(stage()).toBe('offered');
    expect(text()).toContain('its maker may have the sound sent to a server of theirs');
    expect(voice(session)).toMatchObject({ listen: 'off', wish: 'none' });
    await press('Allow');
    expect([session.asked[0], stage(), voice(session).listen]).toEqual(['ask for the microphone', 'asking', 'off']);
    session.mic.allowed = 'granted';
    await looksAgain();
    expect(voice(session)).toMatchObject({ listen: 'browser', wish: 'none' });
    expect(stage()).toBe('on');
    await partsRead();
    expect(button(/^(Start|Begin)/)).toBeTruthy();
  });

  test('shows the word that was heard by the ear a sweep listens with', async () => {
    const session = new FakeSession();
    session.changeSettings({ voice: { listen: 'browser' } });
    await sheet(session);
    expect(session.listener?.words).toContain('solid');
    await act(() => session.listener?.take({ told: 'verdict', verdict: { light: 'steady', arrows: 'none' }, by: 'voice', heard: 'solid' }));
    expect(text()).toContain('Heard “solid”.');
  });

  test('where the browser has no recogniser the seven words are taught, and when they are it is on', async () => {
    const session = new FakeSession();
    session.mic.proposed = 'own';
    await sheet(session);
    expect(text()).toContain('No sound leaves it and none is kept.');
    await press('Allow, then teach seven words');
    session.mic.allowed = 'granted';
    session.taughtWords = ['solid', 'holding', 'repeat'];
    await looksAgain();
    expect(text()).toContain('2 of 7 words are taught.');
    await press('Teach the seven words');
    expect(session.asked).toContain('hearing.html#first');
    session.taughtWords = FIRST_WORDS;
    await looksAgain();
    expect(voice(session).listen).toBe('own');
  });

  test('remembers where it was, and leaving it off costs nothing', async () => {
    const session = await sheet();
    await press('Allow');
    await act(() => key('Escape'));
    await partsRead();
    expect([mark().dataset['voice'], mark().textContent?.trim()]).toEqual(['begun', 'not set up']);
    await act(() => mark().click());
    await partsRead();
    expect(stage()).toBe('asking');
    session.mic.allowed = 'denied';
    await looksAgain();
    expect(stage()).toBe('refused');
    await press('Leave voice off');
    expect([stage(), voice(session).listen, voice(session).wish]).toEqual(['offered', 'off', 'none']);
  });
});

describe('the sound check', () => {
  test('is one press away on the start screen until it was heard, with loudness and pace beside it', async () => {
    const session = await show(new FakeSession());
    await press(SOUND.offer);
    expect(session.asked).toEqual(['try the sound']);
    expect(text()).toContain(SOUND.heard);
    for (const label of [/^Loudness/, 'Pace of speech']) expect(screen.getByLabelText(label)).toBeTruthy();
    await press(SOUND.done);
    expect(session.settings.value.soundChecked).toBe(true);
    expect(screen.queryByRole('button', { name: SOUND.offer })).toBeNull();
  });

  test.each([
    [{ tones: 'stands still', speech: 'said' }, SOUND.standsStill],
    [{ tones: 'sounded', speech: 'no voice' }, SOUND.mute('English')],
    [{ tones: 'off', speech: 'said' }, SOUND.speechOnly],
    [{ tones: 'sounded', speech: 'off' }, SOUND.tonesOnly],
  ] as const)('where %o came of it, one sentence says what is so and what to do', async (heard, sentence) => {
    const session = new FakeSession();
    session.soundHeard = heard;
    await show(session);
    await press(SOUND.offer);
    expect(text()).toContain(sentence);
  });

  test('stands in the settings, and switches both on again where both are off', async () => {
    const session = new FakeSession();
    session.changeSettings({ sound: false, voice: { speak: false } });
    await show(session);
    await press('Settings');
    expect(text()).toContain(SOUND.off);
    await press(SOUND.switchOn);
    expect(session.settings.value).toMatchObject({ sound: true, voice: { speak: true } });
    await press(SOUND.play);
    expect(session.asked).toEqual(['try the sound']);
  });
});
