// Whose result it is, asked of whoever has not said so: at most two fields at a time. What fits is kept at once and not asked
// for again.
import { useId, useState } from 'preact/hooks';
import { focalOf } from '../../kit/told.ts';
import type { Unnamed } from '../../sweep/plan.ts';
import { Field } from '../parts/field.tsx';
import { Refusal } from '../parts/refusal.tsx';
import type { Description } from '../session/session.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { typedFocalLength } from '../words/typedLength.ts';
import type { Telling } from './line.ts';
import { newTyped } from './typed.ts';

interface Props {
  /** What was told so far; what only stands in counts as not told. */
  readonly parts: Unnamed;
  readonly tell: Telling;
  /** Once more than one part has to be told together. */
  readonly atOnce?: boolean;
}

export function Whose({ parts, tell, atOnce = false }: Props) {
  const kit = useSession().kit.value;
  const title = useId();
  const { whose: say, chip } = words('told');
  const [typed] = useState(() => newTyped(['', '', '']));
  const [body = '', lens = '', length = ''] = typed.texts.value;
  const [fault, setFault] = useState<{ readonly of: keyof Description | null; readonly sentence: string } | null>(null);
  const asks = { body: parts.body === null, lens: parts.lens === null };
  const focalOfNamed = (lens: string) => {
    const named = kit.lenses.find(({ id }) => id === parts.lens?.id) ?? (lens.trim() === '' ? null : { name: lens, focal: null });
    return named && focalOf(named);
  };
  const focal = focalOfNamed(lens);
  const zoom = focal && focal.from < focal.to ? [focal.from, focal.to] : [];
  const asksLength = !asks.lens && parts.focalLength === null && zoom.length === 0;
  const keep = (end?: number): void => {
    const [body = '', lens = '', length = ''] = typed.texts.peek();
    const focal = focalOfNamed(lens);
    const zooms = focal !== null && focal.from < focal.to;
    if (asks.body && body.trim() === '') return setFault({ of: 'body', sentence: say.missing.body });
    if (asks.lens && lens.trim() === '') return setFault({ of: 'lens', sentence: say.missing.lens });
    const focalLength = end ?? (length.trim() === '' ? undefined : typedFocalLength(length));
    const lacksLength = parts.focalLength === null && focalLength === undefined && (focal === null || zooms);
    if (lacksLength && (atOnce || !asks.lens)) return setFault({ of: asks.lens ? 'lens' : 'focalLength', sentence: zooms ? say.ends : say.missing.length });
    const told = tell({
      ...(asks.body && { body: { name: body } }),
      ...(asks.lens && { lens: { name: lens } }),
      ...(focalLength !== undefined && { focalLength }),
    });
    setFault(told.ok ? null : told.fault);
  };
  const faultOf = (of: keyof Description) => (fault?.of === of ? fault.sentence : undefined);
  return (
    <form
      class="card whose"
      aria-labelledby={title}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <h2 id={title}>{say.title}</h2>
      {asks.body && <Field label={say.body} text={body} fault={faultOf('body')} onTyped={(text) => typed.type(0, text)} />}
      {asks.lens && <Field label={say.lens} text={lens} fault={faultOf('lens')} hint={say.hint} onTyped={(text) => typed.type(1, text)} />}
      {asksLength && <Field label={say.length} text={length} fault={faultOf('focalLength')} numeric onTyped={(text) => typed.type(2, text)} />}
      {zoom.length > 0 && parts.focalLength === null ? (
        <fieldset>
          <legend>{say.ends}</legend>
          <div class="row">
            {zoom.map((end) => (
              <button key={end} type="button" class="grow" onClick={() => keep(end)}>
                {chip.length(end)}
              </button>
            ))}
          </div>
        </fieldset>
      ) : (
        <button type="submit">{say.keep}</button>
      )}
      {fault && (fault.of === null || (fault.of === 'focalLength' && !asksLength)) && <Refusal sentence={fault.sentence} small />}
      <p class="muted small">{say.later}</p>
    </form>
  );
}
