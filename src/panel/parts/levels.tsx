// The corrections up the side of a chart, each with its line across.
export interface Level {
  readonly y: number;
  readonly text: string;
}

export function Levels({ levels, width }: { readonly levels: readonly Level[]; readonly width: number }) {
  return (
    <>
      {levels.map(({ y, text }) => (
        <g key={text}>
          <path class="level" d={`M32 ${y}H${width}`} />
          <text x="28" y={y + 4}>
            {text}
          </text>
        </g>
      ))}
    </>
  );
}
