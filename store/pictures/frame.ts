// The frame of a picture: a plain ground in the panel's own colours, one sentence, the panel, and a part of it larger. A small tile has the name alone.
import { readFileSync } from 'node:fs';

export interface Format {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Too small for a sentence and the panel. */
  readonly isSmall?: boolean;
}

/** What the stores ask for (from memory). */
export const SCREENSHOT: Format = { name: '', width: 1280, height: 800 };
export const TILES: readonly Format[] = [
  { name: 'tile-440x280', width: 440, height: 280, isSmall: true },
  { name: 'tile-1400x560', width: 1400, height: 560 },
];

/** Pixels of the picture that one of the panel takes. */
export const SCALE = 1.25;
const EDGE = 64;
const ABOVE = 52;
/** The plate around the larger part. */
const PADDING = 22;
const PANEL = 360 * SCALE;

export const panelHeight = ({ height }: Format): number => Math.ceil((height - ABOVE) / SCALE);
export const largerWidth = ({ width, isSmall = false }: Format): number => (isSmall ? width - 2 * 24 : width - PANEL - 3 * EDGE) - 2 * PADDING;

export interface Content {
  readonly language: string;
  readonly theme: string;
  readonly sentence: string;
  readonly panel: Uint8Array;
  readonly larger: Uint8Array;
  /** The ground that the larger part stands on. */
  readonly on: 'ground' | 'raised';
}

const themes = readFileSync('src/panel/look/themes.css', 'utf8');
const icon = readFileSync('icons/icon.svg', 'utf8');

const image = (png: Uint8Array, kind: string): string => `<img class="${kind}" alt="" src="data:image/png;base64,${Buffer.from(png).toString('base64')}">`;
const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

export function frameOf(format: Format, { language, theme, sentence, panel, larger, on }: Content): string {
  const { isSmall = false } = format;
  return `<!doctype html><html lang="${language}" data-theme="${theme}"><meta charset="utf-8"><style>${themes}${styleOf(format, on)}</style>
<div class="told"><p class="name">${icon}Sweepbook</p>${isSmall ? '' : `<h1>${escaped(sentence)}</h1>`}${image(larger, 'larger')}</div>
${isSmall ? '' : image(panel, 'panel')}</html>`;
}

const styleOf = ({ width, height, isSmall = false }: Format, on: Content['on']): string => `
* { box-sizing: border-box; margin: 0 }
body { width: ${width}px; height: ${height}px; overflow: hidden; background: var(--line); color: var(--text); font-family: system-ui, sans-serif }
.told { position: absolute; inset: 0 auto 0 0; width: ${isSmall ? width : width - PANEL - EDGE}px; padding: ${isSmall ? '24px' : `${ABOVE}px ${EDGE}px`};
  display: flex; flex-direction: column; justify-content: space-between; gap: 20px }
.name { display: flex; align-items: center; gap: ${isSmall ? 18 : 14}px; font-size: ${isSmall ? 44 : 26}px; font-weight: 600 }
.name svg { width: ${isSmall ? 76 : 44}px; height: ${isSmall ? 76 : 44}px }
h1 { font-size: ${height < 700 ? 38 : 44}px; line-height: 1.25; font-weight: 600; text-wrap: balance; word-break: auto-phrase }
.larger { display: block; width: 100%; padding: ${PADDING}px; border-radius: 18px; background: var(--${on}) }
.panel { position: absolute; right: ${EDGE}px; top: ${ABOVE}px; width: ${PANEL}px; border-radius: 18px 18px 0 0; box-shadow: 0 6px 28px rgb(0 0 0 / 22%) }
`;
