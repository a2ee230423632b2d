// How much light a page gives off, as WCAG 2.2 has relative luminance: of all its pixels, of its brightest patch, and of the areas
// that it fills with one colour. White gives 1.
import type { Page } from 'puppeteer-core';

interface Shine {
  /** Mean over the whole picture. */
  readonly mean: number;
  /** The brightest patch, a square of `PATCH` pixels. */
  readonly patch: number;
  /** Of an area of one colour, at least a finger wide, the brightest; `what`: whose it is. */
  readonly area: number;
  readonly what: string;
  /** The most that any pixel has of green or blue, 0 to 255. */
  readonly notRed: number;
}

/** About two degrees of the eye's view from 60 cm: what is looked at, and no more (common practice, no source). */
const PATCH = 80;

/** `picture`: a PNG of the page as it stands. */
export const shineOf = (page: Page, picture: Uint8Array): Promise<Shine> =>
  page.evaluate(
    async (png, size) => {
      const linear = (part: number): number => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);
      const steps = Array.from({ length: 256 }, (_, value) => linear(value / 255));
      const of = (r: number, g: number, b: number): number => 0.2126 * (steps[r] ?? 0) + 0.7152 * (steps[g] ?? 0) + 0.0722 * (steps[b] ?? 0);
      const bytes = Uint8Array.from(atob(png), (sign) => sign.charCodeAt(0));
      const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const { width, height } = bitmap;
      const context = new OffscreenCanvas(width, height).getContext('2d');
      if (!context) throw new Error('No picture can be read here.');
      context.drawImage(bitmap, 0, 0);
      const { data } = context.getImageData(0, 0, width, height);
      const [across, down] = [Math.ceil(width / size), Math.ceil(height / size)];
      const patches = new Float64Array(across * down);
      const counts = new Float64Array(across * down);
      let notRed = 0;
      for (let y = 0, at = 0; y < height; y++) {
        for (let x = 0; x < width; x++, at += 4) {
          const [r, g, b] = [data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0];
          const patch = Math.floor(y / size) * across + Math.floor(x / size);
          patches[patch] = (patches[patch] ?? 0) + of(r, g, b);
          counts[patch] = (counts[patch] ?? 0) + 1;
          notRed = Math.max(notRed, g, b);
        }
      }
      const mean = patches.reduce((sum, one) => sum + one, 0) / (width * height);
      // What is cut off by the edge is not the size of a patch.
      const whole = [...patches].filter((_, index) => counts[index] === size * size);
      let [area, what] = [0, ''];
      for (const element of document.querySelectorAll('*')) {
        const box = element.getBoundingClientRect();
        if (Math.min(box.width, box.height) < 24 || !element.checkVisibility({ visibilityProperty: true })) continue;
        const style = getComputedStyle(element);
        const isDrawn = element instanceof SVGGeometryElement;
        const [r = 0, g = 0, b = 0, alpha = 1] = ((isDrawn ? style.fill : style.backgroundColor).match(/[\d.]+/g) ?? [0, 0, 0, 0]).map(Number);
        const shines = alpha * of(r, g, b);
        if (shines > area) [area, what] = [shines, `${element.tagName}.${element.getAttribute('class') ?? ''}`];
      }
      return { mean, patch: Math.max(0, ...whole.map((one) => one / (size * size))), area, what, notRed };
    },
    Buffer.from(picture).toString('base64'),
    PATCH,
  );
