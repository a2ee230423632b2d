// How the situations are weighed against each other: so that the worst is as good as can be, or by how often each is used.
import { useState } from 'preact/hooks';
import type { Evidence } from '../../logbook/entering/advice.ts';
import type { Weighing } from '../../logbook/entering/oneValue.ts';
import { Field } from '../parts/field.tsx';
import { Pick } from '../parts/pick.tsx';
import { typedNumber } from '../words/typedNumber.ts';
import { inMetres, inMillimetres } from '../words/quantities.ts';

interface Props {
  readonly evidence: readonly Evidence[];
  readonly weighing: Weighing;
  readonly onWeigh: (weighing: Weighing) => void;
}

const OPTIONS = [
  { value: 'worst share', label: 'All alike', note: 'the worst of them as good as can be' },
  { value: 'use', label: 'By use', note: 'what is used more counts more' },
] as const;

export function WeighPick({ evidence, weighing, onWeigh }: Props) {
  const [typed, setTyped] = useState<ReadonlyMap<string, string>>(new Map());
  const change = (id: string, text: string): void => {
    const now = new Map(typed).set(id, text);
    setTyped(now);
    onWeigh({ by: 'use', use: new Map([...now].filter(([, one]) => isUse(one)).map(([of, one]) => [of, typedNumber(one)])) });
  };
  const choose = (by: Weighing['by']): void => onWeigh(by === 'use' ? { by, use: new Map() } : { by });
  return (
    <>
      <Pick legend="Weigh" options={OPTIONS} chosen={weighing.by} onChoose={choose} />
      {weighing.by === 'use' &&
        evidence.map(({ band, measured }) => {
          const text = typed.get(band.id) ?? '1';
          return (
            <Field
              key={band.id}
              numeric
              label={`Use of ${inMillimetres(band.focalLength)} at ${inMetres(band.distance)}${measured.subject.lens.includes(' with ') ? ', with converter' : ''}`}
              text={text}
              fault={isUse(text) ? undefined : 'Enter how much it is used, 0 to 100; until then it counts as 1.'}
              onTyped={(now) => change(band.id, now)}
            />
          );
        })}
    </>
  );
}

function isUse(text: string): boolean {
  const use = typedNumber(text);
  return use >= 0 && use <= 100;
}
