// What was measured and entered, newest first, in words; a sweep opens with every hold of it.
import { linesOf, type History } from '../../logbook/history.ts';
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { useSurroundings } from '../useSession.ts';
import { conditionsInWords } from '../words/conditions.ts';
import { holdsCounted, inPercent, onDay } from '../words/quantities.ts';

export function HistoryLines({ history }: { readonly history: History }) {
  const { way } = useSurroundings();
  const lines = linesOf(history);
  if (lines.length === 0) return <p class="muted">Nothing was measured or entered here yet.</p>;
  return (
    <section aria-labelledby="history">
      <h2 id="history">History</h2>
      <ul class="plain history">
        {lines.map((line) => {
          if (line.line === 'entered') {
            const { id, at, value, conditions } = line.entry;
            return (
              <li key={id}>
                <b>{writeSteps(value)}</b> entered in the camera, {onDay(at)}
                <small>{conditionsInWords(conditions)}</small>
              </li>
            );
          }
          const { id, at, by } = line.measured;
          return (
            <li key={id}>
              <b>{line.measured.chosen === null ? line.measured.found : writeSteps(line.measured.chosen)}</b> {HOW[by]}, {onDay(at)}
              <small>{factsInWords(line.measured)}</small>
              <small>{conditionsInWords(line.measured.conditions)}</small>
              {by === 'sweep' && (
                <button type="button" class="link" onClick={() => way.go({ at: 'record', id })}>
                  See every hold, or add a note
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

const HOW: Record<Measured['by'], string> = {
  sweep: 'found in a sweep',
  'by hand': 'written by hand',
  'from a table': 'from a table',
  'from another computer': 'from another computer',
};

function factsInWords({ found, service, low, high, interval, within, holds, other }: Measured): string {
  return [
    found === 'carried over' && 'found by its width',
    service && 'needs service',
    other !== null && `or ${writeSteps(other)}`,
    low !== null && high !== null && `band ${writeSteps(low)} to ${writeSteps(high)}`,
    interval && `95 % from ${interval.from.toFixed(1)} to ${interval.to.toFixed(1)}`.replaceAll('-', '\u2212'),
    within !== null && `${inPercent(within)} sure within one step`,
    holds !== null && holdsCounted(holds),
  ]
    .filter(Boolean)
    .join(' \u00b7 ');
}
