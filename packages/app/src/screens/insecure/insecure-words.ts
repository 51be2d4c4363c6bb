import { usePreferences } from "../../preferences/use-preferences.ts";

// Apart from the other texts: only a page that came unprotected from another machine says this.

const en = {
  title: "What does not work at this address",
  kept: "This page came over http from another machine. Browsers give such a page no microphone and no pictures in the log, and it does not open where there is no network. Bikes, records and sharing work.",
  how: "To have all of it, open the shop at an address that begins with https. Whoever runs the shop's server starts it with --lan; its terminal then shows the address and the steps for this phone. On the server itself, http://localhost has all of it too.",
};
type InsecureWords = typeof en;

const de: InsecureWords = {
  title: "Was unter dieser Adresse nicht geht",
  kept: "Diese Seite kam über http von einem anderen Rechner. Browser geben einer solchen Seite kein Mikrofon und keine Bilder im Buch, und sie öffnet nicht ohne Netz. Motorräder, Einträge und Teilen gehen.",
  how: "Damit alles geht, öffne die Werkstatt unter einer Adresse, die mit https beginnt. Wer den Server der Werkstatt betreibt, startet ihn mit --lan; sein Terminal zeigt dann die Adresse und die Schritte für dieses Telefon. Auf dem Server selbst geht unter http://localhost auch alles.",
};

const es: InsecureWords = {
  title: "Lo que no funciona en esta dirección",
  kept: "Esta página llegó por http desde otro ordenador. Los navegadores no dan a una página así micrófono ni fotos en el registro, y no abre donde no hay red. Las motos, las anotaciones y compartir funcionan.",
  how: "Para tenerlo todo, abre el taller en una dirección que empiece por https. Quien lleva el servidor del taller lo arranca con --lan; su terminal muestra entonces la dirección y los pasos para este teléfono. En el propio servidor, http://localhost también lo tiene todo.",
};

const ALL = { en, de, es };

export function useInsecureWords(): InsecureWords {
  const [{ language }] = usePreferences();
  return ALL[language];
}
