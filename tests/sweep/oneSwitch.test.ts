// Contract of the one switch: which press a person has made, told once and as early as it can be known.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lookAgainAt, moveSwitch, RELEASED, type Contact, type OneSwitch } from '../../src/sweep/oneSwitch.ts';
import type { Phase } from '../../src/sweep/state.ts';
import { moment, type Moment } from '../../src/units.ts';

const ms = (value: number): Moment => moment(50_000 + value);
const down = (at: number, during: Phase['name']): Contact => ({ move: 'down', at: ms(at), during });
const up = (at: number): Contact => ({ move: 'up', at: ms(at) });
const none = (at: number): Contact => ({ move: 'none', at: ms(at) });

/** Plays the contacts and lists each press with the moment it became known. */
function played(...contacts: readonly Contact[]) {
  let state: OneSwitch = RELEASED;
  return contacts.flatMap((contact) => {
    const moved = moveSwitch(state, contact);
    state = moved.state;
    return moved.presses.map(({ press, during, downAt }) => ({
      press,
      during,
      downAt: downAt - 50_000,
      known: contact.at - 50_000,
    }));
  });
}

describe('dialling', () => {
  test('a press is told at the down itself', () => {
    expect(played(down(0, 'dialling'), up(120))).toEqual([{ press: 'short', during: 'dialling', downAt: 0, known: 0 }]);
  });

  test('a press that turns out long is told as long too, for the same down', () => {
    expect(played(down(0, 'dialling'), none(600), up(900)).map(({ press, downAt, known }) => ({ press, downAt, known }))).toEqual([
      { press: 'short', downAt: 0, known: 0 },
      { press: 'long', downAt: 0, known: 600 },
    ]);
  });
});

test.each(['offered', 'finished'] as const)('in %s a second press within 0.4 s makes it double', (phase) => {
  expect(played(down(0, phase), up(100), down(300, phase), up(380), none(2000))).toEqual([{ press: 'double', during: phase, downAt: 0, known: 300 }]);
});

describe('holding', () => {
  test('one press is short when no second one has come within 0.4 s', () => {
    expect(played(down(0, 'holding'), up(100), none(400))).toEqual([{ press: 'short', during: 'holding', downAt: 0, known: 400 }]);
  });

  test('a second press within 0.4 s makes it double, known at the second down and dated at the first', () => {
    expect(played(down(0, 'holding'), up(100), down(300, 'holding'), up(380), none(2000))).toEqual([
      { press: 'double', during: 'holding', downAt: 0, known: 300 },
    ]);
  });

  test('a press held for 0.6 s is long, and its up tells nothing more', () => {
    expect(played(down(0, 'holding'), none(600), up(700))).toEqual([{ press: 'long', during: 'holding', downAt: 0, known: 600 }]);
  });

  test('a press let go between 0.4 and 0.6 s is short at once', () => {
    expect(played(down(0, 'holding'), up(500))).toEqual([{ press: 'short', during: 'holding', downAt: 0, known: 500 }]);
  });

  test('a second press that the clock missed still comes after the first one', () => {
    expect(played(down(0, 'holding'), up(100), down(450, 'holding'), none(1050)).map(({ press, downAt }) => ({ press, downAt }))).toEqual([
      { press: 'short', downAt: 0 },
      { press: 'long', downAt: 450 },
    ]);
  });
});

test.each(['judging', 'paused', 'checking', 'turning'] as const)('in %s a short press is told when it comes up, without waiting for a second one', (phase) => {
  expect(played(down(0, phase), up(150))).toEqual([{ press: 'short', during: phase, downAt: 0, known: 150 }]);
});

test.each(['offered', 'finished'] as const)('in %s two presses at once are one double press', (phase) => {
  expect(played(down(0, phase), up(100), down(300, phase), up(400), none(1000)).map(({ press }) => press)).toEqual(['double']);
});

test('an up without a down tells nothing', () => {
  expect(played(up(0), none(10), up(20))).toEqual([]);
});

test('a down that repeats while the switch stays down is one press', () => {
  expect(played(down(0, 'judging'), down(50, 'judging'), down(90, 'judging'), up(120))).toHaveLength(1);
});

test('after a lost up the switch works again at the next down', () => {
  expect(played(down(0, 'judging'), none(600), down(5000, 'judging'), up(5100)).map(({ press }) => press)).toEqual(['long', 'short']);
});

test('whenever it asks to be looked at again, looking then tells a press', () => {
  const moves = fc.array(fc.record({ gap: fc.integer({ min: 1, max: 900 }), move: fc.constantFrom('down', 'up') }), { maxLength: 12 });
  fc.assert(
    fc.property(moves, fc.constantFrom<Phase['name']>('dialling', 'holding', 'judging'), (gaps, during) => {
      let state: OneSwitch = RELEASED;
      let at = 0;
      const told: number[] = [];
      for (const { gap, move } of gaps) {
        at += gap;
        const due = lookAgainAt(state);
        if (due !== null && due <= ms(at)) {
          const looked = moveSwitch(state, { move: 'none', at: due });
          told.push(looked.presses.length);
          state = looked.state;
        }
        state = moveSwitch(state, move === 'down' ? down(at, during) : up(at)).state;
      }
      expect(told.filter((presses) => presses !== 1)).toEqual([]);
    }),
  );
});

test('a switch that came up is up, also after a press of which all was told', () => {
  const spent = moveSwitch(moveSwitch(RELEASED, down(0, 'dialling')).state, none(600)).state;
  expect(spent).toEqual({ is: 'spent' });
  expect(moveSwitch(spent, none(700)).state).toEqual({ is: 'spent' });
  expect(moveSwitch(spent, up(900)).state).toEqual(RELEASED);
  expect(moveSwitch(RELEASED, up(0)).state).toEqual(RELEASED);
  expect(moveSwitch(moveSwitch(RELEASED, down(0, 'holding')).state, up(700)).state).toEqual(RELEASED);
});

test('it is looked at again when a press turns out long, or when no second one comes', () => {
  const pressed = moveSwitch(RELEASED, down(0, 'holding')).state;
  expect(lookAgainAt(pressed)).toBe(ms(600));
  expect(lookAgainAt(moveSwitch(pressed, up(100)).state)).toBe(ms(400));
  expect([RELEASED, { is: 'spent' } as const].map(lookAgainAt)).toEqual([null, null]);
});
