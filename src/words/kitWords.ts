// What the kit's screens say: bodies, lenses, converters, what does not fit a field, and what a body cannot keep apart.
import type { SavingFault } from '../kit/change.ts';
import type { FieldFault } from '../kit/fault.ts';
import type { Offer } from '../kit/photograph/offers.ts';
import type { Photograph, PhotographFault } from '../kit/photograph/photograph.ts';
import type { Warning } from '../kit/warnings.ts';
import type { Body } from '../kit/body.ts';
import type { KitNote } from '../logbook/kitNote.ts';

type Choice<Value extends string> = Readonly<Record<Value, string>>;

export interface KitWords {
  readonly title: string;
  readonly lists: Readonly<Record<'body' | 'lens' | 'converter', { readonly title: string; readonly add: string; readonly unnamed: string }>>;
  readonly none: string;
  readonly retired: (count: number) => string;
  readonly save: string;
  readonly retire: string;
  readonly bringBack: string;
  readonly warning: (warning: Warning) => string;
  readonly fields: {
    readonly name: string;
    readonly yourName: string;
    readonly serial: string;
    readonly model: string;
    readonly sensor: { readonly legend: string; readonly width: string; readonly height: string };
    readonly scale: { readonly legend: string; readonly from: string; readonly to: string; readonly step: string };
    readonly remembers: { readonly label: string; readonly hint: string };
    readonly focal: { readonly legend: string; readonly hint: string; readonly from: string; readonly to: string };
    readonly widest: { readonly legend: string; readonly from: string; readonly to: string };
    readonly closest: string;
    readonly factor: string;
  };
  readonly arrows: { readonly label: string; readonly is: Choice<Body['arrows']> };
  readonly zoomStore: { readonly label: string; readonly is: Choice<Body['zoomStore']> };
  readonly copies: { readonly label: string; readonly is: Choice<Body['copies']> };
  readonly trigger: { readonly label: string; readonly is: Choice<Body['trigger']> };
  readonly manualFocus: { readonly label: string; readonly is: Choice<Body['manualFocus']> };
  /** The choices of a body, behind a press. */
  readonly choices: string;
  readonly card: string;
  readonly happened: {
    readonly open: string;
    readonly form: string;
    readonly what: string;
    readonly is: Choice<KitNote['what']>;
    readonly note: string;
    readonly save: string;
    readonly saved: string;
  };
  readonly photograph: {
    readonly title: string;
    readonly choose: string;
    readonly drop: string;
    readonly stays: string;
    readonly use: string;
    readonly used: string;
    /** `gone`: the file has gone since it was chosen. */
    readonly fault: Readonly<Record<PhotographFault | 'gone', string>>;
    readonly openSituation: string;
    /** What was read, and whether its body and lens are in the kit: one sentence each. */
    readonly read: (photograph: Photograph, body: string | null, lens: string | null) => readonly string[];
    readonly offer: (offer: Offer) => string;
    /** Stand-ins where the photograph names neither. */
    readonly body: string;
    readonly lens: string;
  };
  readonly fault: Readonly<Record<FieldFault, string>>;
  readonly unsaved: (fault: SavingFault) => string;
}
