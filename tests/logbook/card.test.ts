import { describe, expect, it } from 'vitest';
import { cardOf } from '../../src/logbook/card.ts';
import { USUAL_LIMITS } from '../../src/logbook/due.ts';
import { shelfOf } from '../../src/logbook/shelf.ts';
import { words } from '../../src/words/catalogue.ts';
import { DAY, libraryWith, sweepRecord, T0 } from './libraryWith.ts';

describe('the card of a body', () => {
  const at = (situation: string, focalLength: number, distance: number) => ({
    situation,
    body: 'Velde M1',
    lens: 'x',
    focalLength,
    distance,
  });
  const library = libraryWith({
    bodies: [{ id: 'b', serial: '4711' }, { id: 'b-2' }],
    lenses: [
      { id: 'zoom', name: 'Tessel 24–70' },
      { id: 'l', serial: 'A12' },
      { id: 'new', name: 'Unmeasured' },
    ],
    converters: [{ id: 'c' }],
    situations: [
      { id: 'tele', lens: 'zoom', focalLength: 70, distance: 3500 },
      { id: 'wide', lens: 'zoom', focalLength: 24, distance: 1200 },
      { id: 's' },
      { id: 'longer', converter: 'c' },
      { id: 'none', lens: 'new' },
      { id: 'away', retired: 5, distance: 9000 },
      { id: 'other', body: 'b-2' },
    ],
    records: [sweepRecord('r', T0, 2, 9), sweepRecord('w', T0, 0, 4, { subject: at('wide', 24, 1200) })],
    entries: [
      { id: 'e', at: T0 + DAY, value: 5 },
      { id: 'f', at: T0 + DAY, value: -2, subject: at('tele', 70, 3500) },
      { id: 'g', at: T0 + DAY, value: 8, subject: at('wide', 24, 1200) },
      { id: 'h', at: T0 + DAY, value: 1, subject: at('longer', 85, 4250) },
      { id: 'i', value: 1, subject: at('away', 85, 9000) },
      { id: 'j', value: 1, subject: at('other', 85, 4250) },
    ],
  });
  const card = cardOf(library.kit.bodies[0]!, library.kit, shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS));

  it('holds its lenses by name, each from short to long, with what stands in the camera', () => {
    expect([card.body, card.serial]).toEqual(['Velde M1', '4711']);
    expect(card.lenses.map(({ name, serial, lines }) => [name, serial, lines.map((line) => [line.focalLength, line.value, line.state])])).toEqual([
      ['Orrin 85 f/1.8', 'A12', [[85, 5, 'entered']]],
      ['Orrin 85 f/1.8 with Orrin 1.4×', 'A12', [[85, 1, 'entered']]],
      [
        'Tessel 24–70',
        null,
        [
          [24, 8, 'differ'],
          [70, -2, 'entered'],
        ],
      ],
    ]);
  });

  it('says how sure a value is only where it is the one that was measured', () => {
    expect(card.lenses.flatMap(({ lines }) => lines.map(({ within }) => within))).toEqual([0.99, null, null, null]);
  });

  it('says what the newest check with photographs found of the very value it prints, and nothing of another value', () => {
    const check = (correction: number, verdict: object) => ({
      is: 'check',
      taken: T0,
      correction,
      shots: 6,
      reference: true,
      bias: { value: 12, low: 9, high: 15 },
      repeatability: 2,
      nearLessFar: null,
      depth: { front: 40, behind: 44 },
      verdict,
    });
    const factsWith = (...proofs: readonly object[]): string => {
      const { kit, ...rest } = libraryWith({ entries: [{ id: 'e', value: 5 }], proofs: proofs.map((proof, at) => ({ id: `p${at}`, at: T0 + at, proof })) });
      const [lens] = cardOf(kit.bodies[0]!, kit, shelfOf({ kit, ...rest }, { at: T0, temperature: null }, USUAL_LIMITS)).lenses;
      return words('card').facts(lens!.lines[0]!);
    };
    const [confirmed, shifted, unsure] = [{ is: 'confirmed' }, { is: 'shifted', lies: 'behind' }, { is: 'not enough', more: 2 }];
    expect(factsWith(check(5, confirmed))).toMatch(/^entered .* · confirmed with photographs 1\u00a0Jan\u00a02026$/);
    expect(factsWith(check(5, confirmed), check(5, shifted), check(5, unsure))).toMatch(/photographs showed a shift 1\u00a0Jan\u00a02026 · due again$/);
    expect(factsWith(check(4, confirmed))).not.toContain('photographs');
  });
});
