// The situations of a plan in their order, with what has to be changed before each. A shape says which are done.
import type { Progress } from '../../logbook/plan/jobPlan.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import type { PlanNow } from './useProgress.ts';

type Station = Progress['stations'][number];

export function StationList({ now: { progress, shelved } }: { readonly now: PlanNow }) {
  const say = words('plan');
  const { way } = useSurroundings();
  return (
    <ol class="plain stations" aria-label={say.stations}>
      {progress.stations.map(({ stop, is, change }) => {
        const known = shelved.get(stop.id);
        if (!known) return null;
        const { subject, measured } = known;
        return (
          <li key={stop.id} data-is={is}>
            <Mark is={is} />
            <div>
              {change && <small>{say.before(change)}</small>}
              <b>{subject.lens}</b>
              <small>{say.details(subject)}</small>
              <span class="row">
                <small>{is === 'done' ? say.done(measured?.chosen ?? null) : say.is[is]}</small>
                {is === 'done' && (
                  <button type="button" class="link small" aria-label={say.toEnterFor(subject)} onClick={() => way.go({ at: 'entering', id: stop.id })}>
                    {say.toEnter}
                  </button>
                )}
              </span>
            </div>
          </li>
        );
      })}
    </ol>
  );
}

/** A full disc: done; a disc in a ring: next; a hollow ring: to do. */
function Mark({ is }: Pick<Station, 'is'>) {
  return (
    <svg viewBox="0 0 18 18" width="18" height="18" aria-hidden="true">
      {is !== 'done' && <circle cx="9" cy="9" r="7" fill="none" stroke="currentColor" stroke-width="1.7" />}
      {is !== 'to do' && <circle cx="9" cy="9" r={is === 'done' ? 8 : 3.5} fill="currentColor" />}
    </svg>
  );
}
