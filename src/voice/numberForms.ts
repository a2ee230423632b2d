// The ways of saying a number below a hundred, made of how the language says it: whole, or digit by digit.
import type { SaidNumbers } from '../hearing/languages/heardLanguage.ts';

export interface NumberForm {
  readonly words: string;
  readonly size: number;
}

/** "Twelve" and "one two". */
export function numberForms({ say }: SaidNumbers): NumberForm[] {
  const forms: NumberForm[] = [];
  for (let size = 0; size < 100; size++) {
    forms.push({ words: say(size), size });
    if (size >= 10) forms.push({ words: `${say(Math.floor(size / 10))} ${say(size % 10)}`, size });
  }
  return forms;
}
