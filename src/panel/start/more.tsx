// What else may be chosen before a sweep: how carefully, the bench, and a value put in by hand instead.
import type { Preview } from './preview.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { MannerPick } from './mannerPick.tsx';
import { EMPTY_DRAFT } from './draft.ts';

interface Props {
  readonly preview: () => Preview;
  readonly onRefused: (sentence: string) => void;
}

export function More({ preview, onRefused }: Props) {
  const { session, way, start } = useSurroundings();
  const byHand = (): void => {
    const kept = session.situationFor(preview().about);
    if (!kept.ok) return onRefused(kept.fault[0]?.sentence ?? '');
    start.change(EMPTY_DRAFT);
    way.go({ at: 'situation', id: kept.value, byHand: true });
  };
  return (
    <>
      <MannerPick />
      <button type="button" class="link" onClick={() => way.go({ at: 'bench' })}>
        {words('start').bench}
      </button>
      <button type="button" class="link" onClick={byHand}>
        {words('start').byHand}
      </button>
    </>
  );
}
