// Contract of keeping once: the same figures of the same situation are there already, whatever the order of their fields; others are not.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keptAlready } from '../../src/logbook/keptAlready.ts';
import { anyLibrary } from './anyLibrary.ts';

test('whatever was kept is found again by its figures, as a file gives them back, and for no other situation', () => {
  fc.assert(
    fc.property(anyLibrary(), ({ proofs }) => {
      for (const { subject, proof } of proofs) {
        const back = Object.fromEntries(Object.entries(JSON.parse(JSON.stringify(proof)) as object).toReversed()) as typeof proof;
        expect(keptAlready(proofs, subject.situation, back)?.proof.is).toBe(proof.is);
        expect(keptAlready(proofs, `not ${subject.situation}`, back)).toBeNull();
      }
    }),
    { numRuns: 100 },
  );
});

test('other figures are not there, and what a bracket says beside a band makes no other bracket', () => {
  fc.assert(
    fc.property(anyLibrary(), ({ proofs }) => {
      for (const record of proofs) {
        const { proof, subject } = record;
        expect(keptAlready([record], subject.situation, { ...proof, taken: 12_345 as NonNullable<typeof proof.taken> }) === null).toBe(proof.taken !== 12_345);
        const apart = proof.is === 'bracket' ? { ...proof, joined: null } : proof;
        expect(keptAlready([record], subject.situation, apart)).toBe(record);
      }
    }),
    { numRuns: 100 },
  );
});
