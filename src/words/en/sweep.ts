// English: what a sweep under way shows.
import type { Care } from '../../sweep/care.ts';
import type { Plain } from '../../sweep/inputs.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { SweepWords } from '../sweepWords.ts';
import { drifted } from './drift.ts';
import { press } from './press.ts';
import { arrowsSaid, readBack, seen } from './verdict.ts';
import { write } from './write.ts';

const CARE: Readonly<Record<Care, string>> = { quick: 'quick', standard: 'standard', thorough: 'thorough' };

const HOLDS = { one: '# hold', other: '# holds' };

const WANTED = { centre: 'centre not certain yet', ends: 'both ends still to be seen' } as const;

const TOLD: Readonly<Record<Plain, string>> = {
  hold: 'holding',
  undo: 'undo',
  repeat: 'repeat',
  help: 'help',
  pause: 'pause',
  resume: 'resume',
  skip: 'skip',
  accept: 'accept',
  'go on': 'go on',
  unmoved: 'same',
  moved: 'shifted',
  finish: 'finish',
  entered: 'entered',
  next: 'next',
  back: 'back',
  'far view': 'far view',
};

const told: SweepWords['heard']['told'] = (input) => {
  if ('heard' in input && input.heard !== null) return input.heard;
  switch (input.told) {
    case 'verdict':
      return readBack(input.verdict);
    case 'arrows':
      return arrowsSaid(input.arrows) ?? 'no arrows';
    case 'set':
      return `set ${writeSteps(input.value)}`;
    case 'press':
      return press.is[input.press];
    default:
      return TOLD[input.told];
  }
};

const became: SweepWords['heard']['became'] = (event, hold) => {
  switch (event.did) {
    case 'began':
      return `hold at ${writeSteps(event.value)}`;
    case 'judged':
    case 'amended':
      return hold ? `${seen(hold.verdict)} at ${writeSteps(hold.value)}` : 'noted';
    case 'chose':
      return `set ${writeSteps(event.value)}`;
    case 'skipped':
      return 'skipped';
    case 'undid':
      return 'taken back';
    case 'paused':
      return 'paused';
    case 'resumed':
      return 'resumed';
    case 'checked':
      return event.focus === 'unmoved' ? 'the focus is the same' : 'the focus has shifted';
    case 'went on':
      return 'going on';
    case 'finished':
      return 'finished';
    case 'opened':
    case 'ran':
    case 'unanswered':
    case 'cut off':
    case 'heard':
      return 'noted';
  }
};

export const words: SweepWords = {
  leave: 'Leave for the start. The sweep waits.',
  leaveFarView: 'Leave the far view',
  setUp: 'Set up the bench',
  face: {
    label: 'Now',
    hold: 'The hold',
    value: { set: 'Value to set', enter: 'Value to enter' },
    caption: {
      dialling: 'Set',
      holding: 'Hold',
      judging: 'Time is up',
      paused: 'Paused',
      checking: 'Check the focus',
      turning: 'Turn the focus',
      enter: 'Enter',
      'past the limit': 'Past the limit',
      'beyond the scale': 'Out of range',
      nothing: 'No steady light',
    },
    thenPress: 'then half-press',
    thenWait: 'then wait for the count',
    already: 'already set',
    way: (clicks, direction, from) =>
      direction === 'up' ? `${write.number(clicks)} up from ${writeSteps(from)}` : `${write.number(clicks)} down from ${writeSteps(from)}`,
    left: (seconds) => ({ figure: write.number(seconds), unit: write.count(seconds, { one: 'second left', other: 'seconds left' }) }),
    steady: 'Steady?',
    paused: 'the sweep waits',
    past: 'The band runs past the range.',
    lies: { above: 'The band lies above the range.', below: 'The band lies below the range.' },
    centreAbout: (centre) => `The centre lies at about ${write.signed(centre, 1)}.`,
    toCheck: 'Accept it to see what to check.',
    news: { holding: 'Holding.', judging: 'The time is up. Was the light steady?' },
  },
  sure: (within) => `${write.chance(within)} sure within one step`,
  notYetSure: (within) => `only ${write.chance(within)} sure within one step`,
  offer: {
    enough: (care, look) =>
      look
        ? `Enough for ${CARE[care]} care. Live view still sharp? Accept it, or go on holding.`
        : `Enough for ${CARE[care]} care. Accept it, or go on holding.`,
    asItStands: 'Accept it, or go on holding.',
    noMoreHolds: 'More holds will not help.',
    firstThis: 'Put this right first. More holds alone will not help.',
  },
  standing: {
    anywhere: 'centre still unknown',
    near: (value, within) => `centre near ${writeSteps(value)}, ${write.chance(within)} sure within one step`,
    centre: (centre) => `centre ${write.signed(centre, 1)}`,
    holds: (made) => write.count(made, HOLDS),
    toCome: (made, all, wanted) => line([`about ${write.number(made)} of ${write.count(all, HOLDS)}`, wanted && WANTED[wanted]]),
  },
  checkFocus: {
    title: 'Check the focus',
    why: drifted,
    look: 'Do not touch the ring. Look in live view: is it still sharp?',
    lookAside: 'Do not touch the ring. Look in live view: is it as far off sharp as it was?',
  },
  turnFocus: {
    label: 'Turn the focus',
    title: { first: 'Set the focus aside', further: 'A little further', 'other way': 'The other way', back: 'Too far' },
    what: {
      first: 'In live view, turn the ring a little, until the target is just off sharp. Turn it either way: the holds will tell which is right.',
      further: 'It was the right way. In live view, turn the ring a little further.',
      'other way': 'The band lies further off than before. Turn the ring back past sharp, to just off sharp on the other side.',
      back: 'The band runs out on the other side. Turn the ring about halfway back to sharp.',
    },
    leaveIt: 'Then leave the ring alone until this sweep is over.',
    practice: 'With a real lens you would turn the ring in live view, until just off sharp. The practice camera turns its own.',
  },
  setValue: {
    title: 'Set another value',
    value: 'Value',
    up: 'One step up',
    down: 'One step down',
    set: 'Set it',
    cancel: 'Cancel',
    offTheScale: ({ min, max, step }) =>
      step === 1
        ? `Enter a whole number from ${writeSteps(min)} to ${writeSteps(max)}.`
        : `Enter a value in steps of ${write.number(step)} from ${writeSteps(min)} to ${writeSteps(max)}.`,
  },
  heard: { label: 'Last heard', none: 'No answer yet', told, became },
  understood: { answers: 'Answers understood now', arrows: 'Arrows of the last hold', asides: 'Also understood now' },
  press,
  space: 'Space',
  following: { label: 'Following', what: 'Another window runs this sweep. Here you can only watch.', takeOver: 'Take over here' },
  strip: {
    label: 'Holds so far',
    hold: ({ value, verdict }, counts) => `${writeSteps(value)} ${seen(verdict)}: ${counts === 'in' ? 'inside' : 'outside'}`,
  },
};
