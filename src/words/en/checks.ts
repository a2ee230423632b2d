// English: what to check for each trouble, the likeliest first. Common practice, no source.
import type { TroubleWords } from '../troubleWords.ts';

export const CHECKS: TroubleWords['checks'] = {
  'flickers everywhere': [
    'Put more light on the target, evenly and without glare.',
    'Use a target with more contrast, larger than the active point.',
    'Many lamps flicker on the mains. Use a steady one, or daylight.',
    'Check that neither camera nor target moves: head and legs locked, no draught, no hand on the lens.',
    'On a tripod, switch the stabiliser off.',
    'Check that the lens, with its converter, opens wide enough for the viewfinder to focus.',
  ],
  'never lights': [
    'Check that the active point lies on the target, and that no other point is active.',
    'Check that the half-press starts the focus light. On a body set to focus from a rear button, that button does.',
    'With some lenses and bodies the light stays off while the switch is on manual. Look in the maker’s manual.',
    'Focus again in live view. Far out of focus, no value lights.',
    'Check that the target is not nearer than the lens can focus.',
    'The right value may lie beyond the range of corrections. If all else is well, the pair needs the maker’s service.',
  ],
  'lights everywhere': [
    'Check that the lens stays on manual. If it focuses at each half-press, every value is steady.',
    'Set single focus, not continuous, and watch the light itself, not the beep.',
    'Check that corrections are switched on for this lens, and that the body keeps each value you dial.',
    'Check that only the point on the target is active.',
    'The depth of field may be too deep for the range of corrections. Go nearer, zoom in, and use the widest aperture.',
  ],
  'hole in the band': [
    'Hold the values of the gap again. A nudge or a blink spoils a hold.',
    'Check that nothing has play: the mount, a converter, the tripod head, the target.',
    'Check that only one edge lies under the active point. The camera can take a second edge, or a pattern that repeats, for it.',
    'Check that the light on the target is steady.',
    'If the gap stays, sweep once more before you trust the centre.',
  ],
  'arrows contradict the lights': [
    'In the kit, change which way the right arrow of this body sends. Makers differ.',
    'Check that the arrows you watch belong to the focus light, and read them while the camera is still.',
    'Check that you changed the value, not the focus ring.',
    'Check that the active point was the same all the time.',
    'If it goes on, set the body to no arrows in the kit. The light alone is enough.',
  ],
  'focus moved': [
    'Set the lens to manual, and keep hands and cables off the ring. A strip of tape holds it.',
    'Check that the tripod head, its legs and the target stand fast.',
    'Check that lens and converter sit tight on the mount.',
    'Let camera and lens reach room temperature before you focus.',
  ],
  'verdicts misjudged': [
    'Rest your eyes for a minute, then hold the values in doubt again.',
    'Rest your chin or the camera, so that the eye stays behind the eyepiece.',
    'Dim the room, and shade the eyepiece from the side.',
  ],
  'band drifts': [
    'Wait ten minutes with the camera on, until body and lens are warm, then sweep once more.',
    'Keep heaters, sun and draughts off camera, tripod and target.',
    'Enter the centre only if you must. It will go on moving.',
  ],
  play: [
    'Go to each value from the same side, past it and back if necessary.',
    'Go to the value you enter from that side, too.',
    'Check that the mount and the converter sit tight.',
  ],
  'sweeps differ': [
    'Compare the notes: another distance, target or light gives another value.',
    'Check that the focus in live view was as critical both times, with hands off the ring.',
    'Compare the temperatures, and look for a knock, new firmware or a service in between.',
    'Measure once more, with both ends seen, and go by the sweeps that agree.',
  ],
};
