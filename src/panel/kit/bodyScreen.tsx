// A body, with everything that decides what a correction stored in it means.
import { useState } from 'preact/hooks';
import { newBody, type Body } from '../../kit/kit.ts';
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { FieldRow } from '../parts/fieldRow.tsx';
import { useSession } from '../useSession.ts';
import { KitForm } from './kitForm.tsx';
import { asNumber, asText, asWords } from './typedFields.ts';

export function BodyScreen({ id }: { readonly id: string }) {
  const session = useSession();
  const [opened] = useState(() => session.kit.peek().bodies.find((one) => one.id === id) ?? newBody('', '', session.clock()));
  const { min, max, step } = opened.scale;
  const [typed, setTyped] = useState({
    name: opened.name,
    model: asText(opened.model),
    serial: asText(opened.serial),
    width: asText(opened.sensor?.width),
    height: asText(opened.sensor?.height),
    min: asText(min),
    max: asText(max),
    step: asText(step),
    remembers: asText(opened.remembers),
  });
  const [picked, setPicked] = useState({
    arrows: opened.arrows,
    zoomStore: opened.zoomStore,
    copies: opened.copies,
    trigger: opened.trigger,
    manualFocus: opened.manualFocus,
  });
  const change = (field: keyof typeof typed) => (text: string) => setTyped({ ...typed, [field]: text });
  const field = (label: string, of: keyof typeof typed) => ({ label, text: typed[of], onTyped: change(of) });
  const [width, height] = [asNumber(typed.width), asNumber(typed.height)];
  // What does not fit is found by the schema of a body, which answers with a sentence for its field.
  const body = (): Body =>
    ({
      ...opened,
      ...picked,
      name: typed.name,
      model: asWords(typed.model),
      serial: asWords(typed.serial),
      sensor: width === null && height === null ? null : { width, height },
      scale: { min: asNumber(typed.min), max: asNumber(typed.max), step: asNumber(typed.step) },
      remembers: asNumber(typed.remembers),
    }) as Body;
  return (
    <>
      <KitForm list="bodies" title={opened.name || 'New body'} opened={opened} typed={body}>
        {(faultOf) => (
          <>
            <Field label="Name" text={typed.name} fault={faultOf('name')} hint="Your own name for it." onTyped={change('name')} />
            <Field label="Serial number" text={typed.serial} fault={faultOf('serial')} onTyped={change('serial')} />
            <Field label="Model, as in its photographs" text={typed.model} fault={faultOf('model')} onTyped={change('model')} />
            <FieldRow legend="Sensor, mm" fault={faultOf('sensor')} fields={[field('wide', 'width'), field('high', 'height')]} />
            <FieldRow
              legend="Its scale of corrections"
              fault={faultOf('scale')}
              fields={[field('From', 'min'), field('to', 'max'), field('step', 'step')]}
            />
            <Field
              label="How many lenses it remembers"
              text={typed.remembers}
              fault={faultOf('remembers')}
              hint="Empty when you do not know; the manual says it."
              numeric
              onTyped={change('remembers')}
            />
            {CHOICES.map(({ field, label, options }) => (
              <Choose
                key={field}
                label={label}
                options={options}
                chosen={picked[field]}
                onChoose={(value) => setPicked({ ...picked, [field]: value })}
              />
            ))}
          </>
        )}
      </KitForm>
      {opened.id !== '' && (
        <button type="button" onClick={() => session.openPage(`card.html#${encodeURIComponent(opened.id)}`)}>
          Card for the bag, to print
        </button>
      )}
    </>
  );
}

const CHOICES = [
  {
    field: 'arrows',
    label: 'Arrows beside the focus light',
    options: [
      { value: 'absent', label: 'It shows none' },
      { value: 'right-is-up', label: 'Right arrow: go up, towards +' },
      { value: 'right-is-down', label: 'Right arrow: go down, towards \u2212' },
    ],
  },
  {
    field: 'zoomStore',
    label: 'For a zoom it stores',
    options: [
      { value: 'one', label: 'one value' },
      { value: 'two', label: 'a value for each end' },
    ],
  },
  {
    field: 'copies',
    label: 'Two copies of one lens',
    options: [
      { value: 'not known', label: 'not known' },
      { value: 'told apart', label: 'are told apart' },
      { value: 'share a value', label: 'share one value' },
    ],
  },
  {
    field: 'trigger',
    label: 'Focus is started by',
    options: [
      { value: 'half-press', label: 'the half-press' },
      { value: 'rear button', label: 'a rear button' },
    ],
  },
  {
    field: 'manualFocus',
    label: 'Manual focus is switched',
    options: [
      { value: 'not known', label: 'not known' },
      { value: 'on the lens', label: 'on the lens' },
      { value: 'on the body', label: 'on the body' },
      { value: 'on both', label: 'on both' },
    ],
  },
] as const;
