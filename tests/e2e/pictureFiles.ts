// Pictures for the tests, made in the browser that reads them: what a canvas draws, as a file of any kind it can write.
import type { Seat } from './seat.ts';

export interface DrawnPicture {
  readonly name: string;
  readonly type: 'image/png' | 'image/jpeg' | 'image/webp';
  readonly width: number;
  readonly height: number;
}

/**
 * Draws stripes of grey on each of these and gives all to the panel at once, as if a person did. Only a trusted paste carries files in
 * every browser, so a pasted one is handed over by its event.
 */
export const giveDrawn = (seat: Seat, pictures: readonly DrawnPicture[], how: 'choose' | 'drop' | 'paste'): Promise<void> =>
  seat.evaluate(
    async (wanted: readonly DrawnPicture[], by: string) => {
      const files = new DataTransfer();
      for (const { name, type, width, height } of wanted) {
        const canvas = document.createElement('canvas');
        Object.assign(canvas, { width, height });
        const context = canvas.getContext('2d');
        if (context === null) throw new Error('There is no canvas.');
        for (let x = 0; x < width; x += 8) {
          context.fillStyle = `hsl(0 0% ${(x * 7) % 100}%)`;
          context.fillRect(x, 0, 8, height);
        }
        const blob = await new Promise<Blob | null>((made) => canvas.toBlob(made, type, 0.92));
        files.items.add(new File([blob ?? ''], name, { type }));
      }
      give(files, by);

      function give(all: DataTransfer, manner: string): void {
        const input = document.querySelector<HTMLInputElement>('input[type="file"]');
        if (manner === 'paste') document.dispatchEvent(Object.defineProperty(new Event('paste', { bubbles: true }), 'clipboardData', { value: all }));
        else if (manner === 'drop') input?.parentElement?.dispatchEvent(new DragEvent('drop', { dataTransfer: all, bubbles: true, cancelable: true }));
        else if (input) {
          input.files = all.files;
          input.dispatchEvent(new Event('change', { bubbles: true }));
        }
      }
    },
    pictures,
    how,
  );

/** Gives the panel a file that the tests made, as if it was chosen. */
export const giveBytes = (seat: Seat, name: string, bytes: Uint8Array): Promise<void> => giveNamed(seat, [name], bytes);

/** The same under several names, all at once. */
export const giveNamed = (seat: Seat, names: readonly string[], bytes: Uint8Array): Promise<void> =>
  seat.evaluate(
    (base64: string, called: readonly string[]) => {
      const input = document.querySelector<HTMLInputElement>('input[type="file"]');
      const content = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
      const files = new DataTransfer();
      for (const name of called) files.items.add(new File([content], name));
      if (input) input.files = files.files;
      input?.dispatchEvent(new Event('change', { bubbles: true }));
    },
    Buffer.from(bytes).toString('base64'),
    names,
  );
