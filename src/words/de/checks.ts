// German: what to check for each trouble, the likeliest first. Common practice, no source.
import type { TroubleWords } from '../troubleWords.ts';

export const CHECKS: TroubleWords['checks'] = {
  'flickers everywhere': [
    'Beleuchten Sie die Tafel heller, gleichmäßig und ohne Reflexe.',
    'Nehmen Sie eine Tafel mit mehr Kontrast, die größer ist als das aktive Messfeld.',
    'Viele Lampen flimmern am Stromnetz. Nehmen Sie eine flimmerfreie Lampe oder Tageslicht.',
    'Prüfen Sie, ob Kamera und Tafel ganz still stehen: Stativkopf und Beine fest, kein Luftzug, keine Hand am Objektiv.',
    'Schalten Sie auf dem Stativ den Bildstabilisator aus.',
    'Prüfen Sie, ob das Objektiv, auch mit Konverter, lichtstark genug für den Autofokus im Sucher ist.',
  ],
  'never lights': [
    'Prüfen Sie, ob das aktive Messfeld auf der Tafel liegt und kein anderes aktiv ist.',
    'Prüfen Sie, ob der halb gedrückte Auslöser das Fokuslicht einschaltet. Fokussiert das Gehäuse mit einer Taste auf der Rückseite, schaltet sie es ein.',
    'Bei manchen Objektiven und Gehäusen bleibt das Licht aus, solange der Schalter auf manuell steht. Sehen Sie im Handbuch des Herstellers nach.',
    'Stellen Sie im Livebild neu scharf. Ist der Fokus weit daneben, leuchtet es bei keinem Wert.',
    'Prüfen Sie, ob die Tafel weiter weg steht als die Naheinstell\u00adgrenze des Objektivs.',
    'Der richtige Wert kann außerhalb des Korrektur\u00adbereichs liegen. Ist sonst alles in Ordnung, muss die Kombination zum Service des Herstellers.',
  ],
  'lights everywhere': [
    'Prüfen Sie, ob das Objektiv auf manuell bleibt. Stellt es bei jedem halben Druck scharf, ist jeder Wert stabil.',
    'Wählen Sie Einzel\u00adautofokus statt Nachführung und achten Sie auf das Licht selbst, nicht auf den Piepton.',
    'Prüfen Sie, ob die Korrektur für dieses Objektiv eingeschaltet ist und das Gehäuse jeden eingestellten Wert behält.',
    'Prüfen Sie, ob nur das Messfeld auf der Tafel aktiv ist.',
    'Die Schärfentiefe kann für den Korrektur\u00adbereich zu groß sein. Gehen Sie näher heran, zoomen Sie hinein und nehmen Sie die größte Blende.',
  ],
  'hole in the band': [
    'Erproben Sie die Werte der Lücke noch einmal. Ein Stoß oder ein Blinzeln verdirbt eine Probe.',
    'Prüfen Sie, ob etwas Spiel hat: Bajonett, Konverter, Stativkopf, Tafel.',
    'Prüfen Sie, ob nur eine Kante unter dem aktiven Messfeld liegt. Eine zweite Kante oder ein wieder\u00adkehrendes Muster kann die Kamera irreführen.',
    'Prüfen Sie, ob die Beleuchtung der Tafel gleich bleibt.',
    'Bleibt die Lücke, machen Sie noch einen Durchlauf, bevor Sie der Mitte trauen.',
  ],
  'arrows contradict the lights': [
    'Ändern Sie in der Ausrüstung, wohin der rechte Pfeil dieses Gehäuses weist. Die Hersteller halten es verschieden.',
    'Prüfen Sie, ob die Pfeile zum Fokuslicht gehören, und lesen Sie sie ab, während die Kamera still steht.',
    'Prüfen Sie, ob Sie den Wert verstellt haben und nicht den Fokusring.',
    'Prüfen Sie, ob die ganze Zeit dasselbe Messfeld aktiv war.',
    'Bleibt es so, wählen Sie für das Gehäuse in der Ausrüstung „Keine Pfeile“. Das Licht allein genügt.',
  ],
  'focus moved': [
    'Stellen Sie das Objektiv auf manuell und halten Sie Hände und Kabel vom Ring fern. Ein Streifen Klebeband hält ihn fest.',
    'Prüfen Sie, ob Stativkopf, Stativbeine und Tafel fest stehen.',
    'Prüfen Sie, ob Objektiv und Konverter fest im Bajonett sitzen.',
    'Lassen Sie Kamera und Objektiv Raum\u00adtemperatur annehmen, bevor Sie scharfstellen.',
  ],
  'verdicts misjudged': [
    'Ruhen Sie die Augen eine Minute aus, dann erproben Sie die zweifelhaften Werte noch einmal.',
    'Stützen Sie das Kinn oder die Kamera ab, damit das Auge am Sucher bleibt.',
    'Dunkeln Sie den Raum ab und schirmen Sie den Sucher seitlich ab.',
  ],
  'band drifts': [
    'Warten Sie zehn Minuten mit eingeschalteter Kamera, bis Gehäuse und Objektiv warm sind, dann machen Sie noch einen Durchlauf.',
    'Halten Sie Heizung, Sonne und Luftzug von Kamera, Stativ und Tafel fern.',
    'Stellen Sie die Mitte nur dann fest ein, wenn es sein muss. Sie wandert weiter.',
  ],
  play: [
    'Gehen Sie auf jeden Wert von derselben Seite zu, notfalls über ihn hinaus und zurück.',
    'Gehen Sie auch auf den Wert, den Sie fest einstellen, von dieser Seite zu.',
    'Prüfen Sie, ob Bajonett und Konverter fest sitzen.',
  ],
  'sweeps differ': [
    'Vergleichen Sie die Notizen: Andere Entfernung, Tafel oder Beleuchtung ergibt einen anderen Wert.',
    'Prüfen Sie, ob beide Male im Livebild gleich genau scharfgestellt war und niemand den Ring berührt hat.',
    'Vergleichen Sie die Temperaturen und denken Sie an einen Stoß, neue Firmware oder eine Wartung dazwischen.',
    'Messen Sie noch einmal, bis beide Enden gesehen sind, und richten Sie sich nach den Durchläufen, die übereinstimmen.',
  ],
};
