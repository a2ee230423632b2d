// All lenses of a body at one look: a strip a situation, one below the other on one scale. Only the first are drawn until more are wanted.
import { useMemo, useState } from 'preact/hooks';
import type { Body } from '../../kit/kit.ts';
import { lensesOn, type LensOn } from '../../logbook/lensesOn.ts';
import type { Shelved } from '../../logbook/shelf.ts';
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { useWidth } from '../strip/useWidth.ts';
import { useSurroundings } from '../useSession.ts';
import { glanceLabels } from './glancePlot.ts';
import { GlanceStrip } from './glanceStrip.tsx';

interface Props {
  readonly body: Body;
  /** What is to be shown of it; situations of other bodies are left out. */
  readonly shelf: readonly Shelved[];
  /** Situations drawn at first. */
  readonly first: number;
}

interface GlanceLine {
  readonly focalLength: number;
  readonly distance: number;
  readonly shelved: Shelved;
}

const lineOf = (shelved: Shelved): GlanceLine => ({ focalLength: shelved.subject.focalLength, distance: shelved.subject.distance, shelved });

export function Glance({ body, shelf, first }: Props) {
  const say = words('glance');
  const { session } = useSurroundings();
  const kit = session.kit.value;
  const lenses = useMemo(() => lensesOn(body, kit, shelf, lineOf), [body, kit, shelf]);
  const [drawn, setDrawn] = useState(first);
  const [place, width] = useWidth<HTMLDivElement>();
  const count = lenses.reduce((all, { lines }) => all + lines.length, 0);
  if (count === 0) return null;
  return (
    <section class="glance" aria-labelledby="glance">
      <h2 id="glance">{say.title}</h2>
      <div ref={place}>
        <Ruling scale={body.scale} width={width} />
      </div>
      <ul class="plain">
        {firstOf(lenses, drawn).map((lens) => (
          <LensAtAGlance key={lens.lines[0]?.shelved.subject.situation} lens={lens} scale={body.scale} width={width} />
        ))}
      </ul>
      {count > drawn && (
        <button type="button" onClick={() => setDrawn(drawn + 200)}>
          {say.more(count)}
        </button>
      )}
      <p class="muted small">{say.legend}</p>
    </section>
  );
}

/** The lenses of the first so many situations; the last of them may stand there with only some of its own. */
function firstOf(lenses: readonly LensOn<GlanceLine>[], count: number): LensOn<GlanceLine>[] {
  let left = count;
  return lenses.flatMap((lens) => {
    const lines = lens.lines.slice(0, left);
    left -= lines.length;
    return lines.length > 0 ? [{ ...lens, lines }] : [];
  });
}

const Ruling = ({ scale, width }: { readonly scale: Scale; readonly width: number }) => (
  <svg width={width} height="14" viewBox={`0 0 ${width} 14`} aria-hidden="true">
    {glanceLabels(scale, width).map(({ x, text }) => (
      <text key={text} x={x} y="11">
        {text}
      </text>
    ))}
  </svg>
);

interface LensProps {
  readonly lens: LensOn<GlanceLine>;
  readonly scale: Scale;
  readonly width: number;
}

function LensAtAGlance({ lens: { name, serial, lines }, scale, width }: LensProps) {
  const say = words('logbook');
  const { way } = useSurroundings();
  return (
    <li>
      <b>{name}</b>
      {serial && <small class="muted"> {serial}</small>}
      <ul class="plain" aria-label={name}>
        {lines.map(({ shelved }) => {
          const {
            subject,
            value,
            due: [reason],
          } = shelved;
          return (
            <li key={subject.situation}>
              <button type="button" onClick={() => way.go({ at: 'situation', id: subject.situation })}>
                <span class="row">
                  <b>{value === null ? say.noValue : writeSteps(value)}</b> <span class="where">{words('glance').place(subject)}</span>{' '}
                  <small class="muted">{say.standing(shelved)}</small>
                </span>
                <GlanceStrip shelved={shelved} scale={scale} width={width} />
                {reason && <small class="due">{say.dueAgain(reason)}</small>}
              </button>
            </li>
          );
        })}
      </ul>
    </li>
  );
}
