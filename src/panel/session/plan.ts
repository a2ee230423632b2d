// From what a sweep is to be about to the plan it opens with: the kit as it stands, what the logbook remembers of it, and
// the value the body is set to.
import { subjectOf } from '../../kit/kit.ts';
import { byTime } from '../../logbook/history.ts';
import { memoryFor } from '../../logbook/memory.ts';
import { shiftInside } from '../../practice/cameras.ts';
import { drawOddity } from '../../practice/oddCamera.ts';
import { lapseOf } from '../../practice/training/score.ts';
import { failed, got, type Result } from '../../result.ts';
import { NO_MEMORY } from '../../sweep/memory.ts';
import type { Plan } from '../../sweep/plan.ts';
import { isOnScale, nearestOn, USUAL_SCALE } from '../../sweep/scale.ts';
import { transferPlan } from '../../sweep/transfer/opened.ts';
import { replay } from '../../sweep/transition.ts';
import { millimetres } from '../../units.ts';
import type { LibraryStore } from './library.ts';
import type { Beginning } from './session.ts';

type Known = Pick<LibraryStore, 'kit' | 'records' | 'byHand' | 'entries' | 'settings'>;

export function planFor(beginning: Beginning, known: Known, newSeed: () => number): Result<Plan> {
  const { manner, training } = known.settings.peek();
  const own = training.own ? lapseOf(training.rounds) : null;
  const lapse = own === null ? {} : { lapse: own };
  if (beginning.with === 'transfer') return transferFrom(beginning.record, known);
  if (beginning.with === 'practice') {
    const seed = beginning.seed ?? newSeed();
    const oddity = beginning.odd ? { oddity: drawOddity(seed, beginning.arrows !== 'absent') } : {};
    return got({
      subject: { situation: 'practice', body: 'Practice camera', lens: 'Practice lens', focalLength: millimetres(50), distance: millimetres(2500) },
      scale: USUAL_SCALE,
      arrows: beginning.arrows,
      manner,
      memory: NO_MEMORY,
      ...lapse,
      start: nearestOn(USUAL_SCALE, 0),
      practice: { seed, ...(beginning.band && { band: beginning.band }), ...oddity },
    });
  }
  const kit = known.kit.peek();
  const situation = kit.situations.find(({ id }) => id === beginning.situation);
  const body = kit.bodies.find(({ id }) => id === situation?.body);
  const lens = kit.lenses.find(({ id }) => id === situation?.lens);
  if (!situation || !body || !lens) return failed('That body, lens or distance is no longer in the kit. Choose another.');
  const entered = known.entries.peek().filter(({ subject }) => subject.situation === situation.id).toSorted(byTime).at(-1)?.value;
  const start = beginning.start ?? (entered !== undefined && isOnScale(body.scale, entered) ? entered : nearestOn(body.scale, 0));
  if (!isOnScale(body.scale, start)) return failed('The value the body is set to now is not on its scale. Enter it again.');
  return got({
    subject: subjectOf(kit, situation),
    scale: body.scale,
    arrows: body.arrows,
    manner: { ...manner, care: beginning.care ?? manner.care },
    memory: memoryFor(situation, [...known.records.peek(), ...known.byHand.peek()], kit),
    ...lapse,
    start,
    practice: null,
    ...(beginning.bench && { bench: beginning.bench }),
  });
}

/** The practice camera turns its own ring. */
function transferFrom(id: string, { records }: Pick<Known, 'records'>): Result<Plan> {
  const record = records.peek().find((one) => one.id === id);
  if (!record) return failed('That sweep is not in the logbook yet. Wait a moment, then try again.');
  const plan = transferPlan(replay(record.journal), record.outcome);
  if (!plan) return failed('That sweep has no width to carry over. Measure the situation anew.');
  const { practice, scale, arrows } = plan;
  return got(practice ? { ...plan, practice: { ...practice, shift: shiftInside(practice, scale, arrows) } } : plan);
}
