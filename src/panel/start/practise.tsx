// The practice camera, as the first way to learn: a body and lens with a band of their own, and a lamp on the screen.
import { useState } from 'preact/hooks';
import { Tick } from '../parts/tick.tsx';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';

export function Practise() {
  const { session, way } = useSurroundings();
  const say = words('practice');
  const [arrows, setArrows] = useState(false);
  const [past, setPast] = useState(false);
  const [odd, setOdd] = useState(false);
  const begin = () => session.begin({ with: 'practice', arrows: arrows ? 'right-is-up' : 'absent', odd, ...(past && { band: 'past the limit' as const }) });
  return (
    <section class="card" aria-label={say.title}>
      <p>{say.about}</p>
      <Tick label={say.arrows} on={arrows} onChange={setArrows} />
      <Tick label={say.past} on={past} onChange={setPast} />
      <Tick label={say.odd} on={odd} onChange={setOdd} />
      <button type="button" class="chief" onClick={() => void begin()}>
        {say.begin}
      </button>
      <button type="button" onClick={() => way.go({ at: 'training' })}>
        {say.train}
      </button>
      <button type="button" onClick={() => way.go({ at: 'practice pictures', of: null })}>
        {say.pictures}
      </button>
    </section>
  );
}
