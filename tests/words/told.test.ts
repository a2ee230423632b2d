// What is told of a thing names the thing in the language of the screens, never by its id.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Language } from '../../src/language.ts';
import { COLUMNS } from '../../src/logbook/csv/columns.ts';
import { changeLanguages, readWords, words } from '../../src/words/catalogue.ts';

interface Told {
  readonly item: string;
  readonly moreItems: string;
  readonly moreLines: string;
  readonly missing: string;
  readonly line: string;
}

const TOLD: Readonly<Record<Language, Told>> = {
  en: {
    item: 'Orrin 85 (lens): new',
    moreItems: 'and 3 more items',
    moreLines: 'and 1 more line with a fault',
    missing: 'Choose which headings mean these: body and focal length (mm).',
    line: 'Line 4, focal length (“length”): It is empty. Every line needs it.',
  },
  de: {
    item: 'Orrin 85 (Objektiv): neu',
    moreItems: 'und noch 3 Einträge',
    moreLines: 'und noch 1 fehlerhafte Zeile',
    missing: 'Wählen Sie noch eine Spalte für: Gehäuse („body“) und Brennweite („focal length (mm)“).',
    line: 'Zeile 4, Brennweite („length“): ',
  },
  es: {
    item: 'Orrin 85 (objetivo): no está aquí',
    moreItems: 'y 3 elementos más',
    moreLines: 'y 1 línea más con fallos',
    missing: 'Elija qué encabezados significan esto: cuerpo («body») y distancia focal («focal length (mm)»).',
    line: 'Línea 4, distancia focal («length»): ',
  },
  fr: {
    item: 'Orrin 85 (objectif)\u00a0: à ajouter',
    moreItems: 'et 3 autres éléments',
    moreLines: 'et 1 autre ligne avec une erreur',
    missing: 'Choisissez les en-têtes qui signifient\u00a0: boîtier («\u202fbody\u202f») et focale («\u202ffocal length (mm)\u202f»).',
    line: 'Ligne 4, focale («\u202flength\u202f»)\u00a0: ',
  },
  ja: {
    item: 'Orrin 85（レンズ）：新規',
    moreItems: 'ほか3件',
    moreLines: 'ほかに問題のある行1行',
    missing: '次の項目にあたる見出しを選んでください：ボディ「body」、焦点距離「focal length (mm)」。',
    line: '4行目、焦点距離「length」：',
  },
};

describe.each(Object.entries(TOLD) as [Language, Told][])('in %s', (language, told) => {
  beforeAll(async () => {
    await readWords('files', 'kit');
    await changeLanguages({ screens: language, voice: language });
  });
  afterAll(() => changeLanguages({ screens: 'en', voice: 'en' }));

  test('what a backup brings, by its kind', () => {
    const { restore } = words('files');
    expect(restore.item('lenses', { by: 'name', name: 'Orrin 85' }, 'new')).toBe(told.item);
    expect(restore.more(3)).toBe(told.moreItems);
  });

  test('columns of a table beside their headings', () => {
    const { table } = words('files');
    const needed = COLUMNS.filter(({ key }) => key === 'body' || key === 'focalLength');
    expect(table.missing(needed.map(table.meaning))).toBe(told.missing);
    expect(table.line({ line: 4, column: 'focalLength', fault: { is: 'empty' } }, 'length')).toContain(told.line);
    expect(table.more(1)).toBe(told.moreLines);
    // No two columns are called alike, and each is called something.
    expect(new Set(COLUMNS.map(({ key, heading }) => table.meaning({ key, heading }))).size).toBe(COLUMNS.length);
  });

  test('what cannot be kept', () => {
    const { unsaved } = words('kit');
    for (const is of ['changed elsewhere', 'gone'] as const) {
      const sentences = (['bodies', 'lenses', 'converters', 'situations'] as const).map((list) => unsaved({ is, list }));
      expect(new Set(sentences).size).toBe(4);
    }
  });
});
