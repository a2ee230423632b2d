// A bracket of corrections: the values to shoot at, which picture was taken at which, the line through them, and where the centre lies.
import type { ComponentChildren } from 'preact';
import { bracketParts, type BracketPart } from '../../photographs/series/bracketParts.ts';
import { bracketPlan } from '../../photographs/series/bracketPlan.ts';
import { readBracket } from '../../photographs/series/bracketSeries.ts';
import { examplesOf } from '../../photographs/series/examples.ts';
import { firstTaken, proofOfBracket } from '../../photographs/series/proofsOf.ts';
import type { SeriesPicture } from '../../photographs/series/seriesPicture.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { nearestOn, valuesOf, writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { Choose } from '../parts/choose.tsx';
import { BracketChart } from './bracketChart.tsx';
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
  /** The correction that the bracket lies around; null where it was not told. */
  readonly value: Steps | null;
  /** The centre that the light gave. */
  readonly band: WithInterval | null;
  /** What a bracket kept before measured a step to be worth, in millimetres at the target; null where none did. */
  readonly step: WithInterval | null;
  readonly told: ToldParts<BracketPart>;
  /** How pictures are brought in. */
  readonly children: ComponentChildren;
}

export function BracketOfValues({ pictures, situation, scale, value, band, step, told, children }: Props) {
  const say = words('series').bracket;
  const turns = useTurns(pictures, situation);
  const plan = bracketPlan(scale, value ?? nearestOn(scale, 0));
  const parts = bracketParts(
    turns.taken.map(({ id }) => id),
    plan,
    told.parts,
  );
  const choices: readonly BracketPart[] = ['live view', ...valuesOf(scale), 'left out'];
  return (
    <SeriesView
      pictures={pictures}
      turns={turns}
      parts={parts}
      order={{
        title: say.order.title,
        steps: (
          <>
            <li>{say.order.reference}</li>
            <li>
              {say.order.shots}
              <ol class="values" aria-label={say.order.list}>
                {plan.map((correction, place) => (
                  <li key={place}>{writeSteps(correction)}</li>
                ))}
              </ol>
            </li>
          </>
        ),
      }}
      together={<BracketTellings pictures={pictures} situation={situation} taken={turns.taken} parts={parts} band={band} scale={scale} />}
      step={step}
      picks={
        new Map(
          turns.taken.map(({ id }) => [id, <ValuePick key={id} choices={choices} part={parts.get(id) ?? 'left out'} onTold={(part) => told.tell(id, part)} />]),
        )
      }
    >
      {children}
    </SeriesView>
  );
}

interface PickProps {
  readonly choices: readonly BracketPart[];
  readonly part: BracketPart;
  readonly onTold: (part: BracketPart) => void;
}

function ValuePick({ choices, part: chosen, onTold }: PickProps) {
  const say = words('series').bracket.part;
  return (
    <Choose
      label={say.title}
      options={choices.map((part) => ({ value: String(part), label: say.option(part) }))}
      chosen={String(chosen)}
      onChoose={(text) => onTold(choices.find((part) => String(part) === text) ?? 'left out')}
    />
  );
}

interface TellingsProps {
  readonly pictures: readonly Picture[];
  readonly situation: string | null;
  readonly taken: readonly SeriesPicture[];
  readonly parts: ReadonlyMap<string, BracketPart>;
  readonly band: WithInterval | null;
  readonly scale: Scale;
}

function BracketTellings({ pictures, situation, taken, parts, band, scale }: TellingsProps) {
  const { bracket: say, noReference } = words('series');
  const series = readBracket(taken, parts, band);
  if (series === null) return <TogetherTold sentences={[say.none]} />;
  const { measured, shots, reference } = series;
  const lacking = reference === null ? [noReference] : [];
  if (!measured.ok) return <TogetherTold sentences={[say.fault[measured.fault.is]]} faults={lacking} />;
  const told = measured.value;
  const names = new Map(pictures.map(({ id, name }) => [id, name]));
  const apart = told.measure.apart.map((place) => names.get(shots[place]?.id ?? '') ?? '');
  const proof = proofOfBracket(series, told, firstTaken(taken));
  const shown = examplesOf(taken, parts, reference?.value ?? 0);
  return (
    <TogetherTold
      sentences={say.told(told, scale)}
      faults={[...(apart.length > 0 ? [say.apart(apart)] : []), ...lacking]}
      figures={say.figures(series, told)}
      keep={<KeepProof situation={situation} proof={proof} crops={cropsOfSeries(pictures, shown)} />}
    >
      <BracketChart series={series} told={told} />
    </TogetherTold>
  );
}
