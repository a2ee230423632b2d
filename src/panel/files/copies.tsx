// The copies this browser keeps by itself; each can be brought back, and what is here now then becomes a copy.
import { useEffect, useState } from 'preact/hooks';
import type { Moment } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import type { Session } from '../session/session.ts';
import { useSession } from '../useSession.ts';

export function Copies() {
  const say = words('files').copies;
  const session = useSession();
  const [copies, setCopies] = useState<Awaited<ReturnType<Session['copies']>> | null>(null);
  const [said, setSaid] = useState('');
  const [tries, setTries] = useState(0);
  const records = session.records.value;
  useEffect(() => void session.copies().then(setCopies), [session, records, tries]);
  if (copies === null) return null;
  const bringBack = async (at: Moment): Promise<void> => {
    const brought = await session.bringBack(at);
    setSaid(brought.ok ? say.done : brought.fault);
    setTries(tries + 1);
  };
  return (
    <section class="card" aria-labelledby="copies">
      <h2 id="copies">{say.title}</h2>
      {!copies.ok && <p>{say.unread}</p>}
      {copies.ok && copies.value.length === 0 && <p class="muted">{say.none}</p>}
      {copies.ok &&
        copies.value.map((at) => (
          <button key={at} type="button" onClick={() => void bringBack(at)}>
            {say.bringBack(at)}
          </button>
        ))}
      {said && <p role="alert">{said}</p>}
    </section>
  );
}
