// Lens and sensor, and what follows: how large the target appears, how deep the focus is, what a step is worth there.
import { writeNumber } from '../../optics/quantity.ts';
import { readSensor, SENSORS, writeSensor } from '../../optics/sensor.ts';
import { limitsOfField, shareOfDepth } from '../../optics/depthOfField.ts';
import { quarterWaveDepth } from '../../optics/depthOfFocus.ts';
import { convertedInWords } from '../../optics/converter.ts';
import { useSurroundings } from '../useSession.ts';
import { Fact, Says } from './fact.tsx';
import { writeDistance } from '../../optics/length.ts';
import { nearTarget } from './lengths.ts';
import type { Reckoned } from './reckon.ts';
import { Choosing, Typing } from './typing.tsx';
import { typedAt } from './fields.ts';

export function DepthCard({ reckoned }: { readonly reckoned: Reckoned }) {
  const { faults } = reckoned;
  const { confusion, sensor } = typedAt(useSurroundings().bench);
  return (
    <section class="card" aria-labelledby="bench-depth">
      <h2 id="bench-depth">Lens and depth of field</h2>
      <Typing field="aperture" label="Widest aperture" hint="Such as 1.8." faults={faults} />
      <Choosing field="sensor" label="Sensor" options={sensorChoices(sensor)} />
      <details>
        <summary>Finer: converter, pixels, AF area, blur, step</summary>
        <div class="stack">
          <Typing field="converter" label="Converter factor" hint="Only where focal length and aperture are without it." faults={faults} />
          <Typing field="pixels" label="Width of a photograph, pixels" faults={faults} />
          <Typing field="area" label="AF area on the sensor, mm" faults={faults} />
          <Typing field="scalePixels" label="Pixels the target’s scale spans" hint="From a photograph: gives the true magnification." faults={faults} />
          <Choosing field="confusion" label="Blur that passes for sharp" options={CONFUSIONS} />
          {confusion === 'own' && <Typing field="ownConfusion" label="Circle of confusion, mm" faults={faults} />}
          <Typing field="worth" label="One step, share of half the depth of focus" hint="An estimate: makers publish little." faults={faults} />
        </div>
      </details>
      <Depth reckoned={reckoned} />
    </section>
  );
}

function Depth({ reckoned: { bench, rig, unit, distance, converter } }: { readonly reckoned: Reckoned }) {
  if (bench === null || rig === null) return <Says>Enter the widest aperture to see depth of field, light, tilt and target.</Says>;
  if (!bench.ok) return <Says>{bench.sentence}</Says>;
  const limits = limitsOfField(bench.value.depth, distance);
  const { magnification, magnificationIs, depth, depthOfFocus, hyperfocal, airy, step, blur } = bench.value;
  return (
    <>
      <dl class="facts">
        <Fact name="Magnification">
          1 : {writeNumber(1 / magnification, 1)}
          <small>{magnificationIs === 'measured' ? 'measured' : 'thin lens'}</small>
        </Fact>
        <Fact name="Depth of field">{nearTarget(depth.total, unit)}</Fact>
        <Fact name="in front">{nearTarget(depth.front, unit)}</Fact>
        <Fact name="behind">{nearTarget(depth.behind, unit)}</Fact>
        <Fact name="Sharp">
          {writeDistance(limits.near, unit)} to {limits.far === 'infinite' ? 'infinity' : writeDistance(limits.far, unit)}
          <small>from the film plane</small>
        </Fact>
        <Fact name="Depth of focus">
          {writeNumber(depthOfFocus, 3)} mm
          <small>a quarter wave of error is {writeNumber(2 * quarterWaveDepth(blur.aperture), 3)} mm</small>
        </Fact>
        <Fact name="Hyperfocal">{nearTarget(hyperfocal, unit)}</Fact>
        <Fact name="Blur allowed">
          {writeNumber(blur.confusion, 3)} mm
          <small>the Airy disc is {writeNumber(airy * 100, 0)} % of it</small>
        </Fact>
      </dl>
      <p>
        One step moves the focus about {nearTarget(step, unit)} at the target, {writeNumber(shareOfDepth(step, depth) * 100, 0)} % of the depth behind
        it: an estimate.
      </p>
      {converter !== null && <p class="small">{convertedInWords(converter, blur.aperture)}</p>}
    </>
  );
}

/** The usual sizes, and the one of the kit's body where it is none of them. */
function sensorChoices(chosen: string): { value: string; label: string }[] {
  const usual = SENSORS.some((one) => writeSensor(one) === chosen);
  return [...SENSORS, ...(usual ? [] : [readSensor(chosen)])].map((one) => ({ value: writeSensor(one), label: `${one.width} × ${one.height} mm` }));
}
const CONFUSIONS = [
  { value: 'diagonal', label: 'diagonal / 1500' },
  { value: 'traditional', label: '0.030 mm over the crop factor' },
  { value: 'print', label: 'from an 8 × 10 inch print' },
  { value: 'own', label: 'your own' },
];
