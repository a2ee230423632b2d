// One field that looks a lens up or names a new one, one large Start, and the line of what would begin. Nothing has to be
// typed: an empty field begins with the last lens, or with nothing named at all.
import { useLayoutEffect, useRef } from 'preact/hooks';
import { lastSituation, previewOf, type Preview } from './preview.ts';
import { isSameName } from '../../kit/told.ts';
import type { Shelved } from '../../logbook/shelf.ts';
import { late } from '../parts/late.tsx';
import { Refusal } from '../parts/refusal.tsx';
import type { Description } from '../session/session.ts';
import { ToldLine } from '../told/toldLine.tsx';
import { words } from '../../words/catalogue.ts';
import { firstWords } from '../../words/first.ts';
import { useSurroundings } from '../useSession.ts';
import { checked } from './checked.ts';
import type { Draft } from './draft.ts';
import { BUTTON, FIELD, FORM } from './firstField.tsx';
import { FoundList } from './foundList.tsx';
import { LastOne } from './lastOne.tsx';
import { useBegin } from './useBegin.ts';
import { useFinding } from './useFinding.ts';

const More = late(async () => (await import('./more.tsx')).More, 'manner');

/** `next`: the field names the lens that comes now; what it may mean in the logbook stands below it. */
export function Begin({ next = false }: { readonly next?: boolean }) {
  const { session, start, way } = useSurroundings();
  const say = words('start');
  const { begin, refusal, refuse } = useBegin();
  const refusedRef = useRef(false);
  const field = useRef<HTMLInputElement>(null);
  const draft = start.draft.value;
  const { query, picked } = draft;
  const [kit, records] = [session.kit.value, session.records.value];
  const found = useFinding(query);
  const preview = (): Preview =>
    previewOf(start.draft.peek(), { kit: session.kit.peek(), records: session.records.peek(), offers: next ? 'last body' : 'last lens' });
  const isKnown = kit.lenses.some(({ name, retired }) => retired === null && isSameName(name, query));
  const [first] = found.all;
  const meant = !next && first ? first : null;
  const shown = meant ? pickedFrom(meant) : draft;
  const { parts, onBody } = previewOf(shown, { kit, records, offers: next ? 'last body' : 'last lens' });
  // Letters only, no click; but nobody who has moved on already is called back.
  useLayoutEffect(() => {
    const focused = document.activeElement;
    if (focused === null || focused === document.body || focused.tagName === 'H1') field.current?.focus();
  }, []);

  /** Enter may come right after a letter. */
  const meantNow = (): Shelved | null => (next ? null : (found.now(start.draft.peek().query)[0] ?? null));
  const pick = ({ subject }: Shelved): void => {
    start.change(pickedFrom({ subject }));
    field.current?.focus();
  };
  const tell = (told: Description) => {
    const described = checked(told);
    refusedRef.current = !described.ok;
    // What is told is about the lens that is shown.
    if (described.ok && meant) start.change(pickedFrom(meant));
    if (described.ok) start.tell(told);
    refuse('');
    return described;
  };
  const go = (meant = meantNow()): void => {
    if (refusedRef.current) return refuse(say.unfit);
    if (meant) start.change(pickedFrom(meant));
    void begin(preview());
  };
  /** Enter takes the first that is known, and says its value; with nothing to take it starts. */
  const entered = (event: Event): void => {
    event.preventDefault();
    const meant = meantNow();
    if (!meant) return go(null);
    if (found.answerTo) session.say(found.answerTo(meant));
    pick(meant);
  };
  const situation = picked ?? (next || query.trim() !== '' ? null : (lastSituation(kit, records)?.id ?? null));
  const button = next ? undefined : BUTTON;
  const isNew = query.trim() !== '' && !isKnown;
  return (
    <>
      <search>
        <form id={next ? undefined : FORM} onSubmit={entered}>
          <input
            ref={field}
            id={next ? undefined : FIELD}
            type="search"
            autocomplete="off"
            class="look-up"
            aria-label={next ? say.next.field : firstWords().field}
            placeholder={next ? say.next.placeholder : firstWords().placeholder}
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
            <button type="button" id={button} class="chief start" onClick={() => go()}>
              {say.startWith(meant.subject.lens)}
            </button>
          )}
          <button
            type="button"
            id={meant ? undefined : button}
            class={meant ? '' : 'chief start'}
            onClick={() => void (refusedRef.current ? refuse(say.unfit) : begin(preview()))}
          >
            {say.startNew(query.trim())}
          </button>
        </>
      ) : (
        <button type="button" id={button} class="chief start" onClick={() => go()}>
          {meant ? say.startWith(meant.subject.lens) : firstWords().start}
        </button>
      )}
      <Refusal sentence={refusal} />
      <ToldLine parts={parts} onBody={onBody} tell={tell} onLens={() => field.current?.focus()}>
        <More preview={preview} onRefused={refuse} />
      </ToldLine>
      {situation === null && query.trim() === '' && !next && <p class="muted small">{say.noName}</p>}
      {situation !== null && !next && (
        <button type="button" onClick={() => way.go({ at: 'next' })}>
          {say.nextLens}
        </button>
      )}
    </>
  );
}

const pickedFrom = ({ subject }: Pick<Shelved, 'subject'>): Draft => ({ query: '', picked: subject.situation, about: {} });
