// Sweeps of ordinary lenses, still, and with a focus that moves by three steps at a random moment in the middle half of
// the sweep, in a process of its own.
import { halfPress } from '../../../src/practice/camera.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import type { Care } from '../../../src/sweep/care.ts';
import { ORDINARY } from './jobs.ts';
import { observer } from './observers.ts';
import { sweeper } from './reducerSweep.ts';

export interface MovedSummary {
  readonly holds: number;
  readonly stillFlagged: number;
  readonly movedFlagged: number;
  /** Moved, not noticed, and wrong by more than two steps. */
  readonly hidden: number;
}

const SHIFT = 3;
const WRONG = 2;

const [care, light, familyName, runs] = process.argv.slice(2);
const arrows = light === 'arrows';
const family = ORDINARY.find(({ name }) => name === familyName);
if (!family) throw new Error(`No family of observers is called ${familyName}.`);
const sweep = sweeper({ care: care as Care, arrows: arrows ? 'right-is-up' : 'absent' });
const count = { holds: 0, stillFlagged: 0, movedFlagged: 0, hidden: 0 };

for (let run = 0; run < Number(runs); run++) {
  const { camera, random } = observer(family, run, arrows);
  const still = sweep((value) => halfPress(camera, value, random));
  count.holds += still.holds;
  if (still.ended === 'checking') count.stillFlagged++;

  const chance = seededRandom(7919 * run + 5);
  const moment = Math.round(still.holds * (0.25 + 0.5 * chance()));
  const shift = chance() < 0.5 ? SHIFT : -SHIFT;
  const after = { ...camera, low: camera.low + shift, high: camera.high + shift };
  const again = observer(family, run, arrows).random;
  const { ended, outcome } = sweep((value, before) => halfPress(before.holds < moment ? camera : after, value, again));
  if (ended === 'checking') count.movedFlagged++;
  else if (outcome.found === 'band' && Math.abs(outcome.chosen - (after.low + after.high) / 2) > WRONG) count.hidden++;
}

const shareOf = (sum: number): number => sum / Number(runs);
const summary: MovedSummary = {
  holds: shareOf(count.holds),
  stillFlagged: shareOf(count.stillFlagged),
  movedFlagged: shareOf(count.movedFlagged),
  hidden: shareOf(count.hidden),
};
console.log(JSON.stringify(summary));
