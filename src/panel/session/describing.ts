// Telling whose sweep it is at any time: before it begins, between two holds, at its end, and after it was kept under a
// stand-in. What is told goes into the kit and into the plan that the sweep opened with.
import type { Kit } from '../../kit/kit.ts';
import { partsOf } from '../../kit/told.ts';
import { memoryFor } from '../../logbook/memory.ts';
import type { LogRecord } from '../../logbook/record.ts';
import type { SweepEvent } from '../../sweep/event.ts';
import { isNamed, NOTHING_TOLD } from '../../sweep/named.ts';
import type { Plan, Subject, Unnamed } from '../../sweep/plan.ts';
import { replanned, type Replanned } from '../../sweep/replanned.ts';
import type { StoredBench } from '../../sweep/storedBench.ts';
import { USUAL_SCALE } from '../../sweep/scale.ts';
import { Scale } from '../../sweep/storedScale.ts';
import type { SweepState } from '../../sweep/state.ts';
import type { Moment } from '../../units.ts';
import * as v from 'valibot';
import { words } from '../../words/catalogue.ts';
import { faultsIn } from './faults.ts';
import type { KitForms } from './kitForms.ts';
import type { LibraryStore } from './library.ts';
import { startFor } from './startFor.ts';
import type { Described, Description, Saved } from './session.ts';
import { withStandIns } from './standIns.ts';
import { DONE, failed, got, type Failed, type Result } from '../../result.ts';
import { subjectOfParts, takeIn, type KitDesk } from './telling.ts';

/** The sweep of this panel, as far as telling needs it. */
export interface Running {
  readonly sweep: { peek(): SweepState | null };
  rework(change: (journal: readonly SweepEvent[], state: SweepState) => Replanned | null): boolean;
}

export interface Describing {
  /** Stores with the sweep how its rig was set up: the first hold settles it. */
  noteBench(bench: StoredBench): boolean;
  describe(told: Description): Described;
  named(): Subject | null;
  nameKept(situation: string, told: Description): Described;
  situationFor(about: Description): Saved;
  /** What a sweep may open with by what was told: its subject, scale and arrows. */
  opening(about: Description): Opening;
}

type OnBody = Pick<Plan, 'scale' | 'arrows'>;
type Opening = Result<{ readonly subject: Subject | Unnamed; readonly onBody: OnBody }, DescribedFault>;
type DescribedFault = Extract<Described, { ok: false }>['fault'];

const faulty = (of: keyof Description | null, sentence: string): Failed<DescribedFault> => failed({ of, sentence });

export function createDescribing(library: LibraryStore, forms: KitForms, live: Running): Describing {
  const desk: KitDesk = { ...forms, kit: () => library.kit.peek() };
  const kit = (): Kit => library.kit.peek();
  const replan = (plan: Plan): boolean => live.rework((journal, state) => replanned(journal, state, plan));

  function onBody(told: Description, now: OnBody): Result<OnBody, DescribedFault> {
    const picked = told.body && 'id' in told.body ? told.body.id : null;
    const body = kit().bodies.find(({ id }) => id === picked);
    const scale = told.scale ? v.safeParse(v.object({ scale: Scale }), { scale: told.scale }) : null;
    if (scale && !scale.success) return faulty('scale', faultsIn(scale.issues)[0]?.sentence ?? words('session').untold.noScale);
    return got({ scale: scale?.output.scale ?? body?.scale ?? now.scale, arrows: told.arrows ?? body?.arrows ?? now.arrows });
  }

  /** What was told of the scale and the arrows holds for the body itself. */
  function keepOnBody({ body }: Unnamed, told: Description, { scale, arrows }: OnBody): void {
    const known = kit().bodies.find(({ id }) => id === body?.id);
    if (known && (told.scale || told.arrows)) forms.putKit('bodies', { ...known, scale, arrows }, known.changed);
  }

  function opening(about: Description): Opening {
    const scaled = onBody(about, { scale: USUAL_SCALE, arrows: 'absent' });
    if (!scaled.ok) return scaled;
    const wanted = scaled.value;
    const { parts, described } = takeIn(NOTHING_TOLD, about, wanted, desk);
    if (!described.ok) return described;
    const body = kit().bodies.find(({ id }) => id === parts.body?.id);
    const known: OnBody = { scale: about.scale ? wanted.scale : (body?.scale ?? wanted.scale), arrows: about.arrows ?? body?.arrows ?? wanted.arrows };
    keepOnBody(parts, about, known);
    return got({ subject: subjectOfParts(parts, desk) ?? parts, onBody: known });
  }

  return {
    noteBench: (bench) =>
      live.rework((journal, state) => (journal.some(({ did }) => did === 'began') ? null : replanned(journal, state, { ...state.plan, bench }))),
    opening,
    situationFor(about) {
      const told = opening(about);
      if (!told.ok) return failed([{ field: told.fault.of, sentence: told.fault.sentence }]);
      const { subject } = told.value;
      return isNamed(subject) ? got(subject.situation) : failed([{ field: null, sentence: missingIn(subject) }]);
    },
    describe(told) {
      const state = live.sweep.peek();
      if (!state || state.plan.practice || state.plan.transfer) return faulty(null, words('session').untold.noSweep);
      const { plan } = state;
      const before = partsOf(plan.subject, kit());
      const read = onBody(told, plan);
      if (!read.ok) return read;
      const wanted = read.value;
      const newScale = JSON.stringify(wanted) !== JSON.stringify({ scale: plan.scale, arrows: plan.arrows });
      if (newScale && isHeld(state)) return faulty(told.body ? 'body' : told.scale ? 'scale' : 'arrows', words('session').untold.holdFirst);
      const scaled = newScale ? { ...plan, ...wanted, ...(fresh(state) && { start: startFor(wanted.scale, undefined) }) } : plan;
      if (!replan(scaled)) return unfit(state, told, wanted);
      const { parts, described } = takeIn(before, { ...unknownIn(before), ...told }, wanted, desk);
      keepOnBody(parts, told, wanted);
      const subject = subjectOfParts(parts, desk) ?? parts;
      if (isNamed(subject)) moveMarks(state.id, subject);
      putAwayUnused(plan.subject, subject);
      replan({ ...scaled, ...remembered(state, subject, scaled), subject });
      return described;
    },
    named() {
      const state = live.sweep.peek();
      if (!state) return null;
      const { subject } = state.plan;
      if (isNamed(subject)) return subject;
      const opened = state.journal[0]?.at ?? (0 as Moment);
      const named = standInFor(subject, state.plan, opened);
      if (named) replan({ ...state.plan, subject: named });
      return named;
    },
    nameKept(situation, told) {
      const kept = kit().situations.find(({ id }) => id === situation);
      if (!kept) return faulty(null, words('session').untold.resultGone);
      const before = partsOf({ situation } as Subject, kit());
      const body = kit().bodies.find(({ id }) => id === kept.body);
      if (!body) return faulty(null, words('session').untold.resultGone);
      const { parts, described } = takeIn(before, told, body, desk);
      if (!described.ok) return described;
      const subject = subjectOfParts(parts, desk);
      if (!subject) return faulty('focalLength', missingIn(parts));
      moveKept(situation, subject);
      return DONE;
    },
  };

  function standInFor(subject: Unnamed, plan: OnBody, opened: Moment): Subject | null {
    const { parts, lengthToo } = withStandIns(subject, plan, opened, desk);
    const named = subjectOfParts(parts, desk);
    const situation = kit().situations.find(({ id }) => id === named?.situation);
    if (situation && lengthToo) forms.putKit('situations', { ...situation, standIn: true }, situation.changed);
    return named;
  }

  /** What was marked as entered of this sweep goes with its name. */
  function moveMarks(sweep: string, to: Subject): void {
    for (const entry of library.entries.peek())
      if (entry.record === sweep && entry.subject.situation !== to.situation) void library.addEntry({ ...entry, subject: to });
  }

  /** Everything that was kept of one situation is of another from now on; the stand-ins behind it are put away. */
  function moveKept(from: string, to: Subject): void {
    for (const record of library.records.peek()) if (record.subject.situation === from) void library.record(withSubject(record, to));
    for (const entry of library.entries.peek()) if (entry.subject.situation === from) library.addEntry({ ...entry, subject: to });
    for (const record of library.byHand.peek()) if (record.subject.situation === from) library.addByHand({ ...record, subject: to });
    for (const proof of library.proofs.peek()) if (proof.subject.situation === from) void library.addProof({ ...proof, subject: to });
    const left = kit().situations.find(({ id }) => id === from);
    if (!left) return;
    if (from === to.situation) {
      const { standIn: _, ...settled } = left;
      if (left.standIn) forms.putKit('situations', settled, left.changed);
      return;
    }
    forms.retireKit('situations', from, true);
    for (const [list, id] of [
      ['lenses', left.lens],
      ['bodies', left.body],
    ] as const) {
      const unused = kit().situations.every((one) => one.retired !== null || (one.lens !== id && one.body !== id));
      if (unused && kit()[list].some((one) => one.id === id && one.standIn)) forms.retireKit(list, id, true);
    }
  }

  /** A situation that this sweep was about for a moment, and nothing else ever was. */
  function putAwayUnused(before: Subject | Unnamed, now: Subject | Unnamed): void {
    if (!isNamed(before) || (isNamed(now) && now.situation === before.situation)) return;
    const sweep = live.sweep.peek()?.id;
    const uses = [...library.records.peek().filter(({ id }) => id !== sweep), ...library.byHand.peek(), ...library.entries.peek(), ...library.proofs.peek()];
    const planned = library.plan.peek()?.situations.includes(before.situation);
    if (!planned && uses.every(({ subject }) => subject.situation !== before.situation)) forms.retireKit('situations', before.situation, true);
  }

  /** What the logbook remembers counts only where nothing was held yet. */
  function remembered(state: SweepState, subject: Subject | Unnamed, { scale }: OnBody): Pick<Plan, 'memory' | 'start'> | null {
    const situation = isNamed(subject) ? kit().situations.find(({ id }) => id === subject.situation) : undefined;
    if (!situation || !fresh(state)) return null;
    return { memory: memoryFor(situation, [...library.records.peek(), ...library.byHand.peek()], kit()), start: startFor(scale, lastEntered(situation.id)) };
  }

  function lastEntered(situation: string): number | undefined {
    return library.entries
      .peek()
      .filter(({ subject }) => subject.situation === situation)
      .toSorted((a, b) => a.at - b.at)
      .at(-1)?.value;
  }
}

const fresh = ({ journal }: SweepState): boolean => journal.every(({ did }) => did !== 'began');
const isHeld = ({ phase }: SweepState): boolean => phase.name === 'holding' || phase.name === 'judging';

function missingIn({ body, lens }: Unnamed): string {
  const { missing } = words('session').untold;
  return body === null ? missing.body : lens === null ? missing.lens : missing.length;
}

/** Pieces that the kit does not have are put into it by their names. */
function unknownIn({ body, lens }: Unnamed): Description {
  return { ...(body?.id === '' && { body: { name: body.name } }), ...(lens?.id === '' && { lens: { name: lens.name } }) };
}

function unfit({ holds, spent }: SweepState, told: Description, { scale }: OnBody): Described {
  const outside = [...spent, ...holds].find(({ value }) => value < scale.min || value > scale.max || (value - scale.min) % scale.step !== 0);
  const of = told.body ? 'body' : told.scale ? 'scale' : told.arrows ? 'arrows' : null;
  if (of === null) return faulty(null, words('session').untold.noSweep);
  return faulty(of, outside ? words('session').untold.offTheScale(outside.value) : words('session').untold.arrowsSeen);
}

function withSubject(record: LogRecord, subject: Subject): LogRecord {
  const journal = record.journal.map((event) => (event.did === 'opened' ? { ...event, plan: { ...event.plan, subject } } : event));
  return { ...record, subject, journal };
}
