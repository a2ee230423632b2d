// A screen without content teaches what will stand there: a drawing of it, a sentence, and the button that begins it.
import { words } from '../../words/catalogue.ts';
import { EmptyDrawing } from './emptyDrawing.tsx';

type Props =
  | { readonly of: 'logbook' | 'plan' | 'kit'; readonly onBegin: () => void }
  /** What begins it stands below. */
  | { readonly of: 'planned' | 'photographs' | 'files' };

export function EmptyPlace(props: Props) {
  const say = words('empty')[props.of];
  return (
    <section class="empty">
      <EmptyDrawing scene={props.of === 'planned' ? 'plan' : props.of} drawn={say.drawn} />
      <p>{say.sentence}</p>
      {'onBegin' in props && (
        <button type="button" class="chief" onClick={props.onBegin}>
          {words('empty')[props.of].begin}
        </button>
      )}
    </section>
  );
}
