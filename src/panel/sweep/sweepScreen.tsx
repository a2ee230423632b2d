// The sweep under way. Everything needed with the eye at the viewfinder comes first and fits a low window; what is only
// looked at between holds comes below it.
import { useCallback, useMemo, useState } from 'preact/hooks';
import { Finder } from '../practice/finder.tsx';
import { stripMatter } from '../strip/matter.ts';
import { Strip } from '../strip/strip.tsx';
import { useSurroundings } from '../useSession.ts';
import { useKeys } from '../keys/useKeys.ts';
import type { SweepState } from '../../sweep/state.ts';
import { FaceView } from './faceView.tsx';
import { Following } from './following.tsx';
import { SweepHeader } from './header.tsx';
import { HeardLine } from './heardLine.tsx';
import { Reason } from './reason.tsx';
import { SetValue } from './setValue.tsx';
import { standingOf } from './standing.ts';
import { SwitchArea } from './switchArea.tsx';
import { useTell } from './useTell.ts';
import { isAside, Words } from './words.tsx';

export function SweepScreen({ sweep }: { readonly sweep: SweepState }) {
  const { session, way } = useSurroundings();
  const [setting, setSetting] = useState(false);
  const openEntry = useCallback(() => setSetting(true), []);
  const byKey = useTell('key', openEntry);
  const tell = useTell('pointer', openEntry);
  useKeys(byKey);
  const matter = useMemo(() => stripMatter(sweep), [sweep]);
  const standing = useMemo(() => standingOf(sweep), [sweep]);
  const { words, presses } = session.understood.value ?? { words: [], presses: [] };
  const following = session.role.value === 'follower';
  const { phase, plan } = sweep;
  /** Elsewhere no key is heard, so the sweep waits. */
  const leave = (): void => {
    if (words.includes('pause') && !following) tell('pause');
    way.home({ at: 'start' });
  };
  const practised = plan.practice !== null && (phase.name === 'holding' || phase.name === 'judging');
  return (
    <>
      <SweepHeader sweep={sweep} onLeave={leave} />
      {following && <Following />}
      <FaceView sweep={sweep} />
      {setting && 'next' in phase ? (
        <SetValue
          scale={plan.scale}
          from={phase.next.value}
          onClose={() => setSetting(false)}
          onSet={(value) => {
            setSetting(false);
            session.input({ told: 'set', value, by: 'pointer', heard: null });
          }}
        />
      ) : practised ? (
        <Finder sweep={sweep} />
      ) : (
        <Reason {...sweep} />
      )}
      <HeardLine undoable={!following && words.includes('undo')} tell={tell} />
      <SwitchArea presses={presses} disabled={following} />
      {!following && <Words label="Answers understood now" words={words.filter((word) => !isAside(word))} tell={tell} />}
      <Strip matter={matter} />
      <p class="standing small">
        <span>{standing.centre}</span>
        <span class="muted">{standing.wanted}</span>
      </p>
      {!following && <Words aside label="Also understood now" words={words.filter((word) => isAside(word) && word !== 'undo')} tell={tell} />}
    </>
  );
}
