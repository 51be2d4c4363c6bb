import type { Language } from "./figures.ts";

// Said instead of the app where the browser's storage cannot be opened: loaded then alone.

const en = {
  refused:
    "Jetwright cannot open its storage in this browser, so nothing would be kept. A private window or a blocked site can do that: open the page in a normal window.",
  newer:
    "A newer version of Jetwright was in this browser, and this page is an older one. Close its other tabs and load the page again. Nothing is lost.",
};

type NoStorage = typeof en;

const de: NoStorage = {
  refused:
    "Jetwright kann seinen Speicher in diesem Browser nicht öffnen, also bliebe nichts erhalten. Ein privates Fenster oder eine gesperrte Seite kann das machen: Öffne die Seite in einem gewöhnlichen Fenster.",
  newer:
    "Eine neuere Version von Jetwright war in diesem Browser, und diese Seite ist eine ältere. Schließ ihre anderen Tabs und lade die Seite neu. Nichts ist verloren.",
};

const es: NoStorage = {
  refused:
    "Jetwright no puede abrir su almacén en este navegador, así que no se guardaría nada. Puede ser por una ventana privada o un sitio bloqueado: abre la página en una ventana normal.",
  newer:
    "En este navegador ya hubo una versión más nueva de Jetwright, y esta página es más vieja. Cierra sus otras pestañas y carga la página otra vez. No se ha perdido nada.",
};

const ALL = { en, de, es };

/** Why the app does not open, in this language. */
export const noStorage = (language: Language, error: unknown): string =>
  error instanceof DOMException && error.name === "VersionError"
    ? ALL[language].newer
    : ALL[language].refused;
