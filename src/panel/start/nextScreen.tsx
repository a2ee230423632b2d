// The next lens: the next of the plan, or one whose name is typed now. A name that was said begins at once.
import { useEffect, useRef } from 'preact/hooks';
import { Heading } from '../parts/heading.tsx';
import { late } from '../parts/late.tsx';
import { Refusal } from '../parts/refusal.tsx';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { Begin } from './begin.tsx';
import { lastBody } from './preview.ts';
import { useBegin } from './useBegin.ts';
import { NOTHING_TOLD } from '../../sweep/named.ts';

const Planned = late(async () => (await import('./planned.tsx')).Planned, 'plan');

export function NextScreen() {
  const { session, way, start } = useSurroundings();
  const said = session.leftFor.value?.name ?? null;
  const { begin, refusal } = useBegin();
  const begunRef = useRef(false);
  useEffect(() => {
    if (said === null || begunRef.current) return;
    begunRef.current = true;
    start.change({ query: said });
    const body = lastBody(session.kit.peek(), session.records.peek());
    void begin({ about: { ...(body && { body: { id: body.id } }), lens: { name: said } }, parts: NOTHING_TOLD });
  });
  return (
    <>
      <Heading onBack={() => way.home({ at: 'start' })}>{words('start').next.title}</Heading>
      {session.plan.value && <Planned />}
      <Begin next />
      <p class="muted small">{words('start').next.hint}</p>
      <Refusal sentence={refusal} />
    </>
  );
}
