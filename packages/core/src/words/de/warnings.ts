import type { CoreWords } from "../core-words.ts";
import { withComma } from "../figures.ts";
import { refusalText } from "../refusal.ts";
import { refusals } from "./refusals.ts";

const place = (heightM: number | null): string =>
  heightM === null ? "auf Meereshöhe" : `auf ${withComma(heightM)} m`;
const fuel = (ratio: number | null): string =>
  ratio === null ? "Benzin von der Tankstelle" : `Benzin von der Tankstelle mit Öl ${ratio}:1`;
const fixed = (x: number, digits: number): string => withComma(x.toFixed(digits));

const said = (opening: string): string =>
  opening === "closed" ? "geschlossen" : opening === "full" ? "Vollgas" : opening;

const COMPARED = {
  main: "Hauptdüse",
  pilot: "Leerlaufdüse",
  needle: "Düsennadel",
  clip: "Clipkerbe",
  needleJet: "Nadeldüse",
  cutaway: "Ausschnitt",
  screw: "Schraube",
  fuelLift: "Schwimmerstand",
} as const;

/** What was assumed, or should be looked at twice; with what to do. */
export const warnings: CoreWords["warnings"] = {
  "read-as-fahrenheit": ({ typed, celsius }) =>
    `${withComma(typed)} kann keine Lufttemperatur in °C sein und wurde als °F gelesen: ${withComma(celsius)} °C.`,
  "unusual-temperature": ({ celsius }) =>
    `${withComma(celsius)} °C kommt selten vor: Prüf die Anzeige, den Schatten und die Einheit.`,
  "pressure-unit-guessed": ({ typed, unit, hPa }) =>
    `Beim Luftdruck ${withComma(typed)} steht keine Einheit: gelesen als ${unit === "hundredths of inHg" ? "Hundertstel inHg" : unit}, ${hPa} hPa.`,
  "pressure-from-height": ({ m }) =>
    `Kein Luftdruck angegeben: Der übliche für ${m} m wurde genommen, das Band ist um 1 % oder mehr breiter.`,
  "unusual-sea-level-pressure":
    "Ein Luftdruck auf Meereshöhe unter 950 oder über 1050 hPa ist selten: Prüf die Zahl.",
  "reduction-uncertain": ({ m, percent }) =>
    `Auf ${m} m und bei dieser Temperatur liegen ein QNH und der Luftdruck einer Vorhersage ${withComma(percent)} % auseinander: Ein Barometer am Ort ist sicherer.`,
  "sea-level-pressure-as-station": ({ hPa, m, percent }) =>
    `${hPa} hPa auf ${m} m ist sicher ein Luftdruck auf Meereshöhe: Die Luft käme ${withComma(percent)} % zu dicht heraus. Er wurde so gelesen; gib ihn als Druck auf Meereshöhe an oder prüf die Höhe.`,
  "station-pressure-high": ({ hPa, m, percent }) =>
    `${hPa} hPa ist viel für ${m} m. Prüf, ob es nicht ein Druck auf Meereshöhe ist${percent === null ? "" : `: Dann käme die Luft ${withComma(percent)} % zu dicht heraus`}.`,
  "station-pressure-low": ({ hPa, m }) => `${hPa} hPa ist wenig für ${m} m: Prüf das Barometer und die Höhe.`,
  "station-pressure-unchecked": ({ hPa, percent }) =>
    `Ohne Höhe ist nicht zu sehen, ob ${hPa} hPa am Ort abgelesen oder auf Meereshöhe umgerechnet ist; auf 1000 m macht diese Verwechslung die Luft ${withComma(percent)} % zu dicht. Gib die Höhe an.`,
  "humidity-assumed":
    "Keine Luftfeuchte angegeben: 50 % wurden angenommen, das Band ist breiter. An heißen Tagen zählt das; ein Taupunkt oder eine Luftfeuchte macht es schmaler.",
  "humidity-fraction": ({ typed, percent }) =>
    `Eine Luftfeuchte von ${withComma(typed)} wurde als Bruchteil gelesen: ${withComma(percent)} %.`,
  "unusual-humidity": ({ percent }) =>
    `Eine Luftfeuchte von ${withComma(percent)} % gibt es im Freien kaum: Prüf, ob der Fühler geht.`,
  "humidity-clamped": (given) => {
    if (given.of === "relative")
      return `Eine Luftfeuchte von ${withComma(given.percent)} % wurde als gesättigte Luft genommen, 100 %.`;
    const celsius = `${withComma(given.celsius)} °C`;
    const limit = `${withComma(given.limitCelsius)} °C`;
    switch (given.of) {
      case "dry wet-bulb":
        return `Eine Feuchtkugeltemperatur von ${celsius} liegt etwas unter der von trockener Luft (${limit}): Die Luft wurde als trocken genommen.`;
      case "carried dew-point":
        return `Der Taupunkt, auf den Ort umgerechnet, ${celsius}, liegt über dessen Temperatur, ${limit}: Die Luft wurde als gesättigt genommen.`;
      default:
        return `${given.of === "dew-point" ? "Der Taupunkt" : "Die Feuchtkugeltemperatur"} ${celsius} liegt etwas über der Temperatur ${limit}, wie es beim Runden vorkommt: Die Luft wurde als gesättigt genommen.`;
    }
  },
  "wet-bulb-freezing":
    "Bei Frost zeigt ein feuchtes Thermometer mit Eis am Docht anders an; für die Düsen ist das zu wenig, um es zu merken.",
  "outside-formula-range": ({ celsius, hPa }) =>
    `${withComma(celsius)} °C und ${hPa} hPa liegen außerhalb des Bereichs, in dem die Dichteformel geprüft ist (15 bis 27 °C, 600 bis 1100 hPa); auf 0,1 % sollte sie trotzdem stimmen, weit weniger als eine Düsengröße.`,

  "tenths-disagree": ({ remarks, report }) =>
    `Die Zusätze nennen ${withComma(remarks)} °C, die Meldung ${withComma(report)} °C: Genommen wurde die Meldung. Prüf sie.`,
  "altimeters-disagree": ({ q, a }) =>
    `Die Q-Gruppe (${q} hPa) und die A-Gruppe (${a} hPa) passen nicht zusammen; Q wurde genommen: Prüf die Meldung.`,
  "temperature-missing": "Die Meldung nennt keine Temperatur: Miss sie am Ort.",
  "dew-point-missing":
    "Die Meldung nennt keinen Taupunkt: Die Temperatur gilt; ohne Luftfeuchte werden 50 % angenommen.",
  "pressure-missing": ({ seaLevelRemark }) =>
    seaLevelRemark
      ? "Der einzige Luftdruck der Meldung ist der Zusatz SLP; er ist kein QNH und wurde nicht genommen."
      : "Die Meldung nennt keinen Luftdruck: Ein Barometer am Ort oder die Höhe allein muss reichen.",
  "several-reports": ({ count, used, stations }) =>
    `${count} Meldungen wurden zusammen eingefügt; die neueste nach Tag und Zeit wurde genommen: ${used}.${stations.length > 1 ? ` Sie kommen von ${stations.map((one) => one ?? "einer Station ohne Namen").join(", ")}.` : ""}`,
  "nil-passed-over": "Eine der Meldungen sagt NIL und wurde übergangen.",
  "forecast-passed-over": "Die Vorhersage (TAF) im Text wurde übergangen.",
  "report-time-impossible": ({ time }) =>
    `Die Zeit ${time} der Meldung kann nicht stimmen: Prüf, wie alt sie ist.`,
  "pressure-group-twice": ({ letter }) =>
    `Die Meldung hat mehr als eine ${letter}-Gruppe; die erste wurde genommen.`,
  "pressure-group-impossible": ({ group }) =>
    `Die Luftdruckgruppe ${group} kann nicht stimmen und wurde weggelassen.`,
  "pressure-group-unit": ({ group, inches, hPa }) =>
    `Die Luftdruckgruppe ${group} wurde als ${inches ? "Hundertstel Zoll Quecksilber" : "hPa"} gelesen: ${hPa} hPa.`,
  "station-pressure-impossible": ({ group }) =>
    `Der Luftdruck der Station ${group} kann nicht stimmen und wurde weggelassen.`,
  "station-pressures-disagree": ({ group, hPa }) =>
    `Die zwei Zahlen von ${group} passen nicht zusammen; ${hPa} hPa wurde genommen: Prüf die Meldung.`,
  "station-pressure-mismatch": ({ qfe, setting, m }) =>
    m === null
      ? `QFE ${qfe} hPa und QNH ${setting} hPa gehören zu keiner Station an Land; QFE wurde nicht genommen: Prüf die Meldung.`
      : `QFE nennt ${qfe} hPa, das QNH auf ${m} m ${setting} hPa; QFE wurde genommen: Prüf die Höhe der Station.`,
  "report-age-unknown": "Wie alt die Meldung ist, ist nicht bekannt: Zwei Stunden wurden angenommen.",
  "report-old": ({ hours }) =>
    `Die Meldung ist ${fixed(hours, 1)} Stunden alt, und die Luft hat sich seither geändert: Nimm eine neuere oder lies ein Thermometer am Ort ab.`,
  "station-height-unknown":
    "Die Höhe der Station ist nicht bekannt: Sie wurde nahe der deines Ortes angenommen, das Band ist breiter. Gib sie an.",
  "station-height-differs": ({ m, below, celsius }) => {
    const where = `Die Station liegt ${m} m ${below ? "unter" : "über"} deinem Ort`;
    return celsius === null
      ? `${where}: Ihr Luftdruck wurde dorthin umgerechnet.`
      : `${where}: Ihr Luftdruck und ihre Temperatur wurden dorthin umgerechnet (${withComma(celsius)} °C). Ein Thermometer am Ort ist sicherer.`;
  },

  "air-assumed": ({ placeM }) =>
    `Keine Luft ist notiert: Normalluft ${place(placeM)} wurde genommen, mit breitem Band. Notier die Luft mit Temperatur und Höhe oder Luftdruck.`,
  "air-unusable": ({ why, placeM }) =>
    `${refusalText(why, { refusals })} Bis dahin gilt Normalluft ${place(placeM)}.`,
  "temperature-assumed": "Bei der Luft ist keine Temperatur notiert: Die der Normalluft wurde genommen.",
  "height-assumed": "Bei der Luft ist keine Höhe notiert: Meereshöhe wurde genommen, mit breitem Band.",
  "air-old":
    "Die Luft wurde mehr als einen halben Tag von der Fahrt entfernt notiert: Sie zählt mit breiterem Band. Notier die Luft am selben Tag.",

  "fuel-assumed": ({ ratio }) =>
    `Kein Kraftstoff ist notiert: ${fuel(ratio)} wurde genommen. Trag den Kraftstoff beim Motorrad ein.`,
  "fuel-unusable": ({ why, ratio }) => `${refusalText(why, { refusals })} Bis dahin gilt ${fuel(ratio)}.`,
  "oil-assumed": ({ ratio }) => `Wie viel Öl im Kraftstoff ist, steht nicht da: ${ratio}:1 wurde genommen.`,
  "fuel-density": ({ kgPerM3 }) =>
    `${kgPerM3} kg/m³ bei 15 °C liegt außerhalb der Tabelle für Benzin (653 bis 770): Wie dicht es warm oder kalt ist, ist geraten.`,
  "petrol-density":
    "Benzin von der Tankstelle wiegt in Europa bei 15 °C 720 bis 775 kg/m³: Ist das Benzin, und wurde es kalt gewogen?",
  "little-oil":
    "Weniger Öl als 100:1 ist weniger, als Zweitaktöle vorsehen: Prüf das Verhältnis vor der Fahrt.",
  "much-oil": "Mehr Öl als 15:1 ist selten: Prüf das Verhältnis.",

  "engine-assumed": "Der Motor ist nicht angegeben: Ein Zweitakter wurde angenommen.",
  "bore-assumed": ({ mm }) =>
    `Der Durchlass des Vergasers ist nicht angegeben: ${withComma(mm)} mm wurden genommen, üblich für so einen Motor. Miss ihn auf der Motorseite.`,
  "nothing-fitted":
    "Kein Teil ist als verbaut notiert: Sieh nach, was drin ist, und trag es unter „Verbaut“ ein.",
  "numbering-assumed":
    "Was die Düsenzahlen bedeuten, steht nicht da: Sie wurden als Bohrung in 1/100 mm genommen. Gib beim Vergaser an, ob sie die Bohrung oder den Durchfluss nennen.",
  "clip-beyond-grooves": ({ groove, marks, grooves }) =>
    `Der Clip soll in Kerbe ${withComma(groove)} sitzen, aber die Düsennadel „${marks}“ hat ${grooves}. Zähl vom stumpfen Ende.`,
  "screw-side-unknown":
    "Auf welcher Seite die Schraube sitzt, steht nicht da, also zählen ihre Umdrehungen nicht. Gib beim Vergaser an, ob es eine Luftschraube (Filterseite) oder eine Gemischschraube (Motorseite) ist.",
  "needle-grooves-assumed": ({ marks, grooves, pitchMm }) =>
    `Die Kerben der Düsennadel „${marks}“ sind nicht alle angegeben: Wo etwas fehlt, wurden ${grooves} Kerben im Abstand von ${withComma(pitchMm)} mm genommen. Zähl und miss sie.`,

  "displacement-unknown":
    "Der Hubraum ist nicht bekannt, also richtet sich die Hauptdüse nach dem Durchlass allein.",
  "bore-unknown": ({ usualMm, cc }) =>
    `Der Durchlass ist nicht bekannt; ${withComma(usualMm)} mm stehen dafür, üblich bei ${cc} cm³. Miss ihn zuerst: Jeder Millimeter macht zwei Größen der Hauptdüse aus.`,
  "bore-unusual": ({ mm, small, cc, usualMm }) =>
    `${withComma(mm)} mm Durchlass ist ${small ? "klein" : "groß"} für ${cc} cm³; üblich sind etwa ${withComma(usualMm)} mm. Prüf, ob er gemessen und nicht geschätzt ist.`,
  "no-jet-answers": ({ part }) =>
    `Keine ${part === "main" ? "Hauptdüse" : "Leerlaufdüse"} passt zu dieser Luft und diesem Kraftstoff; prüf beides.`,
  "shop-makers": ({ makers }) =>
    `Die Zahlen der Werkstatt stehen auf Düsen von ${makers.join(", ")}; die gleiche Zahl eines anderen Herstellers kann um 5 % abweichen.`,

  "needle-measurement-unusable": ({ why }) => refusalText(why, { refusals }),
  "needle-reading-left-out": ({ mm, atMm, expectedMm, atEnd }) =>
    `${fixed(mm, 3)} mm bei ${fixed(atMm, 1)} mm wurde weggelassen: Die anderen Messungen sagen dort ${fixed(expectedMm, 3)} mm. Miss noch einmal${atEnd ? ", und zweimal daneben: Dort kann ein weiterer Kegel beginnen" : ""}.`,
  "needle-scatter":
    "Die Messungen streuen mehr, als die Messschraube sollte: Die Düsennadel kann krumm oder verschlissen sein. Dreh sie um eine Vierteldrehung und miss noch einmal.",
  "needle-no-taper": ({ toMm }) =>
    `Bis ${fixed(toMm, 1)} mm unter der obersten Kerbe wurde kein Kegel gefunden. Miss weiter zur Spitze hin.`,
  "needle-taper-start": ({ taper, startMm, withinMm }) =>
    `Wo Kegel ${taper} beginnt (${fixed(startMm, 1)} mm), ist nur auf ${fixed(withinMm, 1)} mm bekannt. Miss auf jeder Seite noch zweimal.`,
  "needle-taper-thin": ({ taper, startMm }) =>
    `Kegel ${taper} (ab ${fixed(startMm, 1)} mm) beruht auf drei Messungen und kann weiter danebenliegen als angegeben. Miss ihn alle 2 mm.`,

  "stand-in parts": ({ parts }) =>
    `Nicht bekannt: ${parts.map((part) => COMPARED[part]).join(", ")}. Auf beiden Seiten steht das Übliche dafür, das Band ist breiter.`,
  "needle not measured":
    "Niemand hat diese Düsennadel vermessen: Was der Clip bewirkt, ist von üblichen Düsennadeln her geraten. Miss ihre Durchmesser, dann wird es sicherer.",
  "seat not measured":
    "Der Abstand vom Sitz des Clips zur Nadeldüse ist nicht bekannt: Wo der Kegel übernimmt, ist geraten.",
  "maker not known":
    "Bei einer der Düsen steht kein Hersteller; gleiche Zahlen zweier Hersteller können um 5 % abweichen, das Band ist breiter.",
  "bled nozzle":
    "Luft, die in den Schacht gemischt wird, nimmt einen unbekannten Teil des Sogs weg: Hauptdüse und Düsennadel haben ein breiteres Band.",
  "air jets": "Die Luftdüsen sind verschieden. Eine größere macht magerer; wie viel, wird nicht gerechnet.",
  "same marks":
    "Beide Düsennadeln tragen dieselbe Kennung und sind doch verschieden: Eine kann verschlissen oder schlecht gemessen sein.",
  "main system starting": ({ openings }) =>
    `Bei ${openings.map(said).join(", ")} hebt der Sog den Kraftstoff kaum bis zum Austritt: Die Zahlen dort sind grob.`,
  "no-main-big-enough": ({ wanted, place: name }) =>
    `Keine Hauptdüse der Auswahl ist so groß wie ${fixed(wanted, 1)}: Auf ${name} liefe es mit der größten mager. Besorg vor der Fahrt eine größere.`,

  "nothing-to-compare":
    "Die Fahrt wird mit der Abstimmung davor verglichen, aber keine frühere ist notiert: Dieser Teil zählt nicht.",
  "unknown-comparison": ({ record }) =>
    `Die Fahrt wird mit dem Eintrag „${record}“ verglichen, der keine Abstimmung, keine Fahrt und kein Test dieses Motorrads ist: Dieser Teil zählt nicht.`,
};
