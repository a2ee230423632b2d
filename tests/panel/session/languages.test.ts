// Contract of the languages in a session: it opens in the browser's, follows what is chosen at once, speaks and listens in one while it writes in
// another, and stays in the old one where the new cannot be read.
import { afterEach, describe, expect, test, vi } from 'vitest';
import { GERMAN_WRITTEN } from '../../../src/hearing/languages/de/vocabulary.ts';
import type { Languages } from '../../../src/language.ts';
import { words as germanSession } from '../../../src/words/de/session.ts';
import { words as englishSession } from '../../../src/words/en/session.ts';
import { words as germanFirst } from '../../../src/words/de/first.ts';
import { words as germanSettings } from '../../../src/words/de/settings.ts';
import { words as englishSettings } from '../../../src/words/en/settings.ts';
import { aloud, changeLanguages, words } from '../../../src/words/catalogue.ts';
import { inUse } from '../../../src/words/inUse.ts';
import { correctionSaid, questionSaid, taught } from '../../../src/words/taught.ts';
import { addKit } from './sweeping.ts';
import { Computer, settle, type Window } from './world.ts';

const GERMAN: Languages = { screens: 'de', voice: 'de' };
const GERMAN_SPOKEN_ENGLISH: Languages = { screens: 'de', voice: 'en' };

afterEach(() => changeLanguages({ screens: 'en', voice: 'en' }));

/** A window on a computer whose browser is German, with a sweep under way. */
async function inGerman(language: Partial<{ voice: 'en' | 'de' | 'screens' }> = {}): Promise<{ computer: Computer; window: Window }> {
  const computer = new Computer();
  computer.languages = ['de-AT', 'en-GB'];
  const window = await computer.open();
  window.session.changeSettings({ language, voice: { listen: 'browser' } });
  await settle();
  const begun = await window.session.begin(addKit(window));
  if (!begun.ok) throw new Error(begun.fault);
  await settle();
  computer.log.length = 0;
  return { computer, window };
}

const said = ({ log }: Computer): string[] => log.flatMap((line) => (line.startsWith('say ') ? [line.slice('say '.length)] : []));

describe('a session', () => {
  test('opens in the first language of the browser that is there', async () => {
    const computer = new Computer();
    computer.languages = ['nl-NL', 'de-AT', 'en-GB'];
    const { worn } = await computer.open();
    expect([inUse.value, worn]).toEqual([GERMAN, GERMAN]);
    expect(words('settings').title).toBe(germanSettings.title);
  });

  test('opens in the language that was chosen, whatever the browser likes', async () => {
    const computer = new Computer();
    const first = await computer.open();
    first.session.changeSettings({ language: { screens: 'de' } });
    await settle();
    expect([inUse.value, first.worn]).toEqual([GERMAN, GERMAN]);
    await changeLanguages({ screens: 'en', voice: 'en' });
    expect((await computer.open()).worn).toEqual(GERMAN);
    expect(inUse.value).toEqual(GERMAN);
  });

  test('follows what is chosen at once, back and forth', async () => {
    const { session } = await new Computer().open();
    const title = async (screens: 'de' | 'ja' | 'browser'): Promise<string> => {
      session.changeSettings({ language: { screens } });
      await settle();
      return words('settings').title;
    };
    expect(await title('de')).toBe(germanSettings.title);
    expect(await title('ja')).not.toBe(germanSettings.title);
    expect(await title('browser')).toBe(englishSettings.title);
  });
});

describe('where the screens are German and the voice is English', () => {
  test('what is said is English, and what is shown is German', async () => {
    const { computer, window } = await inGerman({ voice: 'en' });
    expect([inUse.value, window.worn]).toEqual([GERMAN_SPOKEN_ENGLISH, GERMAN_SPOKEN_ENGLISH]);
    window.ear?.onHeard([{ text: 'set seven' }], true);
    await settle();
    expect(said(computer)).toEqual([aloud('spoken').askBack.sayAgain.spoken]);
    expect(said(computer)).toEqual(['Say that again.']);
    expect(window.session.heard.value).toMatchObject({ words: 'set seven', became: germanSession.became['not clear'] });
    expect(germanSession.became['not clear']).not.toBe(englishSession.became['not clear']);
  });

  test('the words to say are English, in every sentence that names them', async () => {
    await inGerman({ voice: 'en' });
    expect([taught('solid'), correctionSaid(-12), questionSaid()]).toEqual(['solid', 'minus twelve', 'look up']);
    expect(words('voice').sheet.begin).toMatch(/^Beginnen .*„holding“/);
  });

  test('English is understood and German is not', async () => {
    const { window } = await inGerman({ voice: 'en' });
    await window.tell('holding');
    expect(window.ear?.language.tag).toBe('en-US');
    expect(window.ear?.wordsNow()).toContain('flicker');
    expect(window.ear?.onHeard([{ text: GERMAN_WRITTEN.words.flicker.say }], true)).toBe(false);
    expect(window.ear?.onHeard([{ text: 'flicker' }], true)).toBe(true);
    await settle();
    expect(window.session.sweep.value?.holds.at(-1)).toMatchObject({ by: 'voice', verdict: { light: 'flicker' } });
  });
});

describe('where everything is German', () => {
  test('German is said, shown and understood', async () => {
    const { computer, window } = await inGerman();
    await window.tell('holding');
    computer.log.length = 0;
    expect(window.ear?.language.tag).toBe('de-DE');
    expect(window.ear?.wordsNow()).toEqual(expect.arrayContaining([taught('flicker'), taught('solid')]));
    expect([taught('flicker'), correctionSaid(-12)]).toEqual([GERMAN_WRITTEN.words.flicker.say, 'minus zwölf']);
    expect(window.ear?.onHeard([{ text: GERMAN_WRITTEN.words.flicker.say }], true)).toBe(true);
    await settle();
    expect(window.session.sweep.value?.holds.at(-1)).toMatchObject({ by: 'voice', verdict: { light: 'flicker' } });
    expect(said(computer)).toEqual([expect.stringMatching(/^Flackert\. (Plus|Minus) [a-zäöüß]+\.$/)]);
  });

  test('another voice is heard from the moment it is chosen, and its words are the taught ones', async () => {
    const { window } = await inGerman();
    await window.tell('holding');
    window.session.changeSettings({ language: { voice: 'en' } });
    await settle();
    expect(window.ear?.language.tag).toBe('en-US');
    expect(window.ear?.wordsNow()).toContain('flicker');
    expect(window.ear?.wordsNow()).not.toContain(GERMAN_WRITTEN.words.flicker.say);
  });
});

describe('a language that cannot be read', () => {
  test('is told in the old one, which stays; another may be chosen', async () => {
    vi.doMock('../../../src/words/fr/areas.ts', () => {
      throw new Error('The file is gone.');
    });
    const { window } = await inGerman();
    window.session.changeSettings({ language: { screens: 'fr' } });
    await settle();
    expect([inUse.value, window.worn]).toEqual([GERMAN, GERMAN]);
    expect(window.session.troubles.value.map(({ sentence }) => sentence)).toEqual([germanFirst.unread]);
    expect(words('settings').title).toBe(germanSettings.title);
    window.session.changeSettings({ language: { screens: 'en', voice: 'screens' } });
    await settle();
    expect(words('settings').title).toBe(englishSettings.title);
    vi.doUnmock('../../../src/words/fr/areas.ts');
  });
});
