// What must be left of photographs: their figures, or nothing of them once they were erased.
import { proofKey } from '../../../../src/logbook/keys.ts';
import { under } from '../kept.ts';
import type { Fact } from '../ledger.ts';

export const PHOTOGRAPHS = 'what photographs showed';

/** `kept`: with the crops; a copy brings the figures alone. */
export const photographsAs = (they: 'kept' | 'there' | 'erased'): Fact => ({
  what: PHOTOGRAPHS,
  of: 'logbook',
  isIn: (all) => {
    const proofs = under<{ crops: string | null }>(all, proofKey(''));
    if (they === 'erased') return proofs.length === 0;
    return proofs.length === 1 && (they === 'there' || proofs.every(({ crops }) => crops !== null && all.crops.includes(crops)));
  },
});
