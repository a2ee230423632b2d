// What a logbook of a seed says of each of its situations, kept to seven digits: what a sweep remembers, where the value stands, why it is due,
// and what is to be entered.
import { describe, expect, test } from 'vitest';
import { cardOf } from '../../src/logbook/card.ts';
import { dueAgain, USUAL_LIMITS } from '../../src/logbook/due.ts';
import { adviceOnEntering } from '../../src/logbook/entering/advice.ts';
import { historiesOf, linesOf } from '../../src/logbook/history.ts';
import { rememberedLamp } from '../../src/logbook/lampMemory.ts';
import { memoryFor } from '../../src/logbook/memory.ts';
import { newestCheck } from '../../src/logbook/newestCheck.ts';
import { othersOfLens } from '../../src/logbook/sameLens.ts';
import { narrow, shelfOf, type Shelved } from '../../src/logbook/shelf.ts';
import { standingOf } from '../../src/logbook/standing.ts';
import type { Temperature } from '../../src/logbook/conditions.ts';
import { moment, steps } from '../../src/units.ts';
import { orThrown } from '../kept/orThrown.ts';
import { sevenDigits } from '../kept/sevenDigits.ts';
import { DAY, T0 } from './libraryWith.ts';
import { seededLibrary } from './seededLibrary.ts';

const LIBRARIES = [1, 2].map(seededLibrary);
const TODAY = { at: moment(T0 + 600 * DAY), temperature: 12 as Temperature };
const day = (at: number | null): string => (at === null ? '-' : String((at - T0) / DAY));
/** One line of JSON, its numbers short. */
const line = (value: unknown): string => JSON.stringify(sevenDigits(value));

describe.each([0, 1])('of logbook %i', (at) => {
  const library = LIBRARIES[at]!;
  const { kit, records, byHand, notes } = library;
  const histories = [...historiesOf(library)];
  const shelfHere = (): readonly Shelved[] => {
    const shelf = orThrown(() => shelfOf(library, TODAY, USUAL_LIMITS));
    expect(shelf).toBeInstanceOf(Array);
    return typeof shelf === 'string' ? [] : shelf;
  };

  test('memory', () => {
    const measured = [...records, ...byHand];
    expect(kit.situations.map((situation) => line(orThrown(() => memoryFor(situation, measured, kit))))).toMatchSnapshot('first');
    expect(['b', 'c'].map((body) => line(orThrown(() => rememberedLamp(body, measured, kit))))).toMatchSnapshot('second');
  });

  test('histories and standing', () => {
    const told = histories.map(([id, history]) =>
      orThrown(() => {
        const { state, value, at: when, measured, entered } = standingOf(history);
        const check = newestCheck(history.proofs, null);
        return [
          id,
          state,
          value,
          day(when),
          measured?.id,
          entered?.id,
          check?.found,
          day(check?.at ?? null),
          newestCheck(history.proofs, steps(2))?.found,
        ].join(' ');
      }),
    );
    expect(told).toMatchSnapshot('first');
    const lines = histories.map(([, history]) =>
      linesOf(history)
        .map((one) => (one.line === 'measured' ? one.measured.id : one.line === 'entered' ? one.entry.id : one.record.id))
        .join(' '),
    );
    expect(lines).toMatchSnapshot('second');
    expect(
      histories.map(([, { measured }]) =>
        measured.map(({ id, found, chosen, other, low, high, centre, service }) => [id, found, chosen, other, low, high, centre, service].join(' ')),
      ),
    ).toMatchSnapshot('third');
  });

  test('reasons to measure again', () => {
    const limits = [USUAL_LIMITS, { days: 100, degrees: 5, steps: 1 }];
    const due = histories.map(([, history]) =>
      limits.map((limit) =>
        orThrown(() =>
          dueAgain(history, notes, TODAY, limit)
            .map(({ since, ...why }) => `${day(since)} ${line(why)}`)
            .join('; '),
        ),
      ),
    );
    expect(due).toMatchSnapshot();
  });

  test('the shelf, and parts of it', () => {
    const shelf = shelfHere();
    const ids = (list: readonly Shelved[]) => list.map(({ subject }) => subject.situation).join(' ');
    expect(ids(shelf)).toMatchSnapshot('first');
    const shows = (['all', 'never measured', 'due again', 'not entered', 'retired'] as const).flatMap((show) =>
      [null, 'b', 'c'].map((body) => ids(narrow(shelf, body, show))),
    );
    expect(shows).toMatchSnapshot('second');
    expect(kit.bodies.map((body) => line(orThrown(() => cardOf(body, kit, shelf))))).toMatchSnapshot('third');
    expect(shelf.map((one) => orThrown(() => ids(othersOfLens(shelf, one))))).toMatchSnapshot('others of the lens');
  });

  test('what to enter', () => {
    const shelf = shelfHere();
    const advice = kit.bodies.flatMap((body) =>
      kit.lenses.map((lens) =>
        orThrown(() => {
          const places = adviceOnEntering({ body: body.id, lens: lens.id }, kit, shelf, { by: 'worst share' })?.places ?? [];
          return places.map(({ evidence, uncounted, shown, one, two, missingEnd, byPictures }) =>
            line([
              evidence.map(({ band }) => Object.values(band)),
              uncounted.map(({ id, why }) => `${id} ${why}`),
              shown.map(({ bracket, check }) => [bracket, check]),
              [one?.value, one?.trade.map(({ value }) => value), two?.wide.value, two?.tele.value, two?.middles.length, missingEnd, byPictures?.value],
            ]),
          );
        }),
      ),
    );
    expect(advice).toMatchSnapshot();
  });
});
