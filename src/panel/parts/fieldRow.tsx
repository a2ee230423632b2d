// A few short numbers of one thing side by side, with one sentence below them when they do not fit.
import { useId } from 'preact/hooks';
import { Field } from './field.tsx';

interface Props {
  readonly legend: string;
  readonly fault: string | undefined;
  readonly hint?: string;
  readonly fields: readonly { readonly label: string; readonly text: string; readonly onTyped: (text: string) => void }[];
}

export function FieldRow({ legend, fault, hint, fields }: Props) {
  const faultAt = useId();
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div class="thirds">
        {fields.map((field) => (
          <Field key={field.label} {...field} fault={fault} faultAt={faultAt} />
        ))}
      </div>
      {hint && <p class="muted small">{hint}</p>}
      <p id={faultAt} class={fault ? 'fault small' : ''}>
        {fault}
      </p>
    </fieldset>
  );
}
