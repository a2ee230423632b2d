// The practice camera, as the first way to learn: a body and lens with a band of their own, and a lamp on the screen.
import { useState } from 'preact/hooks';
import { Tick } from '../parts/tick.tsx';
import { words } from '../../words/catalogue.ts';
import { Refusal } from '../parts/refusal.tsx';
import { useSurroundings } from '../useSession.ts';
import { useBeginning } from './useBeginning.ts';

export function Practise() {
  const { way } = useSurroundings();
  const { refusal, begin } = useBeginning();
  const say = words('practice');
  const [arrows, setArrows] = useState(false);
  const [past, setPast] = useState(false);
  const [odd, setOdd] = useState(false);
  const practise = () => begin({ with: 'practice', arrows: arrows ? 'right-is-up' : 'absent', odd, ...(past && { band: 'past the limit' as const }) });
  return (
    <section class="card" aria-label={say.title}>
      <p>{say.about}</p>
      <Tick label={say.arrows} on={arrows} onChange={setArrows} />
      <Tick label={say.past} on={past} onChange={setPast} />
      <Tick label={say.odd} on={odd} onChange={setOdd} />
      <button type="button" class="chief" onClick={() => void practise()}>
        {say.begin}
      </button>
      <Refusal sentence={refusal} />
      <button type="button" onClick={() => way.go({ at: 'training' })}>
        {say.train}
      </button>
      <button type="button" onClick={() => way.go({ at: 'practice pictures', of: null })}>
        {say.pictures}
      </button>
    </section>
  );
}
