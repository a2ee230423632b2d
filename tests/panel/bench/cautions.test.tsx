// @vitest-environment happy-dom
// Contract of cautions and of what stands beside a slider: what is put together on the screen is put together as its language does it.
import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { Cautions } from '../../../src/panel/bench/cautions.tsx';
import { changeLanguages, readWords, words } from '../../../src/words/catalogue.ts';

afterEach(async () => {
  cleanup();
  await changeLanguages({ screens: 'en', voice: 'en' });
});

test('between the warning and its sentence stands a blank where the language has one', async () => {
  await readWords('cautions', 'sound');
  const shown = (): string => render(<Cautions all={[{ may: 'hurt', is: 'heavy lens' }]} />).container.textContent ?? '';
  expect(shown()).toMatch(/^Take care\. \S/u);
  await changeLanguages({ screens: 'ja', voice: 'ja' });
  expect(shown()).toMatch(/^注意。[^\s]/u);
});

test('what comes after a name is parted from it by the language’s own mark', async () => {
  await readWords('sound');
  const said: string[] = [];
  for (const screens of ['en', 'de', 'fr', 'ja'] as const) {
    await changeLanguages({ screens, voice: screens });
    said.push(words('sound').loudnessAt(60));
  }
  expect(said).toEqual(['Loudness: 60%', 'Lautstärke: 60\u00a0%', 'Volume\u00a0: 60\u00a0%', '音量：60%']);
});
