// What will stand on an empty screen, drawn: the logbook's strips, the stations of a plan, a body with its lens, a picture of the print,
// and a file that is written and read. Values in the drawings are invented; a bar stands for a line of writing.
import type { ComponentChildren } from 'preact';
import { writeSteps } from '../../sweep/scale.ts';

export type EmptyScene = 'logbook' | 'plan' | 'kit' | 'photographs' | 'files';

export const EmptyDrawing = ({ scene, drawn }: { readonly scene: EmptyScene; readonly drawn: string }) => (
  <svg class="empty-drawing" viewBox="0 0 240 96" role="img" aria-label={drawn}>
    {DRAWN[scene]}
  </svg>
);

const Writing = ({ x, y, width }: { readonly x: number; readonly y: number; readonly width: number }) => <path class="writing" d={`M${x} ${y}h${width}`} />;

/** A line of the logbook: the value, the name, and the band on its scale with the centre and what is entered. */
const Line = ({
  y,
  value,
  name,
  band,
  dot,
}: {
  readonly y: number;
  readonly value: number;
  readonly name: number;
  readonly band: number;
  readonly dot: number;
}) => (
  <>
    <text x="37" y={y + 7}>
      {writeSteps(value)}
    </text>
    <Writing x={62} y={y - 7} width={name} />
    <path class="rule" d={`M62 ${y + 7}h148M62 ${y + 4}v6M136 ${y + 4}v6M210 ${y + 4}v6`} />
    <rect class="band" x={band} y={y + 2} width="42" height="10" rx="3" />
    <circle class="dot" cx={dot} cy={y + 7} r="2.5" />
    <rect class="entered" x={dot - 5} y={y + 1} width="10" height="12" />
  </>
);

/** A place where the tripod stands, with what is measured there. */
const Station = ({ y, is, width }: { readonly y: number; readonly is: 'done' | 'next' | 'to do'; readonly width: number }) => (
  <>
    <circle class={is === 'done' ? 'dot' : is === 'next' ? 'next' : 'outline'} cx="46" cy={y} r="8" />
    {is === 'done' && <path class="tick-mark" d={`M42 ${y}l3 3 5-6`} />}
    <Writing x={68} y={y - 4} width={width} />
    <Writing x={68} y={y + 6} width={width / 2} />
  </>
);

const DRAWN: Record<EmptyScene, ComponentChildren> = {
  logbook: (
    <>
      <rect class="sheet-of" x="12" y="6" width="216" height="38" rx="8" />
      <Line y={25} value={4} name={70} band={136} dot={157} />
      <rect class="sheet-of" x="12" y="52" width="216" height="38" rx="8" />
      <Line y={71} value={-2} name={104} band={96} dot={119} />
    </>
  ),
  plan: (
    <>
      <path class="rule dashes" d="M46 16V80" />
      <Station y={16} is="done" width={120} />
      <Station y={48} is="next" width={92} />
      <Station y={80} is="to do" width={136} />
    </>
  ),
  kit: (
    <>
      <path class="outline" d="M24 32h22l8-14h32l8 14h14a6 6 0 0 1 6 6v38a6 6 0 0 1-6 6H24a6 6 0 0 1-6-6V38a6 6 0 0 1 6-6Z" />
      <circle class="outline" cx="70" cy="56" r="18" />
      <circle class="outline" cx="70" cy="56" r="13" />
      <path class="outline" d="M28 32v-6h14v6M60 25h20" />
      <path class="rule dashes" d="M122 57h16" />
      <path class="outline" d="M146 40h12v34h-12ZM158 36h34v42h-34ZM192 32h30v50h-30ZM166 36v42M174 36v42M182 36v42" />
      <path class="lens-mark" d="M152 44v6" />
    </>
  ),
  photographs: (
    <>
      <rect class="sheet-of" x="46" y="4" width="148" height="88" rx="4" />
      <path class="print" d="M58 16h10v10H58ZM58 70h10v10H58ZM116 16h10v10h-10ZM116 70h10v10h-10ZM79 36l24-5 5 24-24 5Z" />
      <path class="outline" d="M144 82 156 14h20l6 68Z" />
      <path class="rule" d="M148 70h30M151 56h26M154 42h22M156 28h19" />
      <path class="focus" d="M146 49h36" />
    </>
  ),
  files: (
    <>
      <path class="outline" d="M24 8h44l16 16v64H24ZM68 8v16h16" />
      <Writing x={34} y={40} width={34} />
      <Writing x={34} y={52} width={40} />
      <Writing x={34} y={64} width={26} />
      <path class="way" d="M98 40h38m-8-7 8 7-8 7M142 60h-38m8-7-8 7 8 7" />
      <rect class="sheet-of" x="156" y="14" width="62" height="72" rx="8" />
      <path class="rule" d="M166 34h42M166 52h42M166 70h42" />
      <path class="band" d="M180 29h18v10h-18ZM172 47h18v10h-18ZM186 65h16v10h-16Z" />
    </>
  ),
};
