import type { CoreWords } from "../core-words.ts";

/** Mechanical faults, named in the nominative, so that the name can stand after a colon or in brackets. */
export const faults: CoreWords["faults"] = {
  "air-leak": { words: "Falschluft" },
  "blocked-pilot": { words: "eine verstopfte Leerlaufdüse oder Bohrung" },
  "float-level": { words: "ein falscher Schwimmerstand" },
  "float-valve": { words: "ein undichtes Schwimmernadelventil" },
  "fuel-supply": { words: "zu wenig Kraftstoff aus dem Tank" },
  "choke-not-seating": { words: "ein Choke, der nicht ganz schließt" },
  "air-filter": { words: "ein verschmutzter, nasser oder gerissener Luftfilter" },
  "slide-or-cable": { words: "ein klemmender Schieber oder Gaszug" },
  "worn-needle-and-jet": { words: "eine verschlissene Düsennadel und Nadeldüse" },
  reed: { words: "ausgebrochene oder müde Membranen" },
  ignition: { words: "ein schwacher Funke oder ein falscher Zündzeitpunkt" },
  "plug-heat-range": { words: "eine Kerze mit falschem Wärmewert" },
  compression: { words: "zu wenig Kompression" },
  "gearbox-side-seal": { words: "ein Kurbelwellendichtring, der Getriebeöl durchlässt" },
  "exhaust-blocked": { words: "ein verstopfter Auspuff oder Schalldämpfer" },
  "power-valve": { words: "eine klemmende Auslasssteuerung" },
  "fuel-or-oil-wrong": { words: "alter, nasser oder falscher Kraftstoff oder ein falsches Ölverhältnis" },
  cooling: { words: "ein Fehler in der Kühlung" },
  "loose-head": { words: "ein loser Zylinderkopf oder eine lose Kerze" },
  "idle-stop": { words: "eine falsch eingestellte Leerlaufanschlagschraube" },
  "accelerator-pump": { words: "eine Beschleunigerpumpe zur falschen Zeit" },
  "valve-clearance": { words: "zu wenig Ventilspiel" },
};
