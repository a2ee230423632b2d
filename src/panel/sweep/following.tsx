// In place of the switch: this panel shows a sweep that another window runs.
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';

export function Following() {
  const session = useSession();
  const say = words('sweep').following;
  return (
    <section class="notice" aria-label={say.label}>
      <p>{say.what}</p>
      <button type="button" onClick={() => session.takeOver()}>
        {say.takeOver}
      </button>
    </section>
  );
}
