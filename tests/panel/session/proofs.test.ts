// Contract of keeping what photographs showed: the crops first, then the figures, once; and erased from everywhere, or not at all.
import { describe, expect, test } from 'vitest';
import type { Proof } from '../../../src/photographs/proof.ts';
import type { Snapshot } from '../../../src/platform/snapshots.ts';
import { moment, steps } from '../../../src/units.ts';
import { addKit } from './sweeping.ts';
import { Computer, settle } from './world.ts';

const CHECK: Proof = {
  is: 'check',
  taken: null,
  correction: steps(4),
  shots: 6,
  reference: true,
  bias: { value: 2, low: 1, high: 3 },
  repeatability: 1,
  nearLessFar: null,
  depth: { front: 40, behind: 44 },
  verdict: { is: 'confirmed' },
};
const CROPS = { reference: new Blob(['reference']), shot: new Blob(['shot']) };
const NONE = { reference: null, shot: null };

async function withSituation() {
  const computer = new Computer();
  const window = await computer.open();
  addKit(window);
  await settle();
  const [situation] = window.session.kit.value.situations;
  return { computer, session: window.session, situation: situation!.id };
}
const proofsOn = (disk: Record<string, unknown>): unknown[] => Object.entries(disk).flatMap(([key, value]) => (key.startsWith('proof:') ? [value] : []));

describe('keeping', () => {
  test('writes the figures with the names as they stand, under the crops that lie apart', async () => {
    const { computer, session, situation } = await withSituation();
    const kept = await session.keepProof(situation, CHECK, CROPS);
    expect(kept).toMatchObject({ ok: true });
    expect(proofsOn(computer.disk)).toMatchObject([{ practice: false, at: computer.time, subject: { situation, body: 'Velde M1' }, proof: CHECK }]);
    expect(await session.cropsOf(session.proofs.value[0]!)).toMatchObject({ ok: true, value: CROPS });
  });

  test('the same figures again gives the record that is there, and writes nothing', async () => {
    const { computer, session, situation } = await withSituation();
    const first = await session.keepProof(situation, CHECK, CROPS);
    const before = structuredClone(computer.disk);
    expect(await session.keepProof(situation, { ...CHECK }, CROPS)).toEqual(first);
    expect([computer.disk, computer.crops.size]).toEqual([before, 1]);
  });

  test('keeps the figures where there is no room for the crops, and says so', async () => {
    const { computer, session, situation } = await withSituation();
    computer.noCrops = true;
    expect(await session.keepProof(situation, CHECK, CROPS)).toMatchObject({ ok: true });
    expect(session.proofs.value).toMatchObject([{ crops: null }]);
    expect(session.troubles.value.map(({ sentence }) => sentence)).toEqual([
      'The figures are kept, but there is no room for the crops. Free some space on the disk.',
    ]);
  });

  test('without crops names none, and asks for no room', async () => {
    const { computer, session, situation } = await withSituation();
    computer.noCrops = true;
    await session.keepProof(situation, CHECK, NONE);
    expect([session.proofs.value[0]?.crops, session.troubles.value]).toEqual([null, []]);
  });

  test('is refused for a situation that is gone, and for figures that no picture gives', async () => {
    const { session, situation } = await withSituation();
    expect(await session.keepProof('gone', CHECK, NONE)).toMatchObject({ ok: false, fault: expect.stringContaining('no longer in the kit') });
    const unfit = { ...CHECK, bias: { value: Number.NaN, low: 0, high: 0 } };
    expect(await session.keepProof(situation, unfit, NONE)).toMatchObject({ ok: false, fault: expect.stringContaining('cannot be kept') });
    expect(session.proofs.value).toEqual([]);
  });

  test('on a full disk is said to be not there yet', async () => {
    const { computer, session, situation } = await withSituation();
    computer.full = true;
    expect(await session.keepProof(situation, CHECK, NONE)).toMatchObject({ ok: false, fault: expect.stringContaining('not on the disk yet') });
  });

  test('is seen by another window of this computer', async () => {
    const { computer, session, situation } = await withSituation();
    const other = await computer.open();
    await session.keepProof(situation, CHECK, NONE);
    await settle();
    expect(other.session.proofs.value).toEqual(session.proofs.value);
    await session.eraseProof(session.proofs.value[0]!.id);
    await settle();
    expect(other.session.proofs.value).toEqual([]);
  });
});

describe('erasing', () => {
  test('takes the figures from the logbook and from every copy, and the crops with them', async () => {
    const { computer, session, situation } = await withSituation();
    await session.keepProof(situation, CHECK, CROPS);
    const untouched: Snapshot = { at: moment(5), why: 'daily', stored: { version: 3, kit: 'as it was' } };
    computer.copies = [{ at: moment(7), why: 'before an import', stored: structuredClone(computer.disk) }, untouched];
    expect(await session.eraseProof(session.proofs.value[0]!.id)).toEqual({ ok: true, value: undefined });
    expect([session.proofs.value, proofsOn(computer.disk), computer.crops.size]).toEqual([[], [], 0]);
    expect(computer.copies.flatMap(({ stored }) => proofsOn(stored))).toEqual([]);
    expect(computer.copies).toContain(untouched);
  });

  test('the crops alone leaves the figures', async () => {
    const { computer, session, situation } = await withSituation();
    await session.keepProof(situation, CHECK, CROPS);
    const [record] = session.proofs.value;
    expect(await session.eraseCrops(record!.id)).toMatchObject({ ok: true });
    expect([computer.crops.size, session.proofs.value, await session.cropsOf(record!)]).toEqual([0, [record], { ok: true, value: null }]);
  });

  test('what is not there is said to be gone', async () => {
    const { session } = await withSituation();
    for (const erase of [session.eraseProof, session.eraseCrops]) {
      expect(await erase('nothing')).toMatchObject({ ok: false, fault: expect.stringContaining('no longer in the logbook') });
    }
  });
});
