// English: everything the hearing check says itself.
import type { NoMicrophone } from '../../platform/ear/microphone.ts';

export const REFUSED: Record<NoMicrophone, string> = {
  'no microphone': 'No microphone answers. Connect one and press the button again.',
  'in use': 'The microphone cannot be opened: another program has it. Close that program and press the button again.',
  'not asked': 'The microphone is not allowed yet. Press the button and answer “Allow”.',
  blocked: 'The microphone is blocked for Sweepbook. Allow it from the icon beside the address, and press the button again.',
};

export const CHECK = {
  title: 'Hearing check',
  kept:
    'Sound is compared on this computer and never kept or sent. What is kept of a word you teach is its pattern, from which ' +
    'nothing can be played. It stays in this browser, and goes into a backup file when you write one.',
  room: 'The room',
  level: 'Level',
  listen: 'Listen',
  toListen: 'Press the button: the browser then asks whether Sweepbook may use the microphone.',
  stand: 'Stand where you will work, and say a word.',
  noSound: 'This browser cannot hand over the microphone’s sound, so words cannot be taught here.',
  gone: 'The microphone has gone. Connect it and press the button again.',
  muted: 'The microphone is muted. Unmute it on the microphone or in the system’s sound settings.',
  noWord: 'Something was heard, but no word that is taught.',
  heard: (word: string) => `Heard “${word}”.`,
  perhaps: (word: string) => `Perhaps “${word}”: this would be asked back.`,
  words: 'Your words',
  howMany: (takes: number) =>
    `Each word is said ${takes} times. The seven words of a sweep are enough to begin; what is not taught is told by keys, the ` +
    'pedal or the pointer. The panel learns from words that were right where its settings say so, under Voice.',
  teachGroup: (left: number, of: number) => (left === of ? `Teach these ${of} words` : `Teach the ${left} that are left`),
  teach: (word: string) => `Teach ${word}`,
  teachAgain: (word: string) => `Teach ${word} again`,
  teachShort: 'Teach',
  again: 'Again',
  notTaught: 'not taught',
  taught: 'taught',
  taughtAndLearned: (more: number) => `taught, and ${more} learned`,
  forgetLearned: 'Forget what was learned, keep what I taught',
  learnedForgotten: 'What was learned is forgotten. What you taught is all there.',
  erase: 'Erase everything I taught',
  erased: 'Everything you taught is erased.',
  say: (word: string) => `Say “${word}”`,
  takes: (done: number, of: number) => `${done} of ${of}`,
  begin: 'Say it as you will at the camera, with quiet before and after.',
  wordTaught: (word: string) => `“${word}” is taught.`,
  allTaught: 'They are all taught. Go back to the panel; what else can be taught stands below.',
  stop: 'Stop',
  lenses: { name: 'Your lenses', for: 'Ask the logbook for a lens by its name: say “look up”, then the name.' },
} as const;
