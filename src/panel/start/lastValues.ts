// What each situation was measured at or set to last, in a few words; a sweep begins near it.
import { historiesOf } from '../../logbook/history.ts';
import { standingOf, type Standing } from '../../logbook/standing.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { onDay } from '../words/quantities.ts';
import { libraryIn } from '../session/libraryIn.ts';
import type { Session } from '../session/session.ts';

export const lastValues = (session: Session): ReadonlyMap<string, string> =>
  new Map([...historiesOf(libraryIn(session))].map(([id, history]) => [id, inWords(standingOf(history))]));

function inWords({ state, value, at }: Standing): string {
  if (state === 'never measured' || at === null) return 'not measured yet';
  if (value === null) return `no value found, ${onDay(at)}`;
  return `last ${writeSteps(value)}, ${state === 'measured' ? 'measured' : 'entered'} ${onDay(at)}; a sweep begins near it`;
}
