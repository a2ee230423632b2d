// English: what the mark says while voice is off; read at once with the first screen, unlike the rest of its words.
export const OFF = { word: 'voice off', press: 'voice off: switch it on' } as const;
