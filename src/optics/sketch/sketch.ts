// The rig drawn for a panel of this width: from the side, from above, and its target larger, with the answers beside what they
// are about. What is drawn and what is written have rows of their own, so that no label lies on another or on a stroke.
import { aboveReach, fromAbove } from './fromAbove.ts';
import { fromTheSide, sideReach } from './fromTheSide.ts';
import { depthAround, printInFront, targetHeight, targetUnits } from './atTarget.ts';
import type { AtTarget, RigSizes } from './rigSizes.ts';
import { rigScale } from './rigScale.ts';
import { label, type Answer, type Label, type Sketch, type Stroke, type View } from './scene.ts';

/** An answer that is not known yet is left out. */
export interface SketchWords {
  readonly views: Readonly<Record<View, string>>;
  readonly answers: Readonly<Partial<Record<Answer, string>>>;
}

/** Between two views, and between the pictures of the target. */
const APART = 8;
/** Narrower than this they stand below each other. */
const BESIDE = 250;
/** Share of the first of the two, whose words are the fewer; and between a picture and the words below it. */
const FIRST = 0.4;
const UNDER = 4;

/** `width`: of the sketch, in units; 140 at least. Its height follows. */
export function sketchOf(rig: RigSizes, words: SketchWords, width: number): Sketch {
  const scale = rigScale(rig, width);
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  let y = 0;
  const write = (of: Answer | View, text: string | undefined, anchor: Label['anchor'] = 'start'): void => {
    if (text === undefined) return;
    const written = label(of, text, anchor, { x: 0, y, width });
    labels.push(written);
    y += written.box.height;
  };

  write('from the side', words.views['from the side']);
  const side = sideReach(rig, scale);
  strokes.push(...fromTheSide(rig, scale, y + side.up));
  y += side.up + side.down;
  write('stands', words.answers.stands, 'middle');

  y += APART;
  const light = words.answers.light;
  const over = label('light', light ?? '', 'end', { x: 0, y, width });
  const view = label('from above', words.views['from above'], 'start', { x: 0, y, width });
  if (over.lines.length === 1 && view.lines.length === 1 && view.box.width + APART <= over.box.x) {
    labels.push(view, over);
    y += over.box.height;
  } else {
    write('from above', words.views['from above']);
    write('light', light, 'end');
  }
  const above = aboveReach(rig, scale);
  strokes.push(...fromAbove(rig, scale, y + above));
  y += 2 * above;
  write('square', words.answers.square, 'end');

  if (rig.target !== null) {
    y += APART;
    write('at the target', words.views['at the target']);
    const close = closeUp(rig.target, words, width, y);
    strokes.push(...close.strokes);
    labels.push(...close.labels);
    y = close.end;
  }
  return { width, height: Math.ceil(y + 2), strokes, labels };
}

/** The two pictures of the target from this height on, and where they end. */
function closeUp(target: AtTarget, { answers }: SketchWords, width: number, top: number): Pick<Sketch, 'strokes' | 'labels'> & { readonly end: number } {
  const beside = width >= BESIDE;
  const narrow = beside ? (width - APART) * FIRST : width;
  const units = targetUnits(target, narrow);
  const height = targetHeight(target, units);
  const first = { x: 0, y: top + 2, width: narrow, height };
  const prints = label('prints', answers.prints ?? '', 'middle', { ...first, y: first.y + height + UNDER });
  const below = prints.box.y + prints.box.height;
  const second = { ...first, ...(beside ? { x: narrow + APART, width: width - narrow - APART } : { y: below + APART }) };
  const depth = label('depth', answers.depth ?? '', 'middle', { ...second, y: second.y + height + UNDER });
  return {
    strokes: [...printInFront(target, units, first), ...depthAround(target, units, second)],
    labels: [prints, depth].filter(({ lines }) => lines.length > 0),
    end: Math.max(below, depth.box.y + depth.box.height),
  };
}
