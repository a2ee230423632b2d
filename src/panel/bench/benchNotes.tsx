// What was ticked and read while a rig was set up.
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import { words } from '../../words/catalogue.ts';

export function BenchNotes({ bench: { ticked, readings } }: { readonly bench: BenchRecord }) {
  const say = words('readings');
  return (
    <>
      <p class="muted small">{say.ticked(ticked.length)}</p>
      {readings.length > 0 && (
        <ul class="cautions" aria-label={say.title}>
          {readings.map((reading, index) => (
            <li key={index}>{say.reading(reading)}</li>
          ))}
        </ul>
      )}
    </>
  );
}
