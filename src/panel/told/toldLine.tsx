// Whose sweep it is, as one line of chips; pressing one opens its field in place. The same line stands on the start screen,
// where it tells what would begin, and over a sweep, where it can be filled in between holds.
import { useEffect, useRef, useState } from 'preact/hooks';
import { distanceOf } from '../../kit/told.ts';
import { late } from '../parts/late.tsx';
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';
import type { Part } from '../../words/toldWords.ts';
import type { Line } from './line.ts';
import type { ComponentChildren } from 'preact';

const Editor = late(async () => (await import('./editor.tsx')).Editor);

interface Props extends Line {
  /** Over a sweep, which keeps the keys: one row, until more is asked for. */
  readonly small?: boolean;
  /** Where the lens has a field of its own. */
  readonly onLens?: () => void;
  /** Before a field opens. */
  readonly onOpen?: () => void;
  /** Behind “More”, beside the arrows and the converter. */
  readonly children?: ComponentChildren;
}

const PARTS: readonly Part[] = ['lens', 'body', 'length', 'distance', 'scale', 'more'];

export function ToldLine({ small = false, onLens, onOpen, children, ...line }: Props) {
  const { kit } = useSession();
  const say = words('told');
  const [open, setOpen] = useState<Part | null>(null);
  const [all, setAll] = useState(!small);
  const opener = useRef<HTMLButtonElement>(null);
  const values = valuesOf(line, kit.value);
  useEffect(() => {
    if (!small) Editor.fetch();
  }, [small]);
  const press = (part: Part): void => {
    if (part === 'lens' && onLens) return onLens();
    if (open === null) onOpen?.();
    setAll(true);
    setOpen(open === part ? null : part);
  };
  const close = (): void => {
    if (!small) opener.current?.focus();
    setOpen(null);
    setAll(!small);
  };
  return (
    <div class={small ? 'told small' : 'told'} data-open={small && all}>
      <fieldset class="chips" aria-label={say.line}>
        {(all ? PARTS : PARTS.filter((part) => isWanted(part, values))).map((part) => {
          const value = values[part];
          const name = say.parts[part];
          return (
            <button
              key={part}
              {...(open === part && { ref: opener })}
              type="button"
              class="chip"
              data-told={value !== null}
              aria-expanded={part === 'lens' && onLens ? undefined : open === part}
              aria-label={part === 'more' ? name : value === null ? say.open(part) : say.is(part, value)}
              onClick={() => press(part)}
            >
              {value ?? name}
            </button>
          );
        })}
        {small && (
          <button type="button" class="chip" data-told="true" aria-expanded={all} onClick={() => (all ? close() : setAll(true))}>
            {all ? say.fewer : summaryOf(values)}
          </button>
        )}
      </fieldset>
      {open && (
        <Editor key={open} part={open} {...line} onDone={close}>
          {children}
        </Editor>
      )}
    </div>
  );
}

/** What each chip shows; null where nothing was told, or where it only stands in. */
function valuesOf({ parts, onBody: { scale } }: Line, kit: ReturnType<typeof useSession>['kit']['value']): Record<Part, string | null> {
  const { body, lens, converter, focalLength } = parts;
  const standIn = (all: readonly { readonly id: string; readonly standIn?: true }[], id: string): boolean => all.some((one) => one.id === id && one.standIn);
  const distance = distanceOf(parts, kit);
  const { chip, parts: names } = words('told');
  return {
    body: body && !standIn(kit.bodies, body.id) ? body.name : null,
    lens: lens && !standIn(kit.lenses, lens.id) ? chip.lens(lens.name, converter?.name ?? null) : null,
    length: focalLength === null ? null : chip.length(focalLength),
    distance: distance === null ? null : chip.distance(distance),
    scale: chip.scale(scale),
    more: names.more,
  };
}

/** What is asked for before anything else: the focal length comes with the lens. */
const isWanted = (part: Part, values: Record<Part, string | null>): boolean =>
  values[part] === null && (part === 'lens' || part === 'body' || (part === 'length' && values.lens !== null));

/** A line does not begin with what parts two facts. */
const summaryOf = ({ body, length, distance, scale }: Record<Part, string | null>): string => {
  const facts = [length, distance, body].filter((value) => value !== null);
  return words('told').chip.all(facts).replaceAll(' ·', '\u00a0·') || (scale ?? '');
};
