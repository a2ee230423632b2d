// A check of the value entered: the order of the shots, which picture was which, and what all of them say of the value.
import type { ComponentChildren } from 'preact';
import { CHECK_PARTS, checkParts, type CheckPart } from '../../photographs/series/checkParts.ts';
import { readCheck } from '../../photographs/series/checkSeries.ts';
import type { Proof } from '../../photographs/proof.ts';
import { examplesOf } from '../../photographs/series/examples.ts';
import { firstTaken, proofOfCheck } from '../../photographs/series/proofsOf.ts';
import type { SeriesPicture } from '../../photographs/series/seriesPicture.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import type { Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { Pick } from '../parts/pick.tsx';
import { KeepProof } from './keepProof.tsx';
import { cropsOfSeries } from './keptCrop.ts';
import type { Picture } from './pictures.ts';
import { useTurns } from './seriesPictures.ts';
import { SeriesView } from './seriesView.tsx';
import { TogetherTold } from './togetherTold.tsx';
import type { ToldParts } from './toldParts.ts';

interface Props {
  readonly pictures: readonly Picture[];
  readonly situation: string | null;
  readonly scale: Scale;
  /** The correction that the body was set to; null where it was not told. */
  readonly value: Steps | null;
  /** What a bracket measured a step to be worth, in millimetres at the target; null where none did. */
  readonly step: WithInterval | null;
  readonly told: ToldParts<CheckPart>;
  /** How pictures are brought in. */
  readonly children: ComponentChildren;
}

export function CheckOfValue({ pictures, situation, scale, value, step, told, children }: Props) {
  const say = words('series').check;
  const turns = useTurns(pictures, situation);
  const parts = checkParts(
    turns.taken.map(({ id }) => id),
    told.parts,
  );
  return (
    <SeriesView
      pictures={pictures}
      turns={turns}
      parts={parts}
      order={{ title: say.order.title, steps: say.order.steps.map((sentence) => <li key={sentence}>{sentence}</li>) }}
      together={<CheckTold pictures={pictures} situation={situation} taken={turns.taken} parts={parts} value={value} scale={scale} step={step} />}
      step={step}
      picks={new Map(turns.taken.map(({ id }) => [id, <PartPick key={id} part={parts.get(id) ?? 'left out'} onTold={(part) => told.tell(id, part)} />]))}
    >
      {children}
    </SeriesView>
  );
}

interface ToldProps {
  readonly pictures: readonly Picture[];
  readonly situation: string | null;
  readonly taken: readonly SeriesPicture[];
  readonly parts: ReadonlyMap<string, CheckPart>;
  readonly value: Steps | null;
  readonly scale: Scale;
  readonly step: WithInterval | null;
}

function CheckTold({ pictures, situation, taken, parts, value, scale, step }: ToldProps) {
  const { check: say, noReference } = words('series');
  const series = readCheck(taken, parts);
  if (series === null) return <TogetherTold sentences={[say.none]} />;
  const { check, reference } = series;
  const proof: Proof | 'no value' | null = value === null ? 'no value' : proofOfCheck(series, value, firstTaken(taken));
  const shown = examplesOf(taken, parts, check.bias.value + (reference?.value ?? 0));
  return (
    <TogetherTold
      sentences={say.told(series, value, scale, step)}
      faults={reference === null ? [noReference] : []}
      figures={say.figures(series)}
      keep={proof !== null && <KeepProof situation={situation} proof={proof} crops={cropsOfSeries(pictures, shown)} />}
    />
  );
}

function PartPick({ part: chosen, onTold }: { readonly part: CheckPart; readonly onTold: (part: CheckPart) => void }) {
  const say = words('series').check.part;
  return (
    <div class="part">
      <Pick legend={say.title} options={CHECK_PARTS.map((part) => ({ value: part, label: say.options[part] }))} chosen={chosen} onChoose={onTold} />
    </div>
  );
}
