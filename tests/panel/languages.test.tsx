// @vitest-environment happy-dom
// Contract of the languages on the screen: what stands there changes with what is chosen, with its labels and its state, and the page says it.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Distances } from '../../src/country.ts';
import type { Languages } from '../../src/language.ts';
import { createTroubles } from '../../src/panel/session/troubles.ts';
import { watchLanguages } from '../../src/panel/session/watchLanguages.ts';
import { rememberedDistances, wearLanguages } from '../../src/platform/language.ts';
import { words as english } from '../../src/words/en/settings.ts';
import { words as german } from '../../src/words/de/settings.ts';
import { words as japanese } from '../../src/words/ja/settings.ts';
import { changeLanguages } from '../../src/words/catalogue.ts';
import { write } from '../../src/words/en/write.ts';
import { millimetres } from '../../src/units.ts';
import type { SettingsWords } from '../../src/words/settingsWords.ts';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text } from './show.tsx';

const { distance } = write;
const worn: Languages[] = [];

/** The settings, over a session that follows what is chosen. */
beforeEach(async () => {
  worn.length = 0;
  const session = new FakeSession();
  const wear = (languages: Languages, distances: Distances): void => {
    worn.push(languages);
    wearLanguages(languages, distances);
  };
  await watchLanguages({ library: session, languages: { liked: () => ['en-GB'], wear }, troubles: createTroubles() });
  await show(session);
  await act(() => void click('Settings'));
  await partsRead();
});

afterEach(async () => {
  cleanup();
  await changeLanguages({ screens: 'en', voice: 'en' });
});

async function choose(label: string, value: string): Promise<void> {
  await act(() => void fireEvent.change(screen.getByLabelText(label), { target: { value } }));
  await partsRead();
  await partsRead();
}

const standsIn = ({ title, working, sound, look }: SettingsWords): void => {
  expect(screen.getByRole('heading', { name: title })).toBeTruthy();
  for (const sentence of [working.pace, sound.speak, look.theme]) expect(text()).toContain(sentence);
};

test('the language of the screens changes what stands there, at once and back', async () => {
  standsIn(english);
  await choose(english.language.screens, 'de');
  standsIn(german);
  expect(text()).not.toContain(english.working.pace);
  expect(document.documentElement.lang).toBe('de');
  await choose(german.language.screens, 'ja');
  standsIn(japanese);
  await choose(japanese.language.screens, 'browser');
  standsIn(english);
  expect(worn.map(({ screens }) => screens)).toEqual(['en', 'de', 'ja', 'en']);
});

test('the language of the voice leaves the screens as they are, and its state is told beside its name', async () => {
  await choose(english.language.voice, 'de');
  standsIn(english);
  expect(worn.at(-1)).toEqual({ screens: 'en', voice: 'de' });
  expect(document.documentElement.lang).toBe('en');
  expect(text()).toContain(english.states.language('English', 'Deutsch'));
});

test('every language is offered by its own name', () => {
  const offered = [...screen.getByLabelText(english.language.voice).querySelectorAll('option')].map((option) => option.textContent);
  expect(offered).toEqual([english.language.asScreens, 'English', 'Deutsch', 'Español', 'Français', '日本語']);
});

test('what distances are told in is the country’s until it is chosen, and is remembered with the languages', async () => {
  expect(distance(millimetres(4250))).toBe('4.25\u00a0m');
  await choose(english.language.distances, 'ft');
  expect(distance(millimetres(4250))).toBe('13.9\u00a0ft');
  expect(rememberedDistances()).toBe('ft');
  await choose(english.language.distances, 'country');
  expect([distance(millimetres(4250)), rememberedDistances()]).toEqual(['4.25\u00a0m', 'country']);
});
