// Contract of sureness: sure only where a word was said and no other is about as near; a far word that is ahead of all others
// stays sure, as in a room that rings.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Likeness } from '../../../src/voice/ownWords/likeness.ts';
import { sureness } from '../../../src/voice/ownWords/sureness.ts';

/** About what a word said again tells of itself. */
const SAID_AGAIN: Likeness = { apart: 0, closest: 0, length: 0, carrying: 0, warped: 0.04, lead: -0.3, closestLead: -0.3, worstLead: -0.3, ahead: -0.45 };

test('a word said again is sure', () => {
  expect(sureness(SAID_AGAIN)).toBeGreaterThan(2.2);
});

test('the nearer another word is, the less sure it is which was said', () => {
  const leads = fc.double({ min: -0.5, max: 0, noNaN: true });
  fc.assert(
    fc.property(leads, leads, (one, other) => {
      const at = (lead: number): number => sureness({ ...SAID_AGAIN, apart: -1, lead, closestLead: lead, worstLead: lead });
      expect(at(Math.min(one, other))).toBeGreaterThanOrEqual(at(Math.max(one, other)));
    }),
  );
  expect(sureness({ ...SAID_AGAIN, lead: 0, closestLead: 0, worstLead: 0 })).toBeLessThan(1);
});

test('what is far from every word by as much is none', () => {
  expect(sureness({ ...SAID_AGAIN, apart: 0.4, closest: 0.4, ahead: -0.1, lead: -0.05 })).toBeLessThan(0);
});

test('a word that is further away than usual, and so are all others, is still sure', () => {
  expect(sureness({ ...SAID_AGAIN, apart: 0.15, closest: 0.15 })).toBeGreaterThan(2.2);
});

test('what carries sound for far less long than the word is a part of another, however near', () => {
  expect(sureness({ ...SAID_AGAIN, carrying: Math.log(0.4) })).toBeLessThan(0);
  expect(sureness({ ...SAID_AGAIN, carrying: Math.log(0.6) })).toBeGreaterThan(2.2);
});
