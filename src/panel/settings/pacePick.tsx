// Who begins each hold: the person, or the panel after a time to dial.
import { Pick } from '../parts/pick.tsx';
import { useSession } from '../useSession.ts';
import { seconds } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { Slide } from './slide.tsx';

/** Long enough to dial a few steps without hurry (common practice, no source). */
const USUAL_TO_DIAL = seconds(8);

export function PacePick() {
  const session = useSession();
  const { pace } = session.settings.value.manner;
  const say = words('settings').working;
  return (
    <>
      <Pick
        legend={say.pace}
        options={PACES.map((value) => ({ value, ...say.paces[value] }))}
        chosen={pace.set}
        onChoose={(set) => session.changeSettings({ manner: { pace: set === 'own' ? { set } : { set, toDial: USUAL_TO_DIAL } } })}
      />
      {pace.set === 'counted' && (
        <Slide
          label={say.toDial(pace.toDial)}
          says={say.seconds(pace.toDial)}
          from={2}
          to={30}
          value={pace.toDial}
          onSlide={(toDial) => session.changeSettings({ manner: { pace: { set: 'counted', toDial } } })}
        />
      )}
    </>
  );
}

const PACES = ['own', 'counted'] as const;
