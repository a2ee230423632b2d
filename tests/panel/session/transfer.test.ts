// Contract of beginning a width transfer: its plan comes from the record it belongs to, and what cannot be carried over is
// refused in a sentence.
import { expect, test } from 'vitest';
import type { LogRecord } from '../../../src/logbook/record.ts';
import { createLibrary } from '../../../src/panel/session/library.ts';
import { settled } from '../../../src/panel/session/settled.ts';
import { planFor } from '../../../src/panel/session/plan.ts';
import { cameraOf } from '../../../src/practice/cameras.ts';
import { USUAL_SETTINGS } from '../../../src/usualSettings.ts';
import { openSweep } from '../../../src/sweep/opening.ts';
import type { Plan } from '../../../src/sweep/plan.ts';
import { ranWith } from '../../sweep/noiseFree.ts';
import { after, later, opened } from '../../sweep/staged.ts';
import { KIT, PLAN, SUBJECT } from '../fakeSession.ts';
import { DISK_AT_ONCE } from './diskAtOnce.ts';

function recordOf(low: number, high: number, plan: Partial<Plan> = {}): LogRecord {
  const { phase, journal, id } = after(ranWith(openSweep(opened({ ...PLAN, ...plan })).state, low, high), { did: 'finished', at: later(900), by: 'key' });
  if (phase.name !== 'finished') throw new Error('not finished');
  return { id, finished: phase.at, practice: false, subject: SUBJECT, outcome: phase.outcome, journal: [...journal] };
}

function planned(record: LogRecord, id = record.id) {
  const library = createLibrary(DISK_AT_ONCE, settled);
  library.take({ kit: KIT, records: [record], byHand: [], entries: [], notes: [], proofs: [], settings: USUAL_SETTINGS, live: null, plan: null, backup: null });
  return planFor({ with: 'transfer', record: id }, library, () => 1, null);
}

test('the plan carries the record and its holds, and starts where the body stands', () => {
  const record = recordOf(10, 26);
  const plan = planned(record);
  expect(plan).toMatchObject({ ok: true, value: { subject: PLAN.subject, transfer: { of: record.id, side: 'high', visible: 10 } } });
  expect(plan.ok && plan.value.transfer?.holds).toHaveLength(record.outcome.tally.holds);
});

test('a practice camera is turned until its whole band lies inside the scale', () => {
  for (let seed = 0; seed < 200; seed++) {
    const practice = { seed, band: 'past the limit' } as const;
    const { low, high } = cameraOf(practice, PLAN.scale, 'absent');
    expect(Math.max(PLAN.scale.min - low, high - PLAN.scale.max)).toBeGreaterThan(0.5);
    expect(Math.min(high - PLAN.scale.min, PLAN.scale.max - low)).toBeGreaterThan(2);
    const plan = seed < 3 ? planned(recordOf(Math.ceil(low), Math.floor(high), { practice })) : null;
    if (!plan) continue;
    const shift = plan.ok ? (plan.value.practice?.shift ?? 0) : 0;
    expect(low + shift).toBeGreaterThan(PLAN.scale.min + 1);
    expect(high + shift).toBeLessThan(PLAN.scale.max - 1);
  }
});

test('a sweep that is not kept, or whose band is known, is refused in a sentence that says what to do', () => {
  expect(planned(recordOf(10, 26), 'elsewhere')).toMatchObject({ ok: false, fault: expect.stringContaining('try again') });
  expect(planned(recordOf(-3, 4))).toMatchObject({ ok: false, fault: expect.stringContaining('Measure the situation again') });
});
