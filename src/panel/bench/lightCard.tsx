// Whether there is light enough, from what the camera shows for the target.
import { fits } from '../../optics/fits.ts';
import { illuminance, LightThresholds, lightVerdict, WHITE_PAPER } from '../../optics/light.ts';
import { flickerShows } from '../../optics/lamps.ts';
import { lampCautions } from '../../optics/setUp/caution.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { Cautions } from './cautions.tsx';
import { lampsOf } from './given.ts';
import { BenchRoom, FinerRoom } from './benchRoom.tsx';
import { Says } from './fact.tsx';
import { lightReading } from './readings.ts';
import { valueOf } from './entry.ts';
import { enteredAt, type Entered } from './fields.ts';
import { Choosing, Typing } from './typing.tsx';

export function LightCard() {
  const { light: say, choices } = words('bench');
  const entered = enteredAt(useSurroundings().bench);
  const { lighting, mains } = lampsOf(entered.picks);
  return (
    <BenchRoom title={say.title}>
      <LightFields />
      <Says>{exposureInWords(entered)}</Says>
      <FinerRoom title={say.finer}>
        <Choosing field="lighting" from={choices.lighting} />
        <Choosing field="mains" from={choices.mains} />
        <Typing field="fine" />
        <Typing field="plenty" />
      </FinerRoom>
      <Cautions all={lampCautions(lighting, mains)} />
    </BenchRoom>
  );
}

export const LightFields = () => (
  <div class="thirds exposure">
    <Typing field="iso" />
    <Typing field="metered" />
    <Typing field="shutter" />
  </div>
);

/** The verdict on what is entered, or what to enter. */
export function exposureInWords(entered: Entered): string {
  const { light, fault } = words('bench');
  const read = lightReading(entered);
  if (!read.ok) return fault(read.fault);
  const thresholds = fits(LightThresholds, { fine: valueOf(entered.fine), plenty: valueOf(entered.plenty) });
  if (!thresholds.ok) return fault(thresholds.fault);
  const { ev, shutter } = read.value;
  const { lighting, mains } = lampsOf(entered.picks);
  return light.verdict({
    ev,
    onGrey: illuminance(ev),
    onPaper: illuminance(ev, WHITE_PAPER),
    verdict: lightVerdict(ev, thresholds.value),
    flickers: flickerShows(lighting, mains, shutter) ? mains : null,
  });
}
