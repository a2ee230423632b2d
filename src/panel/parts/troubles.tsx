// What went wrong, each in one sentence with its remedy.
import { useSession } from '../useSession.ts';

export function Troubles() {
  const session = useSession();
  return (
    <>
      {session.troubles.value.map(({ id, sentence, remedy }) => (
        <section key={id} class="notice" role="alert">
          <p class="small">{sentence}</p>
          <div class="row">
            {remedy && (
              <button type="button" onClick={remedy.run}>
                {remedy.label}
              </button>
            )}
            <button type="button" onClick={() => session.dismiss(id)}>
              Dismiss
            </button>
          </div>
        </section>
      ))}
    </>
  );
}
