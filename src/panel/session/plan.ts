// From what a sweep is to be about to the plan it opens with: the kit as it stands, what the logbook remembers of it, and
// the value the body is set to.
import { subjectIn } from '../../kit/kit.ts';
import { byTime } from '../../logbook/history.ts';
import { memoryFor } from '../../logbook/memory.ts';
import { shiftInside } from '../../practice/cameras.ts';
import { drawOddity } from '../../practice/oddCamera.ts';
import { lapseOf } from '../../practice/training/score.ts';
import { failed, got, type Result } from '../../result.ts';
import { NO_MEMORY } from '../../sweep/memory.ts';
import { isNamed, PRACTICE } from '../../sweep/named.ts';
import type { Plan, Unnamed } from '../../sweep/plan.ts';
import { isOnScale, nearestOn, USUAL_SCALE } from '../../sweep/scale.ts';
import { transferPlan } from '../../sweep/transfer/opened.ts';
import { replay } from '../../sweep/transition.ts';
import { millimetres } from '../../units.ts';
import { asSpoken } from '../../words/asSpoken.ts';
import { words } from '../../words/catalogue.ts';
import { firstWords } from '../../words/first.ts';
import type { Describing } from './describing.ts';
import type { LibraryStore } from './library.ts';
import type { Beginning } from './session.ts';
import { startFor } from './startFor.ts';

type Known = Pick<LibraryStore, 'kit' | 'records' | 'byHand' | 'entries' | 'settings'>;

/** As they are stored; on the screen they are those of its language (`panel/words/namedNow.ts`). */
function practiceNames(): Record<'body' | 'lens', string> {
  const { body, lens } = words('session').practice;
  return { body: asSpoken(body), lens: asSpoken(lens) };
}

export function planFor(wanted: Beginning, known: Known, newSeed: () => number, desk: Pick<Describing, 'opening'> | null): Result<Plan> {
  const read = settled(wanted, desk);
  if (!read.ok) return read;
  const beginning = read.value;
  const { manner, training } = known.settings.peek();
  const own = training.own ? lapseOf(training.rounds) : null;
  const lapse = own === null ? {} : { lapse: own };
  if (beginning.with === 'transfer') return transferFrom(beginning.record, known);
  if (beginning.with === 'practice') {
    const seed = beginning.seed ?? newSeed();
    const oddity = beginning.odd ? { oddity: drawOddity(seed, beginning.arrows !== 'absent') } : {};
    return got({
      subject: { situation: PRACTICE, ...practiceNames(), focalLength: millimetres(50), distance: millimetres(2500) },
      scale: USUAL_SCALE,
      arrows: beginning.arrows,
      manner,
      memory: NO_MEMORY,
      ...lapse,
      start: nearestOn(USUAL_SCALE, 0),
      practice: { seed, ...(beginning.band && { band: beginning.band }), ...oddity },
    });
  }
  if (beginning.with === 'unnamed') {
    const { subject, onBody, bench } = beginning;
    return got({ subject, ...onBody, manner, memory: NO_MEMORY, ...lapse, start: startFor(onBody.scale, undefined), practice: null, ...(bench && { bench }) });
  }
  const kit = known.kit.peek();
  const situation = kit.situations.find(({ id }) => id === beginning.situation);
  const body = kit.bodies.find(({ id }) => id === situation?.body);
  const lens = kit.lenses.find(({ id }) => id === situation?.lens);
  if (!situation || !body || !lens) return failed(words('session').unplanned['kit gone']);
  const entered = known.entries
    .peek()
    .filter(({ subject }) => subject.situation === situation.id)
    .toSorted(byTime)
    .at(-1)?.value;
  const start = beginning.start ?? startFor(body.scale, entered);
  if (!isOnScale(body.scale, start)) return failed(words('session').unplanned['value off the scale']);
  return got({
    subject: subjectIn(kit, situation),
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
  if (!record) return failed(words('session').unplanned['sweep not kept yet']);
  const plan = transferPlan(replay(record.journal), record.outcome);
  if (!plan) return failed(words('session').unplanned['no width']);
  const { practice, scale, arrows } = plan;
  return got(practice ? { ...plan, practice: { ...practice, shift: shiftInside(practice, scale, arrows) } } : plan);
}

/** What was told goes into the kit before the plan is made; `unnamed` where something of it is still open. */
type Settled =
  | Exclude<Beginning, { with: 'told' }>
  | ({ readonly with: 'unnamed'; readonly subject: Unnamed; readonly onBody: Pick<Plan, 'scale' | 'arrows'> } & Pick<
      Extract<Beginning, { with: 'told' }>,
      'bench'
    >);

function settled(beginning: Beginning, desk: Pick<Describing, 'opening'> | null): Result<Settled> {
  if (beginning.with !== 'told') return got(beginning);
  const opening = desk?.opening(beginning.about);
  if (!opening) return failed(firstWords().notRead);
  if (!opening.ok) return failed(opening.fault.sentence);
  const { subject, onBody } = opening.value;
  const bench = beginning.bench && { bench: beginning.bench };
  return got(isNamed(subject) ? { with: 'kit', situation: subject.situation, ...bench } : { with: 'unnamed', subject, onBody, ...bench });
}
