// The way to the photographs of a target, whatever lens they were taken with.
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';

export function PhotographsLink() {
  const { way } = useSurroundings();
  return (
    <button type="button" class="link" onClick={() => way.go({ at: 'photographs', situation: null })}>
      {words('start').photographs}
    </button>
  );
}
