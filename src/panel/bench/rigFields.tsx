// The three things that a rig is worked out from, at the top of the bench: the focal length, the distance, the widest aperture. What does
// not fit is told below them, over the whole width.
import { useId, useState } from 'preact/hooks';
import { usualDistance } from '../../kit/kit.ts';
import { readFocalLength } from '../../optics/length.ts';
import type { Millimetres } from '../../units.ts';
import { asText } from '../kit/typedFields.ts';
import { words } from '../../words/catalogue.ts';
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';
import { enteredAt, typeInto } from './fields.ts';
import type { Reckoned } from './reckon.ts';
import type { BenchSubject } from './subject.ts';
import { Typing } from './typing.tsx';
import { writtenFor } from './values.ts';

interface Props {
  /** Null while no focal length is known. */
  readonly rig: { readonly subject: BenchSubject; readonly reckoned: Reckoned } | null;
  /** The lengths of the sweep to come can still be chosen, beginning with the focal length known by now. */
  readonly open: { readonly known: Millimetres | null } | null;
}

export function RigFields({ rig, open }: Props) {
  const say = words('bench');
  const below = useId();
  const [typed, setTyped] = useState(asText(open?.known));
  const { start } = useSurroundings();
  const read = readFocalLength(typed);
  const { distance, aperture } = rig?.reckoned.faults ?? {};
  const told = [...(open && !read.ok && typed !== '' ? [read.fault] : []), ...[distance, aperture].filter((fault) => fault !== undefined)];
  const takeFocal = (text: string): void => {
    setTyped(text);
    const length = readFocalLength(text);
    if (length.ok) start.tell({ focalLength: length.value });
  };
  return (
    <>
      <div class="rig-fields">
        {open && (
          <Field
            label={say.focalLength}
            text={typed}
            fault={read.ok || typed === '' ? undefined : say.fault(read.fault)}
            faultAt={below}
            numeric
            onTyped={takeFocal}
          />
        )}
        {rig && <DistanceField {...rig} faultAt={below} />}
        {rig && <Typing field="aperture" hint="" faults={rig.reckoned.faults} faultAt={below} />}
      </div>
      <div id={below} class={told.length > 0 ? 'fault small' : 'unseen'}>
        {told.map((fault, index) => (
          <p key={index}>{say.fault(fault)}</p>
        ))}
      </div>
      {rig && open && <Distances {...rig} />}
    </>
  );
}

type Standing = NonNullable<Props['rig']>;

/** What counts while it is empty stands there, pale. */
const DistanceField = ({ subject, reckoned: { faults, unit }, faultAt }: Standing & { readonly faultAt: string }) => (
  <Typing field="distance" hint="" placeholder={writtenFor('distance', subject.distance, unit)} faults={faults} faultAt={faultAt} />
);

/** Where the target may be meant to stand instead: where it was measured to stand, or at the usual distance. */
function Distances({ subject, reckoned }: Standing) {
  const say = words('bench').distance;
  const { bench, start } = useSurroundings();
  const { distance, unit, focalLength, faults } = reckoned;
  // What is written alike is one distance: 13.9 ft may be read off where 4.25 m were meant.
  const written = (length: Millimetres): string => writtenFor('distance', length, unit);
  const measured = enteredAt(bench).distance?.read.ok === true && !faults.reach && written(distance) !== written(subject.distance);
  const usual = Math.round(usualDistance(focalLength)) === Math.round(distance);
  const toUsual = (): void => {
    typeInto(bench, 'distance', '');
    start.tell({ distance: null });
  };
  if (!measured && usual) return null;
  return (
    <div class="row distances">
      {measured && (
        <button type="button" class="grow" onClick={() => start.tell({ distance })}>
          {say.use(distance, unit)}
        </button>
      )}
      {!usual && (
        <button type="button" class="grow" onClick={toUsual}>
          {say.useUsual}
        </button>
      )}
    </div>
  );
}
