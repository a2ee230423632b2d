// Where everything begins: go on with a sweep, begin one, practise, or look something up.
import { late } from '../parts/late.tsx';
import { useSurroundings } from '../useSession.ts';
import { First } from './first.tsx';

/** Read while what is stored is being read, so that both are there with the rest. */
export const NewSweep = late(async () => (await import('./newSweep.tsx')).NewSweep);
export const Practise = late(async () => (await import('./practise.tsx')).Practise);
const Unfinished = late(async () => (await import('./unfinished.tsx')).Unfinished);

/** Until what is stored has been read, what is true anyway stands alone. */
export function StartScreen({ ready }: { readonly ready: boolean }) {
  const { session, way } = useSurroundings();
  const sweep = session.sweep.value;
  const first = session.kit.value.bodies.length === 0;
  return (
    <>
      <First go={way.go} />
      {ready && sweep && <Unfinished sweep={sweep} />}
      {ready && !sweep && (
        <>
          {first && <Practise first />}
          <NewSweep />
          {!first && <Practise />}
        </>
      )}
    </>
  );
}
