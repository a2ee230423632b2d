// What people say to each other beside a camera, in German: none of it is meant for the panel.
export const TALK: readonly string[] = `
Was machst du heute Abend?
Wie spät ist es eigentlich?
Es wird langsam spät, ich muss nach Hause.
Der Zug hatte schon wieder Verspätung.
Bis später!
Bis gleich!
Ich komme gleich.
Gleich geschafft.
Na, alles klar bei euch?
Ja, genau.
Nein, danke.
Das ist ja toll.
Das stimmt.
Moment mal bitte.
Warte mal kurz.
Kannst du mir mal den Schraubendreher geben?
Hast du die Schlüssel gesehen?
Mach bitte das Licht an.
Mach mal die Tür zu.
Das Fenster ist noch offen.
Hier ist es ganz schön warm.
Es regnet schon seit heute Morgen.
Draußen sind minus zehn Grad.
Zwei plus zwei ist vier.
Das kostet zwanzig Euro, plus Versand.
Plus minus null, würde ich sagen.
Das hat mehr Vorteile als Nachteile.
Soll ich uns einen Kaffee holen?
Für mich bitte mit Milch.
Der Kaffee ist schon wieder kalt.
Gehen wir nachher etwas essen?
Ich hätte gern eine Pizza mit Pilzen.
Da musst du rechts abbiegen und dann immer geradeaus.
An der nächsten Ampel links.
Rechts neben der Tür steht eine Kiste.
Das ist mir nicht recht.
Da hast du recht.
Mit links.
Nächste Woche habe ich Urlaub.
Wer ist der Nächste?
Das nächste Mal nehmen wir den Bus.
Wann kommst du zurück?
Ich rufe dich zurück.
Weiter so!
Und so weiter.
Das hilft mir auch nicht weiter.
Ich kann dir leider nicht helfen.
Wir haben uns lange nicht gesehen.
Wir machen um zwölf Pause.
In der Pause war ich draußen.
Er ist gestern gestürzt und hat sich die Hand gebrochen.
Der Termin wurde auf Montag verschoben.
Wir müssen den Termin verschieben.
Das Paket ist immer noch nicht da.
Hat jemand das Paket angenommen?
Ich nehme an, das reicht.
Die Waage war falsch eingestellt.
Sie haben zwei neue Leute eingestellt.
Das lohnt sich nicht.
Das ist die Mühe wert.
Was ist das wert?
Der Wert ist gestiegen.
Nicht der Rede wert.
Ich hab das schon einmal gehört.
Das war doch nur ein Scherz.
Noch ein Stück Kuchen?
Noch eine Frage.
Einmal noch, dann gehen wir.
Das ist mir egal.
Keine Ahnung.
Keine Sorge, das wird schon.
Nichts für ungut.
Nichts zu danken.
Macht nichts.
Das macht doch nichts.
Ich habe nichts gesagt.
Da kann man nichts machen.
Halt dich fest.
Halt mal das Stativ.
Haltet euch bereit.
Hältst du das mal kurz?
Das ist halt so.
Ich habe auf den falschen Knopf gedrückt.
Der Text ist schlecht gedruckt.
Bist du verrückt?
So ein Glück!
Im Dunkeln sieht man das besser.
Es wird schon dunkel draußen.
Die Wand ist dunkelblau.
Die Kerze flackert im Wind.
Der Tisch wackelt.
Der Tisch steht schief.
Das ist ungerecht.
Das ist gleich um die Ecke.
Das ist mir völlig gleich.
Die Leiter steht nicht stabil genug.
Die Akkus sind fast leer.
Ist die Speicherkarte voll?
Wo ist der Objektivdeckel?
Nimm lieber das Stativ aus Karbon.
Die Kamera liegt auf dem Tisch.
Das Bild ist ein bisschen unscharf.
Der Hintergrund gefällt mir nicht.
Wie viele Bilder hast du gemacht?
Hast du die Fotos schon gelöscht?
Das habe ich gestern Abend im Fernsehen gesehen.
Da fehlt noch eine Schraube.
Das lassen wir einfach weg.
Lass das mal lieber.
Das haben wir ausgelassen gefeiert.
Spring nicht so herum!
Ich bin gleich fertig.
Bist du fertig?
Fertig ist die Laube.
Schluss für heute.
Am Ende ist alles gut.
Wir sind am Ende.
Such dir eins aus.
Ich suche meine Brille.
Suchst du etwas?
Schau mal, wer da ist.
Schau nicht so.
Was war das denn?
Was ist denn los?
Zeig mal her.
Was war gestern?
Wie war dein Urlaub?
Was ist mit dir?
Finde ich gut.
Siehst du?
Setz dich doch.
Stell das bitte da hin.
Leg das auf den Tisch.
Auf Wiedersehen!
Guten Morgen zusammen.
Gute Nacht.
Gesundheit!
Entschuldigung.
Tut mir leid.
Wie bitte?
Ach so.
Aha.
Na ja.
Hm.
Okay.
Danke schön.
Acht Uhr.
Um sieben.
Drei Stück.
Fünf Minuten noch.
Zwanzig Prozent.
Zum Wohl!
Das Telefon klingelt.
Da ist jemand an der Tür.
Hörst du das auch?
Mein Rücken tut weh.
Das muss ich mir aufschreiben.
Die Preise sind wieder gestiegen.
Der Rückgang ist deutlich.
Ich mache mich dann mal auf den Weg.
`
  .trim()
  .split('\n');
