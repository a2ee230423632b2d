// German: the bench.
import type { BenchWords } from '../benchWords.ts';
import { line } from '../line.ts';
import { benchFault } from './benchFaults.ts';
import { CHOICES, BENCH_FIELD, HINT } from './benchFields.ts';
import { bySides, focus, lightFound, stands, STEP_FROM, tilted } from './benchFindings.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

const mm = (length: number, digits: number): string => write.unit(length, 'millimeter', digits);

export const words: BenchWords = {
  title: 'Messplatz',
  focalLength: 'Brennweite, mm',
  missing: {
    'no focal length': 'Geben Sie die Brennweite in Millimetern an, zum Beispiel 85.',
    untold: 'Geben Sie zuerst die Brennweite dieses Durchlaufs an. Drücken Sie auf „Brennweite“ über dem Wert.',
  },
  rig: ({ lens, body, focalLength }) => line([lens, body, write.millimetres(focalLength)]),
  fault: benchFault,
  field: BENCH_FIELD,
  hint: HINT,
  empty: (length) => `Leer: ${write.number(length)}.`,
  measured: { m: 'Gemessene Entfernung, m', ft: 'Gemessene Entfernung, ft' },
  choices: CHOICES,
  sensor: ({ width, height }) => `${write.number(width, 2)} × ${write.number(height, 2)}\u00a0mm`,
  distance: {
    title: 'Entfernung',
    figures: ({ usual, shortest, yours, unit }) => [
      { name: 'Allgemein', value: `${write.distance(usual, unit)}, 50 Brennweiten` },
      { name: 'Kleiner Raum', value: `ab ${write.distance(shortest, unit)}, 25 Brennweiten` },
      { name: 'Ihre', value: write.distance(yours, unit) },
    ],
    stands,
    use: (length, unit) => `${write.distance(length, unit)} im Durchlauf benutzen`,
    useUsual: '50 Brennweiten benutzen',
  },
  depth: {
    title: 'Objektiv und Schärfentiefe',
    finer: 'Genauer: Konverter, Pixel, AF-Messfeld, Unschärfe, Stufe',
    wanted: 'Geben Sie die größte Blende an, um Schärfentiefe, Beleuchtung, Neigung und Tafel zu sehen.',
    figures: ({ magnification, measured, total, front, behind, near, far, focus: atSensor, quarterWave, hyperfocal, blur, airy, unit }) => [
      { name: 'Abbildungs\u00admaßstab', value: `1 : ${write.number(1 / magnification, 1)}`, note: measured ? 'gemessen' : 'dünne Linse' },
      { name: 'Schärfentiefe', value: nearTarget(total, unit) },
      { name: 'davor', value: nearTarget(front, unit) },
      { name: 'dahinter', value: nearTarget(behind, unit) },
      {
        name: 'Scharf',
        value: far === 'infinite' ? `${write.distance(near, unit)} bis unendlich` : write.distances(near, far, unit).join(' bis '),
        note: 'ab der Sensorebene',
      },
      { name: 'Fokustiefe', value: mm(atSensor, 3), note: `eine Viertelwelle Fehler sind ${mm(quarterWave, 3)}` },
      { name: 'Hyperfokal\u00addistanz', value: nearTarget(hyperfocal, unit) },
      { name: 'Erlaubte Unschärfe', value: mm(blur, 3), note: `das Airy-Scheibchen ist ${write.percent(airy)} davon` },
    ],
    step: (step, share, unit, by) =>
      `Eine Stufe versetzt die Schärfe an der Tafel um etwa ${nearTarget(step, unit)}, das sind ${write.percent(share)} der Schärfentiefe dahinter. ${STEP_FROM[by]}`,
    worthMeasured: 'Wie eine Stufenserie mit Aufnahmen es gemessen hat.',
    converted: (aperture, lensSteps, bodySteps) =>
      `Mit dem Konverter ist die Blende f/${write.number(aperture, 1)}. Ein Fehler des Objektivs zählt ${write.number(lensSteps, 2)}\u2011mal so viele Stufen, ` +
      `einer des Gehäuses ${write.number(bodySteps, 2)}\u2011mal so viele. Messen Sie das Objektiv mit dem Konverter deshalb gesondert.`,
  },
  target: {
    title: 'Testtafel',
    wanted: 'Die Tafel wird gezeichnet, sobald Sie die größte Blende angeben.',
    size: (bar, field, sheets) =>
      `Balken von ${mm(bar, 2)} in einem Feld von ${mm(field, 0)}, auf ${write.count(sheets, { one: 'einem Blatt', other: '# Blättern' })}.`,
    open: 'Druckseite öffnen',
    print: ({ factor, trueSize }) =>
      trueSize
        ? 'Der Ausdruck hat die wahre Größe.'
        : `Der Ausdruck hat ${write.percent(factor, 1)} der wahren Größe. Drucken Sie ihn noch einmal mit ${write.percent(1)}, nicht an die Seite angepasst. Oder behalten Sie ihn, dann wird mit ${write.percent(factor, 1)} gerechnet.`,
  },
  light: { title: 'Beleuchtung', finer: 'Lampen und was genügt', verdict: lightFound },
  square: {
    title: 'Ausrichtung',
    byEye: 'Hier genügt es, die Tafel nach Augenmaß parallel zum Sensor zu stellen.',
    allowed: (tilt, width, nearer) =>
      `Die Tafel muss auf ${write.degrees(tilt, 1)} genau parallel zum Sensor stehen. Über ihre Breite von ${write.millimetres(width)} darf eine Kante ${mm(nearer, nearer < 10 ? 1 : 0)} näher sein als die andere.`,
    miss: {
      mirror: (pixels) => `Das Objektiv darf sich höchstens ${write.number(pixels)} Pixel neben der Mitte spiegeln.`,
      spot: (off) => `Der Lichtpunkt darf seine Quelle um höchstens ${write.millimetres(off)} verfehlen.`,
    },
    tilted,
    bySides,
  },
  place: {
    title: 'Rampe und gewollter Versatz',
    finer: 'Genauer: eine Rampe in anderem Winkel',
    onTarget: 'Die Schärfe liegt auf der Tafel.',
    focus,
    wanted: 'Der Versatz wird berechnet, sobald Sie die größte Blende angeben.',
    share: (now) =>
      `Liegt die Schärfe auf dem Motiv, liegen ${write.percent(now)} der Schärfentiefe davor. Der im Durchlauf gefundene Wert wird versetzt, und das Ergebnis sagt es.`,
  },
  walk: {
    title: 'Geführter Aufbau',
    what: 'Ein Schritt nach dem anderen, gesprochen und gezeigt. Was Sie abhaken und ablesen, bleibt beim Durchlauf gespeichert.',
    kit: 'Was die Ausrüstung hat',
    traits: {
      bodyStabiliser: 'Stabilisator im Gehäuse',
      lensStabiliser: 'Stabilisator im Objektiv',
      liveView: 'Livebild',
      rearButton: 'Fokus über eine Taste hinten',
      manualAtBody: 'Manueller Fokus am Gehäuse',
      zoom: 'Zoom\u00adobjektiv',
      heavy: 'Objektiv mit eigenem Stativfuß',
    },
    notYet: 'Um zu beginnen, geben Sie oben die größte Blende an und berichtigen, was markiert ist.',
    begin: 'Aufbau durchgehen',
  },
};
