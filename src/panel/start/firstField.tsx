// The field and Start as they stand before what is stored has been read: true whatever that is. `Begin` takes their place with
// the same names, so that what was typed and pressed here goes on there (panel/early). The bench measures when Start is drawn.
import { firstWords } from '../../words/first.ts';
import { useSurroundings } from '../useSession.ts';

/** How each is found, before and after. */
export const FORM = 'start-form';
export const FIELD = 'start-field';
export const BUTTON = 'start-button';

interface Props {
  readonly query?: string;
  readonly onQuery?: (query: string) => void;
}

export const FirstField = ({ query = '', onQuery }: Props) => (
  <>
    <search>
      <form id={FORM}>
        <input
          id={FIELD}
          type="search"
          autocomplete="off"
          class="look-up"
          aria-label={firstWords().field}
          placeholder={firstWords().placeholder}
          value={query}
          onInput={(event) => onQuery?.(event.currentTarget.value)}
        />
      </form>
    </search>
    <button id={BUTTON} type="button" class="chief start" elementtiming="first">
      {firstWords().start}
    </button>
  </>
);

export function FirstFieldOfDraft() {
  const { start } = useSurroundings();
  return <FirstField query={start.draft.value.query} onQuery={(query) => start.change({ query, picked: null })} />;
}
