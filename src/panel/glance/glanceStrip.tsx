// One strip of the glance, drawn; for those who hear the screen it is said.
import type { Shelved } from '../../logbook/shelf.ts';
import type { Scale } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { glancePlotOf } from './glancePlot.ts';

interface Props {
  readonly shelved: Shelved;
  readonly scale: Scale;
  readonly width: number;
}

const HEIGHT = 18;
const MIDDLE = HEIGHT / 2;
/** Half a band, and half the square of what is entered. */
const [BAND, SQUARE] = [5, 5];

export function GlanceStrip({ shelved, scale, width }: Props) {
  const { left, right, zero, band, centre, interval, entered, beyond } = glancePlotOf(shelved, scale, width);
  return (
    <svg class="glance-strip" width={width} height={HEIGHT} viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-label={words('glance').strip(shelved)}>
      <path
        class="scale"
        d={`M${left} ${MIDDLE}H${right}M${left} ${MIDDLE - 3}v6M${right} ${MIDDLE - 3}v6${zero === null ? '' : `M${zero} ${MIDDLE - 3}v6`}`}
      />
      {band && <rect class="band" x={band.x} y={MIDDLE - BAND} width={band.width} height={2 * BAND} rx="3" />}
      {interval && <path class="interval" d={`M${interval.from} ${MIDDLE}H${interval.to}M${interval.from} ${MIDDLE - 3}v6M${interval.to} ${MIDDLE - 3}v6`} />}
      {centre !== null && <circle class="centre" cx={centre} cy={MIDDLE} r="2.5" />}
      {beyond && <path class="centre" d={beyond === 'left' ? `M${left - 3} ${MIDDLE}l6-4v8Z` : `M${right + 3} ${MIDDLE}l-6-4v8Z`} />}
      {entered !== null && <rect class="entered" x={entered - SQUARE} y={MIDDLE - SQUARE - 1} width={2 * SQUARE} height={2 * SQUARE + 2} />}
    </svg>
  );
}
