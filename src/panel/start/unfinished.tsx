// A sweep that is under way, or was left: go on with it, or end it as it stands.
import type { SweepState } from '../../sweep/state.ts';
import { useSurroundings } from '../useSession.ts';
import { holdsCounted } from '../words/quantities.ts';
import { subjectInWords } from '../words/subjects.ts';

export function Unfinished({ sweep }: { readonly sweep: SweepState }) {
  const { session, way } = useSurroundings();
  const { lens, details } = subjectInWords(sweep.plan.subject);
  const owner = session.role.value === 'owner';
  return (
    <section class="card" aria-labelledby="unfinished">
      <h2 id="unfinished">{owner ? 'A sweep is unfinished' : 'A sweep runs in another window'}</h2>
      <p>
        {lens}, {details}: {holdsCounted(sweep.holds.length)} so far. Nothing is lost.
      </p>
      <button type="button" class="chief" onClick={() => way.home({ at: 'sweep' })}>
        {owner ? 'Go on with it' : 'Follow it'}
      </button>
      {owner && (
        <button type="button" onClick={() => session.leave()}>
          End it as it stands
        </button>
      )}
    </section>
  );
}
