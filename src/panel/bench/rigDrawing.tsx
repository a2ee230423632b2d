// The rig drawn from the side and from above as it is entered, with its answers. Units of the drawing are pixels, so its letters keep
// their size however wide the panel is.
import { sketchOf } from '../../optics/sketch/sketch.ts';
import type { Label, Stroke } from '../../optics/sketch/scene.ts';
import { LINE } from '../../optics/sketch/scene.ts';
import { useWidth } from '../strip/useWidth.ts';
import { useSurroundings } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';
import { enteredAt } from './fields.ts';
import type { PrintHere } from './printHere.ts';
import type { Reckoned } from './reckon.ts';
import { answersOf, rigSizesOf } from './rigSketched.ts';

export function RigDrawing({ reckoned, print }: { readonly reckoned: Reckoned; readonly print: PrintHere }) {
  const [place, wide] = useWidth<HTMLDivElement>();
  const entered = enteredAt(useSurroundings().bench);
  const say = words('rig');
  const answers = answersOf(say, entered, reckoned, print);
  const { width, height, strokes, labels } = sketchOf(rigSizesOf(entered, reckoned, print), { views: say.views, answers: Object.fromEntries(answers) }, wide);
  return (
    <div ref={place} class="rig">
      <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={say.said(answers)}>
        {strokes.map((stroke, index) => (
          <Drawn key={index} stroke={stroke} />
        ))}
        {labels.map((label) => (
          <Written key={label.of} label={label} />
        ))}
      </svg>
    </div>
  );
}

function Drawn({ stroke }: { readonly stroke: Stroke }) {
  if (stroke.is === 'disc') return <circle class={stroke.part} cx={stroke.middle.x} cy={stroke.middle.y} r={stroke.radius} />;
  const points = stroke.points.map(({ x, y }) => `${round(x)},${round(y)}`).join(' ');
  return stroke.is === 'area' ? <polygon class={stroke.part} points={points} /> : <polyline class={stroke.part} points={points} />;
}
const round = (units: number): number => Math.round(units * 100) / 100;

function Written({ label: { of, lines, anchor, at } }: { readonly label: Label }) {
  return (
    <text class={of.includes(' ') ? 'view' : 'answer'} text-anchor={anchor}>
      {lines.map((text, index) => (
        <tspan key={index} x={round(at.x)} y={round(at.y + index * LINE)}>
          {text}{' '}
        </tspan>
      ))}
    </text>
  );
}
