// A finished sweep once more, hold by hold: as a film or by its slider, with the belief as it narrowed and the strip as it was.
import { useId, useMemo, useState } from 'preact/hooks';
import type { Journal } from '../../sweep/event.ts';
import { stagesOf, type ReplayedStage } from '../../sweep/replayed.ts';
import { Strip } from '../strip/strip.tsx';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { stopsOf } from './narrowing.ts';
import { NarrowingDrawing } from './narrowingDrawing.tsx';
import { useFilm } from './useFilm.ts';

/** Working the stages out takes a while, so that is left until somebody wants to see them. */
export function Replay({ journal }: { readonly journal: Journal }) {
  const [opened, setOpened] = useState(false);
  return (
    <details onToggle={() => setOpened(true)}>
      <summary>{words('record').replay.open}</summary>
      {opened && <Stages journal={journal} />}
    </details>
  );
}

function Stages({ journal }: { readonly journal: Journal }) {
  const say = words('record').replay;
  const id = useId();
  const stages = useMemo(() => stagesOf(journal), [journal]);
  const stops = useMemo(() => stopsOf(stages), [stages]);
  const last = stages.length - 1;
  const { at, plays, show, turn } = useFilm(last);
  const [stage, stop] = [stages[at], stops[at]];
  if (!stage || !stop) return null;
  const told = run([happened(stage), say.sure(stop.interval)]);
  return (
    <section class="stack" aria-label={say.title}>
      <div class="field">
        <label for={id} class="small">
          {say.at(at + 1, last + 1)}
        </label>
        <input
          id={id}
          type="range"
          min="0"
          max={last}
          step="1"
          value={at}
          list={`${id}stops`}
          aria-valuetext={told}
          onInput={(event) => show(event.currentTarget.valueAsNumber)}
        />
        <datalist id={`${id}stops`}>
          {stops.map((_, index) => (
            <option key={index} value={index}>
              {index + 1}
            </option>
          ))}
        </datalist>
      </div>
      <div class="row">
        <button type="button" class="grow" disabled={at === 0} onClick={() => show(at - 1)}>
          {say.earlier}
        </button>
        {turn && (
          <button type="button" class="grow" onClick={turn}>
            {plays ? say.halt : say.play}
          </button>
        )}
        <button type="button" class="grow" disabled={at === last} onClick={() => show(at + 1)}>
          {say.later}
        </button>
      </div>
      <div>
        <NarrowingDrawing stops={stops} scale={stage.state.plan.scale} at={at} />
        <Strip sweep={stage.state} whole />
      </div>
      {/* What runs by itself is not read out stop by stop, but where it halts. */}
      <p aria-live={plays ? 'off' : 'polite'}>{told}</p>
      <p class="muted small">{asked(stage)}</p>
    </section>
  );
}

function happened({ is, state: { holds } }: ReplayedStage): string {
  const say = words('record').replay;
  const last = holds.at(-1);
  switch (is) {
    case 'opened':
      return say.opened;
    case 'held':
      return last ? say.held({ number: holds.length, value: last.value, ...last.verdict, counts: last.reading.counts }) : '';
    case 'taken back':
      return say.takenBack(holds.length);
    case 'begun afresh':
      return say.begunAfresh;
    case 'finished':
      return say.ended;
  }
}

function asked({ state: { phase } }: ReplayedStage): string {
  const say = words('record').replay;
  switch (phase.name) {
    case 'finished':
      return '';
    case 'checking':
      return say.checking;
    case 'turning':
      return say.turning;
    case 'offered':
      return say.offered;
    default:
      return say.next(phase.next.value, words('spoken').reason(phase.next));
  }
}
