// @vitest-environment happy-dom
// Contract of what stands on the screen while its language changes: what is wrong with a form, what was told last, and whose sweep it is are drawn
// from what they are, not from the sentence that they first were.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { watchLanguages } from '../../src/panel/session/watchLanguages.ts';
import { createTroubles } from '../../src/panel/session/troubles.ts';
import { subjectInWords } from '../../src/panel/words/subjects.ts';
import { words as german } from '../../src/words/de/kit.ts';
import { words as germanSession } from '../../src/words/de/session.ts';
import { words as english } from '../../src/words/en/kit.ts';
import { changeLanguages, readWords } from '../../src/words/catalogue.ts';
import { millimetres } from '../../src/units.ts';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text } from './show.tsx';
import { sweeping } from './session/sweeping.ts';
import { settle } from './session/world.ts';

afterEach(async () => {
  cleanup();
  await changeLanguages({ screens: 'en', voice: 'en' });
});

const inGerman = (): Promise<void> => changeLanguages({ screens: 'de', voice: 'en' });

test('what is wrong with a form of the kit', async () => {
  await show(new FakeSession());
  for (const name of ['Kit', 'Add a body', english.save]) {
    await act(() => void click(name));
    await partsRead();
  }
  expect(text()).toContain(english.fault['no name']);
  await act(inGerman);
  await partsRead();
  expect(text()).toContain(german.fault['no name']);
  expect(text()).not.toContain(english.fault['no name']);
  expect(screen.getByLabelText(german.fields.name).getAttribute('aria-invalid')).toBe('true');
});

test('what was told last and what became of it', async () => {
  const { window } = await sweeping();
  await window.tell('holding');
  const { heard } = window.session;
  expect(heard.value).toMatchObject({ words: 'holding', became: 'hold at 0' });
  await inGerman();
  expect(heard.value?.became).toBe('Probe bei 0');
  await changeLanguages({ screens: 'en', voice: 'en' });
  expect(heard.value?.became).toBe('hold at 0');
});

test('what became of words that were heard, which stay as they were said', async () => {
  const { window } = await sweeping({ voice: { listen: 'browser' } });
  window.ear?.onHeard([{ text: 'set seven' }], true);
  await settle();
  const { heard } = window.session;
  expect(heard.value).toMatchObject({ words: 'set seven', became: 'not clear' });
  await inGerman();
  expect(heard.value?.words).toBe('set seven');
  expect(heard.value?.became).toBe(germanSession.became['not clear']);
});

test('the names of the practice camera, also in a sweep that was opened in another language', async () => {
  await readWords('told', 'session');
  const subject = { situation: 'practice', body: 'Practice camera', lens: 'Practice lens', focalLength: millimetres(50), distance: millimetres(2500) };
  expect(subjectInWords(subject).lens).toBe('Practice lens');
  await inGerman();
  const { lens, details } = subjectInWords(subject);
  expect(`${lens} ${details}`).not.toMatch(/Practice/u);
  expect(subjectInWords({ ...subject, situation: 's' }).lens).toBe('Practice lens');
});

test('that a language could not be read is told until one can', async () => {
  const troubles = createTroubles();
  const session = new FakeSession();
  let broken = true;
  const wear = (): void => {
    if (broken) throw new Error('The browser refuses.');
  };
  await watchLanguages({ library: session, languages: { liked: () => ['en-GB'], wear }, troubles });
  expect(troubles.list.value.map(({ id }) => id)).toEqual(['languages']);
  broken = false;
  session.changeSettings({ language: { screens: 'de', voice: 'screens' } });
  await settle();
  await settle();
  expect(troubles.list.value).toEqual([]);
});
