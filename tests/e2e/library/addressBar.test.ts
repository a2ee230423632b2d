// Contract of what the browser shows of the logbook without the panel: answers in the address bar, a mark on the button.
import { expect, test } from 'vitest';
import { click, library, put, started } from './shelves.ts';

test('the address bar answers with the last value as one types, in words that markup cannot break', async () => {
  const { worker } = await started();
  await put(worker, { kit: { ...library.kit, lenses: library.kit.lenses.map((lens) => ({ ...lens, name: 'Orrin 85 <b>&' })) } });
  const answers = await worker.evaluate(
    () =>
      new Promise<string[]>((done) => {
        let first = '';
        chrome.omnibox.setDefaultSuggestion = ({ description }) => {
          first = description;
          return Promise.resolve();
        };
        const typed = chrome.omnibox.onInputChanged as unknown as { dispatch(text: string, suggest: (more: { description: string }[]) => void): void };
        typed.dispatch('85', (more) => done([first, ...more.map(({ description }) => description)]));
      }),
  );
  expect(answers).toEqual(['+5  Orrin 85 &lt;b&gt;&amp; · Velde M1 · 85\u00a0mm · 4.25\u00a0m']);
});

test('the toolbar button is marked while a sweep is under way', async () => {
  const chromium = await started();
  const badge = () => chromium.worker.evaluate(() => chrome.action.getBadgeText({}));
  const page = await chromium.openTab();
  await page.waitForSelector('h1');
  await click(page, 'Practice camera');
  await click(page, 'Practise');
  await page.waitForSelector('[data-phase="dialling"]');
  await expect.poll(badge).toBe('…');
  await page.keyboard.press('x');
  await click(page, 'Next lens');
  await expect.poll(badge).toBe('');
});
