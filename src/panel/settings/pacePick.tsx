// Who begins each hold: the person, or the panel after a time to dial.
import { Pick, type Option } from '../parts/pick.tsx';
import { useSession } from '../useSession.ts';
import { seconds } from '../../units.ts';
import { Slide } from './slide.tsx';

/** Long enough to dial a few steps without hurry (common practice, no source). */
const USUAL_TO_DIAL = seconds(8);

export function PacePick() {
  const session = useSession();
  const { pace } = session.settings.value.manner;
  return (
    <>
      <Pick
        legend="Pace"
        options={PACES}
        chosen={pace.set}
        onChoose={(set) => session.changeSettings({ manner: { pace: set === 'own' ? { set } : { set, toDial: USUAL_TO_DIAL } } })}
      />
      {pace.set === 'counted' && (
        <Slide
          label="Time to dial"
          unit="s"
          from={2}
          to={30}
          value={pace.toDial}
          onSlide={(toDial) => session.changeSettings({ manner: { pace: { set: 'counted', toDial } } })}
        />
      )}
    </>
  );
}

const PACES: readonly Option<'own' | 'counted'>[] = [
  { value: 'own', label: 'My own', note: 'A press or a word begins each hold.' },
  { value: 'counted', label: 'Counted', note: 'After the time to dial, three ticks count in and the hold begins.' },
];
