// Whose correction this is, and the way out.
import type { SweepState } from '../../sweep/state.ts';
import { Back } from '../parts/back.tsx';
import { SweepTold } from '../told/sweepTold.tsx';
import { useSession } from '../useSession.ts';
import { VoiceMark } from '../voice/mark.tsx';
import { words } from '../../words/catalogue.ts';
import { subjectInWords } from '../words/subjects.ts';

export function SweepHeader({ sweep, onLeave }: { readonly sweep: SweepState; readonly onLeave: () => void }) {
  const { lens, details } = subjectInWords(sweep.plan.subject);
  const { practice, transfer } = sweep.plan;
  const owner = useSession().role.value === 'owner';
  return (
    <header class="subject">
      <Back label={words('sweep').leave} onBack={onLeave} />
      <div>
        <h1>{lens}</h1>
        {practice || transfer || !owner ? <p class="muted small">{details}</p> : <SweepTold sweep={sweep} />}
      </div>
      <div class="markplace">
        <VoiceMark />
      </div>
    </header>
  );
}
