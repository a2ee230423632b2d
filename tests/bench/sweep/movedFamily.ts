// A focus that moves in the middle of a sweep: it must hardly ever end unnoticed and wrong, and a focus that stays must
// hardly ever be doubted.
import { most, shown, type Family } from '../figure.ts';
import { ORDINARY } from './jobs.ts';
import type { MovedSummary } from './movedJob.ts';
import { sideBySide } from './pool.ts';

const RUNS = 400;

export const moved: Family = {
  name: 'moved',
  async run({ tell }) {
    const terms = [
      ['standard', 'no arrows'],
      ['standard', 'arrows'],
      ['quick', 'no arrows'],
    ];
    const calls = ORDINARY.flatMap(({ name }) => terms.map((term) => [...term, name, String(RUNS)]));
    const summaries = await sideBySide<MovedSummary>('tests/bench/sweep/movedJob.ts', calls, (_, call, done) =>
      tell(`${done}/${calls.length} ${call.join(', ')}`),
    );
    return summaries.flatMap(({ holds, stillFlagged, movedFlagged, hidden }, index) => {
      const [care, arrows, light] = calls[index] ?? [];
      const name = `${light}, ${arrows}, ${care}`;
      const unnoticed = `${name}: moved by three steps, unnoticed and wrong by more than two`;
      return [
        shown(`${name}: holds`, holds),
        shown(`${name}: moved and noticed`, movedFlagged),
        // Quick care ends as soon as the centre is sure, and says so: it does not look back.
        care === 'quick' ? shown(unnoticed, hidden) : most(unnoticed, hidden, 0.05),
        most(`${name}: still, and doubted`, stillFlagged, 0.03),
      ];
    });
  },
};
