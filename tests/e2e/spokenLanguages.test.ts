// Contract of a first sweep by voice in every language: from the start to the value marked as entered, by the words of that language alone, as a
// recogniser writes them down, and with no verdict that was not said. The browsers run side by side: most of the time is spent holding.
import { expect, test } from 'vitest';
import { HEARD } from '../../src/hearing/languages.ts';
import type { Vocabulary } from '../../src/hearing/languages/heardLanguage.ts';
import type { Language } from '../../src/language.ts';
import type { Word as SpokenWord } from '../../src/sweep/inputs.ts';
import type { Journal } from '../../src/sweep/event.ts';
import type { Settings } from '../../src/settings.ts';
import { USUAL_SETTINGS } from '../../src/usualSettings.ts';
import { USUAL_MANNER } from '../../src/sweep/usualManner.ts';
import { replay } from '../../src/sweep/transition.ts';
import { seconds } from '../../src/units.ts';
import { eye } from './byOwnWords.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { OTHERS } from './languages/worn.ts';
import { answer, murmuring } from './murmuring.ts';
import { seatAt, type, until, untilMark, untilPhase, type Seat } from './seat.ts';
import { startSpeechService } from './speech-service.ts';

const LIGHT = { solid: 'steady', delayed: 'late', flicker: 'flicker', nothing: 'dark' } as const;

const listening = (screens: Language): Settings => ({
  ...USUAL_SETTINGS,
  manner: { ...USUAL_MANNER, care: 'quick', holdTime: seconds(3) },
  voice: { ...USUAL_SETTINGS.voice, listen: 'browser', wish: 'browser' },
  language: { screens, voice: 'screens', distances: 'country' },
});

/** Values of the person's own, before the panel chooses: the light flickers there, and stays dark. */
const OWN = [-2, -9];

/** What comes back for a word, one way after another: as it is taught, as the first of a sentence, with a full stop, and as it is also said. */
function writtenDown({ words, signs }: Vocabulary): (word: SpokenWord, value: number | undefined) => string {
  const times = new Map<SpokenWord, number>();
  return (word, value) => {
    if (word === 'set') return `${words.set.say} ${signs.minus[0]} ${Math.abs(value ?? 0)}`;
    const { say, also } = words[word];
    const ways = [say, `${say.charAt(0).toLocaleUpperCase()}${say.slice(1)}`, ...also.slice(0, 1), `${say}.`];
    const count = times.get(word) ?? 0;
    times.set(word, count + 1);
    return ways[count % ways.length] ?? say;
  };
}

interface Seen {
  readonly phase: string | undefined;
  readonly value: number | null;
}

/** Whatever the language is. */
const see = (seat: Seat): Promise<Seen> =>
  seat.evaluate(() => {
    const written = document.querySelector('.face .value')?.textContent?.replace('\u2212', '-');
    return { phase: document.querySelector('main')?.dataset['phase'], value: written ? Number(written) : null };
  });

/** What a person says now, with an eye at the finder whose light holds from 2 to 8. */
async function wordFor({ phase, value }: Seen, own: number | undefined): Promise<SpokenWord | null> {
  if (phase === 'dialling') return own === undefined || own === value ? 'holding' : 'set';
  if (phase === 'offered') return 'accept';
  if (phase === 'checking') return 'same';
  if (phase === 'finished') return 'entered';
  if (value === null) return null;
  const word = await eye(value);
  return phase === 'judging' || (phase === 'holding' && word !== 'solid') ? word : null;
}

let last: Promise<unknown> = Promise.resolve();

/** One browser starts after another, or each would start too slowly. */
function inTurn<T>(start: () => Promise<T>): Promise<T> {
  const started = last.then(start);
  last = started.catch(() => undefined);
  return started;
}

async function storedIn({ worker }: Chromium): Promise<{ live: Journal; entered: readonly number[] }> {
  const all = await worker.evaluate(() => chrome.storage.local.get(null));
  const entries = Object.entries(all).filter(([key]) => key.startsWith('entry:')) as [string, { value: number }][];
  return { live: (all['live'] ?? []) as Journal, entered: entries.map(([, { value }]) => value) };
}

test.concurrent.for(OTHERS)('in %s words alone lead from the start to the value marked as entered', { timeout: 240_000 }, async (language, context) => {
  const speaker = writtenDown(await HEARD[language].written());
  let seat: Seat | null = null;
  const said: SpokenWord[] = [];
  let held = 0;
  const service = await startSpeechService((utterance) =>
    answer(utterance, async () => {
      const seen = seat && (await see(seat));
      if (seen === null) return null;
      if (seen.phase === 'dialling' && held < OWN.length) held = replay((await storedIn(chromium)).live).holds.length;
      const own = OWN[held];
      const word = await wordFor(seen, own);
      if (word === null) return null;
      said.push(word);
      return speaker(word, own);
    }),
  );
  context.onTestFinished(service.close);
  const chromium = await inTurn(() => launchChromium({ args: [...murmuring(context.onTestFinished), ...service.args] }));
  context.onTestFinished(chromium.close);
  await chromium.worker.evaluate((settings) => chrome.storage.local.set({ settings }), listening(language));
  const mine = seatAt(await chromium.openPanel());
  await until(mine, 'the start', ({ screen, text }) => screen === 'start' && text.includes('+20'));
  await type(mine, 'Orrin 85 f/1.8');
  await mine.click('#start-button');
  await untilPhase(mine, 'dialling');
  await untilMark(mine, 'listening');
  const began = performance.now();
  let journal: Journal = [];
  seat = mine;
  await context.expect
    .poll(
      async () => {
        const { live, entered } = await storedIn(chromium);
        if (live.length > 0) journal = live;
        return entered;
      },
      { timeout: 200_000, interval: 500 },
    )
    .toEqual([5]);
  seat = null;

  const { holds, phase } = replay(journal);
  const should = await Promise.all(holds.map(({ value }) => eye(value)));
  const wrong = holds.filter(({ verdict }, index) => verdict.light !== LIGHT[should[index] ?? 'solid']);
  console.log(
    `${language}: ${holds.length} holds, ${said.length} words in ${Math.round((performance.now() - began) / 1000)} s, ${wrong.length} verdicts wrong`,
  );
  expect(phase.name).toBe('finished');
  expect(holds.slice(0, OWN.length).map(({ value }) => value)).toEqual(OWN);
  expect(wrong).toEqual([]);
  expect(journal.filter((event) => 'by' in event && event.by !== 'voice')).toEqual([]);
  expect(said).toEqual(expect.arrayContaining(['set', 'holding', 'solid', 'delayed', 'flicker', 'nothing', 'accept', 'entered']));
  expect(await mine.evaluate(() => document.documentElement.lang)).toBe(language);
});
