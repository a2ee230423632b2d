// The frame of a picture: a plain ground in the panel's own colours, one sentence, the panel, and a part of it larger. A small tile has the name alone.
import { readFileSync } from 'node:fs';
import type { State } from './states.ts';

export interface Format {
  readonly width: number;
  readonly height: number;
  /** Pixels of the picture that one of the panel takes. */
  readonly scale: number;
  /** Too small for a sentence and the panel. */
  readonly isSmall?: boolean;
}

/** What the stores ask for (from memory). */
export const SCREENSHOT: Format = { width: 1280, height: 800, scale: 1.25 };
export const TILES: readonly Format[] = [
  { width: 440, height: 280, scale: 1, isSmall: true },
  { width: 1400, height: 560, scale: 1.15 },
];

const EDGE = 64;
const ABOVE = 52;
/** The plate around the larger part. */
const PADDING = 22;
const PANEL = 360;

export const panelHeight = ({ height, scale }: Format): number => Math.ceil((height - ABOVE) / scale);
export const largerWidth = ({ width, scale, isSmall = false }: Format): number => (isSmall ? width - 2 * 24 : width - PANEL * scale - 3 * EDGE) - 2 * PADDING;

/** Of the panel: as it stands, and a part of it larger. */
export interface Taken {
  readonly panel: Uint8Array;
  readonly larger: Uint8Array;
}

interface Content extends Taken {
  readonly language: string;
  readonly state: State;
  readonly sentence: string;
}

const themes = readFileSync('src/panel/look/themes.css', 'utf8');
const icon = readFileSync('icons/icon.svg', 'utf8');

const image = (png: Uint8Array, kind: string): string => `<img class="${kind}" alt="" src="data:image/png;base64,${Buffer.from(png).toString('base64')}">`;
const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

export function frameOf(format: Format, { language, state, sentence, panel, larger }: Content): string {
  const { isSmall = false } = format;
  const style = themes + styleOf(format, state.larger.on ?? 'ground');
  return `<!doctype html><html lang="${language}" data-theme="${state.theme}"><meta charset="utf-8"><style>${style}</style>
<div class="told"><p class="name">${icon}Sweepbook</p>${isSmall ? '' : `<h1>${escaped(sentence)}</h1>`}${image(larger, 'larger')}</div>
${isSmall ? '' : image(panel, 'panel')}</html>`;
}

const styleOf = ({ width, height, scale, isSmall = false }: Format, on: string): string => `
* { box-sizing: border-box; margin: 0 }
body { width: ${width}px; height: ${height}px; overflow: hidden; background: var(--line); color: var(--text); font-family: system-ui, sans-serif }
.told { position: absolute; inset: 0 auto 0 0; width: ${isSmall ? width : width - PANEL * scale - EDGE}px; padding: ${isSmall ? '24px' : `${ABOVE}px ${EDGE}px`};
  display: flex; flex-direction: column; justify-content: space-between; gap: 20px }
.name { display: flex; align-items: center; gap: ${isSmall ? 18 : 14}px; font-size: ${isSmall ? 44 : 26}px; font-weight: 600 }
.name svg { width: ${isSmall ? 76 : 44}px; height: ${isSmall ? 76 : 44}px }
h1 { font-size: ${height < 700 ? 38 : 44}px; line-height: 1.25; font-weight: 600; text-wrap: balance; word-break: auto-phrase }
.larger { display: block; width: 100%; padding: ${PADDING}px; border-radius: 18px; background: var(--${on}) }
.panel { position: absolute; right: ${EDGE}px; top: ${ABOVE}px; width: ${PANEL * scale}px; border-radius: 18px 18px 0 0; box-shadow: 0 6px 28px rgb(0 0 0 / 22%) }
`;
