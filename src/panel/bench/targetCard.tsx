// The target for this rig: how large it is, the page that prints it, and whether the print came out at true size.
import { sheets } from '../../optics/print/sheets.ts';
import { drawTarget } from '../../optics/print/target.ts';
import { writeNumber } from '../../optics/quantity.ts';
import { useSurroundings } from '../useSession.ts';
import { onDay } from '../words/quantities.ts';
import { Says } from './fact.tsx';
import { targetAddress } from './given.ts';
import type { Reckoned } from './reckon.ts';
import type { BenchSubject } from './subject.ts';
import { Choosing, Typing } from './typing.tsx';
import { typedAt } from './fields.ts';

export function TargetCard({ subject, reckoned }: { readonly subject: BenchSubject; readonly reckoned: Reckoned }) {
  const { session, bench } = useSurroundings();
  const { rig, print, faults } = reckoned;
  const { paper } = typedAt(bench);
  const address = rig && targetAddress(rig, reckoned, subject, paper, onDay(session.now.value));
  return (
    <section class="card" aria-labelledby="bench-target">
      <h2 id="bench-target">Target</h2>
      <Says>{sizeInWords(reckoned, paper === 'Letter' ? 'Letter' : 'A4')}</Says>
      <Choosing field="paper" label="Paper" options={PAPER_CHOICES} />
      <button type="button" disabled={address === null} onClick={() => address !== null && session.openPage(`target.html#${address}`)}>
        Open the page to print
      </button>
      <Typing field="printed" label="Printed scale measures, mm" hint="Drawn as 100, between the outer edges of its end marks." faults={faults} />
      {print && <output>{print.say}</output>}
    </section>
  );
}

function sizeInWords({ bench }: Reckoned, paper: 'A4' | 'Letter'): string {
  if (!bench?.ok) return 'The target is drawn as soon as the widest aperture is entered.';
  const { target } = bench.value;
  if (!target.ok) return target.sentence;
  const count = sheets(drawTarget(target.value, []).drawing, paper, '').length;
  const { bar, field } = target.value;
  return `Bars of ${writeNumber(bar, 2)} mm in a field of ${writeNumber(field, 0)} mm, on ${count === 1 ? 'one sheet' : `${count} sheets`}.`;
}

const PAPER_CHOICES = [
  { value: 'A4', label: 'A4' },
  { value: 'Letter', label: 'Letter' },
];
