// The copies this browser keeps by itself; each can be brought back, and what is here now then becomes a copy.
import { useEffect, useState } from 'preact/hooks';
import type { Result } from '../../result.ts';
import type { Moment } from '../../units.ts';
import { useSession } from '../useSession.ts';
import { onDay } from '../words/quantities.ts';

export function Copies() {
  const session = useSession();
  const [copies, setCopies] = useState<Result<readonly Moment[]> | null>(null);
  const [said, setSaid] = useState('');
  const [tries, setTries] = useState(0);
  const records = session.records.value;
  useEffect(() => void session.copies().then(setCopies), [session, records, tries]);
  if (copies === null) return null;
  const bringBack = async (at: Moment): Promise<void> => {
    const brought = await session.bringBack(at);
    setSaid(brought.ok ? 'It is as it was then.' : brought.sentence);
    setTries(tries + 1);
  };
  return (
    <section class="card" aria-labelledby="copies">
      <h2 id="copies">Copies in this browser</h2>
      {!copies.ok && <p>{copies.sentence}</p>}
      {copies.ok && copies.value.length === 0 && <p class="muted">There is none yet.</p>}
      {copies.ok &&
        copies.value.map((at) => (
          <button key={at} type="button" onClick={() => void bringBack(at)}>
            Bring back {onDay(at)}, {atTime(at)}
          </button>
        ))}
      {said && <p role="alert">{said}</p>}
    </section>
  );
}

const atTime = (at: Moment): string => new Date(at).toLocaleTimeString(undefined, { timeStyle: 'medium' });
