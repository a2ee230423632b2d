import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { magnification } from '../../src/optics/quantity.ts';
import { SENSORS } from '../../src/optics/sensor.ts';
import { USUAL_AF_AREA } from '../../src/optics/squareness.ts';
import type { Shape } from '../../src/optics/print/drawing.ts';
import { wrapWords } from '../../src/optics/print/wrapWords.ts';
import { measureTarget } from '../../src/optics/print/measure.ts';
import { checkPrint, printed } from '../../src/optics/print/printCheck.ts';
import { PAPERS, sheetCount, sheets, windows, type PaperName } from '../../src/optics/print/sheets.ts';
import { escapeText } from '../../src/optics/print/svg.ts';
import { drawTarget, SCALE } from '../../src/optics/print/target.ts';
import { millimetres as mm } from '../../src/units.ts';
import { words as print } from '../../src/words/en/print.ts';
import { fault, value } from './value.ts';

const WORDS = ['Velde M1 with Orrin 85 f/1.8', '85 mm at 4.25 m', '4 March 2026'];
const measured = (m: number, area: number = USUAL_AF_AREA, pitch = 0.006) =>
  measureTarget({ magnification: magnification(m), pitch: mm(pitch), area: mm(area), sensor: SENSORS[0]! });
const labels = (words: readonly string[]) => ({ words: [...words, print.sizes(mm(1), SCALE)], scale: print.scale(SCALE) });
const drawn = (m: number, area?: number) => drawTarget(value(measured(m, area)), labels(WORDS));

const anyCase = fc.record({
  m: fc.double({ min: 1 / 120, max: 1, noNaN: true }),
  area: fc.double({ min: 1, max: 6, noNaN: true }),
  pitch: fc.double({ min: 0.003, max: 0.009, noNaN: true }),
});

const extent = (shape: Shape): { x: number[]; y: number[] } => {
  switch (shape.kind) {
    case 'rectangle':
      return { x: [shape.at.x, shape.at.x + shape.width], y: [shape.at.y, shape.at.y + shape.height] };
    case 'polygon':
      return { x: shape.corners.map(({ x }) => x), y: shape.corners.map(({ y }) => y) };
    case 'disc':
      return { x: [shape.middle.x - shape.radius, shape.middle.x + shape.radius], y: [shape.middle.y - shape.radius, shape.middle.y + shape.radius] };
    case 'text':
      return { x: [shape.at.x], y: [shape.at.y - shape.size, shape.at.y] };
  }
};

describe('the size of the target', () => {
  it('its field is half as large again as what the AF area sees, and its bars are drawn by five pixels or more', () => {
    fc.assert(
      fc.property(anyCase, ({ m, area, pitch }) => {
        const target = value(measured(m, area, pitch));
        expect(target.field).toBeGreaterThanOrEqual((1.5 * area) / m - 1e-9);
        expect((target.bar * m) / pitch).toBeGreaterThanOrEqual(5 - 1e-9);
        expect(target.bar).toBeGreaterThanOrEqual(0.3);
        expect(target.bar * target.bars).toBeCloseTo(target.field, 9);
      }),
    );
  });

  it('at fifty focal lengths the usual AF area fits one sheet of either paper', () => {
    const { drawing } = drawn(1 / 47.98);
    expect(sheets(drawing, 'A4', print.sheets.target)).toHaveLength(1);
    expect(sheets(drawing, 'Letter', print.sheets.target)).toHaveLength(1);
  });

  it('its bars are about ten pixels wide, at least five and 0.3 mm, and no field is larger than it must be', () => {
    const sizes = (m: number, area: number, pitch = 0.006) => {
      const { bars, index, bar, field, square, gap } = value(measured(m, area, pitch));
      return [bars, index, ...[bar, field, square, gap].map((length) => Number(length.toFixed(3)))];
    };
    // At a fiftieth ten pixels of 0.006 mm see 3 mm, five 1.5 mm. Over 180 mm: 63 bars of 2.857 mm.
    expect(sizes(1 / 50, 2.4)).toEqual([63, 206, 2.857, 180, 25.714, 4.286]);
    // Over 37.5 mm 31 bars would be of 1.2 mm: the next of the series above 1.5 mm.
    expect(sizes(1 / 50, 0.5)).toEqual([31, 148, 1.515, 46.96, 13.634, 2.272]);
    // Life-sized, ten pixels are less than a printer can draw: of 31 bars of 0.484 mm and 63 of 0.238 mm, the former; white stays 1 mm wide.
    expect(sizes(1, 10)).toEqual([31, 44, 0.486, 15.052, 4.37, 1]);
    expect(value(measured(1 / 50, 2.4)).seen).toEqual({ width: SENSORS[0]!.width * 50, height: SENSORS[0]!.height * 50 });
  });

  it('a field of two and a half metres is still a wall', () => {
    // The series has fields of 63 bars of 2,486 mm, and then of 2,514 mm.
    expect(value(measured(1 / 700, 2486 / 1.5 / 700)).field).toBeCloseTo(2486.279, 3);
    expect(fault(measured(1 / 700, 2487 / 1.5 / 700))).toEqual({ is: 'target too large' });
  });

  it('a target larger than a wall is refused', () => {
    expect(fault(measured(1 / 2000))).toEqual({ is: 'target too large' });
  });
});

describe('the drawing', () => {
  it('nothing stands outside the page, and the corner marks stand where they are said to', () => {
    fc.assert(
      fc.property(anyCase, ({ m, area, pitch }) => {
        const target = drawTarget(value(measured(m, area, pitch)), labels(WORDS));
        for (const shape of target.drawing.shapes) {
          const { x, y } = extent(shape);
          expect(Math.min(...x, ...y)).toBeGreaterThanOrEqual(0);
          expect(Math.max(...x)).toBeLessThanOrEqual(target.drawing.width);
          expect(Math.max(...y)).toBeLessThanOrEqual(target.drawing.height);
        }
        const marks = target.drawing.shapes.slice(-8).map(extent);
        const [xs, ys] = [marks.flatMap(({ x }) => x), marks.flatMap(({ y }) => y)];
        expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(target.corners.width, 9);
        expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(target.corners.height, 9);
        expect(target.corners.width).toBeLessThanOrEqual(0.9 * target.measure.seen.width + 1e-9);
      }),
    );
  });

  it('a square in the middle and the four marks lean by 5°', () => {
    const squares = drawn(1 / 48).drawing.shapes.filter((shape) => shape.kind === 'polygon');
    expect(squares).toHaveLength(5);
    for (const { corners } of squares) {
      const [a, b] = [corners[0]!, corners[1]!];
      expect((Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI).toBeCloseTo(5, 9);
    }
  });

  it('the scale is 100 mm between the outer edges of its end marks', () => {
    const { drawing, scale } = drawn(1 / 48);
    const ends = drawing.shapes.filter((shape) => shape.kind === 'rectangle' && shape.height === 5).map(extent);
    expect(Math.max(...ends.flatMap(({ x }) => x)) - Math.min(...ends.flatMap(({ x }) => x))).toBeCloseTo(scale, 9);
  });

  it('long words are wrapped and none is lost', () => {
    const lines = wrapWords(`${'a'.repeat(90)} ${WORDS.join(' ')}`, 3.4, 60);
    expect(lines.join('').replaceAll(' ', '')).toBe(`${'a'.repeat(90)}${WORDS.join('').replaceAll(' ', '')}`);
    for (const line of lines) expect(line.length * 3.4 * 0.55).toBeLessThanOrEqual(60);
  });
});

describe('the sheets', () => {
  it('cover the whole drawing, overlap by a centimetre and fit the paper with its margins', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 3000, noNaN: true }), fc.constantFrom(194, 199.9, 281, 263.4), (length, usable) => {
        const { starts, size } = windows(length, usable);
        expect(size).toBeLessThanOrEqual(usable + 1e-9);
        expect(starts[0]).toBe(0);
        expect(starts.at(-1)! + size).toBeCloseTo(length, 6);
        for (const [index, start] of starts.slice(1).entries()) expect(starts[index]! + size - start).toBeCloseTo(10, 6);
      }),
    );
  });

  it.each(['A4', 'Letter'] as const)('on %s each is one page in millimetres, numbered row by row', (name: PaperName) => {
    const all = sheets(drawn(1 / 49, 4).drawing, name, print.sheets.target);
    expect(all.map(({ number }) => number)).toEqual([1, 2, 3, 4]);
    expect(sheetCount(drawn(1 / 49, 4).drawing, name)).toBe(4);
    const { width, height } = PAPERS[name];
    for (const { svg, number } of all) {
      expect(svg).toContain(`width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`);
      expect(svg).toContain(`Sheet ${number} of 4`);
    }
  });

  it('on one sheet the drawing stands in the middle at true size', () => {
    const { drawing } = drawn(1 / 48);
    const svg = sheets(drawing, 'A4', print.sheets.target)[0]!.svg;
    const inner = /<svg x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)" viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!;
    const [x, y, width, height, viewWidth, viewHeight] = inner.slice(1).map(Number);
    expect([viewWidth, viewHeight]).toEqual([width, height]);
    expect(2 * x! + width!).toBeCloseTo(210, 2);
    expect(2 * y! + height!).toBeCloseTo(297, 2);
  });

  it('words cannot break out of the SVG', () => {
    const target = drawTarget(value(measured(1 / 48)), labels(['<b>"Orrin" & \u0000\'35\'</b>']));
    const svg = sheets(target.drawing, 'A4', { title: () => '"><script>', foot: () => '</text><script>' })[0]!.svg;
    expect(svg).toContain('&lt;b&gt;&quot;Orrin&quot; &amp; &#39;35&#39;&lt;/b&gt;');
    expect(svg).not.toContain('<script');
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (any) => {
        expect(escapeText(any)).not.toMatch(/[<>"'\p{Cs}]|&(?!amp;|lt;|gt;|quot;|#39;)/u);
      }),
    );
  });
});

describe('the print', () => {
  it('at 96 % is not true to size, and gives the factor', () => {
    const check = value(checkPrint(mm(100), mm(96)));
    expect(check).toEqual({ trueSize: false, factor: 0.96 });
    expect(printed(mm(180), check.factor)).toBeCloseTo(172.8, 9);
  });

  it('within half a per cent is true to size', () => {
    expect(value(checkPrint(mm(100), mm(100.5))).trueSize).toBe(true);
    expect(value(checkPrint(mm(100), mm(99.4))).trueSize).toBe(false);
    for (const [drawn, measured] of [
      [200, 199],
      [200, 201],
      [1000, 995],
      [1000, 1005],
      [150, 149.25],
    ] as const)
      // prettier-ignore
      expect(value(checkPrint(mm(drawn), mm(measured))).trueSize).toBe(true);
  });

  it('a length in centimetres or of nothing is measured again', () => {
    const again = { is: 'print misread', drawn: 100 };
    expect(fault(checkPrint(mm(100), mm(10)))).toEqual(again);
    expect(fault(checkPrint(mm(100), mm(Number.NaN)))).toEqual(again);
  });
});
