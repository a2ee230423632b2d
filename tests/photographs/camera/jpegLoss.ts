// What a JPEG file of some quality loses: cosine transform of blocks of eight, coefficients rounded to the tables of ITU-T T.81 (1992)
// Annex K, scaled by quality as the Independent JPEG Group's library does it (common practice, from memory), and back. The rest of the
// format loses nothing, so no file is written. Colour differences at half the size both ways, as most cameras keep them.

// prettier-ignore
const LUMINANCE = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51, 87, 80, 62,
  18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99,
];
// prettier-ignore
const CHROMINANCE = [
  17, 18, 24, 47, 99, 99, 99, 99, 18, 21, 26, 66, 99, 99, 99, 99, 24, 26, 56, 99, 99, 99, 99, 99, 47, 66, 99, 99, 99, 99, 99, 99,
  99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99,
];

const scaled = (table: readonly number[], quality: number): number[] => {
  const scale = quality < 50 ? 5000 / quality : 200 - 2 * quality;
  return table.map((entry) => Math.min(255, Math.max(1, Math.floor((entry * scale + 50) / 100))));
};

export function jpegLoss(rgba: Uint8ClampedArray, width: number, height: number, quality: number): Uint8ClampedArray {
  const [y, cb, cr] = [0, 1, 2].map(() => new Float32Array(width * height)) as [Float32Array, Float32Array, Float32Array];
  for (let index = 0; index < width * height; index += 1) {
    const [r, g, b] = [rgba[4 * index]!, rgba[4 * index + 1]!, rgba[4 * index + 2]!];
    // ITU-T T.871 (2011): JFIF's colours.
    y[index] = 0.299 * r + 0.587 * g + 0.114 * b - 128;
    cb[index] = -0.168736 * r - 0.331264 * g + 0.5 * b;
    cr[index] = 0.5 * r - 0.418688 * g - 0.081312 * b;
  }
  roundBlocks(y, width, height, scaled(LUMINANCE, quality));
  const [blue, red] = [cb, cr].map((plane) => halved(plane, width, height, scaled(CHROMINANCE, quality))) as [Float32Array, Float32Array];
  const out = new Uint8ClampedArray(rgba.length);
  for (let index = 0; index < width * height; index += 1) {
    const level = y[index]! + 128;
    const half = (Math.floor(index / width) >> 1) * ((width + 1) >> 1) + ((index % width) >> 1);
    out[4 * index] = level + 1.402 * red[half]!;
    out[4 * index + 1] = level - 0.344136 * blue[half]! - 0.714136 * red[half]!;
    out[4 * index + 2] = level + 1.772 * blue[half]!;
    out[4 * index + 3] = 255;
  }
  return out;
}

function halved(plane: Float32Array, width: number, height: number, table: readonly number[]): Float32Array {
  const [columns, rows] = [(width + 1) >> 1, (height + 1) >> 1];
  const half = new Float32Array(columns * rows);
  for (let y = 0; y < rows; y += 1) {
    for (let x = 0; x < columns; x += 1) {
      const [x1, y1] = [Math.min(width - 1, 2 * x + 1), Math.min(height - 1, 2 * y + 1)];
      half[y * columns + x] = (plane[2 * y * width + 2 * x]! + plane[2 * y * width + x1]! + plane[y1 * width + 2 * x]! + plane[y1 * width + x1]!) / 4;
    }
  }
  roundBlocks(half, columns, rows, table);
  return half;
}

const COSINE = Float32Array.from({ length: 64 }, (_, index) => {
  const [frequency, at] = [index >> 3, index & 7];
  return (frequency === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * at + 1) * frequency * Math.PI) / 16);
});

/** In place; blocks past the border repeat the last cells. */
function roundBlocks(plane: Float32Array, width: number, height: number, table: readonly number[]): void {
  const block = new Float32Array(64);
  const half = new Float32Array(64);
  for (let top = 0; top < height; top += 8) {
    for (let left = 0; left < width; left += 8) {
      for (let index = 0; index < 64; index += 1) {
        block[index] = plane[Math.min(height - 1, top + (index >> 3)) * width + Math.min(width - 1, left + (index & 7))]!;
      }
      transform(block, half, 'forth');
      for (let index = 0; index < 64; index += 1) block[index] = Math.round(block[index]! / table[index]!) * table[index]!;
      transform(block, half, 'back');
      for (let index = 0; index < 64; index += 1) {
        const [x, y] = [left + (index & 7), top + (index >> 3)];
        if (x < width && y < height) plane[y * width + x] = block[index]!;
      }
    }
  }
}

/** Rows, then columns; each pass leaves the block turned over its diagonal. */
function transform(block: Float32Array, half: Float32Array, way: 'forth' | 'back'): void {
  const [outer, inner] = way === 'forth' ? [8, 1] : [1, 8];
  for (const [from, to] of [
    [block, half],
    [half, block],
  ] as const) {
    for (let row = 0; row < 8; row += 1) {
      for (let k = 0; k < 8; k += 1) {
        let sum = 0;
        for (let n = 0; n < 8; n += 1) sum += COSINE[k * outer + n * inner]! * from[row * 8 + n]!;
        to[k * 8 + row] = sum;
      }
    }
  }
}
