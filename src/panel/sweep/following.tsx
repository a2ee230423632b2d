// In place of the switch: this panel shows a sweep that another window runs.
import { useSession } from '../useSession.ts';

export function Following() {
  const session = useSession();
  return (
    <section class="notice" aria-label="Following">
      <p>Another window runs this sweep. Here you can only watch.</p>
      <button type="button" onClick={() => session.takeOver()}>
        Take over here
      </button>
    </section>
  );
}
