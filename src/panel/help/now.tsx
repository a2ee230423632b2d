// What is possible at this moment: to go on with the sweep that waits, and what it understands; or, without one, the ways to begin.
import type { SweepState } from '../../sweep/state.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { PossibleNow } from './possibleNow.tsx';

export function Now() {
  const { session } = useSurroundings();
  const { now, about } = words('help');
  const sweep = session.sweep.value;
  return (
    <section class="card" aria-labelledby="now">
      <h2 id="now">{now.title}</h2>
      {sweep === null && <p>{about}</p>}
      {sweep === null ? <Begin /> : <GoOn sweep={sweep} />}
    </section>
  );
}

function Begin() {
  const { way } = useSurroundings();
  const { now: say } = words('help');
  return (
    <>
      <button type="button" class="chief" onClick={() => way.home({ at: 'start' })}>
        {say.start}
      </button>
      <div class="row">
        <button type="button" class="grow" onClick={() => way.go({ at: 'practice' })}>
          {say.practice}
        </button>
        <button type="button" class="grow" onClick={() => way.go({ at: 'bench' })}>
          {say.bench}
        </button>
      </div>
    </>
  );
}

/** Words and keys are heard by the sweep's own screen; another window's sweep can only be watched. */
function GoOn({ sweep }: { readonly sweep: SweepState }) {
  const { session, way } = useSurroundings();
  const { now: say } = words('help');
  const isOurs = session.role.value === 'owner';
  return (
    <>
      <button type="button" class="chief" onClick={() => way.home({ at: 'sweep' })}>
        {isOurs ? say.goOn : say.watch}
      </button>
      {isOurs && <PossibleNow sweep={sweep} />}
    </>
  );
}
