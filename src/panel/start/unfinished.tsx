// A sweep that is under way, or was left: go on with it, or end it as it stands.
import type { SweepState } from '../../sweep/state.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { useSurroundings } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';

export function Unfinished({ sweep }: { readonly sweep: SweepState }) {
  const { session, way } = useSurroundings();
  const say = words('start').unfinished;
  const { lens, details } = subjectInWords(sweep.plan.subject);
  const owner = session.role.value === 'owner';
  return (
    <section class="card" aria-labelledby="unfinished">
      <h2 id="unfinished">{owner ? say.here : say.elsewhere}</h2>
      <p>{run([say.about(lens, details), say.sofar(sweep.holds.length)])}</p>
      <button type="button" class="chief" onClick={() => way.home({ at: 'sweep' })}>
        {owner ? say.goOn : say.follow}
      </button>
      {owner && (
        <button type="button" onClick={() => session.leave()}>
          {say.end}
        </button>
      )}
    </section>
  );
}
