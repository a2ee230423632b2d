// The words of the line that says whose sweep it is, part by part, and of the fields behind it.
export const TOLD = {
  line: 'What it is about',
  parts: { body: 'Body', lens: 'Lens', length: 'Focal length', distance: 'Distance', scale: 'Scale', more: 'More' },
  /** A part that was not told yet, for those who hear the screen. */
  open: (part: string): string => `${part}: not told yet`,
  is: (part: string, value: string): string => `${part}: ${value}`,
  scale: (min: string, max: string, step: number): string => `${min}\u2026${max}${step === 1 ? '' : ` by ${step}`}`,
  done: 'Done',
  fewer: 'Close',
  body: { choose: 'Body', another: 'Another body\u2026', name: 'Name of the body', hint: 'Your own name for it.' },
  lens: { choose: 'Lens', another: 'Another lens\u2026', name: 'Name of the lens', hint: 'With its focal length, such as \u201cCorvid 85\u201d.' },
  length: {
    field: 'Focal length, mm',
    hint: 'As engraved on the lens.',
    converted: 'As engraved on the lens, without the converter.',
    ends: 'Which end of the zoom?',
    end: (length: string): string => length,
  },
  distance: { field: 'Distance to the target, m', hint: 'Empty: 50 focal lengths, which is common practice. Better: the distance you shoot at.' },
  scaleOf: { legend: 'Scale of the body\u2019s corrections', from: 'From', to: 'to', step: 'step' },
  arrows: {
    choose: 'Arrows beside the focus light',
    absent: 'It shows none',
    up: 'Right arrow: go up, towards +',
    down: 'Right arrow: go down, towards \u2212',
  },
  converter: { choose: 'Converter', none: 'None' },
} as const;

/** Whose result a finished sweep is. */
export const WHOSE = {
  title: 'Whose result is it?',
  body: 'Body',
  lens: 'Lens, with its focal length',
  length: 'Focal length, mm',
  hint: 'Such as \u201cCorvid 85 f/1.8\u201d.',
  ends: 'Which end of the zoom was it?',
  keep: 'Keep it under this name',
  later: 'Without a name it is kept too, and you can name it later.',
  bodyMissing: 'Name the body too.',
  lensMissing: 'Name the lens.',
  lengthMissing: 'Enter the focal length, or put it into the name of the lens.',
} as const;
