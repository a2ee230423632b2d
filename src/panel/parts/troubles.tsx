// What went wrong, each in one sentence with its remedy.
import { firstWords } from '../../words/first.ts';
import { useSession } from '../useSession.ts';

export function MishapList() {
  const session = useSession();
  return (
    <>
      {session.troubles.value.map(({ id, sentence, remedy }) => (
        <section key={id} class="notice trouble" role="alert">
          <p class="small">{sentence}</p>
          <button type="button" aria-label={firstWords().dismiss} onClick={() => session.dismiss(id)}>
            {'\u00d7'}
          </button>
          {remedy && (
            <button type="button" class="remedy" onClick={remedy.run}>
              {remedy.label}
            </button>
          )}
        </section>
      ))}
    </>
  );
}
