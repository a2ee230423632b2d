// English: whatever a sweep says.
import type { NotNow, Prompt } from '../../sweep/effect.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Rival } from '../../sweep/end/story.ts';
import type { Hold } from '../../sweep/hold.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { TurnWay } from '../../sweep/transfer/turning.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import type { Steps } from '../../units.ts';
import { sayCorrection, sayNumber } from '../../hearing/languages/en/sayCorrection.ts';
import type { InWords } from '../inWords.ts';
import type { SpokenWords } from '../spokenWords.ts';
import { drifted } from './drift.ts';
import { outcome } from './outcomes.ts';
import { reason, startAloud } from './reasons.ts';
import { capital } from '../run.ts';
import { sentences, together } from './sentence.ts';
import { TROUBLE_SAID } from './troubleSaid.ts';
import { readBack } from './verdict.ts';
import { write } from './write.ts';
import { taught } from '../taught.ts';

const both = (text: string): InWords => ({ spoken: text, written: text });

function prompt(one: Prompt): InWords {
  switch (one.say) {
    case 'opening': {
      const start = startAloud(one.next);
      const value = `set ${sayCorrection(one.next.value)}`;
      return { spoken: sentences(start === null ? value : `${value}, ${start}`), written: set(one.next) };
    }
    case 'next':
      return next(together(noted(one.noted), found(one.trouble)), one.next);
    case 'too early':
      return tooEarly(Math.max(1, Math.ceil(one.left)));
    case 'did it hold':
      return { spoken: 'Was it steady?', written: `The time is up at ${writeSteps(one.value)}. Was the light steady?` };
    case 'hold again':
      return holdAgain(one.value, one.why);
    case 'offer': {
      const { spoken, written } = one.trouble ? both(TROUBLE_SAID[one.trouble.trouble]) : outcome(one.outcome);
      const look = one.look && !one.trouble ? 'Live view still sharp?' : null;
      return { spoken: together(noted(one.noted), spoken, look, 'Accept?'), written: together(noted(one.noted), written, look, 'Accept it, or go on?') };
    }
    case 'check focus': {
      const before = together(noted(one.noted), found(one.trouble));
      return {
        spoken: together(before, DISAGREE[one.rival ?? 'none'], 'Check the focus in live view. Same or shifted?'),
        written: together(before, drifted(one.drift, one.rival), 'Look in live view: is it the same, or has it shifted?'),
      };
    }
    case 'turn the focus':
      return both(together(noted(one.noted), one.practice ? 'The practice camera turns its own ring.' : TURN[one.way], `Then say ${taught('shifted')}.`));
    case 'fresh series':
      return next('Fresh series.', one.next);
    case 'undone':
      return next('Undone.', one.next);
    case 'nothing to undo':
      return both('There is nothing to undo.');
    case 'paused':
      return both('Paused.');
    case 'outcome':
      return one.trouble ? both(`${TROUBLE_SAID[one.trouble.trouble]} See what to check.`) : afterwards(one.outcome, one.practice);
    case 'not now':
      return NOT_NOW[one.why];
  }
}

const noted = (hold: Hold | null): string | null => hold && sentences(readBack(hold.verdict));
const found = (trouble: Trouble | undefined): string | null => (trouble ? TROUBLE_SAID[trouble.trouble] : null);
const set = (suggested: Suggestion): string => `Set ${writeSteps(suggested.value)}: ${reason(suggested)}.`;

const next = (before: string, suggested: Suggestion): InWords => ({
  spoken: together(before, sentences(sayCorrection(suggested.value))),
  written: together(before, set(suggested)),
});

/** A value is to be entered, and said to be. After a width transfer the focus still stands aside. */
function afterwards(one: Outcome, practice: boolean): InWords {
  const words = outcome(one);
  if (one.found === 'carried over') return { ...words, spoken: `${words.spoken} Now focus again in live view.` };
  if (one.found !== 'band' || practice) return words;
  return { ...words, spoken: `Enter ${sayCorrection(one.chosen)}, then say ${taught('entered')}.` };
}

const tooEarly = (left: number): InWords => ({
  spoken: left === 1 ? 'One more second.' : sentences(`${sayNumber(left)} more seconds`),
  written: `Not yet: hold for ${write.count(left, { one: '# more second', other: '# more seconds' })}.`,
});

function holdAgain(value: Steps, why: 'unanswered' | 'cut off'): InWords {
  const because = why === 'unanswered' ? 'No answer came, so the hold does not count.' : 'The hold was cut off, so it does not count.';
  return { spoken: sentences('again', sayCorrection(value)), written: `${because} Set ${writeSteps(value)} and hold again.` };
}

/** Where two stories fit, both are said. */
const DISAGREE: Readonly<Record<Rival | 'none', string>> = {
  none: 'The holds disagree.',
  drifting: 'The holds disagree: the focus moved, or the band drifts.',
  play: 'The holds disagree: the focus moved, or the direction matters.',
};

const TURN: Readonly<Record<TurnWay, string>> = {
  first: 'In live view, turn the focus ring a little, until just off sharp.',
  further: 'The right way. Turn it a little further.',
  'other way': 'The wrong way. Turn it back past sharp.',
  back: 'Too far. Turn it halfway back.',
};

const NOT_NOW: Readonly<Record<NotNow, InWords>> = {
  'hold first': { spoken: 'Hold first.', written: 'No hold is under way. Begin one first.' },
  'hold under way': { spoken: 'Still holding.', written: 'A hold is under way. Answer it or undo it first.' },
  'answer first': { spoken: 'Was it steady?', written: 'First say what the light did.' },
  'off the scale': { spoken: 'Out of range.', written: 'This body has no such correction. Choose one in its range.' },
  paused: { spoken: 'Paused.', written: 'The sweep is paused. Resume it first.' },
  'not paused': { spoken: 'Not paused.', written: 'The sweep is not paused.' },
  finished: { spoken: 'Finished.', written: 'The sweep is finished. Undo takes the finish back.' },
  'no arrows': { spoken: 'No arrows on this body.', written: 'The kit says that this body shows no arrows. If it does show them, change that in the kit.' },
  'check focus first': { spoken: 'Same or shifted?', written: 'First look at the focus in live view: is it the same, or has it shifted?' },
  get 'turn first'() {
    return { spoken: `${capital(taught('shifted'))}?`, written: `First turn the focus in live view. Then say “${taught('shifted')}”.` };
  },
  'nothing to check': { spoken: 'Nothing to check.', written: 'The focus is not in question now.' },
  'nothing to enter': { spoken: 'There is no value to enter.', written: 'This result gives no value to enter.' },
  get 'not offered'() {
    return { spoken: 'Not ready yet.', written: `There is no result yet. To end the sweep as it stands, say “${taught('finish')}”.` };
  },
};

function spelled(value: number): string {
  const digits = [...String(Math.abs(value))];
  const whole = sayCorrection(value);
  return digits.length < 2 ? whole : `${whole}, ${digits.map((digit) => sayNumber(Number(digit))).join(' ')}`;
}

export const words: SpokenWords = {
  prompt,
  correction: sayCorrection,
  brief: (one) => (one.say === 'did it hold' ? 'Steady?' : sentences(sayCorrection(one.next.value))),
  reason,
  outcome,
  help: (now) => both(`You can say: ${now.map((word) => (word === 'set' ? `${taught('set')} plus or minus a number` : taught(word))).join(', ')}.`),
  askBack: {
    // "Left?", "Minus fifteen, one five?"
    question: ({ input, words: heard }) => ({
      spoken: `${capital(input.told === 'set' ? spelled(input.value) : heard)}?`,
      written: `Was that “${heard}”? If so, say it again. If not, say “${taught('undo')}” or another word.`,
    }),
    notTaken: { spoken: 'Not taken.', written: 'That was not taken. Say what it was.' },
    sayAgain: { spoken: 'Say that again.', written: 'That was not clear. Say it again.' },
  },
  mark: {
    made: (value) => ({
      spoken: `${capital(sayCorrection(value))} is marked as entered.`,
      written: `${writeSteps(value)} is marked as entered in the camera. Undo takes the mark back.`,
    }),
    madeBefore: (value) => ({
      spoken: `${capital(sayCorrection(value))} is marked already.`,
      written: `${writeSteps(value)} is already marked as entered in the camera.`,
    }),
    takenBack: (value) => ({ spoken: 'The mark is taken back.', written: `The mark is taken back: ${writeSteps(value)} does not count as entered.` }),
  },
};
