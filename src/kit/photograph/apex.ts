// Apertures as photographs write them: APEX, where two units double the area (CIPA DC-008, annex on APEX units):
// Av = 2 log2 N, N = 2^(Av/2).

export const apexOf = (fNumber: number): number => 2 * Math.log2(fNumber);
export const fNumberOf = (apex: number): number => 2 ** (apex / 2);
