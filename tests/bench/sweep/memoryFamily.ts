// What the logbook's memory is worth: a lens measured again in fewer holds and as well, one whose band has moved since at more cost
// and as truly, and a memory that is wrong overruled at little cost.
import { least, most, shown, type Family } from '../figure.ts';
import { ORDINARY } from './jobs.ts';
import type { MemorySummary } from './memoryJob.ts';
import { sideBySide } from './pool.ts';

const RUNS = 300;

export const memory: Family = {
  name: 'memory',
  async run({ tell }) {
    const calls = ORDINARY.flatMap(({ name }) => ['no arrows', 'arrows'].map((arrows) => [arrows, name, String(RUNS)]));
    const summaries = await sideBySide<MemorySummary>('tests/bench/sweep/memoryJob.ts', calls, (_, call, done) =>
      tell(`${done}/${calls.length} ${call.join(', ')}`),
    );
    return summaries.flatMap(({ first, right, moved: [byOne, byThree], wrong }, index) => {
      const [arrows, light] = calls[index] ?? [];
      const name = `${light}, ${arrows}, standard`;
      return [
        shown(`${name}: first sweep: holds`, first.holds),
        most(`${name}: measured again beside the first: holds`, right.holds / first.holds, light === 'softness 0.3' ? 0.58 : 0.65),
        most(`${name}: measured again beside the first: mean error`, right.meanError / first.meanError, 1.05),
        shown(`${name}: measured again: 95th-percentile error, steps`, right.tailError),
        most(`${name}: measured again: sure and wrong by more than two steps`, right.confidentlyWrong, 0.02),
        least(`${name}: measured again: the true centre lies in the 95 % interval`, right.covered, 0.93),
        least(`${name}: moved by one step since, beside measured again unmoved: holds`, byOne.holds / right.holds, 1),
        least(`${name}: moved by one step since: the true centre lies in the 95 % interval`, byOne.covered, 0.93),
        least(`${name}: moved by three steps since, beside measured again unmoved: holds`, byThree.holds / right.holds, 1),
        least(`${name}: moved by three steps since: the true centre lies in the 95 % interval`, byThree.covered, 0.93),
        most(`${name}: memory eight steps off beside the first: holds`, wrong.holds / first.holds, 1.3),
        most(`${name}: memory eight steps off: sure and wrong by more than two steps`, wrong.confidentlyWrong, 0.02),
      ];
    });
  },
};
