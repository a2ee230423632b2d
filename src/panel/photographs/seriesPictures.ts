// The pictures on this screen as a series sees them, and what is known of the situation they are of.
import { useMemo } from 'preact/hooks';
import type { Measured } from '../../logbook/measured.ts';
import { measuredStep } from '../../photographs/measuredStep.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { turnsOf, type Turns } from '../../photographs/series/turns.ts';
import { USUAL_SCALE, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { useShelf } from '../logbook/useShelf.ts';
import { useSession } from '../useSession.ts';
import type { Picture } from './pictures.ts';

export function useTurns(pictures: readonly Picture[], situation: string | null): Turns {
  const kit = useSession().kit.value;
  return useMemo(
    () =>
      turnsOf(
        pictures.flatMap(({ id, name, is }) => (typeof is === 'string' || !is.ok ? [] : [{ id, name, ...is.value }])),
        kit,
        situation,
      ),
    [pictures, kit, situation],
  );
}

export interface SeriesSubject {
  readonly scale: Scale;
  /** The correction to go by; null where there is none. */
  readonly value: Steps | null;
  /** The newest centre that the light gave, in steps. */
  readonly band: WithInterval | null;
  /** What a bracket measured a step to be worth, in millimetres at the target. */
  readonly step: WithInterval | null;
}

export function useSeriesSubject(situation: string | null): SeriesSubject {
  const { kit } = useSession();
  const shelved = useShelf().find(({ subject }) => subject.situation === situation);
  const body = kit.value.bodies.find(({ id }) => id === shelved?.situation?.body);
  return {
    scale: body?.scale ?? USUAL_SCALE,
    value: shelved?.value ?? null,
    band: shelved?.history.measured.map(centreOf).findLast((centre) => centre !== null) ?? null,
    step: measuredStep(shelved?.history.proofs.map(({ proof }) => proof) ?? []),
  };
}

const centreOf = ({ centre, interval }: Measured): WithInterval | null =>
  centre === null || interval === null ? null : { value: centre, low: interval.from, high: interval.to };
