// Keeping what photographs showed, and erasing it: the figures from the logbook and from every copy of it, the crops from where they lie
// apart. The crops come first, so that no record names crops that were never kept.
import * as v from 'valibot';
import { subjectIn } from '../../kit/kit.ts';
import { keptAlready } from '../../logbook/keptAlready.ts';
import { proofKey } from '../../logbook/keys.ts';
import { ProofRecord } from '../../logbook/proofRecord.ts';
import type { Proof } from '../../photographs/proof.ts';
import type { CropPair } from '../../platform/keptCrops.ts';
import { DONE, failed, got, type Result } from '../../result.ts';
import { words } from '../../words/catalogue.ts';
import { inCopies } from './inCopies.ts';
import type { Keeper } from './keeper.ts';
import type { LibraryStore } from './library.ts';
import type { Ports } from './ports.ts';
import type { Mishaps } from './troubles.ts';

type World = Pick<Ports, 'snapshots' | 'crops' | 'newId' | 'now'> & { readonly keeper: Keeper; readonly library: LibraryStore; readonly troubles: Mishaps };

/** The id under which it is kept, once for the same figures. Without room for the crops the figures are kept alone, and that is said. */
export async function keepProof(world: World, situation: string, proof: Proof, crops: CropPair): Promise<Result<string>> {
  const { keeper, library, newId, now } = world;
  const say = words('session').proofs;
  const kit = library.kit.peek();
  const known = kit.situations.find(({ id }) => id === situation);
  if (!known) return failed(say.situationGone);
  const draft = { id: newId(), at: now(), practice: false, subject: subjectIn(kit, known), proof, crops: null };
  const checked = v.safeParse(ProofRecord, draft);
  if (!checked.success) return failed(say.unfit);
  const already = keptAlready(library.proofs.peek(), situation, checked.output.proof);
  if (already) return got(already.id);
  const name = await cropsKept(world, crops);
  await library.addProof({ ...checked.output, crops: name });
  return keeper.waitsFor(proofKey(draft.id)) ? failed(words('session').stored.notOnDisk) : got(draft.id);
}

/** The name they lie under; null where there are none, or no room for them. */
async function cropsKept({ crops: port, newId, troubles }: World, crops: CropPair): Promise<string | null> {
  if (crops.reference === null && crops.shot === null) return null;
  const name = newId();
  const kept = await (await port()).keep(name, crops);
  if (kept.ok) return name;
  troubles.add('crops', words('session').proofs.crops[kept.fault]);
  return null;
}

export async function eraseProof(world: World, id: string): Promise<Result> {
  const { keeper, library, snapshots } = world;
  const say = words('session').proofs;
  const record = library.proofs.peek().find((one) => one.id === id);
  if (!record) return failed(say.gone);
  const crops = await erasedCrops(world, record);
  if (!crops.ok) return crops;
  // The logbook comes last: until then it can be tried again.
  const copied = await inCopies(await snapshots(), (stored) => without(stored, proofKey(id)));
  if (copied !== 'changed') return failed(say[copied]);
  await library.withdrawProof(id);
  return keeper.waitsFor(proofKey(id)) ? failed(words('session').erasing.notOnDisk) : DONE;
}

/** The figures stay. */
export async function eraseCrops(world: World, id: string): Promise<Result> {
  const record = world.library.proofs.peek().find((one) => one.id === id);
  return record ? erasedCrops(world, record) : failed(words('session').proofs.gone);
}

async function erasedCrops({ crops: port }: World, { crops }: ProofRecord): Promise<Result> {
  if (crops === null) return DONE;
  const erased = await (await port()).erase(crops);
  return erased.ok ? DONE : failed(words('session').proofs.crops[erased.fault]);
}

/** The very same where it has no such key. */
function without<Stored extends Readonly<Record<string, unknown>>>(stored: Stored, key: string): Stored {
  return key in stored ? (Object.fromEntries(Object.entries(stored).filter(([each]) => each !== key)) as Stored) : stored;
}
