// Brackets of five corrections, two shots each: how near the centre comes, and whether its interval is true.
import { bracketOrder, measureBracket } from '../../../src/photographs/bracket.ts';
import { normal, seededRandom } from '../../../src/practice/random.ts';
import { steps } from '../../../src/units.ts';
import { least, most, shown, type Figure } from '../figure.ts';
import type { MeasuredPicture } from './measuredPictures.ts';
import { measuredShot, SCATTER, STEP } from './shotErrors.ts';

const RUNS = 2000;
const CORRECTIONS = [-8, -4, 0, 4, 8].map(steps);

export function bracketFigures(measured: readonly MeasuredPicture[]): Figure[] {
  const random = seededRandom(77);
  const runs = Array.from({ length: RUNS }, () => {
    const truth = normal(random, 0, 3);
    const scatter = SCATTER.least + (SCATTER.most - SCATTER.least) * random();
    const shots = bracketOrder(CORRECTIONS, 2).map((correction) => ({
      correction,
      error: measuredShot(STEP * (correction - truth + normal(random, 0, scatter)), measured, random),
    }));
    const answer = measureBracket(shots, null);
    if (!answer.ok) return null;
    const { centre, step } = answer.value;
    return { off: Math.abs(centre.value - truth), holds: centre.low <= truth && truth <= centre.high, step: step.low <= STEP && STEP <= step.high };
  }).filter((run) => run !== null);
  const offs = runs.map(({ off }) => off).sort((a, b) => a - b);
  return [
    most('a bracket’s centre off by, steps, 95th percentile', offs[Math.floor(0.95 * offs.length)] ?? NaN, 0.7),
    least('a bracket’s stated interval holds the centre, share', runs.filter(({ holds }) => holds).length / runs.length, 0.93),
    least('a bracket’s stated interval holds the step, share', runs.filter(({ step }) => step).length / runs.length, 0.93),
    shown('brackets without a centre, share', 1 - runs.length / RUNS),
  ];
}
