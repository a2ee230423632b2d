// The matcher on what a general recogniser may write down: commands, values, look-ups and other speech.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { WORDS, type Word } from '../../../src/sweep/inputs.ts';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import { matcherFor, type Matcher } from '../../../src/voice/phonetic/match.ts';
import type { Match } from '../../../src/voice/matching.ts';
import { least, most, shown, type Figure } from '../figure.ts';

const Transcripts = v.object({
  want: v.array(v.object({ heard: v.string(), want: v.string() })),
  reject: v.array(v.string()),
  lookup: v.optional(v.array(v.object({ heard: v.string(), query: v.string() })), []),
  'no lookup': v.optional(v.array(v.string()), []),
  confirm: v.optional(v.array(v.object({ heard: v.string(), value: v.number() })), []),
});

/** The data's names for commands, and the words here that do what they ask. */
const MEANT: Readonly<Record<string, readonly Word[]>> = {
  pass: ['solid'],
  late: ['delayed'],
  none: ['nothing'],
  even: ['balanced'],
  uneven: ['lopsided'],
  hold: ['holding'],
  accept: ['accept', 'finish'],
};

/** Words that count together at one time: about those of each phase of a sweep. */
const STATES: readonly (readonly Word[])[] = [
  ['holding', 'undo', 'repeat', 'pause', 'skip', 'set', 'finish', 'help'],
  ['solid', 'delayed', 'flicker', 'nothing', 'left', 'right', 'balanced', 'lopsided', 'undo', 'repeat', 'pause', 'help'],
  ['accept', 'go on', 'undo', 'repeat', 'pause', 'set', 'finish', 'help'],
  ['resume', 'undo', 'repeat', 'finish', 'help'],
  ['same', 'shifted', 'undo', 'repeat', 'pause', 'help'],
];

export function onTranscripts(data: string): Figure[] | null {
  const file = join(data, 'heard-transcripts.json');
  if (!existsSync(file)) return null;
  const texts = v.parse(Transcripts, JSON.parse(readFileSync(file, 'utf8'))).want.map(({ heard }) => heard);
  return [...onFile(file, ''), most('matcher, ms for 5 candidates and all words (median)', millisecondsForFive(texts, matcherFor(ENGLISH).match), 3)];
}

/** Those that the matcher was not made from: see heldOut/recipe.ts. */
export const onHeldOut = (): Figure[] => [
  ...onFile('tests/bench/hearing/heldOut/tuning.json', 'held out, tuned on: '),
  ...onFile('tests/bench/hearing/heldOut/setAside.json', 'held out, set aside: '),
];

function onFile(file: string, of: string): Figure[] {
  const all = v.parse(Transcripts, JSON.parse(readFileSync(file, 'utf8')));
  const { match, questionIn } = matcherFor(ENGLISH);
  const given = (heard: string, allowed: readonly Word[]): Match => match([{ text: heard }], allowed, true);
  const stateFor = (words: readonly Word[]) => STATES.filter((state) => words.every((word) => state.includes(word)));

  let right = 0;
  let asked = 0;
  let wrong = 0;
  let tried = 0;
  let rightOpen = 0;
  let wrongOpen = 0;
  for (const { heard, want } of all.want) {
    const words: readonly Word[] = want.startsWith('set:') ? ['set'] : (MEANT[want] ?? [want as Word]);
    const meant: readonly string[] = want.startsWith('set:') ? [`set:${want.slice(4)}`] : words;
    for (const state of stateFor(words)) {
      tried++;
      const answer = given(heard, state);
      if (answer.is === 'unclear') asked++;
      if (answer.is === 'taken') {
        if (meant.includes(nameOf(answer))) right++;
        else wrong++;
      }
    }
    const open = given(heard, WORDS);
    if (open.is !== 'ignored' && (open.is === 'unclear' || meant.includes(nameOf(open)))) rightOpen++;
    else if (open.is === 'taken') wrongOpen++;
  }
  const actedOn = (state: readonly Word[]) => all.reject.filter((heard) => given(heard, state).is === 'taken').length;
  const askedAbout = (state: readonly Word[]) => all.reject.filter((heard) => given(heard, state).is === 'unclear').length;
  const mean = (counts: readonly number[]): number => (100 * counts.reduce((sum, n) => sum + n, 0)) / (counts.length * all.reject.length);
  const share = (count: number, whole: readonly unknown[]): number => (100 * count) / whole.length;
  const figures: Figure[] = [
    least('transcripts right or asked back, % (words of the state)', (100 * (right + asked)) / tried, 95),
    shown('transcripts right, %', (100 * right) / tried),
    most('wrong commands taken', wrong, 0),
    least('right or asked back, % (all words at once)', share(rightOpen, all.want), 93),
    most('wrong commands taken (all words at once)', wrongOpen, 0),
    most('other speech acted on, % (words of the state)', mean(STATES.map(actedOn)), 4),
    shown('other speech acted on, % (all words at once)', mean([actedOn(WORDS)])),
    shown('other speech asked about, % (words of the state)', mean(STATES.map(askedAbout))),
    ...(all.lookup.length > 0
      ? [least('look-ups found, %', share(all.lookup.filter(({ heard, query }) => questionIn(heard) === query).length, all.lookup), 90)]
      : []),
    ...(all['no lookup'].length > 0
      ? [most('other talk taken for a look-up, %', share(all['no lookup'].filter((heard) => questionIn(heard) !== null).length, all['no lookup']), 5)]
      : []),
    ...(all.confirm.length > 0
      ? [least('doubtful values asked back, %', share(all.confirm.filter(({ heard }) => given(heard, ['set']).is === 'unclear').length, all.confirm), 100)]
      : []),
  ];
  return figures.map((figure) => ({ ...figure, name: of + figure.name }));
}

/** The median over lists of five guesses, so that a busy machine does not count. */
function millisecondsForFive(texts: readonly string[], match: Matcher['match']): number {
  const spent: number[] = [];
  for (let at = 0; at + 5 <= texts.length; at++) {
    const five = texts.slice(at, at + 5).map((text) => ({ text }));
    const started = performance.now();
    match(five, WORDS, true);
    spent.push(performance.now() - started);
  }
  return spent.sort((a, b) => a - b)[spent.length >> 1] ?? Infinity;
}

function nameOf(answer: Extract<Match, { is: 'taken' }>): string {
  return answer.input.told === 'set' ? `set:${answer.input.value}` : answer.words;
}
