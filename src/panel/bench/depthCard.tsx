// Lens and sensor, and what follows: how large the target appears, how deep the focus is, what a step is worth there.
import { convertedError } from '../../optics/converter.ts';
import { limitsOfField, shareOfDepth } from '../../optics/depthOfField.ts';
import { quarterWaveDepth } from '../../optics/depthOfFocus.ts';
import { readSensor, SENSORS, writeSensor } from '../../optics/sensor.ts';
import type { StepSize } from '../../photographs/focusError.ts';
import { millimetres } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { Facts, Says } from './fact.tsx';
import type { Reckoned } from './reckon.ts';
import { Choosing, Typing } from './typing.tsx';
import { enteredAt, worthBy } from './fields.ts';

export function DepthCard({ reckoned }: { readonly reckoned: Reckoned }) {
  const { depth, choices, sensor: sizeOf } = words('bench');
  const { faults } = reckoned;
  const { bench } = useSurroundings();
  const { confusion, sensor } = enteredAt(bench).picks;
  const by = worthBy(bench);
  const sizes = Object.fromEntries(sensorsBeside(sensor).map((one) => [writeSensor(one), sizeOf(one)]));
  return (
    <section class="card" aria-labelledby="bench-depth">
      <h2 id="bench-depth">{depth.title}</h2>
      <Typing field="aperture" faults={faults} />
      <Choosing field="sensor" from={sizes} />
      <details>
        <summary>{depth.finer}</summary>
        <div class="stack">
          <Typing field="converter" faults={faults} />
          <Typing field="pixels" faults={faults} />
          <Typing field="area" faults={faults} />
          <Typing field="scalePixels" faults={faults} />
          <Choosing field="confusion" from={choices.confusion} />
          {confusion === 'own' && <Typing field="ownConfusion" faults={faults} />}
          <Typing field="worth" faults={faults} {...(by === 'bracket' && { hint: depth.worthMeasured })} />
        </div>
      </details>
      <Depth reckoned={reckoned} by={by} />
    </section>
  );
}

function Depth({ reckoned: { bench, rig, unit, distance, converter }, by }: { readonly reckoned: Reckoned; readonly by: StepSize['from'] }) {
  const { depth: say, fault } = words('bench');
  if (bench === null || rig === null) return <Says>{say.wanted}</Says>;
  if (!bench.ok) return <Says>{fault(bench.fault)}</Says>;
  const { magnification, magnificationIs, depth, depthOfFocus, hyperfocal, airy, step, blur } = bench.value;
  const figures = say.figures({
    magnification,
    measured: magnificationIs === 'measured',
    ...depth,
    ...limitsOfField(depth, distance),
    focus: depthOfFocus,
    quarterWave: millimetres(2 * quarterWaveDepth(blur.aperture)),
    hyperfocal,
    blur: blur.confusion,
    airy,
    unit,
  });
  const converted = converter === null ? null : convertedError(converter);
  return (
    <>
      <Facts all={figures} />
      <p>{say.step(step, shareOfDepth(step, depth), unit, by)}</p>
      {converted && <p class="small">{say.converted(blur.aperture, converted.lensSteps, converted.bodySteps)}</p>}
    </>
  );
}

/** The usual sizes, and the one of the kit's body where it is none of them. */
const sensorsBeside = (chosen: string) => (SENSORS.some((one) => writeSensor(one) === chosen) ? SENSORS : [...SENSORS, readSensor(chosen)]);
