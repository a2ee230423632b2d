// The body: one of the kit, or a new one with its scale and its arrows.
import { Choose } from '../parts/choose.tsx';
import { late } from '../parts/late.tsx';
import { useSurroundings } from '../useSession.ts';
import { NEW, type Picks } from './draft.ts';

const NewBody = late(async () => (await import('./newKit.tsx')).NewBody);

export function BodyPick({ picks }: { readonly picks: Picks }) {
  const { session, start } = useSurroundings();
  const { bodies } = session.kit.value;
  return (
    <>
      {bodies.length > 0 && (
        <Choose
          label="Body"
          options={[...bodies.map(({ id, name }) => ({ value: id, label: name })), { value: NEW, label: 'Add a body\u2026' }]}
          chosen={picks.body?.id ?? NEW}
          onChoose={(body) => start.change({ body, situation: null })}
        />
      )}
      {picks.body === null && <NewBody another={bodies.length > 0} />}
    </>
  );
}
