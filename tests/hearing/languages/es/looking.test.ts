// Contract of questions to the logbook in Spanish, and of the next lens: what is asked for is found, other talk asks nothing.
import { describe, expect, test } from 'vitest';
import { SPANISH } from '../../../../src/hearing/languages/es/spanish.ts';
import { USUAL_LIMITS } from '../../../../src/logbook/due.ts';
import { finderOf, lookUpSpoken } from '../../../../src/logbook/search/finder.ts';
import { shelfOf } from '../../../../src/logbook/shelf.ts';
import { asName, nameAfterNextIn } from '../../../../src/voice/nextLens.ts';
import { libraryWith, T0 } from '../../../logbook/libraryWith.ts';
import { hearingIn } from '../heard.ts';

const { questionIn } = hearingIn(SPANISH);

const LENSES = [
  ['85', 'Orrin 85', 85],
  ['35', 'Orrin 35', 35],
  ['135', 'Corvid 135', 135],
  ['105', 'Corvid 105', 105],
  ['200', 'Orrin 200', 200],
] as const;
const library = libraryWith({
  bodies: [{ id: 'a', name: 'Velde M1' }],
  lenses: LENSES.map(([id, name]) => ({ id, name })),
  situations: LENSES.map(([id, , focalLength]) => ({ id: `at ${id}`, body: 'a', lens: id, focalLength })),
});
const finder = finderOf(SPANISH, library.kit, shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS));
const NAMES = [...LENSES.map(([, name]) => name), 'Velde M1'];
const found = (text: string) => {
  const query = questionIn(text, NAMES);
  return query === null ? null : lookUpSpoken(finder, query).map(({ subject }) => subject.situation);
};

describe('a question', () => {
  test.each([
    ['consulta 85', ['at 85']],
    ['Consulta el 85.', ['at 85']],
    ['consulta ochenta y cinco', ['at 85']],
    ['consulta ocho cinco', ['at 85']],
    ['quiero consultar el ochenta y cinco, por favor', ['at 85']],
    ['eh, consúltame el 85 milímetros', ['at 85']],
    ['con sulta treinta y cinco', ['at 35']],
    ['consulto treinta cinco', ['at 35']],
    ['consulta el 35 1.4', ['at 35']],
    ['consulta treinta y cinco uno coma cuatro', ['at 35']],
    ['consulta ciento treinta y cinco', ['at 135']],
    ['consulta uno treinta y cinco', ['at 135']],
    ['consulta el Corvid uno cero cinco', ['at 105']],
    ['busca el 135', ['at 135']],
    ['busca el doscientos', ['at 200']],
    ['cuánto tenía el Orrin 85', ['at 85']],
    ['qué valor tenía el Corvid ciento cinco', ['at 105']],
    ['¿y cuál era el treinta y cinco?', ['at 35']],
    ['enséñame el Corvid', ['at 135', 'at 105']],
    ['cómo estaba el Orrin 35 con la Velde M1', ['at 35']],
  ])('"%s" finds what is asked for', (text, situations) => {
    expect(found(text)?.toSorted()).toEqual(situations.toSorted());
  });

  test.each([
    'busca la llave y la tapa',
    'busca en internet',
    'qué era eso',
    'qué es esto de aquí y de allá',
    'cuál es el siguiente',
    'cómo está tu madre',
    'cuánto es',
    'mira el reloj',
    'dame un segundo',
    'resulta que no',
    'con mucho gusto',
    'enciende la luz',
    'son doscientos euros',
    'veinte minutos',
  ])('is not "%s"', (text) => {
    expect(questionIn(text, NAMES)).toBeNull();
  });
});

describe('the next lens', () => {
  const name = nameAfterNextIn(SPANISH.naming);

  test.each([
    ['siguiente objetivo Corvid ochenta y cinco', 'Corvid Ochenta Y Cinco'],
    ['Próximo objetivo Orrin 35', 'Orrin 35'],
    ['siguiente lente orrin', 'Orrin'],
    ['siguiente Corvid 105', 'Corvid 105'],
  ])('"%s" names it', (text, written) => {
    expect(asName(name(text) ?? '')).toBe(written);
  });

  test.each(['siguiente', 'siguiente objetivo', 'siguiente paso', 'próximo', 'el objetivo', 'corvid siguiente'])('"%s" names none', (text) => {
    expect(name(text)).toBeNull();
  });
});
