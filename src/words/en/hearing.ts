// English: the hearing check.
import type { HearingWords } from '../hearingWords.ts';
import { NO_MICROPHONE } from './microphone.ts';
import { write } from './write.ts';
import { correctionSpelt, digitsSaid, questionSaid, taught } from '../taught.ts';

export const words: HearingWords = {
  title: 'Hearing check',
  stays: 'Sound is compared on this computer. It is never kept or sent.',
  kept:
    'What is kept of a word you teach is its pattern, from which nothing can be played. The pattern stays in this browser, and goes into a ' +
    'backup file when you write one.',
  room: {
    title: 'The room',
    level: 'Level',
    listen: 'Listen',
    toListen: 'Press the button. The browser then asks whether Sweepbook may use the microphone.',
    refused: {
      ...NO_MICROPHONE,
      'not asked': 'The microphone is not allowed yet. Press the button and answer “Allow”.',
      blocked: 'The microphone is blocked for Sweepbook. Allow it from the icon beside the address, then press the button again.',
    },
    stand: 'Stand where you will work, and say a word.',
    noSound: 'This browser cannot hand over the microphone’s sound, so words cannot be taught here.',
    gone: 'The microphone has gone. Connect it, then press the button again.',
    muted: 'The microphone is muted. Unmute it on the microphone or in the system’s sound settings.',
  },
  heard: {
    noWord: 'Something was heard, but no word that is taught.',
    word: (word) => `Heard “${word}”.`,
    perhaps: (word) => `Perhaps “${word}”. The panel would ask whether you said it.`,
  },
  own: {
    title: 'Your words',
    about: (takes) => [
      `You say each word ${write.count(takes, { one: 'once', other: '# times' })}.`,
      'The seven words of a sweep are enough to begin. For what is not taught, use keys, the pedal or the pointer.',
    ],
    learns: 'The panel can also learn from words that were right. Switch that on in the settings, under Voice.',
    group: (left, of) =>
      left === of
        ? write.count(of, { one: 'Teach this word', other: 'Teach these # words' })
        : write.count(left, { one: 'Teach the one that is left', other: 'Teach the # that are left' }),
    teach: (word) => `Teach ${word}`,
    again: (word) => `Teach ${word} again`,
    short: { teach: 'Teach', again: 'Again' },
    is: {
      notTaught: 'not taught',
      taught: 'taught',
      learned: (more) => `taught, and ${write.number(more)} learned`,
    },
    forgetLearned: 'Forget what was learned, keep what I taught',
    learnedForgotten: 'What was learned is forgotten. What you taught is all there.',
    erase: 'Erase everything I taught',
    erased: 'Everything you taught is erased.',
    rooms: { sweep: 'A sweep', walk: 'The set-up walk', logbook: 'The logbook', rest: 'The rest' },
    of: (taught, all) => (taught === all ? `all ${write.number(all)} taught` : `${write.number(taught)} of ${write.number(all)} taught`),
    groups: {
      sweep: { name: 'A sweep', for: 'Enough for a whole sweep, from the first hold to the accepted value.' },
      walk: { name: 'The set-up walk', for: 'Go through the set-up walk. “Repeat” also says a value again.' },
      arrows: { name: 'Arrows', for: 'For bodies that show arrows beside the focus light.' },
      get values() {
        return {
          name: 'Values and the logbook',
          for: `Set a value of your own, “${taught('set')} ${correctionSpelt(-12)}”, and ask the logbook, “${questionSaid()} ${digitsSaid(85)}”.`,
        };
      },
      rest: { name: 'Other words', for: 'Pause, skip, go on, and what else a sweep may ask.' },
      get lenses() {
        return { name: 'Your lenses', for: `Ask the logbook for a lens by its name: say “${questionSaid()}”, then the name.` };
      },
    },
  },
  lesson: {
    say: (word) => `Say “${word}”`,
    takes: (done, of) => `${write.number(done)} of ${write.number(of)}`,
    begin: 'Say it as you will at the camera, with quiet before and after.',
    taught: (word) => `“${word}” is taught.`,
    allTaught: 'All words are taught. Go back to the panel. More words to teach are below.',
    stop: 'Stop',
  },
};
