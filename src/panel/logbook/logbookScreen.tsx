// The logbook: type a few letters, and the last value of each situation that answers is there.
import { useMemo, useState } from 'preact/hooks';
import { backupReminder } from '../../logbook/backup/reminder.ts';
import { answerOf } from '../../logbook/search/answer.ts';
import { finderOf, isQuestion, lookUpSpoken, lookUpTyped } from '../../logbook/search/finder.ts';
import { narrow, type Shelved, type Show } from '../../logbook/shelf.ts';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { onDay } from '../words/quantities.ts';
import { Entries } from './entries.tsx';
import { Filters, temperatureTyped, type Filter } from './filters.tsx';
import { Shelf } from './shelf.tsx';
import { useLibrary, useShelf } from './useShelf.ts';

const ALL: Filter = { body: '', show: 'all', temperature: '' };

export function LogbookScreen() {
  const { session, way } = useSurroundings();
  const [query, setQuery] = useState('');
  const [filter, setFilter] = useState(ALL);
  const shelf = useShelf(temperatureTyped(filter.temperature));
  const kit = session.kit.value;
  const finder = useMemo(
    () => finderOf(kit, narrow(shelf, filter.body || null, filter.show)),
    [kit, shelf, filter],
  );
  const found = useMemo(() => lookUp(finder, query), [finder, query]);
  const records = session.records.value;
  const practised = useMemo(() => records.filter(({ practice }) => practice), [records]);
  const [library, backedUp] = [useLibrary(), session.backedUp.value];
  const reminder = useMemo(() => backupReminder(library, backedUp, session.clock()), [library, backedUp, session]);
  return (
    <>
      <Heading onBack={() => way.back()}>Logbook</Heading>
      <search>
        <form
          onSubmit={(event) => {
            event.preventDefault();
            session.say(answerOf(found, onDay));
          }}
        >
          <input
            type="search"
            aria-label="Find a body, lens, focal length or distance"
            placeholder="Find a lens"
            value={query}
            onInput={(event) => setQuery(event.currentTarget.value)}
          />
          <div class="row">
            <output aria-label="Found" class="muted small grow">
              {found.length} found
            </output>
            <button type="submit" class="link">
              Read aloud
            </button>
            <button type="button" class="link" onClick={() => way.go({ at: 'files' })}>
              Backup and tables
            </button>
          </div>
        </form>
      </search>
      <Filters bodies={kit.bodies} filter={filter} onChange={setFilter} />
      {reminder && <p class="notice small">{reminder}</p>}
      {found.length > 0 ? <Shelf shelf={found} /> : <p class="muted">{nothingFound(shelf, query, filter.show)}</p>}
      {practised.length > 0 && (
        <details>
          <summary>Practice sweeps ({practised.length})</summary>
          <Entries records={practised} />
        </details>
      )}
    </>
  );
}

/** What is typed may also be a dictated question, with words that carry nothing; any other word must be found. */
function lookUp(finder: ReturnType<typeof finderOf>, query: string): Shelved[] {
  const typed = lookUpTyped(finder, query);
  return typed.length > 0 || !isQuestion(query) ? typed : lookUpSpoken(finder, query);
}

function nothingFound(shelf: readonly Shelved[], query: string, show: Show): string {
  if (shelf.length === 0) return 'No sweep is finished yet. Each one is written down here when it ends. A value from paper goes in by hand, from the start.';
  if (query.trim() === '') return `Nothing in the logbook is ${show === 'all' ? 'in use' : show}.`;
  return `Nothing in the logbook answers \u201c${query}\u201d. Try fewer letters.`;
}
