// The whole scale as a thin line, with the part that the strip shows and where every hold was.
import type { LocatorLine } from './geometry.ts';

export function Locator({ locator: { y, left, right, ends, shown, holds } }: { readonly locator: LocatorLine }) {
  return (
    <g class="locator">
      <path d={`M${left} ${y}H${right}`} />
      <rect x={shown.left} y={y} width={shown.width} height="5" rx="2.5" transform="translate(0 -2.5)" />
      {holds.map((x) => (
        <path key={x} d={`M${x} ${y}m0-4v8`} />
      ))}
      {ends.map(({ x, text }) => (
        <text key={text} x={x} y={y} dy="4">
          {text}
        </text>
      ))}
    </g>
  );
}
