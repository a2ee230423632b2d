// English: what asks the logbook, and what names the next lens.
import type { Naming, SpokenQuestion } from '../heardLanguage.ts';

export const QUESTION: SpokenQuestion = {
  openings: ['look up', 'lookup', 'look it up', 'looking up', 'search for', 'search'],
  everyday: ['check the', 'check', 'what was', 'what is', 'whats', 'find the', 'find', 'show me the', 'show me', 'look at the', 'look at'],
  fillers: [
    'look up find show me what is whats please value correction',
    'the a an on of at with for my in to and',
    'millimetre millimetres millimeter millimeters mm',
  ].flatMap((words) => words.split(' ')),
};

export const NAMING: Naming = { openings: ['next lens', 'next'], noNames: ['lens', 'one', 'step'] };
