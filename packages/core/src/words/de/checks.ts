import type { CoreWords } from "../core-words.ts";

const SCREWDRIVERS = "Kreuzschlitz-Schraubendreher Gr. 2 und Schlitz-Schraubendreher";
const BOWL_SPANNER = "Gabelschlüssel 14 oder 17 mm für die Ablassschraube";
const BOWL_TOOLS = [SCREWDRIVERS, "Innensechskant 3 mm", BOWL_SPANNER];

/** Looks and measurements: the heading, the steps in order, and what to do when something is found. */
export const checks: CoreWords["checks"] = {
  "look-at-boots-and-clamps": {
    words: "Gummistutzen und Schellen ansehen",
    steps: [
      "Beide Gummistutzen mit der Hand unter der Lampe biegen und Risse suchen, vor allem an der Unterseite.",
      "Rundum prüfen, ob der Vergaser ganz im Stutzen sitzt und beide Schellen fest in ihren Nuten.",
      "Nach einem nassen oder staubigen Strich an den Verbindungen suchen, und an jeder Kappe auf einem Unterdruckstutzen.",
    ],
    tools: ["Taschenlampe", SCREWDRIVERS],
    mend: "Gerissenen Stutzen oder Kappe ersetzen, Vergaser ganz einsetzen, Schellen festziehen, dann die Fahrt wiederholen, die den Fehler zeigte.",
  },
  "idle-stop": {
    words: "Leerlaufanschlag einstellen",
    steps: [
      "Motor warm. Merk dir die Stellung der Anschlagschraube: Umdrehungen beim Verstellen zählen.",
      "Herausdrehen, bis der Leerlauf gerade sinkt, dann hinein bis zum Leerlauf des Herstellers (Gelände-Zweitakter mit 250 bis 300 etwa 1500 bis 1900 in der Minute).",
      "Gas zu und warm: Reagiert der Leerlauf in beide Richtungen, und reagiert die kleine Schraube wieder?",
    ],
    tools: [SCREWDRIVERS],
    mend: "Beim Leerlauf des Herstellers lassen. Hält er nur mit weit angehobenem Schieber, das Leerlaufsystem reinigen und Falschluft suchen.",
  },
  "tap-and-vents": {
    words: "Benzinhahn, Tankentlüftung und Schläuche prüfen",
    steps: [
      "Kraftstoffschlauch auf Knicke ansehen, den Filter darin auf Schmutz; Hahn ganz auf.",
      "Entlüftungsschlauch vom Tankdeckel ziehen und hineinblasen: Er muss Luft hineinlassen.",
      "Jeden Schlauch der Schwimmerkammer verfolgen: am Ende offen, nicht gequetscht, nicht unter dem Zug oder im Schlamm.",
    ],
    tools: ["Taschenlampe"],
    mend: "Reinigen oder ersetzen, was verstopft ist, Schläuche verlegen wie vorher und das lange Vollgas wiederholen.",
  },
  "overflow-drip": {
    words: "Hahn zwei Minuten auf: Tropft es?",
    steps: [
      "Motorrad aufrecht, Motor aus, ein trockener Lappen unter dem Überlaufschlauch.",
      "Hahn zwei Minuten auf. Einmal leicht mit dem Schraubendrehergriff an die Kammer klopfen.",
      "Lappen, Überlauf und Kammerdichtung ansehen.",
    ],
    tools: ["Lappen", SCREWDRIVERS],
    mend: "Ventil reinigen; ist es dann noch undicht, Nadel und Sitz zusammen ersetzen, danach den Schwimmerstand einstellen.",
  },
  "air-filter": {
    words: "Luftfilter ansehen",
    steps: [
      "Filter herausnehmen und gegen das Licht halten: Schmutz, tropfendes Öl, Löcher, eine offene Naht.",
      "Den Ansaugweg innen mit einem weißen Lappen auswischen: Staub dort heißt, dass er Schmutz durchlässt.",
      "Prüfen, ob er rundum anliegt und Ablauf und Deckel des Kastens so sind wie beim Fahren.",
    ],
    tools: ["weißer Lappen", "Taschenlampe"],
    mend: "Reinigen und ölen oder einen neuen einsetzen, Rand fetten und anlegen, und wieder fahren, bevor eine Düse angefasst wird.",
  },
  "slide-snap-and-cable": {
    words: "Schieber zuschnappen lassen und Zug prüfen",
    steps: [
      "Motor aus. Ganz auf und loslassen, Lenker gerade, links und rechts: Der Schieber muss jedes Mal hörbar anschlagen.",
      "Spiel fühlen: etwa 1 mm am Zug, 2 bis 4 mm am Rand des Griffs, wenn das Handbuch nichts anderes sagt.",
      "Im Zweifel Deckel ab: Schieber und Bohrung ohne Riefen und Absätze, Ausschnitt zum Filter, Nadelhalter fest, Feder heil.",
    ],
    tools: [SCREWDRIVERS, "Taschenlampe"],
    mend: "Zug gangbar machen, neu verlegen oder ersetzen; Schieber und Bohrung reinigen; verschlissenen Schieber ersetzen. Vor dem ersten Start wieder zuschnappen lassen.",
  },
  "fresh-fuel-and-oil": {
    words: "Ablassen und frischen Kraftstoff einfüllen",
    steps: [
      "Hahn zu, Motor kalt. Kammer in ein klares Glas entleeren: Wasser liegt in Perlen am Boden, Schmutz sieht man.",
      "Fragen, wie alt der Kraftstoff ist, welche Sorte und wie gemischt; mehr als ein Monat oder unbekannt gilt als schlecht.",
      "Tank und Kammer leeren, frischen Kraftstoff der Sorte und mit dem Ölanteil des Herstellers einfüllen und die Fahrt wiederholen.",
    ],
    tools: ["klares Glas", "benzinfester Kanister", SCREWDRIVERS, "Innensechskant 3 mm", BOWL_SPANNER],
    mend: "Bei frischem Kraftstoff bleiben; Hahnsieb und Kammer reinigen, wenn Wasser oder Schmutz da war.",
  },
  "fuel-flow": {
    words: "Kraftstofffluss messen",
    steps: [
      "Schlauch vom Vergaser ziehen und auf Höhe des Vergasers in einen Messbecher halten; Tankdeckel zu wie beim Fahren.",
      "Hahn zwei Minuten auf, nach jeder Minute den Becher ablesen.",
      "Etwa 250 ml in der Minute oder mehr reichen für eine 250 bis 300; diese Klasse verbraucht bei Vollgas etwa 150 bis 200 ml in der Minute. Kleinere Motoren brauchen weniger.",
      "Wird der Fluss in der zweiten Minute schwächer, kann der Tank nicht atmen.",
    ],
    tools: ["Messbecher", "Stoppuhr", "Zange"],
    mend: "Tankentlüftung, Hahn und Filter frei machen, geknickten oder gequollenen Schlauch ersetzen und wieder messen.",
  },
  "choke-plunger": {
    words: "Prüfen, ob der Choke schließt",
    steps: [
      "Choke aus: Knopf oder Hebel ganz in Ruhe, mit Spiel, wo ein Zug ist.",
      "Chokeschieber ausbauen: Gummifläche sauber, nicht eingekerbt oder gequollen, Feder heil, Sitz ohne Schmutz.",
      "Wieder einbauen, ein paarmal betätigen: Er muss von selbst zurückschnappen.",
    ],
    tools: [SCREWDRIVERS, "Gabelschlüssel 14 mm", "Taschenlampe"],
    mend: "Sitz reinigen, Chokeschieber oder Feder ersetzen, dem Zug Spiel geben.",
  },
  "spark-and-plug": {
    words: "Kerze, Stecker, Kabel und Funken prüfen",
    steps: [
      "War die Kerze fest? Ihre Nummer mit dem Handbuch vergleichen, den Elektrodenabstand messen.",
      "Stecker und Kabel: keine Risse, kein grüner Draht, fest auf der Kerze.",
      "Funkentester ans Kabel, Körper an Masse, weg von jedem Kraftstoff: Ein kräftiger blauer Funke muss die Strecke überspringen (ein Hersteller verlangt mehr als 6 mm).",
      "Eine neue Kerze mit der richtigen Nummer einsetzen und fahren. Ein schwacher Funke versagt zuerst unter Last, darum beweist ein guter Funke auf der Werkbank wenig.",
    ],
    tools: ["Kerzenschlüssel", "Fühlerlehre", "Funkentester", "neue Kerze"],
    mend: "Neue Kerze mit der richtigen Nummer, Stecker oder Kabel; setzt er unter Last weiter aus, Spule, Stator und Zündzeitpunkt prüfen lassen.",
  },
  "ignition-timing": {
    words: "Zündzeitpunkt prüfen",
    steps: [
      "Deckel ab: Keil des Polrads heil, Markierungen wie im Handbuch, Grundplatte fest.",
      "Mit Stroboskop oder Messuhr im Kerzenloch mit dem Wert des Handbuchs vergleichen.",
      "Wicklungen von Spule und Stator nach Handbuch messen, kalt und noch einmal heiß.",
    ],
    tools: ["Messuhr oder Stroboskop", "Multimeter", "Polradabzieher"],
    mend: "Zeitpunkt einstellen, Keil, Spule oder Stator ersetzen.",
  },
  "head-and-plug-tight": {
    words: "Kopfschrauben und Kerze auf festen Sitz prüfen",
    steps: [
      "Motor kalt. Zuerst die Kerze: Sie darf sich nicht leicht drehen.",
      "Kopf- und Fußdichtung nach Öl, Ruß oder Kühlmittel absuchen.",
      "Jede Mutter an Kopf und Fuß mit dem Drehmomentschlüssel prüfen, über Kreuz, mit dem Wert des Handbuchs.",
    ],
    tools: ["Drehmomentschlüssel", "Nüsse", "Kerzenschlüssel"],
    mend: "Über Kreuz mit dem Wert des Handbuchs anziehen; eine durchgeblasene Dichtung wird ersetzt und die Fläche auf Ebenheit geprüft.",
  },
  cooling: {
    words: "Kühlung prüfen",
    steps: [
      "Motor kalt: Kühlmittel bis zur Marke, Deckeldichtung weich und heil, Schläuche fest.",
      "Rippen von Kühler oder Zylinder gerade und frei von Schlamm.",
      "Kalt mit offenem Deckel laufen lassen: Das Kühlmittel muss strömen; stetige Blasen heißen Gas aus der Kopfdichtung.",
    ],
    tools: ["Wasser und weiche Bürste", "Taschenlampe"],
    mend: "Auffüllen und entlüften, Rippen reinigen, Deckel, Schlauch oder Pumpendichtung ersetzen; Blasen heißen Kopfdichtung.",
  },
  compression: {
    words: "Kompression messen",
    steps: [
      "Motor warm, Prüfer im Kerzenloch, Notaus betätigt, Gas ganz offen halten.",
      "Fünf bis zehn Tritte, bis der Zeiger stehen bleibt. Wiederholen.",
      "Ein frischer Zweitakter mit 250 zeigt etwa 175 bis 200 psi (12 bis 14 bar) oder mehr, eine 125 oder eine kleine 150 bis 200 (10 bis 14). Mehr als 20 % unter dem Neuwert dieses Motors heißt Ringe. Der Wert des Handbuchs geht vor, und eine Dekompression zeigt zu wenig.",
      "Das ist kein Dichtheitstest des Kurbelgehäuses.",
    ],
    tools: ["Kompressionsprüfer", "Kerzenschlüssel"],
    mend: "Ringe und Kolben, Zylinder vermessen; beim Viertakter zuerst die Ventile.",
  },
  "gearbox-oil-and-smoke": {
    words: "Getriebeöl und Rauch prüfen",
    steps: [
      "Getriebeöl ablassen und messen: deutlich weniger als eingefüllt, ohne Tropfen außen, ist das Zeichen.",
      "Am Öl riechen: Benzin darin heißt, dass der Dichtring in beide Richtungen durchlässt.",
      "Warmer Motor im Freien: gleichmäßiger Rauch, der sich mit dem Ölanteil des Kraftstoffs nicht ändert.",
    ],
    tools: ["Messbecher", "Schlüssel", "Auffangschale"],
    mend: "Kurbelwellendichtring auf der Getriebeseite erneuern (und sein Lager, wenn es Spiel hat), dann Drucktest.",
  },
  "clean-pilot": {
    words: "Leerlaufdüse und ihre Bohrungen reinigen",
    steps: [
      "Hahn zu, Kammer entleert und ab. Umdrehungen der kleinen Schraube bis leicht aufsitzend zählen, aufschreiben, Schraube, Feder, Scheibe und O-Ring heraus.",
      "Leerlaufdüse mit einem schmalen Schlitz-Schraubendreher heraus, der den Schlitz ausfüllt. Gegen das Licht halten: ein sauberes rundes Loch.",
      "Lösemittel, dann Luft durch Düse, Schraubenbohrung und die kleinen Löcher auf der Motorseite des Schiebers; jedes muss frei sprühen.",
      "Zusammenbauen, Schraube auf die aufgeschriebenen Umdrehungen.",
    ],
    tools: [
      ...BOWL_TOOLS,
      "schmaler Schlitz-Schraubendreher",
      "Vergaserreiniger",
      "Luft mit geringem Druck",
      "Taschenlampe",
    ],
    mend: "Was herauskam, sagt es: Schmutz heißt, auch Tank, Hahn und Filter reinigen. Eine Düse, die nicht frei wird, durch dieselbe Nummer ersetzen.",
  },
  "float-height": {
    words: "Schwimmerstand messen",
    steps: [
      "Kammer ab. Vergaser kippen, bis die Zunge den Ventilstift gerade berührt, ohne seine Feder zu drücken.",
      "Von der Dichtfläche zum Schwimmer messen, beide Seiten, gegen den Wert dieses Modells im Handbuch.",
      "Oder eingebaut und laufend, mit einem klaren Schlauch vom Ablass neben der Kammer: Der Kraftstoff muss an der Marke des Herstellers stehen.",
      "Ventilspitze: ein eingelaufener Ring heißt undicht. Schwimmer schütteln: Er muss innen trocken sein.",
    ],
    tools: [...BOWL_TOOLS, "Messschieber oder Schwimmerlehre", "klarer Schlauch"],
    mend: "Die Zunge in kleinen Schritten auf den Wert biegen; verschlissenes Ventil mit Sitz ersetzen, ebenso einen schweren Schwimmer.",
  },
  "measure-needle-and-jet": {
    words: "Düsennadel und Nadeldüse messen",
    steps: [
      "Schieber heraus, Nadel heraus, Kerbe des Clips aufschreiben. Nadeldüse heraus, wo es geht.",
      "Die Nadel unter der Lupe ansehen: Flächen, blanke Streifen, ein Absatz, wo sie läuft.",
      "Mikrometerschraube am geraden Teil, in vier Drehstellungen: 0,01 mm unrund oder unter Neumaß zählt schon (etwa 3 bis 5 % Kraftstoff bei 1/4).",
      "Nadeldüse: Prüfstifte, oder eine neue daneben unter der Lupe; ein ovales Loch ist verschlissen.",
    ],
    tools: [...BOWL_TOOLS, "Mikrometerschraube", "Prüfstifte", "Lupe"],
    mend: "Düsennadel und Nadeldüse zusammen neu, gleiche Typen; dann den Clip von der Mitte aus neu beurteilen.",
  },
  reeds: {
    words: "Membranen ansehen",
    steps: [
      "Vergaser und Stutzen ab, Membranblock heraus; den Einlass mit einem sauberen Lappen verschließen.",
      "Den Block gegen das Licht halten: kein Licht an den Zungen vorbei über das Maß des Handbuchs, keine Ausbrüche, keine Risse, keine ausgefransten Ecken.",
      "Jede Zunge drücken: gleiche Spannung auf beiden Seiten. Anschlagbleche fest.",
    ],
    tools: [SCREWDRIVERS, "Innensechskantschlüssel", "Taschenlampe", "sauberer Lappen"],
    mend: "Neue Zungen als Satz, und die Dichtung; vor dem Schließen jedes abgebrochene Stück finden, es kann im Kurbelgehäuse liegen.",
  },
  "exhaust-and-silencer": {
    words: "Auspuff, Verbindung und Schalldämpfer prüfen",
    steps: [
      "Auspuff kalt. Verbindung am Zylinder: Ruß oder Öl außen heißt undicht.",
      "Schalldämpfer ab: durch den Kern sehen, klopfen, in der Hand wiegen; vollgesogene oder ausgeblasene Wolle ist schwer oder klappert.",
      "Auspuff: Dellen am Krümmer, Ölkohle im Endrohr und am Auslass.",
      "Eine kurze Fahrt mit einem anderen Schalldämpfer derselben Art sagt am meisten.",
    ],
    tools: ["Federhaken", "Schlüssel", "Taschenlampe"],
    mend: "Schalldämpfer neu stopfen oder ersetzen, Ölkohle entfernen, Auspuff richten oder ersetzen, neue Dichtringe.",
  },
  "power-valve": {
    words: "Prüfen, ob sich die Auslasssteuerung bewegt",
    steps: [
      "Deckel ab: Das Gestänge muss sich von Hand bis zu beiden Enden bewegen und zurückfedern.",
      "Wo man es sieht: zusehen, während der Motor aus dem Leerlauf einen Gasstoß bekommt: Sie muss öffnen und schließen.",
      "Schwergängig: ausbauen, Ölkohle abkratzen, nach gebrochenen Stiften sehen.",
    ],
    tools: ["Innensechskantschlüssel", "Lösemittel", "weicher Schaber", "Taschenlampe"],
    mend: "Reinigen, verschlissene Stifte und Dichtungen ersetzen, Gestänge nach Handbuch einstellen.",
  },
  "spray-joints": {
    words: "Mit Gas oder Seifenwasser an den Verbindungen nach Falschluft suchen",
    steps: [
      "Motor im Leerlauf, nur warm, im Freien, Feuerlöscher zur Hand. Ein Helfer am Notaus.",
      "Seifenwasser, oder mit Vorsicht unverbranntes Propan aus einem Schlauch, an Stutzen, Fußdichtung und Unterdruckkappen, eine Stelle nach der anderen.",
      "Steigt oder fällt die Drehzahl an einer Stelle jedes Mal, ist dort das Leck. Einen Dichtring hinter dem Polrad erreicht man so nicht.",
    ],
    tools: ["Sprühflasche mit Seifenwasser", "oder Propan mit Schlauch", "Feuerlöscher"],
    mend: "Die Stelle abdichten, die reagiert hat; hat keine reagiert und er bleibt hängen, Drucktest machen.",
  },
  "pressure-test": {
    words: "Drucktest des Kurbelgehäuses",
    steps: [
      "Zuerst das Handbuch, wenn es einen Wert nennt. Den Tester allein prüfen, vor dem Motor.",
      "Auslass und Einlass verschließen, Kolben unten, Kerze eingeschraubt.",
      "Auf 6 psi (0,41 bar) pumpen und 6 Minuten beobachten. Quellen nennen 5 bis 9 psi (0,34 bis 0,62 bar) für 3 bis 10 Minuten.",
      "Am besten gar kein Verlust. Die großzügigste Quelle erlaubt 1 psi (0,07 bar) in der Minute, die anderen ein halbes psi in 10 Minuten oder nichts.",
      "Fällt der Druck: Seifenwasser an Stutzen, Fuß, Kopf, Gehäusefuge, Kerze und den Dichtring hinter dem Polrad. Blasen aus der Getriebeentlüftung heißen Dichtring auf dieser Seite.",
    ],
    tools: [
      "Verschlussplatten oder Stopfen",
      "Handpumpe mit Manometer 0 bis 15 psi",
      "Seifenwasser",
      "Schlüssel",
    ],
    mend: "Dichtring, Dichtung oder Stutzen erneuern, der Blasen warf, und wieder testen, bevor eine Düse angefasst wird.",
  },
  "pump-timing": {
    words: "Beschleunigerpumpe prüfen",
    steps: [
      "Hahn zu, Ansaugstutzen ab, Kammer voll. Mit der Lampe hineinsehen, Augen weit zurück, und einmal von Hand Gas geben.",
      "Der Strahl muss sofort kommen, am Schieber vorbei, und so lange dauern, wie das Handbuch sagt; schief oder tröpfelnd heißt Schmutz.",
      "Schnelles und langsames Öffnen: Nur schnelles darf einen vollen Strahl geben.",
    ],
    tools: [SCREWDRIVERS, "Innensechskantschlüssel", "Taschenlampe"],
    mend: "Düse reinigen, Membran ersetzen, Zeitpunkt und Stange nach Handbuch einstellen, und erst dann an die Rücklaufdüse denken.",
  },
  "valve-clearance": {
    words: "Ventilspiel messen",
    steps: [
      "Motor kalt. Deckel ab, Kolben oben im Zünd-OT, Markierungen wie im Handbuch.",
      "Fühlerlehre unter jeden Nocken oder Kipphebel; jeden Wert aufschreiben.",
      "Mit dem Handbuch vergleichen. Eines, das seit dem letzten Mal enger wurde, schlägt sich in seinen Sitz ein.",
    ],
    tools: ["Fühlerlehre", "Innensechskantschlüssel", "Nüsse", "Schlüssel"],
    mend: "Nach Handbuch mit Plättchen oder Schraube einstellen; werden Ventile immer wieder enger, muss der Zylinderkopf zur Instandsetzung.",
  },
};
