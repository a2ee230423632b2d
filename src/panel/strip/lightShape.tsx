// The shape of a light: told apart by form alone, also in print and by those who see no colours.
import type { Light } from '../../sweep/verdict.ts';

interface Props {
  readonly light: Light;
  readonly box?: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

const ASIDE = { x: 0, y: 0, width: 12, height: 12 };

export function LightShape({ light, box = ASIDE }: Props) {
  return (
    <svg class={`light ${light}`} viewBox="-5 -5 10 10" aria-hidden="true" {...box}>
      {shapeOf(light)}
    </svg>
  );
}

function shapeOf(light: Light) {
  switch (light) {
    case 'steady':
      return <circle r="5" fill="currentColor" />;
    case 'late':
      return <path d="M.6 0-3.1-3.9A5 5 0 1 1-3.1 3.9Z" fill="currentColor" />;
    case 'flicker':
      return <circle r="4" class="ring" pathLength={12} stroke-dasharray="2 1" transform="rotate(-60)" />;
    case 'dark':
      return <circle r="4.1" class="ring" />;
    case 'untold':
      return <path d="M0-4.4 4.4 0 0 4.4-4.4 0Z" class="ring" />;
  }
}
