// One line after an update, which leads to what is new.
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';

export function Updated() {
  const { session, way } = useSurroundings();
  return (
    <p>
      <button type="button" class="link" onClick={() => way.go({ at: 'about' })}>
        {words('about').updated(session.installed.version())}
      </button>
    </p>
  );
}
