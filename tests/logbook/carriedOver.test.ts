// Contract of a width transfer in the logbook: it counts as a band with a centre, and gives no value that does not hold;
// the workshop is shown both series.
import { describe, expect, test } from 'vitest';
import { USUAL_LIMITS } from '../../src/logbook/due.ts';
import { bandOf } from '../../src/logbook/entering/band.ts';
import { measuredIn } from '../../src/logbook/measured.ts';
import { memoryFor } from '../../src/logbook/memory.ts';
import type { LogRecord } from '../../src/logbook/record.ts';
import { shelfOf } from '../../src/logbook/shelf.ts';
import { evidenceOf } from '../../src/logbook/workshop.ts';
import type { CarriedOutcome } from '../../src/sweep/end/outcome.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import { transferPlan } from '../../src/sweep/transfer/opened.ts';
import { moment, steps } from '../../src/units.ts';
import { words } from '../../src/words/catalogue.ts';
import { ranWith } from '../sweep/noiseFree.ts';
import { after, later, opened, SUBJECT } from '../sweep/staged.ts';
import { libraryWith } from './libraryWith.ts';

/** A short one, so that sweeps are replayed in little time. */
const SCALE = { min: steps(-10), max: steps(10), step: 1 };
const library = libraryWith({});
const subject = { ...SUBJECT, situation: 's' };

function recordOf(id: string, state: ReturnType<typeof ranWith>): LogRecord {
  const { phase, journal } = after(state, { did: 'finished', at: later(900), by: 'key' });
  if (phase.name !== 'finished') throw new Error('not finished');
  return { id, finished: moment(5), practice: false, subject, outcome: phase.outcome, journal: [...journal] };
}

const swept = ranWith(openSweep(opened({ subject, scale: SCALE, arrows: 'absent' })).state, 4, 14);
const first = recordOf('sweep-1', swept);
const plan = transferPlan(swept, first.outcome);
if (!plan) throw new Error('nothing to carry over');
const turned = after(openSweep({ ...opened(plan), id: 'sweep-2' }).state, { did: 'checked', at: later(1), focus: 'moved', by: 'key' });
const second = recordOf('sweep-2', ranWith(turned, -6, 4));
const outcome = second.outcome as CarriedOutcome;

describe('measured', () => {
  test('it has the visible end, its mirror past the limit, and the centre between them', () => {
    expect(outcome).toMatchObject({ found: 'carried over', centre: 9, chosen: 9 });
    const measured = measuredIn(second);
    expect(measured).toMatchObject({ found: 'carried over', low: 4, high: 14, centre: 9, chosen: 9, service: false });
    expect(bandOf(measured, SCALE)).toMatchObject({ centre: 9, half: 5.5 });
  });

  test('a value that does not hold is none to go by, and without a visible end there is no band', () => {
    const unlit = { ...second, outcome: { ...outcome, visible: null, centre: 14, chosen: steps(10), inside: false, service: true } };
    expect(measuredIn(unlit)).toMatchObject({ chosen: null, low: null, high: null, centre: 14, service: true });
  });

  test('where the pair needs service, the look-up says so aloud', () => {
    const beyond = { ...second, outcome: { ...outcome, centre: 10.5, chosen: steps(10), service: true } };
    const shelf = shelfOf({ ...library, records: [beyond] }, { at: moment(9), temperature: null }, USUAL_LIMITS);
    expect(words('lookUp').answer(shelf)).toMatch(/plus 10, measured on 1\u00a0Jan\u00a01970, not entered yet\. The pair needs service\./);
  });

  test('the next sweep of the situation remembers its centre and its width', () => {
    const memory = memoryFor(library.kit.situations[0]!, [second], library.kit);
    expect(memory).toMatchObject({ centres: [{ centre: 9 }], halfWidth: { median: 5.5 } });
  });
});

describe('the page for the workshop', () => {
  test('shows one series without a transfer', () => {
    const evidence = evidenceOf(first, library);
    expect(evidence).toMatchObject({ aside: null, inFocus: { record: { id: 'sweep-1' } }, pairing: { body: { id: 'b' }, lens: { id: 'l' } } });
    expect(evidence.inFocus.holds).toHaveLength(first.outcome.tally.holds);
  });

  test('shows both series in order, also when the record of the first is gone', () => {
    const evidence = evidenceOf(second, { ...library, records: [first, second] });
    expect(evidence.inFocus.record?.id).toBe('sweep-1');
    expect(evidence.inFocus.holds).toEqual(evidenceOf(first, library).inFocus.holds);
    expect(evidence.aside?.holds).toHaveLength(second.outcome.tally.holds);
    const alone = evidenceOf(second, { ...library, records: [second] });
    expect(alone.inFocus).toEqual({ record: null, holds: evidence.inFocus.holds });
  });

  test('shows what photographs of its situation showed, the newest first, and nothing of the practice camera', () => {
    const { proofs } = libraryWith({
      proofs: [
        { id: 'old', at: 1 },
        { id: 'new', at: 2 },
        { id: 'other', subject: { ...subject, situation: 'elsewhere' } },
        { id: 'drawn', practice: true },
      ],
    });
    const evidence = evidenceOf(first, { ...library, proofs });
    expect(evidence.proofs.map(({ id }) => id)).toEqual(['new', 'old']);
    const { showed, by, facts } = words('workshop').photographs;
    expect(evidence.proofs.map((proof) => `${showed(proof)} ${by(proof)}. ${facts(proof)}`)[0]).toBe(
      'sharp in one picture, 1\u00a0Jan\u00a01970. focus fell 2\u00a0mm ± 1\u00a0mm behind the target',
    );
  });
});
