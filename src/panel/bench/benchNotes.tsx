// What was ticked and read while a rig was set up.
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import { readingInWords } from '../words/readings.ts';

export function BenchNotes({ bench: { ticked, readings } }: { readonly bench: BenchRecord }) {
  return (
    <>
      <p class="muted small">
        {ticked.length} {ticked.length === 1 ? 'step' : 'steps'} ticked
      </p>
      {readings.length > 0 && (
        <ul class="cautions" aria-label="Readings">
          {readings.map((reading, index) => (
            <li key={index}>{readingInWords(reading)}</li>
          ))}
        </ul>
      )}
    </>
  );
}
