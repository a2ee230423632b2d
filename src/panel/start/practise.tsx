// The practice camera, as the first way to learn: a body and lens with a band of their own, and a lamp on the screen.
import { useState } from 'preact/hooks';
import { Tick } from '../parts/tick.tsx';
import { useSurroundings } from '../useSession.ts';

export function Practise() {
  const { session, way } = useSurroundings();
  const [arrows, setArrows] = useState(false);
  const [past, setPast] = useState(false);
  const [odd, setOdd] = useState(false);
  const begin = () =>
    session.begin({ with: 'practice', arrows: arrows ? 'right-is-up' : 'absent', odd, ...(past && { band: 'past the limit' as const }) });
  return (
    <section class="card" aria-label="Practice camera">
      <p>
        A make-believe body and lens, with their focus light on this screen. Train your eye, the words and the switch; at the
        end it shows its true band.
      </p>
      <Tick label="With arrows beside the light" on={arrows} onChange={setArrows} />
      <Tick label="A band that runs past the scale" on={past} onChange={setPast} />
      <Tick label="Something is wrong with it: find out what" on={odd} onChange={setOdd} />
      <button type="button" class="chief" onClick={() => void begin()}>
        Practise
      </button>
      <button type="button" onClick={() => way.go({ at: 'training' })}>
        Train your eye
      </button>
    </section>
  );
}
