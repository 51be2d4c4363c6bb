import { usePreferences } from "../../preferences/use-preferences.ts";

// The texts of the shop's screen and state line, apart from the rest: only a device that shares its log loads them.

const en = {
  title: "Shop",
  back: "More",
  lead: "Several phones and a bench PC can share one log. Without it, everything works on this device alone.",
  code: "Code",
  codeHint:
    "From a device of the shop, or from the terminal at the first start. It holds ten minutes and works once.",
  device: "Name of this device",
  shopName: "Name of the shop",
  person: "Your name",
  firstCode: "This is the code of a first start: it opens the shop, and you are its owner.",
  pair: "Pair this device",
  noServer: "This page did not come from a shop's server, or the server cannot be reached now.",
  here: (shop: string, person: string, role: string) => `${shop}: ${person}, ${role}.`,
  nameRemoved: "(name removed)",
  roles: { owner: "owner", technician: "technician", rider: "rider" },
  together: "Everything is at the shop.",
  waiting: (n: number) => (n === 1 ? "1 record not yet at the shop." : `${n} records not yet at the shop.`),
  pictures: (n: number) =>
    n === 1 ? "1 picture or clip not yet there." : `${n} pictures and clips not yet there.`,
  picturesKept: (n: number) =>
    n === 1
      ? "1 picture or clip stays on this device: the shop does not take it, as it is too large or of another type."
      : `${n} pictures and clips stay on this device: the shop does not take them, as they are too large or of another type.`,
  noRoom: "The shop has no room for more pictures and clips now.",
  away: "The shop cannot be reached now; work on.",
  shutOut: "This device was shut out of the shop. What it holds stays here.",
  notTaken: (n: number) =>
    n === 1 ? "The shop did not take 1 record." : `The shop did not take ${n} records.`,
  moved: (id: string) =>
    `the shop had another record of this name, which stays. This device's is at the shop as ${id}.`,
  damaged: "damaged on this device, and kept here as it is",
  now: "Share now",
  bringIn: "Bring in a device",
  role: "Who it is for",
  roleHints: {
    owner: "sees and does all",
    technician: "works on all bikes",
    rider: "sees own bikes, reports rides",
  },
  bikes: "The rider's bikes",
  makeCode: "Make a code",
  codeIs: (code: string) =>
    `Type ${code} on the other device, under More, Shop; or hold its camera on this. It works once, for ten minutes.`,
  qr: "The code, to be read by a camera",
  devices: "Devices",
  shutDevice: (name: string) => `Shut out ${name}`,
  notShut: (name: string) =>
    `${name} is NOT shut out: the shop did not answer. Try again when it can be reached.`,
  out: "shut out",
  leave: "Leave the shop",
  leaveHint: "The log stays on this device; it is no longer shared.",
  left: "This device no longer shares its log.",
  stillListed:
    "The shop's server did not answer: this device is still on its list. Take it off when the server can be reached, or have the owner shut it out under Shop, Devices.",
  takeOff: "Take this device off the list",
  takenOff: "This device is off the shop's list.",
  stillAway: "The server did not answer. Try again when it can be reached.",
};
export type ShopWords = typeof en;

const de: ShopWords = {
  title: "Werkstatt",
  back: "Mehr",
  lead: "Mehrere Telefone und ein PC an der Werkbank können ein Buch teilen. Ohne das geht alles auf diesem Gerät allein.",
  code: "Code",
  codeHint:
    "Von einem Gerät der Werkstatt, oder vom Terminal beim ersten Start. Er gilt zehn Minuten und einmal.",
  device: "Name dieses Geräts",
  shopName: "Name der Werkstatt",
  person: "Dein Name",
  firstCode: "Das ist der Code eines ersten Starts: Er eröffnet die Werkstatt, und du bist ihr Inhaber.",
  pair: "Dieses Gerät anmelden",
  noServer: "Diese Seite kam nicht vom Server einer Werkstatt, oder er ist gerade nicht zu erreichen.",
  here: (shop, person, role) => `${shop}: ${person}, ${role}.`,
  nameRemoved: "(Name entfernt)",
  roles: { owner: "Inhaber", technician: "Mechaniker", rider: "Fahrer" },
  together: "Alles ist in der Werkstatt.",
  waiting: (n) =>
    n === 1 ? "1 Eintrag noch nicht in der Werkstatt." : `${n} Einträge noch nicht in der Werkstatt.`,
  pictures: (n) =>
    n === 1 ? "1 Bild oder Tonaufnahme noch nicht dort." : `${n} Bilder und Tonaufnahmen noch nicht dort.`,
  picturesKept: (n) =>
    n === 1
      ? "1 Bild oder Tonaufnahme bleibt auf diesem Gerät: Die Werkstatt nimmt sie nicht an, zu groß oder von anderer Art."
      : `${n} Bilder und Tonaufnahmen bleiben auf diesem Gerät: Die Werkstatt nimmt sie nicht an, zu groß oder von anderer Art.`,
  noRoom: "Die Werkstatt hat gerade keinen Platz für weitere Bilder und Tonaufnahmen.",
  away: "Die Werkstatt ist gerade nicht zu erreichen; arbeite weiter.",
  shutOut: "Dieses Gerät wurde ausgeschlossen. Was es enthält, bleibt hier.",
  notTaken: (n) =>
    n === 1 ? "Die Werkstatt nahm 1 Eintrag nicht an." : `Die Werkstatt nahm ${n} Einträge nicht an.`,
  moved: (id) =>
    `Die Werkstatt hatte unter diesem Namen einen anderen Eintrag, der bleibt. Der von diesem Gerät steht dort als ${id}.`,
  damaged: "auf diesem Gerät beschädigt, und bleibt hier, wie es ist",
  now: "Jetzt abgleichen",
  bringIn: "Ein Gerät dazunehmen",
  role: "Für wen",
  roleHints: {
    owner: "sieht und tut alles",
    technician: "arbeitet an allen Motorrädern",
    rider: "sieht eigene Motorräder, meldet Fahrten",
  },
  bikes: "Motorräder des Fahrers",
  makeCode: "Code erzeugen",
  codeIs: (code) =>
    `Tippe ${code} auf dem anderen Gerät unter Mehr, Werkstatt; oder halte seine Kamera hierauf. Er gilt einmal, zehn Minuten lang.`,
  qr: "Der Code, für eine Kamera",
  devices: "Geräte",
  shutDevice: (name) => `${name} ausschließen`,
  notShut: (name) =>
    `${name} ist NICHT ausgeschlossen: Die Werkstatt hat nicht geantwortet. Versuch es wieder, wenn sie zu erreichen ist.`,
  out: "ausgeschlossen",
  leave: "Die Werkstatt verlassen",
  leaveHint: "Das Buch bleibt auf diesem Gerät; es wird nicht mehr geteilt.",
  left: "Dieses Gerät teilt sein Buch nicht mehr.",
  stillListed:
    "Der Server der Werkstatt hat nicht geantwortet: Dieses Gerät steht noch auf seiner Liste. Nimm es herunter, sobald er zu erreichen ist, oder lass es den Inhaber unter Werkstatt, Geräte ausschließen.",
  takeOff: "Dieses Gerät von der Liste nehmen",
  takenOff: "Dieses Gerät ist von der Liste der Werkstatt.",
  stillAway: "Der Server hat nicht geantwortet. Versuch es wieder, wenn er zu erreichen ist.",
};

const es: ShopWords = {
  title: "Taller",
  back: "Más",
  lead: "Varios teléfonos y un PC del banco pueden compartir un registro. Sin ello, todo funciona solo en este aparato.",
  code: "Código",
  codeHint: "De un aparato del taller, o de la terminal en el primer arranque. Vale diez minutos y una vez.",
  device: "Nombre de este aparato",
  shopName: "Nombre del taller",
  person: "Tu nombre",
  firstCode: "Es el código de un primer arranque: abre el taller, y tú eres su dueño.",
  pair: "Unir este aparato",
  noServer: "Esta página no vino del servidor de un taller, o ahora no se puede llegar a él.",
  here: (shop, person, role) => `${shop}: ${person}, ${role}.`,
  nameRemoved: "(nombre borrado)",
  roles: { owner: "dueño", technician: "mecánico", rider: "piloto" },
  together: "Todo está en el taller.",
  waiting: (n) =>
    n === 1 ? "1 anotación aún no está en el taller." : `${n} anotaciones aún no están en el taller.`,
  pictures: (n) =>
    n === 1 ? "1 imagen o sonido aún no está allí." : `${n} imágenes y sonidos aún no están allí.`,
  picturesKept: (n) =>
    n === 1
      ? "1 imagen o sonido se queda en este aparato: el taller no lo acepta, por su tamaño o su tipo."
      : `${n} imágenes y sonidos se quedan en este aparato: el taller no los acepta, por su tamaño o su tipo.`,
  noRoom: "El taller no tiene sitio ahora para más imágenes y sonidos.",
  away: "Ahora no se puede llegar al taller; sigue trabajando.",
  shutOut: "Este aparato fue excluido del taller. Lo que guarda se queda aquí.",
  notTaken: (n) => (n === 1 ? "El taller no aceptó 1 anotación." : `El taller no aceptó ${n} anotaciones.`),
  moved: (id) =>
    `el taller tenía otra anotación con este nombre, que se queda. La de este aparato está allí como ${id}.`,
  damaged: "dañada en este aparato, y se queda aquí tal como está",
  now: "Compartir ahora",
  bringIn: "Añadir un aparato",
  role: "Para quién es",
  roleHints: {
    owner: "ve y hace todo",
    technician: "trabaja en todas las motos",
    rider: "ve sus motos, informa de salidas",
  },
  bikes: "Las motos del piloto",
  makeCode: "Crear un código",
  codeIs: (code) =>
    `Escribe ${code} en el otro aparato, en Más, Taller; o acerca su cámara aquí. Vale una vez, diez minutos.`,
  qr: "El código, para una cámara",
  devices: "Aparatos",
  shutDevice: (name) => `Excluir ${name}`,
  notShut: (name) =>
    `${name} NO está excluido: el taller no ha contestado. Inténtalo otra vez cuando se pueda llegar a él.`,
  out: "excluido",
  leave: "Dejar el taller",
  leaveHint: "El registro se queda en este aparato; ya no se comparte.",
  left: "Este aparato ya no comparte su registro.",
  stillListed:
    "El servidor del taller no ha contestado: este aparato sigue en su lista. Quítalo cuando se pueda llegar a él, o pide al dueño que lo excluya en Taller, Aparatos.",
  takeOff: "Quitar este aparato de la lista",
  takenOff: "Este aparato ya no está en la lista del taller.",
  stillAway: "El servidor no ha contestado. Inténtalo otra vez cuando se pueda llegar a él.",
};

const ALL = { en, de, es };

export function useShopWords(): ShopWords {
  const [{ language }] = usePreferences();
  return ALL[language];
}
