// Changes of src/optics from which nothing follows, and why.
import type { Same } from './same.ts';

export const OPTICS: readonly Same[] = [
  { file: 'src/optics/depthOfField.ts', line: 'if (errorAtTarget <= 0)', after: '<', why: 'No error uses none of the depth on either side.' },
  {
    file: 'src/optics/fourSides.ts',
    line: 'whole: fromRadians(Math.asin(Math.min(1, Math.hypot(sideways, leaning)))),',
    after: '2',
    why: 'Neither part is above the sine of thirty degrees, so that both together stay below one.',
  },
  {
    file: 'src/optics/lamps.ts',
    line: 'return swells > 20 ||',
    after: '(whole >= 1 && Math.abs(swells - whole) <= 0.1 * whole)',
    why: 'From five swells on, the nearest whole number is never more than a tenth away.',
  },
  { file: 'src/optics/lamps.ts', line: 'return swells > 20 ||', after: '21', why: 'The same: nothing turns on how many swells count as many.' },
  { file: 'src/optics/lamps.ts', line: 'return swells > 20 ||', after: '>=', why: 'The same.' },
  {
    file: 'src/optics/lamps.ts',
    line: '(whole >= 1 && Math.abs',
    after: '(Math.abs(swells - whole) <= 0.1 * whole)',
    why: 'Where the nearest whole number is none, only an exposure of no time at all would lie within a tenth of it.',
  },
  {
    file: 'src/optics/print/sheets.ts',
    line: 'if (length <= usable) return { starts: [0]',
    after: '<',
    why: 'A drawing that just fits is cut into one window of its own length either way.',
  },
  {
    file: 'src/optics/print/target.ts',
    line: 'rectangle(right > 0 ? tip.x - arm',
    after: '>=',
    why: 'A corner lies to the left or to the right, never between.',
  },
  { file: 'src/optics/print/target.ts', line: 'rectangle(right > 0 ? tip.x - thick', after: '>=', why: 'The same.' },
  {
    file: 'src/optics/print/measure.ts',
    line: 'barAt(index) * bars > LARGEST_FIELD',
    after: '(LARGEST_FIELD + 1)',
    why: 'No field of the series is between 2500 and 2501 mm wide.',
  },
];
