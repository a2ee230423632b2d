// One field that looks a lens up or names a new one, one large Start, and the line of what would begin. Nothing has to be
// typed: an empty field begins with the last lens, or with nothing named at all.
import { useLayoutEffect, useRef } from 'preact/hooks';
import { lastSituation, previewOf, type Preview } from './preview.ts';
import { isSameName } from '../../kit/told.ts';
import type { Shelved } from '../../logbook/shelf.ts';
import { late } from '../parts/late.tsx';
import type { Description } from '../session/session.ts';
import { ToldLine } from '../told/toldLine.tsx';
import { useSurroundings } from '../useSession.ts';
import { checked } from './checked.ts';
import { FoundList } from './foundList.tsx';
import { LastOne } from './lastOne.tsx';
import { useBegin } from './useBegin.ts';
import { useFinding } from './useFinding.ts';
import { NEXT, START } from './words.ts';

const More = late(async () => (await import('./more.tsx')).More);

/** `next`: the field names the lens that comes now; what it may mean in the logbook stands below it. */
export function Begin({ next = false }: { readonly next?: boolean }) {
  const { session, start, way } = useSurroundings();
  const { begin, refusal, refuse } = useBegin();
  const refusedRef = useRef(false);
  const field = useRef<HTMLInputElement>(null);
  const draft = start.draft.value;
  const { query, picked } = draft;
  const [kit, records] = [session.kit.value, session.records.value];
  const found = useFinding(query);
  const preview = (): Preview =>
    previewOf(start.draft.peek(), { kit: session.kit.peek(), records: session.records.peek(), offers: next ? 'last body' : 'last lens' });
  const { parts, onBody } = previewOf(draft, { kit, records, offers: next ? 'last body' : 'last lens' });
  const isKnown = kit.lenses.some(({ name, retired }) => retired === null && isSameName(name, query));
  const [first] = found.all;
  const meant = !next && first ? first : null;
  // Letters only, no click; but nobody who has moved on already is called back.
  useLayoutEffect(() => {
    const focused = document.activeElement;
    if (focused === null || focused === document.body || focused.tagName === 'H1') field.current?.focus();
  }, []);

  const pick = ({ subject }: Shelved): void => {
    start.change({ query: '', picked: subject.situation, about: {} });
    field.current?.focus();
  };
  const tell = (told: Description) => {
    const described = checked(told);
    refusedRef.current = !described.ok;
    if (described.ok) start.tell(told);
    refuse('');
    return described;
  };
  const go = (): void => {
    if (refusedRef.current) return refuse(START.fits);
    if (meant) start.change({ query: '', picked: meant.subject.situation, about: {} });
    void begin(preview());
  };
  /** Enter takes the first that is known, and says its value; with nothing to take it starts. */
  const entered = (event: Event): void => {
    event.preventDefault();
    if (!meant) return go();
    if (found.answerTo) session.say(found.answerTo(meant));
    pick(meant);
  };
  const situation = picked ?? (next || query.trim() !== '' ? null : (lastSituation(kit, records)?.id ?? null));
  const isNew = query.trim() !== '' && !isKnown;
  return (
    <>
      <search>
        <form onSubmit={entered}>
          <input
            ref={field}
            type="search"
            autocomplete="off"
            class="look-up"
            aria-label={next ? NEXT.field : START.field}
            placeholder={next ? NEXT.field : START.field}
            value={query}
            onInput={(event) => {
              start.change({ query: event.currentTarget.value, picked: null });
              refuse('');
            }}
          />
        </form>
      </search>
      {found.all.length > 0 && <FoundList found={found.all} onPick={pick} />}
      {situation !== null && <LastOne situation={situation} standing={found.of(situation)} picked={picked !== null} />}
      {isNew ? (
        <>
          {meant && (
            <button type="button" class="chief start" onClick={go}>
              {START.startWith(meant.subject.lens)}
            </button>
          )}
          <button type="button" class={meant ? '' : 'chief start'} onClick={() => void (refusedRef.current ? refuse(START.fits) : begin(preview()))}>
            {START.newLens(query.trim())}
          </button>
        </>
      ) : (
        <button type="button" class="chief start" onClick={go}>
          {meant ? START.startWith(meant.subject.lens) : START.start}
        </button>
      )}
      {refusal && (
        <p class="fault" role="alert">
          {refusal}
        </p>
      )}
      <ToldLine parts={parts} onBody={onBody} tell={tell} onLens={() => field.current?.focus()}>
        <More preview={preview} onRefused={refuse} />
      </ToldLine>
      {situation === null && query.trim() === '' && !next && <p class="muted small">{START.noNameNeeded}</p>}
      {situation !== null && !next && (
        <button type="button" onClick={() => way.go({ at: 'next' })}>
          {START.next}
        </button>
      )}
    </>
  );
}
