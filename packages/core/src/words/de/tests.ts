import type { CoreWords } from "../core-words.ts";

const WARM = "Motor ganz warm: sanft gefahren, bis das Kühlmittel seine Betriebstemperatur hat.";
const MARKS =
  "Griff markieren: Klebeband auf dem festen Gehäuse und Striche bei 1/8, 1/4, 1/2, 3/4 und voll, nach dem Hub des Schiebers, nicht nach dem Drehwinkel.";
const THREE_TIMES = "Dreimal machen, gleicher Ort, gleicher Gang, und eintragen, was es meistens tat.";

const ROLL_ON_STEPS = [
  WARM,
  MARKS,
  "2. oder 3. Gang, niedrige Drehzahl, bergauf, wenn es einen Hang gibt: bis zur Marke aufziehen und 3 bis 5 s halten.",
  THREE_TIMES,
  "Beim ersten Klingeln Gas weg und den Test beenden.",
];
const PLUG_OUTCOMES = {
  white: "Weiß oder glasig",
  tan: "Rehbraun",
  black: "Trocken, rußig schwarz",
  specks: "Graue Körnchen oder Metallperlen",
};
const PLUG_STEPS = [
  "Mit einer alten Kerze warmfahren, dann eine neue mit richtigem Wärmewert einsetzen.",
  "Gleichmäßig mit dem gewählten Gas unter Last fahren, lange genug, dass sie Farbe bekommt; Quellen nennen einen knappen Kilometer bis mehrere Minuten.",
  "Ohne das Gas zu schließen im selben Moment Kupplung ziehen und Motor aus. Nicht im Leerlauf laufen lassen. Ausrollen.",
  "Kerze heraus, den Isolator mit Licht und Lupe ansehen, dann die alte Kerze wieder hinein.",
];
const PLUG_TOOLS = ["neue Kerze", "Kerzenschlüssel", "Lupe und Taschenlampe", "Handschuhe"];
const ONE_STEP_OUTCOMES = { better: "Besser", same: "Gleich", worse: "Schlechter" };
const ONE_STEP_STEPS = [
  WARM,
  MARKS,
  "Die Fahrt machen, die den Fehler zeigt. Eine Sache um einen Schritt zu mehr Kraftstoff ändern: nahe zu die kleine Schraube eine Viertelumdrehung (Luftschraube hinein, Gemischschraube heraus), in der Mitte den Clip eine Kerbe tiefer, oben die Hauptdüse eine Nummer größer.",
  "Dieselbe Fahrt noch einmal: besser, gleich oder schlechter? Am besten baut ein Helfer es ungesehen ein.",
  "Zurückstellen, wenn es nicht besser ist. Die Antwort zu der Einstellung vor dem Schritt eintragen.",
];
const ONE_STEP_TOOLS = [
  "Kreuzschlitz-Schraubendreher Gr. 2 und Schlitz-Schraubendreher",
  "Innensechskant 3 mm",
  "Gabelschlüssel 14 oder 17 mm für die Ablassschraube",
  "nächste Düsengröße",
];
const SWEEP_OUTCOMES = {
  middle: "Am besten zwischen etwa 1 und 2½ Umdrehungen",
  "nearly-closed": "Am besten fast zu, unter 1 Umdrehung",
  "far-out": "Am besten weit draußen, über 2½ bis 3 Umdrehungen",
  "no-difference": "Nirgends ein Unterschied",
};
const SWEEP_STEPS = [
  WARM,
  "Etwa 1 mm Spiel am Zug. Leerlauf mit der Anschlagschraube etwas anheben (ein Vergaserhersteller: etwa 1400 in der Minute beim Zweitakter, 1200 beim Viertakter).",
  "Umdrehungen von jetzt bis leicht aufsitzend zählen und aufschreiben. Die Schraube nie auf ihren Sitz zwingen.",
  "Bei 1½ Umdrehungen offen anfangen. Jeweils eine Viertelumdrehung verstellen und 10 bis 20 s warten.",
  "Suchen, wo die Drehzahl am höchsten und ruhigsten ist, den Leerlauf mit der Anschlagschraube senken und noch einmal suchen. Umdrehungen aufschreiben.",
];
const SWEEP_TOOLS = ["Schlitz-Schraubendreher", "Drehzahlmesser, wo es einen gibt"];
const GRIP_TOOLS = ["Klebeband und Lackstift"];

/** What can be done to the running engine: the heading, the steps in order, and what may happen, as on a button. */
export const tests: CoreWords["tests"] = {
  "idle-hold": {
    words: "Eine Minute im Leerlauf lassen",
    outcomes: {
      steady: "Ruhig die ganze Minute",
      "loads-up": "Wird langsamer, fetter, geht aus oder fast",
      hunts: "Wandert auf und ab",
      "will-not": "Hält gar keinen Leerlauf",
    },
    steps: [
      WARM,
      "Im Freien stehend, Leerlauf eingelegt, 60 s Hände weg.",
      "Dann ein kurzer Gasstoß: Wird er mit Blubbern und Rauch frei?",
    ],
    tools: ["Stoppuhr"],
  },
  "chop-warm": {
    words: "Gas aus mittlerer Drehzahl schließen, warm",
    outcomes: {
      straight: "Fällt sofort auf Leerlauf",
      hangs: "Bleibt über Leerlauf hängen, fällt spät",
      dives: "Taucht unter den Leerlauf, kommt zurück",
      stalls: "Geht aus",
    },
    steps: [
      WARM,
      "Leerlauf eingelegt. Die Drehzahl sanft bis etwa zur Mitte bringen und auf einmal loslassen.",
      "Zeit zählen, bis er wieder im Leerlauf ist: 0,8 bis 1,5 s ist gut, mit schwerer Schwungmasse 2 s; eine Sekunde mehr ist Hängenbleiben.",
      THREE_TIMES,
    ],
    tools: ["Stoppuhr"],
  },
  "chop-hot": {
    words: "Gas noch einmal heiß schließen, nach einer harten Runde",
    outcomes: {
      "no-hang": "Kein Hängen, warm oder heiß",
      same: "Hängt so lange wie warm",
      grows: "Hängt eine halbe Sekunde länger oder mehr",
      "only-hot": "Hängt erst jetzt, wo er heiß ist",
    },
    steps: [
      "Das Schließen warm stoppen, dreimal, und aufschreiben.",
      "Eine harte Runde fahren, direkt hereinkommen und innerhalb einer Minute wieder stoppen.",
      "Eine halbe Sekunde länger oder mehr heißt, es wächst.",
    ],
    tools: ["Stoppuhr"],
  },
  "quick-opening": {
    words: "Aus geschlossenem Gas aufreißen",
    outcomes: {
      crisp: "Sofort da, knackig",
      bog: "Hohles Schnappen, still, kein Rauch",
      stumble: "Gurgelt und raucht, wird mit Drehzahl frei",
      switch: "Nichts, dann ein plötzlicher Schlag",
    },
    steps: [
      WARM,
      "20 s Leerlauf, bis zur oben genannten Öffnung aufreißen (1/4, wenn keine genannt ist) und zurück.",
      "Auf den Schalldämpfer sehen: Rauch oder keiner?",
      THREE_TIMES,
    ],
    tools: [],
  },
  "slow-versus-fast-opening": {
    words: "Schnell öffnen, dann dasselbe langsam",
    outcomes: {
      "both-clean": "Beide Male sauber",
      "fast-only": "Schnell verschluckt er sich, langsam ist er sauber",
      "both-bog": "Verschluckt sich beide Male",
    },
    steps: [
      WARM,
      "Von zu auf 1/2, so schnell die Hand kann, dreimal.",
      "Dann dasselbe über zwei Sekunden aufgezogen, dreimal.",
    ],
    tools: [],
  },
  "touch-of-choke": {
    words: "Etwas Choke geben",
    outcomes: { better: "Besser", worse: "Schlechter, oder geht aus", "no-change": "Kein Unterschied" },
    steps: [
      WARM,
      "Den Fehler zeigen lassen, auf dem Ständer oder langsam fahrend, bei halbem Gas oder weniger.",
      "Den Choke nur einen Spalt öffnen; kennt er nur an und aus, kurz antippen.",
      "Danach den Choke wieder ganz schließen.",
    ],
    tools: [],
  },
  "half-turn-for-the-hang": {
    words: "Eine halbe Umdrehung der kleinen Schraube gegen das Hängen",
    outcomes: { gone: "Hängen weg oder deutlich kürzer", same: "Hängt genauso lange" },
    steps: [
      "Warm, das Hängen dreimal gestoppt. Umdrehungen der Schraube aufschreiben.",
      "Eine halbe Umdrehung zu mehr Kraftstoff: Luftschraube (Filterseite) hinein, Gemischschraube (Motorseite) heraus.",
      "Leerlauf neu einstellen, dann noch dreimal stoppen.",
      "Die Schraube zurückstellen, wo sie war.",
    ],
    tools: ["Schlitz-Schraubendreher", "Stoppuhr"],
  },
  "screw-sweep-air": {
    words: "Mit der Luftschraube den besten Leerlauf suchen",
    outcomes: SWEEP_OUTCOMES,
    steps: [
      "Luftschraube: auf der Filterseite des Schiebers. Heraus ist mehr Luft, also weniger Kraftstoff.",
      ...SWEEP_STEPS,
    ],
    tools: SWEEP_TOOLS,
  },
  "screw-sweep-fuel": {
    words: "Mit der Gemischschraube den besten Leerlauf suchen",
    outcomes: SWEEP_OUTCOMES,
    steps: ["Gemischschraube: auf der Motorseite des Schiebers. Heraus ist mehr Kraftstoff.", ...SWEEP_STEPS],
    tools: SWEEP_TOOLS,
  },
  "tap-off-run-down": {
    words: "Hahn zu und leer laufen lassen",
    outcomes: { clears: "Wird frei, kurz bevor er ausgeht", "no-clearing": "Nicht besser, bevor er ausgeht" },
    steps: [
      WARM,
      "Den Fehler bei halbem Gas oder weniger zeigen lassen, dann den Hahn zu und dort halten.",
      "Auf die letzten Sekunden hören: Wird er schärfer oder verhungert er nur?",
      "Gas zu, sobald er verhungert, Hahn wieder auf. Nie bei drei Viertel oder mehr: Dort geht ihm unter voller Last der Kraftstoff aus.",
    ],
    tools: [],
  },
  "roll-on": {
    words: "Aufziehen und ruhig halten",
    outcomes: {
      smooth: "Zieht sauber",
      burbles: "Viertaktet: halber Takt, weich",
      jerks: "Ruckelt oder pendelt",
      hollow: "Dreht, aber zieht nicht, hohl",
      pings: "Klingelt",
    },
    steps: ROLL_ON_STEPS,
    tools: GRIP_TOOLS,
  },
  "roll-on-four-stroke": {
    words: "Aufziehen und ruhig halten",
    outcomes: {
      smooth: "Zieht sauber",
      lazy: "Träge, stumpf, riecht nach Benzin",
      jerks: "Ruckelt oder pendelt",
      hollow: "Dreht, aber zieht nicht, hohl",
      pings: "Klingelt",
    },
    steps: ROLL_ON_STEPS,
    tools: GRIP_TOOLS,
  },
  "full-pull": {
    words: "Ein paar Sekunden voll aufhalten",
    outcomes: {
      clean: "Zieht sauber bis oben",
      rough: "Zäh, rau, dreht nicht aus",
      fades: "Stark, lässt dann nach; nach dem Schließen wieder da",
      cuts: "Geht aus, als wäre der Hahn zu",
      thin: "Dreht immer weiter, dünn und scharf",
      tearing: "Metallischer, reißender Ton",
    },
    steps: [
      WARM,
      "3. oder 4. Gang, unter Last: 3 bis 5 s Vollgas, zwei Finger an der Kupplung.",
      "Sanft schließen. Bei jedem Klingeln oder reißenden Ton sofort schließen und nicht wiederholen.",
      THREE_TIMES,
    ],
    tools: [],
  },
  "roll-off": {
    words: "Vom Vollgas zurückdrehen",
    outcomes: {
      "picks-up": "Zieht beim Nachlassen auf 7/8 stärker",
      "tiny-cut": "Viertaktet nach einer Haaresbreite",
      "at-80": "Viertaktet etwas bei etwa 80 %",
      never: "Viertaktet nie",
    },
    steps: [
      WARM,
      MARKS,
      "Hoher Gang, ebener Boden, Vollgas unter Last für 3 bis 5 s.",
      "Langsam auf 7/8 zurück, dann auf etwa 80 %, und die ganze Zeit hinhören.",
      THREE_TIMES,
    ],
    tools: GRIP_TOOLS,
  },
  "roll-off-four-stroke": {
    words: "Vom Vollgas zurückdrehen",
    outcomes: { "picks-up": "Zieht beim Nachlassen auf 7/8 stärker", eases: "Zieht nur etwas weniger" },
    steps: [
      WARM,
      MARKS,
      "Hoher Gang, ebener Boden, Vollgas unter Last für 3 bis 5 s.",
      "Langsam auf 7/8 zurück und spüren, ob er stärker zieht.",
      THREE_TIMES,
    ],
    tools: GRIP_TOOLS,
  },
  "choke-flick-at-full": {
    words: "Bei Vollgas den Choke antippen",
    outcomes: {
      higher: "Drehzahl geht höher, bevor sie sich setzt",
      lower: "Drehzahl kommt niedriger zurück",
      "no-change": "Kein Unterschied",
    },
    steps: [
      "Nur für geübte Hände, auf einer langen gesperrten Geraden, und nur, wo der Choke erreichbar ist, ohne die Kontrolle über den Lenker aufzugeben.",
      WARM,
      "Vollgas, hoher Gang, dann den Choke einen Augenblick auf und zu.",
      THREE_TIMES,
    ],
    tools: ["Drehzahlmesser"],
  },
  "plug-look-part": {
    words: "Kerzenbild nach gleichmäßiger Fahrt",
    outcomes: PLUG_OUTCOMES,
    steps: PLUG_STEPS,
    tools: PLUG_TOOLS,
  },
  "plug-look-full": {
    words: "Kerzenbild nach Vollgasfahrt",
    outcomes: PLUG_OUTCOMES,
    steps: [
      "Erst, wenn die Hauptdüse bekanntermaßen auf der Seite mit mehr Kraftstoff liegt. Nur auf gesperrter Strecke.",
      ...PLUG_STEPS,
    ],
    tools: PLUG_TOOLS,
  },
  "one-step-more-fuel": {
    words: "Einen Schritt mehr Kraftstoff versuchen",
    outcomes: ONE_STEP_OUTCOMES,
    steps: ONE_STEP_STEPS,
    tools: ONE_STEP_TOOLS,
  },
  "one-step-more-fuel-top": {
    words: "Eine Nummer größere Hauptdüse versuchen",
    outcomes: ONE_STEP_OUTCOMES,
    steps: ONE_STEP_STEPS,
    tools: ONE_STEP_TOOLS,
  },
  "best-known-setting": {
    words: "Zurück auf die beste bekannte Einstellung",
    outcomes: { stays: "Fehler bleibt", gone: "Fehler weg" },
    steps: [
      "Jedes Teil der Einstellung einbauen, mit der er gut lief, in ähnlicher Luft wie damals.",
      WARM,
      "Die Fahrt machen, die den Fehler zeigt. Die Antwort zu der Einstellung eintragen, mit der der Fehler kam.",
    ],
    tools: ONE_STEP_TOOLS,
  },
};
