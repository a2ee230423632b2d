// Lens and sensor, and what follows: how large the target appears, how deep the focus is, what a step is worth there.
import { writeNumber } from '../../optics/quantity.ts';
import { SENSORS } from '../../optics/sensor.ts';
import { shareOfDepth } from '../../optics/depthOfField.ts';
import { useSurroundings } from '../useSession.ts';
import { Fact, Says } from './fact.tsx';
import { nearTarget } from './lengths.ts';
import type { Reckoned } from './reckon.ts';
import { Choosing, Typing } from './typing.tsx';
import { typedAt } from './fields.ts';

export function DepthCard({ reckoned }: { readonly reckoned: Reckoned }) {
  const { faults } = reckoned;
  const { confusion } = typedAt(useSurroundings().bench);
  return (
    <section class="card" aria-labelledby="bench-depth">
      <h2 id="bench-depth">Lens and depth of field</h2>
      <Typing field="aperture" label="Widest aperture" hint="Such as 1.8." faults={faults} />
      <Choosing field="sensor" label="Sensor" options={SENSOR_CHOICES} />
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

function Depth({ reckoned: { bench, unit } }: { readonly reckoned: Reckoned }) {
  if (bench === null) return <Says>Enter the widest aperture to see depth of field, light, tilt and target.</Says>;
  if (!bench.ok) return <Says>{bench.say}</Says>;
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
        <Fact name="Depth of focus">{writeNumber(depthOfFocus, 3)} mm</Fact>
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
    </>
  );
}

const SENSOR_CHOICES = SENSORS.map(({ width, height }, index) => ({ value: String(index), label: `${width} × ${height} mm` }));
const CONFUSIONS = [
  { value: 'diagonal', label: 'diagonal / 1500' },
  { value: 'traditional', label: '0.030 mm over the crop factor' },
  { value: 'print', label: 'from an 8 × 10 inch print' },
  { value: 'own', label: 'your own' },
];
