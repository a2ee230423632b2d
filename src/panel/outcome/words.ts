// The English of a result and of the offer: whole sentences, with named values as arguments.
import type { Chief } from './chief.ts';

export const ENTER = 'Enter';
/** On the centre's place there stands one word, and never the value to enter. */
export const CENTRE = 'Centre';

export const RESULT_WORDS = {
  region: 'Result',
  sure: ({ percent }: { percent: string }) => `${percent} sure within one step`,
  notYetSure: ({ percent }: { percent: string }) => `only ${percent} sure within one step`,
  placed: ({ found, percent }: { found: string; percent: string }) => `shifted on purpose from ${found}, which is ${percent} sure within one step`,
  between: ({ value, other }: { value: string; other: string }) =>
    `The centre lies between ${value} and ${other}, and the holds prefer neither. ${value} is nearer zero.`,
  band: 'Band',
  bandFrom: ({ low, high }: { low: string; high: string }) => `${low} to ${high}`,
  endsNotSeen: 'its ends were not both held on both sides',
  figures: 'Figures',
  interval: '95 % interval',
  intervalFrom: ({ from, to }: { from: string; to: string }) => `${from} to ${to}`,
  noHold: 'Nothing was held',
  noHoldMeans: 'No hold was made, so there is no value to enter.',
} as const;

export const STEP_WORDS = {
  heading: 'What to do next',
  enter: ({ value }: { value: string }) => `Enter ${value} in the camera for this lens, and see that its corrections are switched on. Then mark it.`,
  enterMeanwhile: ({ value }: { value: string }) => `Until it is serviced, enter ${value} in the camera for this lens. Then mark it.`,
  marked: ({ value }: { value: string }) => `${value} is marked as entered in the camera.`,
  prove:
    'Prove it on photographs: focus through the viewfinder five times, defocusing before each, and compare them with one that was focused in live view.',
  focusAgain: 'Focus critically again in live view: the ring still stands aside.',
  service: 'Show the page for the workshop to a service that the maker licenses. Do not take lens or body apart: an adjustment by hand can leave them worse.',
  manual: 'Follow your camera maker\u2019s manual wherever it differs from this.',
  otherwise: 'Another value, day or note',
  allTheSame: 'Entered a value all the same?',
  takeMarkBack: 'Take the mark back',
  backToSweep: 'Back to the sweep',
  nextOfPlan: 'Go on with the plan',
  presses: 'The one switch now',
} as const;

export const CHIEF_WORDS: Record<Chief, string> = {
  mark: 'Mark as entered',
  'next lens': 'Next lens',
  'what to check': 'What to check',
  'measure the width': 'Measure the width',
};

export const CHECK_WORDS = {
  heading: 'What to check, the likeliest first',
  plain: 'What to check',
  noMoreHolds: 'More holds will not help.',
  firstThis: 'Put this right first. More holds alone will not.',
  figures: 'Figures',
} as const;

export const OFFER_WORDS = {
  enough: ({ care, look }: { care: string; look: boolean }) =>
    `Enough for ${care} care. ${look ? 'Live view still sharp? ' : ''}Accept it, or go on holding.`,
  asItStands: 'Accept it, or go on holding.',
} as const;

export const FACE_WORDS = {
  beyond: 'Beyond the scale',
  centreAbout: ({ centre }: { centre: string }) => `The centre lies at about ${centre}.`,
  past: 'Past the limit',
  pastMeans: 'The band runs past the scale.',
  bandLies: ({ side }: { side: string }) => `The band lies ${side} it.`,
  nothing: 'Nothing held',
  nothingMeans: 'Accept it to see what to check.',
} as const;

export const STANDING_WORDS = {
  anywhere: 'the centre may still be anywhere',
  near: ({ value, percent }: { value: string; percent: string }) => `centre near ${value}, ${percent} sure within one step`,
  centre: ({ centre }: { centre: string }) => `centre ${centre}`,
  about: ({ made, all }: { made: number; all: number }) => `about ${made} of ${all} holds`,
  wanted: { centre: 'centre not certain yet', ends: 'both ends still to be seen' },
} as const;

export const REVEALED_WORDS = {
  region: 'The practice camera',
  named: 'The sweep named it.',
  unnamed: 'The sweep did not meet it often enough to name it.',
  holds: ({ low, high, centre }: { low: string; high: string; centre: string }) =>
    `This practice camera holds from ${low} to ${high}; its true centre is ${centre}.`,
  gap: ({ low, high, from, to }: { low: string; high: string; from: string; to: string }) =>
    `Its band runs from ${low} to ${high}, and fails from ${from} to ${to}.`,
  moved: ({ low, high, thenLow, thenHigh }: { low: string; high: string; thenLow: string; thenHigh: string }) =>
    `It held from ${low} to ${high} at first, and from ${thenLow} to ${thenHigh} once the focus had moved.`,
  off: ({ value, steps }: { value: string; steps: string }) => `${value} is off by ${steps}.`,
  centreOff: ({ steps }: { steps: string }) => `The centre found is off by ${steps}.`,
  notFound: 'The sweep did not find it.',
  lessThanAStep: 'less than one step',
  steps: ({ count }: { count: string }) => `${count} steps`,
  wrong: {
    'flickers everywhere': 'This practice camera was made to flicker at every value.',
    'never lights': 'This practice camera was made to stay dark.',
    'lights everywhere': 'This practice camera was made to light at every value.',
    'hole in the band': 'This practice camera was made with a gap in the middle of its band.',
    'arrows turn round': 'The arrows of this practice camera were made to turn round during the sweep.',
    'focus moves': 'The focus of this practice camera was made to move during the sweep.',
  },
} as const;
