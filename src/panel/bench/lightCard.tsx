// Whether there is light enough, from what the camera shows for the target.
import { fits } from '../../optics/fits.ts';
import { illuminance, LIGHT_SENTENCES, LightThresholds, lightVerdict, WHITE_PAPER } from '../../optics/light.ts';
import { shutterCaution } from '../../optics/lamps.ts';
import { readNumber, writeNumber } from '../../optics/quantity.ts';
import { lampCautions } from '../../optics/setUp/caution.ts';
import { useSurroundings } from '../useSession.ts';
import { Cautions } from './cautions.tsx';
import { lampsOf } from './given.ts';
import { Says } from './fact.tsx';
import { lightReading } from './readings.ts';
import { typedAt } from './fields.ts';
import type { Typed } from './untyped.ts';
import { Choosing, Typing } from './typing.tsx';

export function LightCard() {
  const typed = typedAt(useSurroundings().bench);
  const { lighting, mains } = lampsOf(typed);
  return (
    <section class="card" aria-labelledby="bench-light">
      <h2 id="bench-light">Light</h2>
      <LightFields />
      <Says>{exposureInWords(typed)}</Says>
      <details>
        <summary>Lamps, and what is enough</summary>
        <div class="stack">
          <Choosing field="lighting" label="Light from" options={LIGHTINGS} />
          <Choosing field="mains" label="Mains" options={MAINS} />
          <Typing field="fine" label="Fine from, EV at ISO 100" />
          <Typing field="plenty" label="Plenty from, EV at ISO 100" />
        </div>
      </details>
      <Cautions all={lampCautions(lighting, mains)} />
    </section>
  );
}

export const LightFields = () => (
  <div class="thirds exposure">
    <Typing field="iso" label="ISO" />
    <Typing field="metered" label="Aperture" />
    <Typing field="shutter" label="Shutter" />
  </div>
);

/** The verdict on what is typed, or what to enter. */
export function exposureInWords(typed: Typed): string {
  const read = lightReading(typed);
  if (!read.ok) return read.sentence;
  const thresholds = fits(LightThresholds, { fine: readNumber(typed.fine), plenty: readNumber(typed.plenty) });
  if (!thresholds.ok) return thresholds.sentence;
  const { ev, shutter } = read.value;
  const { lighting, mains } = lampsOf(typed);
  const flicker = shutterCaution(lighting, mains, shutter);
  const onGrey = Math.round(illuminance(ev));
  const onPaper = Math.round(illuminance(ev, WHITE_PAPER));
  return `EV ${writeNumber(ev, 1)} at ISO 100: about ${onGrey} lux where the meter saw mid-grey, ${onPaper} where it saw white paper. ${LIGHT_SENTENCES[lightVerdict(ev, thresholds.value)]}${flicker === null ? '' : ` ${flicker}`}`;
}

const LIGHTINGS = [
  { value: 'daylight', label: 'daylight' },
  { value: 'steady lamp', label: 'lamps without flicker' },
  { value: 'mains lamp', label: 'lamps on the mains' },
  { value: 'warm lamp', label: 'warm lamps on the mains' },
];
const MAINS = [
  { value: '50', label: '50 Hz' },
  { value: '60', label: '60 Hz' },
];
