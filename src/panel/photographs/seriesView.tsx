// What every series shows, in this order: how it is shot, how pictures are brought in, what they say together, and each of them.
import type { ComponentChildren } from 'preact';
import type { Turns } from '../../photographs/series/turns.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { words } from '../../words/catalogue.ts';
import { isUnderWay, type Picture } from './pictures.ts';
import { SeriesList } from './seriesList.tsx';

interface Props {
  readonly pictures: readonly Picture[];
  readonly turns: Turns;
  /** What each picture that took a turn was, by its id. */
  readonly parts: ReadonlyMap<string, unknown>;
  /** The order of the shots. */
  readonly order: { readonly title: string; readonly steps: ComponentChildren };
  /** What the pictures say together, once none is read any more. */
  readonly together: ComponentChildren;
  /** What a bracket measured a step to be worth, in millimetres at the target; null where none did. */
  readonly step: WithInterval | null;
  /** Says what a picture was, and takes it told otherwise. By its id. */
  readonly picks: ReadonlyMap<string, ComponentChildren>;
  /** How pictures are brought in. */
  readonly children: ComponentChildren;
}

export function SeriesView({ pictures, turns, parts, order, together, step, picks, children }: Props) {
  const reading = pictures.some(isUnderWay);
  const reference = turns.taken.find(({ id }) => parts.get(id) === 'live view')?.id ?? null;
  return (
    <>
      <details open={pictures.length === 0}>
        <summary>{order.title}</summary>
        <ol>{order.steps}</ol>
      </details>
      {children}
      {reading && <p class="muted">{words('series').wait}</p>}
      {turns.taken.length > 0 && !reading && together}
      <SeriesList pictures={pictures} turns={turns} reference={reference} step={step} picks={picks} />
    </>
  );
}
