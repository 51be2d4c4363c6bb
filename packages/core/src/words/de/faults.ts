import type { CoreWords } from "../core-words.ts";

/** Mechanical faults, named in the nominative, so that the name can stand after a colon or in brackets. */
export const faults: CoreWords["faults"] = {
  "air-leak": {
    words: "Falschluft",
    does: "Am Vergaser vorbei kommt Luft hinein: Im Leerlauf und bei wenig Gas läuft er mager, bleibt beim Schließen hängen, und heiß noch mehr.",
    touches: "zu bis 1/4, weniger, je weiter das Gas offen ist",
  },
  "blocked-pilot": {
    words: "eine verstopfte Leerlaufdüse oder Bohrung",
    does: "Schmutz hält Kraftstoff aus dem Leerlaufsystem: Er läuft schlecht oder gar nicht im Leerlauf und will den Choke.",
    touches: "zu bis 1/8",
  },
  "float-level": {
    words: "ein falscher Schwimmerstand",
    does: "Der Kraftstoff steht in der Kammer zu hoch oder zu tief: unten zu fett oder zu mager, und es ändert sich auf Wellen und an Hängen.",
    touches: "jede Öffnung, am meisten bei niedriger Drehzahl und an Hängen",
  },
  "float-valve": {
    words: "ein undichtes Schwimmernadelventil",
    does: "Das Ventil schließt nicht: Die Kammer läuft über, er säuft ab, tropft und läuft überall zu fett.",
    touches: "jede Öffnung, am meisten Leerlauf und Heißstart",
  },
  "fuel-supply": {
    words: "zu wenig Kraftstoff aus dem Tank",
    does: "Hahn, Tankentlüftung, Filter oder Schlauch lassen zu wenig durch: Sekunden lang gut bei Vollgas, dann lässt er nach oder geht aus.",
    touches: "langes Vollgas",
  },
  "choke-not-seating": {
    words: "ein Choke, der nicht ganz schließt",
    does: "Der Chokeschieber ist undicht oder sein Zug zu stramm: unter 1/4 zu viel Kraftstoff, er überfettet und verrußt Kerzen.",
    touches: "zu bis 1/4",
  },
  "air-filter": {
    words: "ein verschmutzter, nasser oder gerissener Luftfilter",
    does: "Verstopft drosselt er den Motor, am meisten bei Vollgas und hoher Drehzahl; gerissen lässt er den Leerlauf wandern und Schmutz hinein.",
    touches: "Vollgas bei hoher Drehzahl",
  },
  "slide-or-cable": {
    words: "ein klemmender Schieber oder Gaszug",
    does: "Der Schieber kommt nicht ganz herunter, hängt schief oder ist verschlissen: hoher oder wandernder Leerlauf, Hängenbleiben, Drehzahl, die von selbst steigt.",
    touches: "zu, und immer wenn das Gas geschlossen wird",
  },
  "worn-needle-and-jet": {
    words: "eine verschlissene Düsennadel und Nadeldüse",
    does: "Der Spalt zwischen ihnen ist größer geworden: fett von 1/8 bis 3/4, richtig bei Vollgas, mehr Verbrauch, und kein Clip behebt es.",
    touches: "1/8 bis 3/4",
  },
  reed: {
    words: "ausgebrochene oder müde Membranen",
    does: "Die Zungen schließen nicht: schlechtes Starten, Kraftstoffnebel vor dem Vergaser, unten schwach, hoher Leerlauf.",
    touches: "zu bis 1/2",
  },
  ignition: {
    words: "ein schwacher Funke oder ein falscher Zündzeitpunkt",
    does: "Er setzt aus und macht Kerzen nass oder schwarz, als bekäme er zu viel Kraftstoff, umso mehr, je härter er zieht; ein falscher Zeitpunkt lässt ihn klingeln.",
    touches: "unter Last, überall",
  },
  "plug-heat-range": {
    words: "eine Kerze mit falschem Wärmewert",
    does: "Die Kerze sieht schwarz oder weiß aus, egal welche Düsen, während Leistung und Klang gleich bleiben.",
    touches: "was die Kerze zeigt, nicht wie er läuft",
  },
  compression: {
    words: "zu wenig Kompression",
    does: "Verschlissene Ringe oder ein müder Zylinder: schwach, träge, heiß schwer zu starten, und es sieht aus wie zu viel Kraftstoff.",
    touches: "jede Öffnung",
  },
  "gearbox-side-seal": {
    words: "ein Kurbelwellendichtring, der Getriebeöl durchlässt",
    does: "Getriebeöl wird angesaugt und verbrannt: ständiger Rauch, ölige Kerzen, nasser Schalldämpfer, und das Getriebeöl wird weniger.",
    touches: "jede Öffnung, am meisten nach langem geschlossenem Gas",
  },
  "exhaust-blocked": {
    words: "ein verstopfter Auspuff oder Schalldämpfer",
    does: "Ölkohle oder zusammengefallene Dämmwolle hält das Gas zurück: oben zäh, heiß, und keine Düse behebt es.",
    touches: "3/4 bis voll",
  },
  "power-valve": {
    words: "eine klemmende Auslasssteuerung",
    does: "Klemmt sie offen, ist unten nichts los, klemmt sie zu, fehlt es oben; der Leistungssprung fehlt, und Düsen ändern ihn nicht.",
    touches: "nach Drehzahl, nicht nach Gas",
  },
  "fuel-or-oil-wrong": {
    words: "alter, nasser oder falscher Kraftstoff oder ein falsches Ölverhältnis",
    does: "Wasser, altes Benzin, zu wenig Oktan oder eine falsche Mischung: schlechtes Starten, Husten, Klingeln, egal welche Düsen.",
    touches: "jede Öffnung",
  },
  cooling: {
    words: "ein Fehler in der Kühlung",
    does: "Kühlmittel, Pumpe, Kühler oder Rippen führen die Hitze nicht ab: kalt stark, schwächer und klingelnd, wenn er heiß wird.",
    touches: "jede Öffnung, mit der Zeit mehr",
  },
  "loose-head": {
    words: "ein loser Zylinderkopf oder eine lose Kerze",
    does: "Gas entweicht an der Kopfdichtung oder am Kerzengewinde: schwach, heiß, verliert Kühlmittel und reagiert auf keine Düse.",
    touches: "jede Öffnung",
  },
  "idle-stop": {
    words: "eine falsch eingestellte Leerlaufanschlagschraube",
    does: "Der Schieber steht in Ruhe zu hoch oder zu tief: Er bleibt hängen und reagiert nicht auf die kleine Schraube, oder er taucht ab und geht aus.",
    touches: "zu",
  },
  "accelerator-pump": {
    words: "eine Beschleunigerpumpe zur falschen Zeit",
    does: "Der Strahl kommt spät, zu kurz oder gar nicht: Bei schnellem Öffnen verschluckt er sich, bei langsamem ist er sauber.",
    touches: "schnelles Öffnen aus geschlossenem Gas",
  },
  "valve-clearance": {
    words: "zu wenig Ventilspiel",
    does: "Ventile, die nicht ganz schließen: schlechtes Starten, Rückspucken, hängender oder unruhiger Leerlauf, Knallen bei geschlossenem Gas.",
    touches: "zu bis 1/8, und das Starten",
  },
};
