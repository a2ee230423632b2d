// Changes of src/voice but ownWords from which nothing follows, and why.
import type { Same } from './same.ts';

export const VOICE: readonly Same[] = [
  { file: 'src/voice/matching.ts', line: 'for (let cut = 1; cut < words.length; cut++) {', after: '<=', why: 'A part of no words is no word.' },
  {
    file: 'src/voice/phonetic/commands.ts',
    line: 'leastDistance(heavy, phrase.weight) > FAR ?',
    after: '>=',
    why: 'What is left out for being farther than counts is farther by the exact distance, too.',
  },
  {
    file: 'src/voice/phonetic/commands.ts',
    line: 'if (half >= 1 && words',
    after: "(words.slice(0, half).join(' ') === words.slice(half).join(' '))",
    why: 'One word has no half, and none twice is none.',
  },
  { file: 'src/voice/phonetic/lookUp.ts', line: 'Math.min(longest, words.length - 1)', after: '+', why: 'Behind all the words nothing is left to ask for.' },
  { file: 'src/voice/phonetic/phones.ts', line: 'if (stress < 1) return made;', after: '<=', why: 'A stress is 0.7, 0.95 or 1.3, never 1.' },
  {
    file: 'src/voice/phonetic/pronouncer.ts',
    line: "if (rule?.letters.endsWith('$')) left = '';",
    after: 'false',
    why: 'The end of a word is the last of what is left, so nothing is left behind it.',
  },
  { file: 'src/voice/phonetic/soundDistance.ts', line: '.fill(-1)', after: '2', why: 'Whatever is below nought says that a cost is not known yet.' },
  {
    file: 'src/voice/phonetic/soundDistance.ts',
    line: 'const at = one * LETTERS + other;',
    after: '-',
    why: 'Each pair still has a place of its own in the table, as letters are below 128.',
  },
  {
    file: 'src/voice/phonetic/soundDistance.ts',
    line: 'if (cost < 0) confusions[at]',
    after: '<=',
    why: 'What costs nothing is worked out again, to nothing.',
  },
  {
    file: 'src/voice/phonetic/soundDistance.ts',
    line: 'if (known) return known;',
    after: 'false',
    why: 'What is remembered is worked out again, to the same.',
  },
  {
    file: 'src/voice/phonetic/soundDistance.ts',
    line: 'if (remembered.size >= REMEMBERED)',
    after: 'true',
    why: 'Only how much is remembered changes; what is worked out anew is the same.',
  },
  { file: 'src/voice/phonetic/soundDistance.ts', line: 'if (remembered.size >= REMEMBERED)', after: 'false', why: 'The same without an end to it.' },
  { file: 'src/voice/phonetic/soundDistance.ts', line: 'if (remembered.size >= REMEMBERED)', after: '>', why: 'The same with one more.' },
  { file: 'src/voice/phonetic/soundDistance.ts', line: 'if (remembered.size >= REMEMBERED)', after: '(REMEMBERED + 1)', why: 'The same with one more.' },
  {
    file: 'src/voice/phonetic/soundDistance.ts',
    line: 'if (last.length < size)',
    after: 'true',
    why: 'Rows of nought are set aside anew although the old ones would do; all that is read of them is written first.',
  },
  { file: 'src/voice/phonetic/soundDistance.ts', line: 'if (last.length < size)', after: '<=', why: 'The same for one length.' },
  { file: 'src/voice/phonetic/soundDistance.ts', line: 'j < size; j++) last[j]', after: '<=', why: 'One more is written behind the end, which nothing reads.' },
  {
    file: 'src/voice/phonetic/soundDistance.ts',
    line: 'for (let j = 1; j < size; j++) {',
    after: '<=',
    why: 'One more is written behind the end, which nothing reads.',
  },
  { file: 'src/voice/phonetic/twoParts.ts', line: 'LONGEST_PAIR; cut++', after: '<=', why: 'A part of no words is near nothing.' },
  { file: 'src/voice/phonetic/twoParts.ts', line: 'LONGEST_TWICE; cut++', after: '<=', why: 'A part of no words is near nothing.' },
  { file: 'src/voice/phonetic/values.ts', line: 'if (rest.length === 0) continue;', after: 'false', why: 'No number sounds like nothing.' },
  { file: 'src/voice/phonetic/values.ts', line: 'if (known === undefined) {', after: 'true', why: 'What is remembered is worked out again, to the same.' },
];
