// Whose correction this is, and the way out.
import type { SweepState } from '../../sweep/state.ts';
import { Back } from '../parts/back.tsx';
import { VoiceMark } from '../voice/mark.tsx';
import { subjectInWords } from '../words/subjects.ts';

export function SweepHeader({ sweep, onLeave }: { readonly sweep: SweepState; readonly onLeave: () => void }) {
  const { lens, details } = subjectInWords(sweep.plan.subject);
  return (
    <header class="subject">
      <Back label="Leave for the start; the sweep waits" onBack={onLeave} />
      <div>
        <h1>{lens}</h1>
        <p class="muted small">{details}</p>
      </div>
      <VoiceMark />
    </header>
  );
}
