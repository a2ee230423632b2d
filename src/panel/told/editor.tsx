// The field behind a chip. What was typed is taken with Enter, with Done, and when something else is pressed; where it does
// not fit, it stays, with one sentence.
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { focalOf } from '../../kit/told.ts';
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { FieldRow } from '../parts/fieldRow.tsx';
import { Refusal } from '../parts/refusal.tsx';
import { writeSteps } from '../../sweep/scale.ts';
import type { ArrowDisplay } from '../../sweep/verdict.ts';
import type { Description } from '../session/session.ts';
import { useSession } from '../useSession.ts';
import { distanceTyped } from '../words/distanceTyped.ts';
import { typedDistance, typedFocalLength } from '../words/typedLength.ts';
import { asText } from '../kit/typedFields.ts';
import { typedNumber } from '../words/typedNumber.ts';
import { words } from '../../words/catalogue.ts';
import type { Part, PieceWords } from '../../words/toldWords.ts';
import type { Line } from './line.ts';
import { newTyped } from './typed.ts';

interface Props extends Line {
  readonly part: Part;
  readonly onDone: () => void;
  readonly children?: ComponentChildren;
}

const NEW = 'new';
const BARE = 'bare';

export function Editor({ part, onDone, children, ...line }: Props) {
  const form = useRef<HTMLFormElement>(null);
  /** What was typed is given up. */
  const droppedRef = useRef(false);
  const [typed] = useState(() => newTyped(typedOf(part, line)));
  // With the field, so that no letter goes to the sweep.
  useLayoutEffect(() => {
    const first = form.current?.querySelector<HTMLElement>('input:not([type=radio]), select, button');
    first?.focus();
    // What is typed takes the place of what stands there.
    if (first instanceof HTMLInputElement) first.select();
  }, []);
  const tell = (told: Description): boolean => {
    const described = line.tell(told);
    typed.refuse(described.ok ? '' : described.fault.sentence);
    return described.ok;
  };
  /** True when nothing is left that does not fit. */
  const take = (): boolean => {
    if (!typed.isOpen()) return typed.fault.peek() === '';
    const told = toldBy(part, typed.texts.peek(), line);
    if (told === null) return true;
    const fits = tell(told);
    if (fits) typed.took();
    return fits;
  };
  const type = (at: number) => (text: string) => typed.type(at, text);
  const choose = (told: Description): void => {
    if (tell(told)) onDone();
  };
  useEffect(() => {
    const place = form.current;
    const left = ({ relatedTarget }: FocusEvent): void => {
      if (!droppedRef.current && !(relatedTarget instanceof Node && place?.contains(relatedTarget))) take();
    };
    const keyed = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      droppedRef.current = true;
      if (typed.fault.peek() !== '') line.tell({});
      onDone();
    };
    place?.addEventListener('focusout', left);
    place?.addEventListener('keydown', keyed);
    return () => {
      place?.removeEventListener('focusout', left);
      place?.removeEventListener('keydown', keyed);
    };
  });
  return (
    <form
      ref={form}
      class="card editor"
      aria-label={words('told').parts[part]}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (take()) onDone();
      }}
    >
      <Fields part={part} line={line} typed={typed.texts.value} type={type} fault={typed.fault.value} tell={tell} choose={choose} />
      {part === 'more' && <Refusal sentence={typed.fault.value} small />}
      {part === 'more' && children}
      <button type="submit">{words('told').done}</button>
    </form>
  );
}

interface FieldsProps {
  readonly part: Part;
  readonly line: Line;
  readonly typed: readonly string[];
  readonly type: (at: number) => (text: string) => void;
  readonly fault: string;
  readonly tell: (told: Description) => boolean;
  readonly choose: (told: Description) => void;
}

function Fields({ part, line: { parts, onBody }, typed, type, fault, tell, choose }: FieldsProps) {
  const kit = useSession().kit.value;
  const say = words('told');
  const [first = '', second = '', third = ''] = typed;
  switch (part) {
    case 'body':
      return (
        <Named say={say.body} all={kit.bodies} now={parts.body?.id} text={first} fault={fault} onTyped={type(0)} onChoose={(id) => choose({ body: { id } })} />
      );
    case 'lens':
      return (
        <Named say={say.lens} all={kit.lenses} now={parts.lens?.id} text={first} fault={fault} onTyped={type(0)} onChoose={(id) => choose({ lens: { id } })} />
      );
    case 'length': {
      const lens = kit.lenses.find(({ id }) => id === parts.lens?.id) ?? (parts.lens && { name: parts.lens.name, focal: null });
      const focal = lens && focalOf(lens);
      return (
        <>
          {focal && focal.from < focal.to && (
            <fieldset>
              <legend>{say.length.ends}</legend>
              <div class="row">
                {[focal.from, focal.to].map((end) => (
                  <button key={end} type="button" onClick={() => choose({ focalLength: end })}>
                    {say.chip.length(end)}
                  </button>
                ))}
              </div>
            </fieldset>
          )}
          <Field
            label={say.length.field}
            text={first}
            fault={fault}
            hint={parts.converter ? say.length.converted : say.length.hint}
            numeric
            onTyped={type(0)}
          />
        </>
      );
    }
    case 'distance':
      return <Field label={say.distance.field} text={first} fault={fault} hint={say.distance.hint} numeric onTyped={type(0)} />;
    case 'scale':
      return (
        <FieldRow
          legend={say.scale.legend}
          fault={fault || undefined}
          fields={[
            { label: say.scale.from, text: first, onTyped: type(0) },
            { label: say.scale.to, text: second, onTyped: type(1) },
            { label: say.scale.step, text: third, onTyped: type(2) },
          ]}
        />
      );
    case 'more': {
      const converters = kit.converters.filter(({ retired }) => retired === null);
      return (
        <>
          <Choose
            label={say.arrows.label}
            options={ARROWS.map((value) => ({ value, label: say.arrows.is[value] }))}
            chosen={onBody.arrows}
            onChoose={(arrows) => tell({ arrows: arrows as ArrowDisplay })}
          />
          {converters.length > 0 && (
            <Choose
              label={say.converter.label}
              options={[{ value: BARE, label: say.converter.none }, ...converters.map(({ id, name }) => ({ value: id, label: name }))]}
              chosen={parts.converter?.id ?? BARE}
              onChoose={(id) => tell({ converter: id === BARE ? null : id })}
            />
          )}
        </>
      );
    }
  }
}

interface NamedProps {
  readonly say: PieceWords;
  readonly all: readonly { readonly id: string; readonly name: string; readonly retired: unknown; readonly standIn?: true }[];
  readonly now: string | undefined;
  readonly text: string;
  readonly fault: string;
  readonly onTyped: (text: string) => void;
  readonly onChoose: (id: string) => void;
}

/** One of the kit, or one by its name. */
function Named({ say, all, now, text, fault, onTyped, onChoose }: NamedProps) {
  const known = all.filter(({ retired, standIn }) => retired === null && !standIn);
  const [isNew, setNew] = useState(known.every(({ id }) => id !== now));
  return (
    <>
      {known.length > 0 && (
        <Choose
          label={say.choose}
          options={[...known.map(({ id, name }) => ({ value: id, label: name })), { value: NEW, label: say.another }]}
          chosen={isNew ? NEW : (now ?? NEW)}
          onChoose={(id) => (id === NEW ? setNew(true) : onChoose(id))}
        />
      )}
      {isNew && <Field label={say.name} text={text} fault={fault} hint={say.hint} onTyped={onTyped} />}
    </>
  );
}

const ARROWS: readonly ArrowDisplay[] = ['absent', 'right-is-up', 'right-is-down'];

/** What stands in the fields when they open. */
function typedOf(part: Part, { parts, onBody: { scale } }: Line): readonly string[] {
  switch (part) {
    case 'body':
    case 'lens':
    case 'more':
      return [''];
    case 'length':
      return [asText(parts.focalLength)];
    case 'distance':
      return [parts.distance === null ? '' : distanceTyped(parts.distance)];
    case 'scale':
      return [writeSteps(scale.min), writeSteps(scale.max), asText(scale.step)];
  }
}

/** What the fields tell; null where they tell nothing. A distance that was left as it stood is still as long as it was. */
function toldBy(part: Part, [first = '', second = '', third = '']: readonly string[], line: Line): Description | null {
  switch (part) {
    case 'body':
      return first.trim() === '' ? null : { body: { name: first } };
    case 'lens':
      return first.trim() === '' ? null : { lens: { name: first } };
    case 'length':
      return first.trim() === '' ? null : { focalLength: typedFocalLength(first) };
    case 'distance':
      if (first === typedOf(part, line)[0]) return { distance: line.parts.distance };
      return { distance: first.trim() === '' ? null : typedDistance(first) };
    case 'scale':
      return { scale: { min: typedNumber(first), max: typedNumber(second), step: typedNumber(third) } };
    case 'more':
      return null;
  }
}
