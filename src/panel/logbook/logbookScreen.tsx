// The logbook: type a few letters, and the last value of each situation that answers is there.
import { useMemo, useState } from 'preact/hooks';
import { backupReminder } from '../../logbook/backup/reminder.ts';
import { isQuestion } from '../../logbook/search/asking.ts';
import { finderOf, lookUpSpoken, lookUpTyped } from '../../logbook/search/finder.ts';
import { narrow, type Shelved, type Show } from '../../logbook/shelf.ts';
import { saidAndShown, words } from '../../words/catalogue.ts';
import { late } from '../parts/late.tsx';
import { Empty } from '../empty/empty.ts';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { Entries } from './entries.tsx';
import { Filters, temperatureTyped, type Filter } from './filters.tsx';
import { Shelf } from './shelf.tsx';
import { useLibrary, useShelf } from './useShelf.ts';
import { vocabulary } from '../../words/taught.ts';

const Glance = late(async () => (await import('../glance/glance.tsx')).Glance, 'glance');

/** Of one body, on a page that is still read as a whole. */
const LINES_SHOWN = 12;

const ALL: Filter = { body: '', show: 'all', temperature: '' };

export function LogbookScreen() {
  const say = words('logbook');
  const { session, way } = useSurroundings();
  const [query, setQuery] = useState('');
  const [filter, setFilter] = useState(ALL);
  const shelf = useShelf(temperatureTyped(filter.temperature));
  const kit = session.kit.value;
  const finder = useMemo(() => finderOf(vocabulary(), kit, narrow(shelf, filter.body || null, filter.show)), [kit, shelf, filter]);
  const found = useMemo(() => lookUp(finder, query), [finder, query]);
  const body = kit.bodies.find(({ id }) => id === filter.body);
  const records = session.records.value;
  const practised = useMemo(() => records.filter(({ practice }) => practice), [records]);
  const [library, backedUp] = [useLibrary(), session.backedUp.value];
  const reminder = useMemo(() => backupReminder(library, backedUp, session.clock()), [library, backedUp, session]);
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      {shelf.length === 0 ? (
        <>
          <Empty of="logbook" onBegin={() => way.home({ at: 'start' })} />
          <button type="button" class="link" onClick={() => way.go({ at: 'files' })}>
            {say.files}
          </button>
        </>
      ) : (
        <>
          <search>
            <form
              onSubmit={(event) => {
                event.preventDefault();
                session.say(saidAndShown('lookUp', (lookUp) => lookUp.answer(found)));
              }}
            >
              <input
                type="search"
                aria-label={say.find.label}
                placeholder={say.find.short}
                value={query}
                onInput={(event) => setQuery(event.currentTarget.value)}
              />
              <div class="row">
                <output aria-label={say.find.found} class="muted small grow">
                  {say.found(found.length)}
                </output>
                <button type="submit" class="link">
                  {say.find.aloud}
                </button>
                <button type="button" class="link" onClick={() => way.go({ at: 'files' })}>
                  {say.files}
                </button>
              </div>
            </form>
          </search>
          <Filters bodies={kit.bodies} filter={filter} onChange={setFilter} />
          {reminder && session.settings.value.logbook.remind && <p class="notice small">{say.backUp(reminder)}</p>}
          {found.length === 0 ? (
            <p class="muted">{nothingFound(query, filter.show)}</p>
          ) : body && filter.show !== 'retired' ? (
            <Glance body={body} shelf={found} first={LINES_SHOWN} />
          ) : (
            <Shelf shelf={found} />
          )}
        </>
      )}
      {practised.length > 0 && (
        <details>
          <summary>{say.practised(practised.length)}</summary>
          <Entries records={practised} />
        </details>
      )}
    </>
  );
}

/** What is typed may also be a dictated question, with words that carry nothing; any other word must be found. */
function lookUp(finder: ReturnType<typeof finderOf>, query: string): Shelved[] {
  const typed = lookUpTyped(finder, query);
  return typed.length > 0 || !isQuestion(finder.language, query) ? typed : lookUpSpoken(finder, query);
}

function nothingFound(query: string, show: Show): string {
  const { nothing } = words('logbook');
  return query.trim() === '' ? nothing.of[show] : nothing.like(query);
}
