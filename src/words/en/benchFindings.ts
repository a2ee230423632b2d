// English: what follows at the bench from what was measured there.
import type { BenchDistance } from '../../optics/distance.ts';
import type { Edge, Finer, Tilt } from '../../optics/fourSides.ts';
import type { LightVerdict } from '../../optics/light.ts';
import type { StepSize } from '../../photographs/focusError.ts';
import type { BenchWords } from '../benchWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';
import { millimetres, type Millimetres } from '../../units.ts';

const GOOD_FOR: Readonly<Record<BenchDistance['stands'], (least: string) => string>> = {
  usual: () => 'This is the general-purpose distance.',
  short: () => 'This is short, but it will do. Measure again farther away if you use the lens far away.',
  near: (least) => `The value will be right for close work only. For general use, stand at least ${least} away.`,
  far: () => 'This is right if you use the lens that far away. Make the target large and the light bright.',
  'at closest focus': () => 'This is the closest focus of the lens. The value will be right for close work, and may differ farther away.',
};

export const stands: BenchWords['distance']['stands'] = (at, least, unit) =>
  `${write.distance(at.distance, unit)} from the film plane, ${write.number(at.multiple, at.multiple < 10 ? 1 : 0)} focal lengths. ${GOOD_FOR[at.stands](write.distance(least, unit))}`;

const ENOUGH: Readonly<Record<LightVerdict, string>> = {
  'too dim': 'Too dim for good phase detection. Add light or bring the lamps nearer, then read the camera again.',
  fine: 'Enough light.',
  plenty: 'Plenty of light.',
};

export const lightFound: BenchWords['light']['verdict'] = ({ ev, onGrey, onPaper, verdict, flickers }) => {
  const light = `EV ${write.number(ev, 1)} at ISO 100, about ${write.number(onGrey)}\u00a0lux if the meter saw mid-grey, ${write.number(onPaper)}\u00a0lux if it saw white paper. ${ENOUGH[verdict]}`;
  return flickers === null
    ? light
    : `${light} At this shutter the flicker of the lamps changes the exposure from one photograph to the next. Use 1/${2 * flickers}\u00a0s or a whole multiple of it.`;
};

const COST = (steps: number): string => (steps < 0.1 ? 'far less than a step' : `about ${write.number(steps, 1)} steps at the edge of the AF area`);
const TURN_UNTIL = {
  mirror: 'Turn the target until the lens sees itself nearer the middle of the picture.',
  spot: 'Turn the target until the spot comes back nearer its source.',
};

export const tilted: BenchWords['square']['tilted'] = (by, tilt, steps, square) =>
  `Tilted ${write.degrees(tilt, 2)}, ${COST(steps)}. ${square ? 'Square enough.' : TURN_UNTIL[by]}`;

const EDGE: Readonly<Record<Edge, string>> = { left: 'its left edge', right: 'its right edge', top: 'its top edge', bottom: 'its bottom edge' };

function finer(how: Finer): string {
  switch (how.by) {
    case 'marks':
      return `Measure marks on the board at least ${write.millimetres(how.apart)} apart both ways, or use the mirror.`;
    case 'a larger rectangle':
      return 'Measure a larger rectangle, or use the mirror.';
    case 'the mirror alone':
      return 'No rectangle in this picture is large enough for lengths read to half a per cent, so use the mirror.';
  }
}

const tiltBySides = (tilt: Tilt): string => `Tilted ${write.degrees(tilt.whole, 1)}, give or take ${write.degrees(2 * tilt.uncertainty, 1)}.`;

export const bySides: BenchWords['square']['bySides'] = (tilt, allowed, found) => {
  switch (found.verdict) {
    case 'square':
      return `${tiltBySides(tilt)} Square enough.`;
    case 'turn':
      return `${tiltBySides(tilt)} Turn the target so that ${write.list(found.away.map((edge) => EDGE[edge]))} ${write.count(found.away.length, { one: 'goes', other: 'go' })} away from the camera.`;
    case 'cannot tell':
      return `${tiltBySides(tilt)} That is too rough to tell ${write.degrees(allowed, 1)}. ${finer(found.finer)}`;
  }
};

export const STEP_FROM: Readonly<Record<StepSize['from'], string>> = {
  estimate: 'This is an estimate.',
  bracket: 'A bracket with photographs measured it.',
};

export const focus: BenchWords['place']['focus'] = (error, unit, worth) => {
  const off: Millimetres = millimetres(Math.abs(error));
  const where = `Focus lies ${nearTarget(off, unit)} ${error < 0 ? 'in front of' : 'behind'} the target`;
  return worth === null
    ? `${where}.`
    : `${where}, ${write.percent(worth.share)} of the depth of field on that side, about ${write.number(worth.steps, 1)} steps. ${STEP_FROM[worth.by]}`;
};
