// How the situations are weighed against each other: so that the worst is as good as can be, or by how often each is used.
import { useState } from 'preact/hooks';
import type { Evidence } from '../../logbook/entering/advice.ts';
import type { Weighing } from '../../logbook/entering/oneValue.ts';
import { words } from '../../words/catalogue.ts';
import { Field } from '../parts/field.tsx';
import { Pick } from '../parts/pick.tsx';
import { typedNumber } from '../words/typedNumber.ts';

interface Props {
  readonly evidence: readonly Evidence[];
  readonly weighing: Weighing;
  readonly onWeigh: (weighing: Weighing) => void;
}

const BY = ['worst share', 'use'] as const;

export function WeighPick({ evidence, weighing, onWeigh }: Props) {
  const say = words('entering').weigh;
  const [typed, setTyped] = useState<ReadonlyMap<string, string>>(new Map());
  const change = (id: string, text: string): void => {
    const now = new Map(typed).set(id, text);
    setTyped(now);
    onWeigh({ by: 'use', use: new Map([...now].filter(([, one]) => isUse(one)).map(([of, one]) => [of, typedNumber(one)])) });
  };
  const choose = (by: Weighing['by']): void => onWeigh(by === 'use' ? { by, use: new Map() } : { by });
  return (
    <>
      <Pick legend={say.legend} options={BY.map((value) => ({ value, ...say.by[value] }))} chosen={weighing.by} onChoose={choose} />
      {weighing.by === 'use' &&
        evidence.map(({ band, measured }) => {
          const text = typed.get(band.id) ?? '1';
          return (
            <Field
              key={band.id}
              numeric
              label={say.weightOf(band, measured.subject.lens.includes(' with '))}
              text={text}
              fault={isUse(text) ? undefined : say.noUse}
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
