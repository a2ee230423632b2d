// The way to what Sweepbook is, at the foot of the settings and of the help.
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';

export function ToAbout() {
  const { way } = useSurroundings();
  return (
    <p>
      <button type="button" class="link" onClick={() => way.go({ at: 'about' })}>
        {words('about').title}
      </button>
    </p>
  );
}
