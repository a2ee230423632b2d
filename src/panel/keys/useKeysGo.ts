// Where the keys go, for a screen that waits for them.
import { useEffect, useState } from 'preact/hooks';
import { keyboardFocus } from '../../platform/keyboardFocus.ts';
import { useSession } from '../useSession.ts';
import { watchKeys, type KeysGo } from './keysGo.ts';

/** `beside`: the screen stands in place of the sweep. */
export function useKeysGo(beside = false): KeysGo {
  const session = useSession();
  const [go, setGo] = useState<KeysGo>('here');
  useEffect(() => {
    const watched = watchKeys(keyboardFocus, session, beside);
    const end = watched.go.subscribe(setGo);
    return () => {
      end();
      watched.end();
    };
  }, [session, beside]);
  return go;
}
