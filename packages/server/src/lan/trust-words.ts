// The page that makes a phone trust the shop. Sources of the steps: Apple Support ("Trust manually installed certificate
// profiles in iOS and iPadOS", read in a stored copy) and, for Android, its own names of the settings (common practice,
// no source). German and Spanish are not yet checked by native speakers.

const en = {
  title: "Make this phone trust the shop",
  lead: "Jetwright runs on a computer of this shop. Once this phone trusts the shop's certificate, it opens the app without a warning, listens to engines, and opens the app where there is no network.",
  compareTitle: "Compare the fingerprint",
  compare:
    "This page came unprotected: anyone on this network could have changed it. Before you open the shop, compare the certificate's SHA-256 fingerprint, which the phone shows among its details, with the one in the server's terminal; where they differ, remove it at once. This page believes it to be:",
  download: "Load the certificate",
  androidTitle: "Android",
  android: [
    "Load the certificate with the button above.",
    "Open the phone's settings and search them for “CA certificate”. It stands under Security, Encryption and credentials, Install a certificate; phones name it a little differently.",
    "Choose CA certificate, read the warning, install anyway, and choose jetwright.crt among the downloads.",
    "Compare: Trusted credentials, User, the certificate's details.",
  ],
  iphoneTitle: "iPhone and iPad",
  iphone: [
    "Load the certificate with the button above, in Safari, and allow the profile.",
    "Open Settings, Profile Downloaded (or General, VPN & Device Management), choose the profile, compare under More Details, and install it.",
    "Open Settings, General, About, Certificate Trust Settings, and turn on full trust for it.",
  ],
  ownList:
    "Some browsers keep a list of their own and must be told in their own settings. A PC takes the certificate in its browser's settings, or needs none: on the server itself the app is at localhost.",
  openTitle: "Then open the shop",
  openHint: "If a warning comes, this phone does not trust the certificate yet.",
  withoutTitle: "Without it",
  without:
    "Behind the browser's warning the app works: bikes, records, sharing, and in some browsers the microphone too. It does not open where there is no network, the warning comes again, and whoever goes on past warnings cannot tell this shop from a stranger on its network. A shop with a public name for its server needs none of this.",
  meansTitle: "What trusting means",
  means:
    "The certificate says of itself that it may speak for private networks and names ending in .local alone, never for a site on the internet. Its key stays on the shop's computer: who has that computer can pass for it. To take the trust back, remove the certificate where you installed it.",
  another: "For another phone: hold its camera on this",
  nothing: "There is nothing at this address.",
};

export type TrustWords = typeof en;

const de: TrustWords = {
  title: "Dieses Telefon der Werkstatt vertrauen lassen",
  lead: "Jetwright läuft auf einem Rechner dieser Werkstatt. Sobald dieses Telefon ihrem Zertifikat vertraut, öffnet es die App ohne Warnung, hört Motoren zu und öffnet die App auch ohne Netz.",
  compareTitle: "Den Fingerabdruck vergleichen",
  compare:
    "Diese Seite kam ungeschützt: Jeder in diesem Netz könnte sie verändert haben. Bevor du die Werkstatt öffnest, vergleiche den SHA-256-Fingerabdruck des Zertifikats, den das Telefon bei den Einzelheiten zeigt, mit dem im Terminal des Servers; sind sie verschieden, entferne es sofort. Diese Seite hält ihn für:",
  download: "Zertifikat laden",
  androidTitle: "Android",
  android: [
    "Lade das Zertifikat mit dem Knopf oben.",
    "Öffne die Einstellungen des Telefons und suche darin nach „CA-Zertifikat“. Es steht unter Sicherheit, Verschlüsselung und Anmeldedaten, Zertifikat installieren; jedes Telefon nennt es ein wenig anders.",
    "Wähle CA-Zertifikat, lies die Warnung, installiere trotzdem, und wähle jetwright.crt unter den Downloads.",
    "Vergleiche: Vertrauenswürdige Anmeldedaten, Nutzer, Einzelheiten des Zertifikats.",
  ],
  iphoneTitle: "iPhone und iPad",
  iphone: [
    "Lade das Zertifikat mit dem Knopf oben, in Safari, und erlaube das Profil.",
    "Öffne Einstellungen, Profil geladen (oder Allgemein, VPN und Geräteverwaltung), wähle das Profil, vergleiche unter Mehr Details, und installiere es.",
    "Öffne Einstellungen, Allgemein, Info, Zertifikatsvertrauenseinstellungen, und schalte das volle Vertrauen dafür ein.",
  ],
  ownList:
    "Manche Browser führen eine eigene Liste und müssen es in ihren eigenen Einstellungen erfahren. Ein PC nimmt das Zertifikat in den Einstellungen seines Browsers, oder braucht keines: Auf dem Server selbst ist die App unter localhost.",
  openTitle: "Dann die Werkstatt öffnen",
  openHint: "Kommt eine Warnung, vertraut dieses Telefon dem Zertifikat noch nicht.",
  withoutTitle: "Ohne das",
  without:
    "Hinter der Warnung des Browsers geht die App: Motorräder, Einträge, Teilen, und in manchen Browsern auch das Mikrofon. Sie öffnet nicht ohne Netz, die Warnung kommt wieder, und wer an Warnungen vorbeigeht, kann diese Werkstatt nicht von einem Fremden in ihrem Netz unterscheiden. Eine Werkstatt mit einem öffentlichen Namen für ihren Server braucht all das nicht.",
  meansTitle: "Was Vertrauen bedeutet",
  means:
    "Das Zertifikat sagt von sich, dass es nur für private Netze und Namen auf .local sprechen darf, nie für eine Seite im Internet. Sein Schlüssel bleibt auf dem Rechner der Werkstatt: Wer den Rechner hat, kann sich für sie ausgeben. Um das Vertrauen zurückzunehmen, entferne das Zertifikat dort, wo du es installiert hast.",
  another: "Für ein anderes Telefon: halte seine Kamera hierauf",
  nothing: "Unter dieser Adresse ist nichts.",
};

const es: TrustWords = {
  title: "Hacer que este teléfono confíe en el taller",
  lead: "Jetwright funciona en un ordenador de este taller. Cuando este teléfono confíe en el certificado del taller, abrirá la aplicación sin aviso, escuchará motores y abrirá la aplicación también sin red.",
  compareTitle: "Compara la huella",
  compare:
    "Esta página llegó sin protección: cualquiera en esta red pudo cambiarla. Antes de abrir el taller, compara la huella SHA-256 del certificado, que el teléfono muestra entre sus detalles, con la del terminal del servidor; si no son iguales, quítalo enseguida. Esta página cree que es:",
  download: "Cargar el certificado",
  androidTitle: "Android",
  android: [
    "Carga el certificado con el botón de arriba.",
    "Abre los ajustes del teléfono y busca en ellos «certificado de CA». Está en Seguridad, Cifrado y credenciales, Instalar un certificado; cada teléfono lo llama un poco distinto.",
    "Elige Certificado de CA, lee el aviso, instala de todos modos y elige jetwright.crt entre las descargas.",
    "Compara: Credenciales de confianza, Usuario, los detalles del certificado.",
  ],
  iphoneTitle: "iPhone y iPad",
  iphone: [
    "Carga el certificado con el botón de arriba, en Safari, y permite el perfil.",
    "Abre Ajustes, Perfil descargado (o General, VPN y gestión de dispositivos), elige el perfil, compara en Más detalles e instálalo.",
    "Abre Ajustes, General, Información, Ajustes de confianza de los certificados, y activa la confianza total en él.",
  ],
  ownList:
    "Algunos navegadores llevan su propia lista y hay que decírselo en sus propios ajustes. Un PC toma el certificado en los ajustes de su navegador, o no necesita ninguno: en el propio servidor la aplicación está en localhost.",
  openTitle: "Después abre el taller",
  openHint: "Si sale un aviso, este teléfono aún no confía en el certificado.",
  withoutTitle: "Sin ello",
  without:
    "Tras el aviso del navegador la aplicación funciona: motos, anotaciones, compartir y, en algunos navegadores, también el micrófono. No abre donde no hay red, el aviso vuelve, y quien pasa por alto los avisos no puede distinguir este taller de un extraño en su red. Un taller con un nombre público para su servidor no necesita nada de esto.",
  meansTitle: "Qué significa confiar",
  means:
    "El certificado dice de sí mismo que solo puede hablar por redes privadas y nombres que acaban en .local, nunca por un sitio de internet. Su clave se queda en el ordenador del taller: quien tenga ese ordenador puede hacerse pasar por él. Para retirar la confianza, quita el certificado donde lo instalaste.",
  another: "Para otro teléfono: acerca su cámara aquí",
  nothing: "No hay nada en esta dirección.",
};

export const TRUST_WORDS = { en, de, es };
export type Tongue = keyof typeof TRUST_WORDS;

/** The first language of a browser's wishes that the page speaks; English when it speaks none. */
export function tongueOf(wishes: string): Tongue {
  const wanted = wishes.split(",").map((one) => one.trim().slice(0, 2).toLowerCase());
  return wanted.find((one): one is Tongue => Object.hasOwn(TRUST_WORDS, one)) ?? "en";
}
