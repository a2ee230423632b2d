// After a sweep: whether the width of its band is plausible, and the value that places the depth of field where the bench
// was told to. Both are estimates, from what one step may be worth.
import { placeDepth, type Placement } from '../../optics/placement.ts';
import { benchFrom, latest } from '../../optics/setUp/reading.ts';
import type { StoredBench } from '../../sweep/storedBench.ts';
import { bandWidth, USUAL_STEP_WORTH } from '../../optics/stepWorth.ts';
import { failed, got, type Result } from '../../result.ts';
import type { BenchFault } from '../../optics/fault.ts';
import type { BandOutcome } from '../../sweep/end/outcome.ts';
import type { Scale } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { valueOf } from './entry.ts';
import { enteredAt, worthBy } from './fields.ts';
import { placementReading } from './readings.ts';
import { useBench } from './useBench.ts';

interface Props {
  readonly outcome: BandOutcome;
  readonly scale: Scale;
}

/** The value shifted on purpose; null where no share was asked for. What is entered goes before what was stored. */
export function usePlaced({ outcome, scale, stored }: Props & { readonly stored: StoredBench | undefined }): Result<Placement, BenchFault> | null {
  const entered = enteredAt(useSurroundings().bench);
  const standing = useBench();
  const kept = stored ? latest(benchFrom(stored), 'placement') : null;
  if (entered.share === null && !kept) return null;
  const share = entered.share === null && kept ? got(kept) : placementReading(entered);
  if (!share.ok) return share;
  if ('missing' in standing || !standing.reckoned.bench?.ok) return failed({ is: 'share without a rig' });
  const { depth, step } = standing.reckoned.bench.value;
  return placeDepth(outcome.chosen, share.value.share, depth, step, scale);
}

export function Estimates({ outcome, scale, placed }: Props & { readonly placed: Result<Placement, BenchFault> | null }) {
  const say = words('placed');
  const { bench } = useSurroundings();
  const worth = valueOf(enteredAt(bench).worth) ?? USUAL_STEP_WORTH;
  const values = Math.round((outcome.high - outcome.low) / scale.step) + 1;
  return (
    <section aria-label={say.title}>
      {placed && (placed.ok ? <p>{say.placed(placed.value)}</p> : <p class="fault">{say.fault(placed.fault)}</p>)}
      <p class="muted small">{say.width(bandWidth(values * scale.step, worth), worthBy(bench))}</p>
    </section>
  );
}
