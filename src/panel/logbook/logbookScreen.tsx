// The logbook: type a few letters, and the last value of each situation that answers is there.
import { useState } from 'preact/hooks';
import { lookUp } from '../../logbook/lookUp.ts';
import type { LogRecord } from '../../logbook/record.ts';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { Entries } from './entries.tsx';

export function LogbookScreen() {
  const { session, way } = useSurroundings();
  const [query, setQuery] = useState('');
  const records = session.records.value;
  const found = lookUp(records.filter(({ practice }) => !practice), query);
  const practised = records.filter(({ practice }) => practice);
  return (
    <>
      <Heading onBack={() => way.back()}>Logbook</Heading>
      <input
        type="search"
        aria-label="Find a body, lens, focal length or distance"
        placeholder="Find a lens"
        value={query}
        onInput={(event) => setQuery(event.currentTarget.value)}
      />
      <output class="unseen" aria-label="Found">
        {found.length} found
      </output>
      {found.length > 0 ? <Entries records={found} /> : <p class="muted">{nothingFound(records, query)}</p>}
      {practised.length > 0 && (
        <details>
          <summary>Practice sweeps ({practised.length})</summary>
          <Entries records={practised} />
        </details>
      )}
    </>
  );
}

const nothingFound = (records: readonly LogRecord[], query: string): string =>
  records.some(({ practice }) => !practice)
    ? `Nothing in the logbook answers \u201c${query}\u201d. Try fewer letters.`
    : 'No sweep is finished yet. Each one is written down here when it ends.';
