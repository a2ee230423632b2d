// English: what came out of a sweep and what to do about it.
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { line } from '../line.ts';
import type { ResultWords } from '../resultWords.ts';
import { factRevealed } from './revealed.ts';
import { write } from './write.ts';

const HOLDS = { one: '# hold', other: '# holds' };

const visible = (end: Steps | null): string => (end === null ? 'steady at no value' : `steady from ${writeSteps(end)} to the limit`);

function service({ chosen, centre, inside }: CarriedOutcome): string {
  const past = `The centre lies at about ${write.signed(centre, 1)}, past ${writeSteps(chosen)}, the last correction of this body.`;
  return inside ? `${past} The light is still steady there.` : `${past} The light is steady at no correction.`;
}

const FOCUS = 'Focus again in live view, enlarged and at full aperture, then switch the lens to manual without touching the ring.';
const OTHER = 'Check that no other correction is set in the body, such as one for all lenses.';
const SERVICE = 'If it comes out the same again, the pair needs the maker’s service.';

export const words: ResultWords = {
  region: 'Result',
  placed: (found, within) => `shifted on purpose from ${writeSteps(found)}, which is ${write.chance(within)} sure within one step`,
  between: (value, other) =>
    `The centre lies between ${writeSteps(value)} and ${writeSteps(other)}, and the holds prefer neither. ${writeSteps(value)} is nearer zero.`,
  headline: {
    'past the limit': 'Past the limit',
    'beyond the scale': 'Out of range',
    nothing: 'No steady light',
    'no hold': 'No hold was made',
    service: 'Needs service',
  },
  noHold: 'Without a hold there is no value to enter.',
  service,
  facts: {
    centre: 'Centre',
    place: (at) => write.signed(at, 1),
    band: 'Band',
    range: (low, high) => (low === high ? writeSteps(low) : `${writeSteps(low)} to ${writeSteps(high)}`),
    endsNotSeen: 'not both ends were held on both sides',
    seenInFocus: 'Seen in sharp focus',
    visible,
    halfWidth: 'Half the width',
    width: (half, from, to) => `${write.number(half, 1)}, between ${write.number(from, 1)} and ${write.number(to, 1)}`,
    figures: 'Figures',
    interval: `${write.percent(0.95)} interval`,
    within: (from, to) => `${write.signed(from, 1)} to ${write.signed(to, 1)}`,
  },
  drawing: {
    said: (outcome, { min, max }) =>
      `The corrections from ${writeSteps(min)} to ${writeSteps(max)}: ${visible(outcome.visible)}, the centre at about ${write.signed(outcome.centre, 1)}.`,
    held: 'steady',
    beyond: 'past the limit',
    lies: 'where the band lies',
    centre: `centre, ${write.percent(0.95)}`,
  },
  holds: {
    aside: 'The holds with the focus set aside:',
    made: (count, time) => line([write.count(count, HOLDS), write.duration(time)]),
    spent: (count) =>
      write.count(count, {
        one: '# hold was made before the focus moved and does not count.',
        other: '# holds were made before the focus moved and do not count.',
      }),
  },
  next: {
    title: 'What to do next',
    enter: (value) => `Enter ${writeSteps(value)} in the camera for this lens, and check that its corrections are switched on. Then mark it.`,
    enterMeanwhile: (value) => `Until it is serviced, enter ${writeSteps(value)} in the camera for this lens. Then mark it.`,
    marked: (value) => `${writeSteps(value)} is marked as entered in the camera.`,
    check:
      'Check it with photographs: focus through the viewfinder six times, defocusing to near and to far by turns before each shot, and compare them with one that was focused in live view.',
    photographs: 'Check it with photographs',
    focusAgain: 'Focus critically again in live view. The ring is still set aside.',
    service:
      'Show the page for the workshop to a service that the maker licenses. Do not take the lens or the body apart: an adjustment by hand can leave them worse.',
    mark: 'Mark as entered',
    lens: 'Next lens',
    plan: 'Go on with the plan',
    otherwise: 'Another value, day or note',
    allTheSame: 'Did you enter a value anyway?',
    takeMarkBack: 'Take the mark back',
    backToSweep: 'Back to the sweep',
    presses: 'The one switch now',
  },
  width: {
    workshop: 'Page for the workshop',
    title: 'Find the centre by the width',
    why: 'The band is equally wide wherever the focus is. With the focus set a little aside the whole band falls within the range, and its width shows where the centre is.',
    practice: 'The practice camera turns its own ring, and shows its true band afterwards.',
    steps: [
      'Leave camera, lens and target as they are.',
      'In live view, turn the focus ring a little, until just off sharp. The panel says if it was the wrong way.',
      'Sweep as before, and do not touch the ring meanwhile.',
      'Afterwards focus critically again.',
    ],
    measure: 'Measure the width',
  },
  // Common practice, no source.
  checks: {
    title: 'What to check',
    of: {
      'past the limit': [FOCUS, OTHER, SERVICE],
      'beyond the scale': [FOCUS, OTHER, SERVICE],
      nothing: [
        FOCUS,
        'Stand the target square to the camera, evenly lit, with more contrast than its surroundings.',
        'Check that the active point is on the target, and that the lens opens wide enough for the viewfinder to focus.',
        'On a body set to focus from a rear button, that button lights the focus light, not the half-press.',
        'Check that the light you watched is the focus light and not the exposure lock.',
      ],
    },
  },
  practice: { title: 'The practice camera', revealed: factRevealed, pictures: 'Check it with practice pictures' },
};
