// A body, with everything that decides what a correction stored in it means.
import { useState } from 'preact/hooks';
import { newBody, type Body } from '../../kit/kit.ts';
import { words } from '../../words/catalogue.ts';
import { late } from '../parts/late.tsx';
import { useShelf } from '../logbook/useShelf.ts';
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { FieldRow } from '../parts/fieldRow.tsx';
import { useSession } from '../useSession.ts';
import { KitForm } from './kitForm.tsx';
import { asNumber, asText, asWords } from './typedFields.ts';

const Glance = late(async () => (await import('../glance/glance.tsx')).Glance, 'glance', 'logbook');

/** So many, that the form below is still in sight. */
const LENSES_SHOWN = 4;

export function BodyScreen({ id }: { readonly id: string }) {
  const say = words('kit');
  const { fields } = say;
  const session = useSession();
  const shelf = useShelf();
  const [opened] = useState(() => session.kit.peek().bodies.find((one) => one.id === id) ?? newBody('', '', session.clock()));
  const isNew = opened.id === '';
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
      <KitForm
        list="bodies"
        title={opened.name || say.lists.body.unnamed}
        opened={opened}
        typed={body}
        above={isNew ? null : <Glance body={opened} shelf={shelf} first={LENSES_SHOWN} />}
      >
        {(faultOf) => (
          <>
            <Field label={fields.name} text={typed.name} fault={faultOf('name')} hint={fields.yourName} onTyped={change('name')} />
            <Field label={fields.serial} text={typed.serial} fault={faultOf('serial')} onTyped={change('serial')} />
            <Field label={fields.model} text={typed.model} fault={faultOf('model')} onTyped={change('model')} />
            <FieldRow
              legend={fields.sensor.legend}
              fault={faultOf('sensor')}
              fields={[field(fields.sensor.width, 'width'), field(fields.sensor.height, 'height')]}
            />
            <FieldRow
              legend={fields.scale.legend}
              fault={faultOf('scale')}
              fields={[field(fields.scale.from, 'min'), field(fields.scale.to, 'max'), field(fields.scale.step, 'step')]}
            />
            <Field
              label={fields.remembers.label}
              text={typed.remembers}
              fault={faultOf('remembers')}
              hint={fields.remembers.hint}
              numeric
              onTyped={change('remembers')}
            />
            <details open={isNew}>
              <summary>{say.choices}</summary>
              <div class="stack">
                {CHOICES.map(({ field: of, values }) => (
                  <Choose
                    key={of}
                    label={say[of].label}
                    options={optionsOf(say[of].is, values)}
                    chosen={picked[of]}
                    onChoose={(value) => setPicked({ ...picked, [of]: value })}
                  />
                ))}
              </div>
            </details>
          </>
        )}
      </KitForm>
      {!isNew && (
        <button type="button" onClick={() => session.openPage(`card.html#${encodeURIComponent(opened.id)}`)}>
          {say.card}
        </button>
      )}
    </>
  );
}

/** The fields that are chosen, with the values of each in the order they are offered. */
const CHOICES = [
  { field: 'arrows', values: ['absent', 'right-is-up', 'right-is-down'] },
  { field: 'zoomStore', values: ['one', 'two'] },
  { field: 'copies', values: ['not known', 'told apart', 'share a value'] },
  { field: 'trigger', values: ['half-press', 'rear button'] },
  { field: 'manualFocus', values: ['not known', 'on the lens', 'on the body', 'on both'] },
] as const;

function optionsOf(labels: Readonly<Record<string, string>>, values: readonly string[]) {
  return values.map((value) => ({ value, label: labels[value] ?? value }));
}
