// English: what the session itself has to say.
import { writeSteps } from '../../sweep/scale.ts';
import type { SessionWords } from '../sessionWords.ts';
import { pair, within } from './subject.ts';
import { write } from './write.ts';

export const words: SessionWords = {
  stored: {
    reading: (share) => `Reading the logbook: ${write.percent(share)}.`,
    readAgain: 'Read it again',
    tooNew: 'What is stored here was written by a newer Sweepbook. Update this one. Until then, nothing is changed.',
    spoilt: (key, field, place) =>
      `Something stored under “${key}” cannot be used${field === null ? '' : `, because of “${field}” in it`}. ` +
      `It is kept whole under “${place}”, and everything else is used without it.`,
    unread: 'What is stored cannot be read just now. Try again.',
    notOnDisk: 'It is shown here but is not on the disk yet. Leave this panel open. It tries again until that works.',
  },
  copies: {
    fault: {
      'copies unread': 'The daily copies cannot be read. What is stored is not affected.',
      'copy unread': 'This copy cannot be read. Choose another one.',
      'copy not kept': 'The daily copy cannot be kept. Free some space on the disk. The next start tries again.',
    },
    offered: (at) => `Nothing is stored here any more, but there is a copy of everything from ${write.dayAndTime(at)}.`,
    bringBack: 'Bring it back',
  },
  bringing: {
    brokenOff: 'Bringing in a logbook was broken off, so everything is as it was before. Bring it in again.',
    notCopied: 'What is here could not be copied first, so nothing was brought in. Free some space on the disk, then try again.',
    tooNew: 'This copy was made by a newer Sweepbook. Update this one, then try again.',
  },
  sync: {
    fault: {
      'no sync':
        'The browser’s sync does not work just now, so last values do not reach your other computers. Everything is kept here, and the panel tries again while it is open.',
    },
    unread: 'Some values from another computer cannot be read here. Update Sweepbook on both.',
    noRoom: 'The browser’s sync has no room for the oldest values. They are kept here, and a backup holds them too.',
    notTakenOut: 'The values of this computer could not be taken out of the browser’s sync.',
    tryAgain: 'Try again',
    overtaken: ({ value, old, more, ...subject }) => {
      const others = more === 0 ? '' : ` There ${write.count(more, { one: 'is # more like it', other: 'are # more like it' })}.`;
      return (
        `Another computer has a later value for ${pair(subject)}: ${writeSteps(value)} in place of ${writeSteps(old)}.${others} ` +
        'Both stay in the history. Check which value the camera has.'
      );
    },
  },
  erasing: {
    elsewhere: 'A sweep runs in another window. Erase what was heard there, or take the sweep over.',
    copiesUnread: 'What was heard is erased, but the daily copies cannot be read just now. Try again.',
    copyLeft: 'What was heard is erased, but not in one of the daily copies. Try again.',
    notOnDisk: 'It is gone from the screen but not from the disk yet. Leave this panel open. It tries again until that works.',
  },
  proofs: {
    situationGone: 'This situation is no longer in the kit. Choose another one, then keep it again.',
    unfit: 'These figures cannot be kept. Bring the pictures in again.',
    gone: 'This check with photographs is no longer in the logbook.',
    copiesUnread: 'The figures are not erased yet, because the daily copies cannot be read just now. Try again.',
    copyLeft: 'The figures are not erased yet, because they cannot be taken out of one of the daily copies. Try again.',
    crops: {
      'crops unread': 'The crops cannot be read just now. The figures are not affected.',
      'crops not kept': 'The figures are kept, but there is no room for the crops. Free some space on the disk.',
      'crops not erased': 'The crops cannot be erased just now. Try again.',
    },
  },
  byHand: (fault) => {
    switch (fault.is) {
      case 'ends off the scale':
        return `Enter both ends as corrections ${within(fault.scale)}.`;
      case 'off the scale':
        return `Enter a correction ${within(fault.scale)}.`;
      case 'outside the ends':
        return 'Choose a value between the two ends.';
    }
  },
  recordGone: 'This record is no longer in the logbook.',
  unexpected: (why) => `Something unexpected went wrong (${why}). The sweep goes on. Nothing noted is lost.`,
  became: {
    'not here': 'not taken. Another window runs this sweep. Take it over to run it here.',
    'asked back': 'asked back',
    'said again': 'said again',
    help: 'help',
    'looked up': 'looked up',
    'not taken': 'not taken',
    'not clear': 'not clear',
    'too late': 'not taken, because it was begun before this step',
  },
  farView: { on: 'on', off: 'off' },
  missed: {
    'amid talk': 'not taken, because talk ran into it. Say it again.',
    'beside the panel': 'not taken, because the panel was speaking. Say it again.',
  },
  untold: {
    noScale: 'Enter the range of corrections as three whole numbers: from, to and step.',
    noSweep: 'This sweep cannot be changed here. If another window runs it, take it over first.',
    holdFirst: 'Finish this hold first, then enter it again.',
    offTheScale: (value) => `${writeSteps(value)} was already held and is not in this range. Undo that hold, or choose a range with it.`,
    arrowsSeen: 'The holds so far include arrows. Undo those holds first, or keep the arrows.',
    kitGone: 'That is no longer in the kit. Choose another one.',
    resultGone: 'This result is no longer in the kit. Look it up in the logbook.',
    missing: {
      body: 'Name the body first.',
      lens: 'Name the lens first.',
      length: 'Enter the focal length too, or put it into the name, such as “Corvid 85”.',
    },
  },
  standIn: { body: 'Body without a name', lens: (opened) => `Lens without a name, ${write.dayAndTime(opened)}` },
  unplanned: {
    'kit gone': 'That body, lens or distance is no longer in the kit. Choose another one.',
    'value off the scale': 'The value that the body is set to now is not in its range. Enter that value again.',
    'sweep not kept yet': 'That sweep is not in the logbook yet. Wait a moment, then try again.',
    'no width': 'That sweep has no width to carry over. Measure the situation again.',
  },
  unbegun: {
    'under way': 'A sweep is under way. Finish it or leave it first.',
    'begun elsewhere': 'Another window has just begun a sweep. Finish that one first.',
  },
  practice: { body: 'Practice camera', lens: 'Practice lens' },
};
