// The ruler of the strip: ticks and labels, the band where it is known, and a cursor on the value in hand.
import type { StripLayout } from './geometry.ts';

interface Props {
  readonly strip: StripLayout;
  readonly width: number;
}

export function Ruler({ strip: { ruler, ticks, labels, cursor, band }, width }: Props) {
  return (
    <svg class="ruler" x="0" y={ruler.y} width={width} height={ruler.height} overflow="visible">
      <rect class="face" width={width} height={ruler.height} rx="4" />
      {band && <rect class="band" x={band.left} y="0" width={band.width} height={ruler.height} rx="4" />}
      {ticks.map(({ x, major }) => (
        <path key={x} class="tick" d={major ? `M${x} 0v5` : `M${x} 0v3`} />
      ))}
      {labels.map(({ x, text }) => (
        <text key={text} x={x} y="16">
          {text}
        </text>
      ))}
      {cursor && (
        <>
          <rect class="cursor" x={cursor.left} y="-1" width={cursor.width} height="22" rx="5" />
          <text class="current" x={cursor.x} y="15">
            {cursor.text}
          </text>
        </>
      )}
    </svg>
  );
}
