// Follows what the sheet waits for: the permission, and the words that are being taught in another tab.
import { useEffect, useState } from 'preact/hooks';
import { FIRST_COUNT, firstWordsIn } from '../../voice/wordGroups.ts';
import { useSession } from '../useSession.ts';
import type { Session } from '../session/session.ts';
import { stageOf, type Stage } from './stage.ts';
import { vocabulary } from '../../words/taught.ts';

type Found = Pick<Parameters<typeof stageOf>[0], 'proposed' | 'isDownloadable' | 'allowed' | 'taught'>;

/** No event tells that another tab has taught a word. */
const LOOKED_AGAIN_AFTER = 500;

/** Null until it is known what can be proposed here. `granted`: the browser has just said yes, whatever it records. */
export function useStage(granted: boolean): Stage | null {
  const session = useSession();
  const [found, setFound] = useState<Found | null>(null);
  const { voice } = session.settings.value;
  useEffect(() => {
    const over = new AbortController();
    const look = async (): Promise<void> => {
      const microphone = await session.microphone();
      const [proposed, isDownloadable] = await Promise.all([microphone.proposed(), microphone.downloadable()]);
      while (!over.signal.aborted) {
        const [allowed, taught] = await Promise.all([microphone.allowed(), taughtOf(session)]);
        if (over.signal.aborted) return;
        setFound({ proposed, isDownloadable, allowed, taught });
        await microphone.changed(AbortSignal.any([over.signal, AbortSignal.timeout(LOOKED_AGAIN_AFTER)]));
      }
    };
    void look();
    return () => over.abort();
  }, [session]);
  const stage = found && stageOf({ ...found, ...(granted && { allowed: 'granted' }), voice, wanted: FIRST_COUNT });
  useEffect(() => {
    if (stage?.at === 'complete') session.changeSettings({ voice: { listen: stage.by, wish: 'none' } });
  });
  return stage;
}

/** How many of the first words are taught. */
export async function taughtOf(session: Session): Promise<number> {
  const read = await session.taught();
  if (!read.ok) return 0;
  const words = new Set(read.value.map(({ word }) => word));
  return firstWordsIn(vocabulary()).filter((word) => words.has(word)).length;
}
