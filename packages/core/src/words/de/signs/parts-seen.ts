import type { SignTexts } from "../../core-words.ts";

const CLEAN_CUT = "Neue Kerze, bei einem Gas gehalten, dort sauber abgestellt";
const DEEP = "Kerze aufgeschnitten oder Lupe, etwa 10-fach";
const CROWN = "Kolbenboden durch Kerzenloch oder Auslass gesehen, oder Kopf ab";

/** What plug and piston show. */
export const partsSeen: SignTexts<"parts-seen"> = {
  "plug-nose-white": {
    words: "Kerzenisolator weiß oder glasig",
    description: "Das Porzellan um die Mittelelektrode ist knochenweiß oder glänzt, keine Spur von Farbe.",
    notToBeTakenFor: "Eine nagelneue Kerze, die zu kurz lief.",
    when: CLEAN_CUT,
  },
  "plug-nose-dry-black": {
    words: "Kerzenisolator trocken und rußig schwarz",
    description: "Stumpfer schwarzer Ruß auf dem Porzellan, der am Finger abgeht.",
    notToBeTakenFor: "Ruß vom Leerlauf nach der Fahrt.",
    when: CLEAN_CUT,
  },
  "plug-nose-tan": {
    words: "Kerzenisolator rehbraun",
    description:
      "Eine gleichmäßige Keksfarbe auf dem Porzellan. Heutiger Kraftstoff und Öl können es blasser lassen.",
    when: CLEAN_CUT,
  },
  "mixture-ring-wide": {
    words: "Breiter dunkler Ring tief am Isolator",
    description:
      "Mit der Lupe tief hineingesehen: ein breites dunkles Band steigt vom Fuß des Porzellans auf.",
    when: DEEP,
  },
  "mixture-ring-thin": {
    words: "Dünner dunkler Ring ganz am Fuß des Isolators",
    description:
      "Mit der Lupe tief hineingesehen: ein schmaler dunkler Strich, genau wo das Porzellan ins Gehäuse geht.",
    when: DEEP,
  },
  "mixture-ring-none": {
    words: "Gar kein dunkler Ring am Isolator",
    description: "Mit der Lupe tief hineingesehen: das Porzellan ist bis zum Fuß hell.",
    notToBeTakenFor: "Eine frische Kerze, die zu kurz lief und auch nichts zeigt.",
    when: DEEP,
  },
  "plug-wet-and-oily": {
    words: "Kerze nass und ölig",
    description: "Schwarz und glänzend nass, sie lässt Öl an den Fingern.",
    notToBeTakenFor: "Nass von Benzin nach vielen Tritten: Das trocknet ab.",
    when: "Nach dem Fahren",
  },
  "specks-on-plug": {
    words: "Graue Körnchen oder winzige Metallperlen an der Kerze",
    description:
      "Aschgrauer Pfeffer oder winzige glänzende Kügelchen am Porzellan. Aufhören: Sie können vom Kolben kommen.",
    notToBeTakenFor: "Perlen von einem Ölzusatz glänzen auch; bis zum Beweis als Metall nehmen.",
    when: "Jedes Mal, wenn die Kerze draußen ist: aufhören",
  },
  "everyday-plug-dark": {
    words: "Alltagskerze dunkel, nicht sauber abgestellt",
    description:
      "Die Kerze, die immer drin war, ist dunkel. Sie mischt jede gefahrene Gasstellung und den Leerlauf am Ende.",
    when: "Kerze nach gewöhnlicher Fahrt ausgebaut",
  },
  "plug-same-whatever-the-jets": {
    words: "Kerze sieht mit jeder Düse gleich aus",
    description:
      "Zwei oder mehr Düsennummern auseinander, jeweils mit sauberer Kerze und derselben Fahrt, und die Farbe bleibt gleich.",
    when: "Mindestens zwei Düsengrößen verglichen",
  },
  "piston-wash-wide": {
    words: "Breite blanke Flächen am Kolbenboden",
    description: "Große Flecken sauberen blanken Metalls, wo das Frischgas einströmt.",
    notToBeTakenFor: "Ein neuer oder eben gereinigter Kolben.",
    when: CROWN,
  },
  "piston-wash-narrow": {
    words: "Schmale blanke Streifen am Kolbenboden",
    description: "Ein schmaler sauberer Metallstreifen an jedem Überströmer, der Rest gleichmäßig gefärbt.",
    notToBeTakenFor: "Ungleich große Streifen: Ein Kanal kann undicht oder verstopft sein.",
    when: CROWN,
  },
  "piston-wash-none": {
    words: "Kein blankes Metall am Kolbenboden",
    description: "Der Boden ist überall gefärbt, bis an die Überströmer.",
    when: CROWN,
  },
  "black-spot-under-crown": {
    words: "Harter schwarzer Fleck unter dem Kolbenboden",
    description:
      "Kolben draußen: Die Unterseite des Bodens trägt einen harten, eingebrannten schwarzen Ölfleck.",
    when: "Kolben draußen",
  },
  "crown-grey-edge-sand-blasted": {
    words: "Kolbenboden aschgrau, der Rand wie sandgestrahlt",
    description: "Der Boden ist hellgrau und trocken, der Rand gegenüber der Kerze narbig und rau.",
    when: "Kolben gesehen",
  },
  "piston-scuffed": {
    words: "Kolben an vier Stellen oder auf der Auslassseite angerieben",
    description:
      "Kolben draußen: graue verschmierte Streifen an vier Stellen oder auf der Auslassseite. Er hat geklemmt, wenn auch nur einen Augenblick.",
    notToBeTakenFor: "Kratzer von Schmutz, die rundum gehen.",
    when: "Kolben draußen: aufhören",
  },
  "sooty-plug-four-stroke": {
    words: "Kerze trocken und rußig",
    description: "Stumpfer trockener Ruß auf Porzellan und Gehäuse nach normaler Fahrt, nicht nass.",
    when: "Nach zehn Minuten Fahrt oder mehr mit dem gefragten Gas",
  },
};
