// The target for this rig: how large it is, the page that prints it, and whether the print came out at true size.
import { sheetCount } from '../../optics/print/sheets.ts';
import { drawTarget, SCALE } from '../../optics/print/target.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { Says } from './fact.tsx';
import { targetAddress } from './given.ts';
import type { Reckoned } from './reckon.ts';
import type { BenchSubject } from './subject.ts';
import { Choosing, Typing } from './typing.tsx';
import { enteredAt } from './fields.ts';

export function TargetCard({ subject, reckoned }: { readonly subject: BenchSubject; readonly reckoned: Reckoned }) {
  const { target: say, choices, fault } = words('bench');
  const printed = words('print');
  const { session, bench } = useSurroundings();
  const { rig, print, faults, unit, distance, focalLength } = reckoned;
  const { paper } = enteredAt(bench).picks;
  const whose = printed.whose({ ...subject, focalLength, distance, unit, day: session.now.value });
  const address = rig && targetAddress(rig, reckoned, whose, paper);
  const target = reckoned.bench?.ok ? reckoned.bench.value.target : null;
  const size = (): string => {
    if (target === null) return say.wanted;
    if (!target.ok) return fault(target.fault);
    const { bar, field } = target.value;
    const labels = { words: [...whose, printed.sizes(bar, SCALE)], scale: printed.scale(SCALE) };
    return say.size(bar, field, sheetCount(drawTarget(target.value, labels).drawing, paper));
  };
  return (
    <section class="card" aria-labelledby="bench-target">
      <h2 id="bench-target">{say.title}</h2>
      <Says>{size()}</Says>
      <Choosing field="paper" from={choices.paper} />
      <button type="button" disabled={address === null} onClick={() => address !== null && session.openPage(`target.html#${address}`)}>
        {say.open}
      </button>
      <Typing field="printed" faults={faults} />
      {print && <output>{say.print(print)}</output>}
    </section>
  );
}
