// The sweep under way. Everything needed with the eye at the viewfinder comes first and fits a low window; what is only
// looked at between holds comes below it. What stands above the switch has one height for the whole sweep, so that the
// switch never moves under a finger; a notice lies over what is below.
import { useCallback, useMemo, useState } from 'preact/hooks';
import { isNew } from '../coach/coaching.ts';
import { useCoaching } from '../coach/useCoaching.ts';
import { FarSight, useFarWanted } from '../far/farSight.tsx';
import { useKeys } from '../keys/useKeys.ts';
import { useKeysGo } from '../keys/useKeysGo.ts';
import { late } from '../parts/late.tsx';
import { MishapList } from '../parts/troubles.tsx';
import { words as sentences } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import type { SweepState } from '../../sweep/state.ts';
import { subjectInWords } from '../words/subjects.ts';
import { FaceView } from './faceView.tsx';
import { Following } from './following.tsx';
import { SweepHeader } from './header.tsx';
import { HeardLine } from './heardLine.tsx';
import { Middle } from './middle.tsx';
import { standing as standingTroubles } from '../../sweep/toEnter.ts';
import { WhatToCheck } from '../trouble/whatToCheck.tsx';
import { sweepStandingOf } from './standing.ts';
import { SwitchArea } from './switchArea.tsx';
import { Answers, Asides } from './understoodNow.tsx';
import { useTell } from './useTell.ts';

const TurnFocus = late(async () => (await import('./turnFocus.tsx')).TurnFocus);
const CheckFocus = late(async () => (await import('./checkFocus.tsx')).CheckFocus);
const LightsSheet = late(async () => (await import('../lights/lightsSheet.tsx')).LightsSheet);
const SweepTroubles = late(async () => (await import('../trouble/sweepTroubles.tsx')).SweepTroubles);
const Meanings = late(async () => (await import('../help/meanings.tsx')).Meanings, 'help');
/** Only looked at between holds: the face, the switch and the voice do not wait for it. */
const Strip = late(async () => (await import('../strip/strip.tsx')).Strip);

/** The value in hand, or what has to be done before there is one. */
function Upper({ sweep }: { readonly sweep: SweepState }) {
  const { phase, plan } = sweep;
  if (phase.name === 'checking') return <CheckFocus drift={phase.drift} {...(phase.rival && { rival: phase.rival })} aside={plan.transfer !== undefined} />;
  if (phase.name === 'turning') return <TurnFocus way={phase.way} practice={plan.practice !== null} />;
  return <FaceView sweep={sweep} />;
}

export function SweepScreen({ sweep }: { readonly sweep: SweepState }) {
  const { session, way } = useSurroundings();
  const [setting, setSetting] = useState(false);
  const openEntry = useCallback(() => setSetting(true), []);
  useKeys(useTell('key', openEntry));
  const keysGo = useKeysGo();
  const tell = useTell('pointer', openEntry);
  const { belief, holds, plan, troubles, phase } = sweep;
  const offered = phase.name === 'offered' ? phase.outcome : null;
  const checking = phase.name === 'checking';
  const say = sentences('sweep').standing;
  const standing = useMemo(
    () => sweepStandingOf({ belief, holds, plan, troubles, offered, checking }, say),
    [belief, holds, plan, troubles, offered, checking, say],
  );
  const following = session.role.value !== 'owner';
  const coached = useCoaching(sweep, !following);
  /** For the whole of a sweep: the last coached hold must not let the switch jump. */
  const [roomy] = useState(() => isNew(session.settings.peek(), session.records.peek()));
  const far = useFarWanted();
  const [lights, setLights] = useState(false);
  const closeLights = useCallback(() => setLights(false), []);
  const words = following ? [] : (session.understood.value?.words ?? []);
  /** Elsewhere no key is heard, so the sweep waits. */
  const leave = (to: () => void): void => {
    if (words.includes('pause')) tell('pause');
    to();
  };
  const fresh = holds.length === 0 && plan.practice === null && !plan.transfer && (words.includes('holding') || words.includes('resume'));
  return (
    <FarSight far={far}>
      {far ? <h1 class="unseen">{subjectInWords(plan.subject).lens}</h1> : <SweepHeader sweep={sweep} onLeave={() => leave(() => way.home({ at: 'start' }))} />}
      <div class="above" data-roomy={roomy} data-setting={setting}>
        <Upper sweep={sweep} />
        <Middle sweep={sweep} coached={coached} setting={setting} onSet={() => setSetting(false)} />
        {lights && !far && <LightsSheet onClose={closeLights} />}
      </div>
      {!setting && <HeardLine keysGo={keysGo} undoable={words.includes('undo')} tell={tell} />}
      {following ? <Following /> : <SwitchArea />}
      {offered && standingTroubles(troubles).length > 0 && <WhatToCheck />}
      <Answers sweep={sweep} now={words} tell={tell} />
      <div class="over">
        <div>
          <MishapList />
        </div>
      </div>
      {!far && <Strip sweep={sweep} />}
      <p class="standing small">
        {standing.centre && !far && <span>{standing.centre}</span>}
        <span class="muted">{standing.wanted}</span>
      </p>
      {!far && (
        <>
          {troubles.length > 0 && <SweepTroubles sweep={sweep} />}
          <Asides now={words} tell={tell} />
          {!following && <Meanings sweep={sweep} />}
          <button type="button" class="link" aria-expanded={lights} onClick={() => setLights(!lights)}>
            {sentences('firstHold').lights.open}
          </button>
          {fresh && (
            <button type="button" class="link" onClick={() => leave(() => way.go({ at: 'bench' }))}>
              {sentences('sweep').setUp}
            </button>
          )}
        </>
      )}
    </FarSight>
  );
}
