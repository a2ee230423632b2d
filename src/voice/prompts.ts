// Every prompt of a sweep in words. What is spoken is as short as it can be, because it is heard dozens of times and
// the next hold waits for it; what is written says the same in a whole sentence, with the reason.
import type { NotNow, Prompt } from '../sweep/effect.ts';
import type { Word } from '../sweep/inputs.ts';
import type { Outcome } from '../sweep/end/outcome.ts';
import type { Suggestion } from '../sweep/next/suggestion.ts';
import type { TurnWay } from '../sweep/transfer/turning.ts';
import { writeSteps } from '../sweep/scale.ts';
import type { Trouble } from '../sweep/trouble/trouble.ts';
import type { Verdict } from '../sweep/verdict.ts';
import type { Steps } from '../units.ts';
import { sayCorrection, sayNumber } from './numbers.ts';
import { outcomeInWords, type InWords } from './outcomes.ts';
import { reasonInWords, startAloud } from './reasons.ts';
import { TROUBLE_SAID } from './troubles.ts';
import { ARROWS, LIGHT, TAUGHT } from './vocabulary/en.ts';

export function promptInWords(prompt: Prompt): InWords {
  switch (prompt.say) {
    case 'opening':
      return { spoken: sentences([`set ${sayCorrection(prompt.next.value)}`, startAloud(prompt.next)].filter(Boolean).join(', ')), written: `Set ${withReason(prompt.next)}.` };
    case 'next':
      return after(prompt.noted && readBack(prompt.noted), prompt.next, prompt.trouble);
    case 'too early':
      return tooEarly(Math.max(1, Math.ceil(prompt.left)));
    case 'did it hold':
      return { spoken: 'Did it hold?', written: `The time is up at ${writeSteps(prompt.value)}. Did it hold?` };
    case 'hold again':
      return holdAgain(prompt.value, prompt.why);
    case 'offer': {
      const { spoken, written } = prompt.trouble ? both(TROUBLE_SAID[prompt.trouble.trouble]) : outcomeInWords(prompt.outcome);
      const noted = prompt.noted ? readBack(prompt.noted) : null;
      const look = prompt.look && !prompt.trouble ? ' Live view still sharp?' : '';
      return { spoken: `${sentences(noted)} ${spoken}${look} Accept?`.trim(), written: `${sentences(noted)} ${written}${look} Accept it, or go on?`.trim() };
    }
    case 'check focus': {
      const trouble = prompt.trouble ? `${TROUBLE_SAID[prompt.trouble.trouble]} ` : '';
      const noted = `${prompt.noted ? `${sentences(readBack(prompt.noted))} ` : ''}${trouble}`;
      return {
        spoken: `${noted}The holds disagree. Check the focus in live view. Same or shifted?`,
        written:
          `${noted}The holds after the first ${sayNumber(prompt.drift.afterHold)} disagree with them, as if the focus had moved. ` +
          'Look in live view: is it the same, or has it shifted?',
      };
    }
    case 'turn the focus': {
      const turn = prompt.practice ? 'The practice camera turns its own ring.' : TURN[prompt.way];
      return both([prompt.noted && sentences(readBack(prompt.noted)), turn, 'Then say shifted.'].filter(Boolean).join(' '));
    }
    case 'fresh series':
      return after('fresh series', prompt.next);
    case 'undone':
      return after('undone', prompt.next);
    case 'nothing to undo':
      return both('There is nothing to undo.');
    case 'paused':
      return both('Paused.');
    case 'outcome':
      return prompt.trouble ? troubled(prompt.trouble) : afterwards(prompt.outcome, prompt.practice);
    case 'not now':
      return NOT_NOW[prompt.why];
  }
}

/**
 * The same for a person who has heard it many times: only what is new. What was told by voice is still read back, as it may
 * have been misheard; a key or a press has its tone.
 */
export function tersely(prompt: Prompt): InWords {
  const full = promptInWords(prompt);
  if (prompt.say === 'did it hold') return { ...full, spoken: 'Held?' };
  if (prompt.say !== 'next' || prompt.trouble || prompt.noted?.by === 'voice') return full;
  return { ...full, spoken: sentences(sayCorrection(prompt.next.value)) };
}

/** A verdict in the words that are taught for it: "flicker, left". */
export const readBack = ({ verdict }: { readonly verdict: Verdict }): string =>
  [LIGHT[verdict.light].noted, ARROWS[verdict.arrows]].filter(Boolean).join(', ');

const troubled = (trouble: Trouble): InWords => both(`${TROUBLE_SAID[trouble.trouble]} See what to check.`);

/** A value is to be entered, and said to be. After a width transfer the focus still stands aside. */
function afterwards(outcome: Outcome, practice: boolean): InWords {
  const words = outcomeInWords(outcome);
  if (outcome.found === 'carried over') return { ...words, spoken: `${words.spoken} Now focus sharp again.` };
  if (outcome.found !== 'band' || practice) return words;
  return { ...words, spoken: `Enter ${sayCorrection(outcome.chosen)}, then say entered.` };
}

/** The words that make sense now, for a person who asks. */
export function helpInWords(words: readonly Word[]): InWords {
  const said = words.map((word) => (word === 'set' ? 'set plus or minus a number' : TAUGHT[word]));
  return both(`You can say: ${said.join(', ')}.`);
}

const both = (text: string): InWords => ({ spoken: text, written: text });

function after(first: string | null, next: Suggestion, trouble?: Trouble): InWords {
  const before = [sentences(first), trouble && TROUBLE_SAID[trouble.trouble]].filter(Boolean).join(' ');
  return {
    spoken: `${before} ${sentences(sayCorrection(next.value))}`.trim(),
    written: `${before} Set ${withReason(next)}.`.trim(),
  };
}

const withReason = (next: Suggestion): string => `${writeSteps(next.value)}: ${reasonInWords(next)}`;

const tooEarly = (left: number): InWords =>
  left === 1
    ? { spoken: 'One more second.', written: 'Not yet: hold for one more second.' }
    : { spoken: `${sentences(`${sayNumber(left)} more seconds`)}`, written: `Not yet: hold for ${sayNumber(left)} more seconds.` };

function holdAgain(value: Steps, why: 'unanswered' | 'cut off'): InWords {
  const because = why === 'unanswered' ? 'No answer came' : 'The hold was cut off';
  return {
    spoken: sentences('again', sayCorrection(value)),
    written: `${because}, so it does not count. Set ${writeSteps(value)} and hold again.`,
  };
}

const TURN: Record<TurnWay, string> = {
  first: 'In live view turn the focus ring a little, until just off sharp.',
  further: 'The right way. Turn it a little further.',
  'other way': 'The wrong way. Turn it back past sharp.',
  back: 'Too far. Turn it halfway back.',
};

const NOT_NOW: Record<NotNow, InWords> = {
  'hold first': { spoken: 'Hold first.', written: 'Nothing is being held. Begin the hold first.' },
  'hold under way': { spoken: 'Still holding.', written: 'A hold is under way. Judge it or undo it first.' },
  'answer first': { spoken: 'Did it hold?', written: 'First say whether it held.' },
  'off the scale': { spoken: 'Not on the scale.', written: 'This body cannot be set to that value. Choose one on its scale.' },
  paused: { spoken: 'Paused.', written: 'The sweep is paused. Resume it first.' },
  'not paused': { spoken: 'Not paused.', written: 'The sweep is not paused.' },
  finished: { spoken: 'Finished.', written: 'The sweep is finished. Undo takes the finish back.' },
  'no arrows': { spoken: 'No arrows on this body.', written: 'This body is set as showing no arrows. If it has them, say so in the kit.' },
  'check focus first': { spoken: 'Same or shifted?', written: 'First look at the focus in live view: same, or shifted?' },
  'turn first': { spoken: 'Shifted?', written: 'First turn the focus in live view, then say shifted.' },
  'nothing to check': { spoken: 'Nothing to check.', written: 'There is no question about the focus now.' },
  'nothing to enter': { spoken: 'There is no value to enter.', written: 'This result gives no value to enter.' },
  'not offered': { spoken: 'Not ready yet.', written: 'There is no result yet. Finish ends the sweep as it stands.' },
};

/** Joins parts into short sentences: "Flicker. Plus six." */
const sentences = (...parts: readonly (string | null)[]): string =>
  parts
    .filter((part) => part !== null)
    .map((part) => `${part.charAt(0).toUpperCase()}${part.slice(1)}.`)
    .join(' ');
