// What to check for each trouble, the likeliest first, and the figures that led to its name. Common practice, no source.
import { writeSteps } from '../sweep/scale.ts';
import type { ArrowsContradict, Trouble } from '../sweep/trouble/trouble.ts';
import type { SweepsDiffer } from '../sweep/trouble/sweepsDiffer.ts';

type Named = Trouble | SweepsDiffer;

const TROUBLE_NAMES: Record<Named['trouble'], string> = {
  'flickers everywhere': 'Flickers everywhere',
  'never lights': 'Never lights',
  'lights everywhere': 'Lights everywhere',
  'hole in the band': 'A gap in the band',
  'arrows contradict the lights': 'Arrows contradict the lights',
  'focus moved': 'The focus moved',
  'verdicts misjudged': 'Verdicts that do not fit',
  'band drifts': 'The band drifts',
  play: 'The direction matters',
  'sweeps differ': 'The sweeps differ',
};

export const TROUBLE_CHECKS: Record<Named['trouble'], readonly string[]> = {
  'flickers everywhere': [
    'Put more light on the target, evenly and without glare.',
    'Use a target with more contrast, larger than the active point.',
    'Change a lamp that flickers, as many do on the mains, for a steady one or for daylight.',
    'See that neither camera nor target moves: head and legs locked, no draught, no hand on the lens.',
    'On a tripod, switch the stabiliser off.',
    'See that the lens, with its converter, opens wide enough for the viewfinder to focus.',
  ],
  'never lights': [
    'See that the active point lies on the target, and that no other is active.',
    'See that the half-press starts the focus light. On a body set to focus from a rear button, that button does.',
    'With some lenses and bodies the light stays off while the switch is on manual: look into the maker\u2019s manual.',
    'Focus again in live view: far enough out of focus, no value lights.',
    'See that the target is not nearer than the lens can focus.',
    'The right value may lie beyond the scale. If all else is well, the pair needs the maker\u2019s service.',
  ],
  'lights everywhere': [
    'See that the lens stays on manual: if it focuses anew at each half-press, every value holds.',
    'Set single focus, not continuous, and watch the light itself, not the beep.',
    'See that corrections are switched on for this lens, and that each value you dial is kept.',
    'See that only the point on the target is active.',
    'The depth may be too deep for the scale: go nearer, zoom in, and use the widest aperture.',
  ],
  'hole in the band': [
    'Set the values of the gap again: a nudge or a blink spoils a hold.',
    'See that nothing has play: the mount, a converter, the tripod head, the target.',
    'See that one edge alone lies under the active point: a second one, or a pattern that repeats, can be taken for it.',
    'See that the light on the target is steady.',
    'If the gap stays, sweep once more before you trust the centre.',
  ],
  'arrows contradict the lights': [
    'In the kit, turn round which way the right arrow of this body sends: makers differ.',
    'See that the arrows you watch are those of the focus light, and read them while the camera is still.',
    'See that you changed the value, not the focus ring.',
    'See that the active point was the same all the time.',
    'If they go on, set the body to no arrows: the lights alone are enough.',
  ],
  'focus moved': [
    'Set the lens to manual and keep hands and cables off the ring; a strip of tape holds it.',
    'See that the tripod head, its legs and the target stand fast.',
    'See that lens and converter sit tight on the mount.',
    'Let camera and lens take on the warmth of the room before you focus.',
  ],
  'verdicts misjudged': [
    'Rest your eyes for a minute, then hold the values in doubt again.',
    'Rest your chin or the camera, so that the eye stays behind the eyepiece.',
    'Dim the room, and shade the eyepiece from the side.',
  ],
  'band drifts': [
    'Wait ten minutes with the camera on, until body and lens are warm, then sweep once more.',
    'Keep heaters, sun and draughts off camera, tripod and target.',
    'Enter the centre for now only if you must: it goes on moving.',
  ],
  play: [
    'Go to each value from the same side, past it and back where need be.',
    'Go to the value you enter from that side, too.',
    'See that the mount and a converter sit tight.',
  ],
  'sweeps differ': [
    'Compare the notes: another distance, target or light gives another value.',
    'See that the focus in live view was as critical both times, with hands off the ring.',
    'Compare the temperature, and look for a knock, new firmware or a service in between.',
    'Measure once more, with both ends seen, and go by the sweeps that agree.',
  ],
};

/** Its name; a focus that nobody has looked at yet is only asked about. */
export const nameOf = (found: Named): string =>
  found.trouble === 'focus moved' && !found.seen ? 'Has the focus moved?' : TROUBLE_NAMES[found.trouble];

/** What was seen. */
export function troubleInWords(found: Trouble): string {
  switch (found.trouble) {
    case 'flickers everywhere':
      return 'The light fails at every value, mostly by flickering.';
    case 'never lights':
      return 'The light stays dark at every value.';
    case 'lights everywhere':
      return 'The light holds at every value, up to both limits of the scale.';
    case 'hole in the band': {
      const values = found.from === found.to ? `${writeSteps(found.from)} fails` : `${writeSteps(found.from)} to ${writeSteps(found.to)} fail`;
      return `${values}, with values that hold on both sides. Its centre is not to be trusted.`;
    }
    case 'arrows contradict the lights':
      return ARROWS[found.how];
    case 'verdicts misjudged':
      return `The verdicts at ${found.values.map((value) => writeSteps(value)).join(', ')} do not fit the others, and do not count.`;
    case 'band drifts':
      return `The band moves by about ${tenths(Math.abs(found.rate))} steps a minute. The centre is where it lies now.`;
    case 'play':
      return `The band lies about ${tenths(2 * found.size)} steps apart after turning up and after turning down. The centre is between the two.`;
    case 'focus moved':
      return found.seen ? 'The focus had moved during this session.' : 'The holds before and after some moment tell of two bands.';
  }
}

const ARROWS: Record<ArrowsContradict['how'], string> = {
  'turned round': 'The arrows point the other way than this body is set to in the kit.',
  'turned midway': 'Part of the time the arrows pointed one way, then the other.',
  'by chance': 'The arrows point up and down without regard to the lights.',
};

/** The figures in small print. */
export function evidenceInWords(found: Named): string {
  switch (found.trouble) {
    case 'flickers everywhere':
    case 'never lights':
    case 'lights everywhere':
      return `${found.alike} of ${found.of} values looked so; odds ${odds(found)} against any band.`;
    case 'hole in the band':
      return `Odds ${odds(found)} against a band without a gap.`;
    case 'arrows contradict the lights':
      return `Odds ${odds(found)} against arrows that point as set.`;
    case 'verdicts misjudged':
      return `Odds ${odds(found)} that they were misjudged.`;
    case 'band drifts':
      return `Odds ${odds(found)} against a band that stays.`;
    case 'play':
      return `Odds ${odds(found)} against a band that does not mind the direction.`;
    case 'focus moved':
      return `Odds ${odds(found)} that it moved, after hold ${found.afterHold}.`;
    case 'sweeps differ':
      return `${tenths(found.apart)} steps apart, where chance allows ${tenths(found.allowed)} with 95 %; odds ${odds(found)} that they differ.`;
  }
}

/** Odds beyond this say no more to a person. */
const MOST = 1000;
const odds = ({ bayesFactor }: { readonly bayesFactor: number }): string =>
  bayesFactor > MOST ? `more than ${MOST} to 1` : `${Math.round(bayesFactor)} to 1`;
const tenths = (value: number): string => String(Number(value.toFixed(1)));
