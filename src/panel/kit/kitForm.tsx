// The frame of every form about the kit: saving, refusal in words beside each field, retiring, and going back.
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { KitItem, KitList } from '../../kit/change.ts';
import type { Moment } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { Heading } from '../parts/heading.tsx';
import type { Fault } from '../session/session.ts';
import { useFirstFault } from './useFirstFault.ts';
import { useSurroundings } from '../useSession.ts';
import { Happened } from './happened.tsx';

/** What is wrong with the field of this name, if anything. */
type FaultOf = (field: string) => string | undefined;

interface Props<List extends KitList> {
  readonly list: List;
  readonly title: string;
  /** The item as it was when the form was opened; its id is empty when it is new. */
  readonly opened: KitItem[List];
  readonly typed: () => KitItem[List];
  /** Stands between the heading and the form. */
  readonly above?: ComponentChildren;
  readonly children: (faultOf: FaultOf) => ComponentChildren;
}

const NONE: readonly Fault[] = [];

export function KitForm<List extends KitList>({ list, title, opened, typed, above, children }: Props<List>) {
  const say = words('kit');
  const { session, way } = useSurroundings();
  const [faults, setFaults] = useState(NONE);
  const form = useFirstFault(faults);
  const isNew = opened.id === '';
  const seen: Moment | null = isNew ? null : opened.changed;
  // Not drawn: the second of two quick presses comes before the form has gone.
  const savedRef = useRef(false);
  const hereRef = useRef(true);
  useEffect(() => () => void (hereRef.current = false), []);
  /** The list is shown again once it is on disk; where it cannot be written, that is told over the list. Who has left already stays there. */
  const leave = async (): Promise<void> => {
    savedRef.current = true;
    await session.onDisk();
    if (hereRef.current) way.back();
  };
  const whole = faults.filter(({ field }) => field === null);
  return (
    <>
      <Heading onBack={() => way.back()}>{title}</Heading>
      {above}
      <form
        ref={form}
        class="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          if (savedRef.current) return;
          const saved = session.putKit(list, typed(), seen);
          if (saved.ok) void leave();
          else setFaults(saved.fault);
        }}
      >
        {children((field) => faults.find((fault) => fault.field === field || fault.field?.startsWith(`${field}.`))?.sentence)}
        {whole.map(({ sentence }) => (
          <p key={sentence} class="fault" role="alert">
            {sentence}
          </p>
        ))}
        <button type="submit" class="chief">
          {say.save}
        </button>
      </form>
      {!isNew && <Happened of={opened.id} />}
      {!isNew && (
        <button
          type="button"
          onClick={() => {
            session.retireKit(list, opened.id, opened.retired === null);
            void leave();
          }}
        >
          {opened.retired === null ? say.retire : say.bringBack}
        </button>
      )}
    </>
  );
}
