import type { CoreWords } from "../core-words.ts";

const SCREWDRIVERS = "destornillador de estrella n.º 2 y plano";
const BOWL_SPANNER = "llave fija de 14 o 17 mm para el tapón de la cuba";
const BOWL_TOOLS = [SCREWDRIVERS, "llave hexagonal de 3 mm", BOWL_SPANNER];

/** Looks and measurements: the heading, the steps in order, and what to do when something is found. */
export const checks: CoreWords["checks"] = {
  "look-at-boots-and-clamps": {
    words: "Mira las toberas de goma y las abrazaderas",
    steps: [
      "Dobla las dos toberas con la mano bajo la linterna y busca grietas, sobre todo por debajo.",
      "Comprueba alrededor que el carburador entra del todo en su tobera y que las dos abrazaderas aprietan en su ranura.",
      "Busca una línea mojada o con polvo en las uniones y en cada tapón de una toma de vacío.",
    ],
    tools: ["linterna", SCREWDRIVERS],
    mend: "Cambia la tobera o el tapón agrietado, asienta el carburador, aprieta las abrazaderas y repite la pasada que mostró el fallo.",
  },
  "idle-stop": {
    words: "Ajusta el tope del ralentí",
    steps: [
      "Motor caliente. Apunta dónde está el tornillo de tope contando las vueltas al moverlo.",
      "Aflójalo hasta que el ralentí apenas caiga, y luego adentro hasta el ralentí del fabricante (dos tiempos de campo de 250 a 300, entre 1500 y 1900 por minuto).",
      "Gas cerrado y caliente: ¿responde el ralentí en los dos sentidos, y vuelve a responder el tornillo pequeño?",
    ],
    tools: [SCREWDRIVERS],
    mend: "Déjalo en el ralentí del fabricante. Si solo aguanta con la campana muy arriba, limpia el circuito de baja y busca tomas de aire.",
  },
  "tap-and-vents": {
    words: "Revisa grifo, respiradero del tapón y mangueras",
    steps: [
      "Mira la manguera de gasolina por si está doblada y su filtro por si está sucio; grifo abierto del todo.",
      "Quita el tubo del respiradero del tapón y sopla: debe dejar entrar aire.",
      "Sigue cada tubo de la cuba: abierto en la punta, sin pellizcar, ni bajo el cable ni en el barro.",
    ],
    tools: ["linterna"],
    mend: "Limpia o cambia lo atascado, pasa los tubos como venían y repite la pasada larga a fondo.",
  },
  "overflow-drip": {
    words: "Grifo abierto dos minutos: ¿gotea?",
    steps: [
      "Moto recta, motor parado, un trapo seco bajo el tubo de rebose.",
      "Grifo abierto dos minutos. Da un golpecito en la cuba con el mango del destornillador.",
      "Mira el trapo, el rebose y la junta de la cuba.",
    ],
    tools: ["trapo", SCREWDRIVERS],
    mend: "Limpia la válvula; si sigue perdiendo, cambia válvula y asiento juntos y ajusta la altura de la boya.",
  },
  "air-filter": {
    words: "Mira el filtro de aire",
    steps: [
      "Saca el filtro y míralo al trasluz: suciedad, aceite que gotea, agujeros, una costura abierta.",
      "Pasa un trapo blanco por dentro de la admisión: polvo ahí significa que deja pasar suciedad.",
      "Mira si asienta en todo el borde, y si el desagüe y la tapa de la caja están como al rodar.",
    ],
    tools: ["trapo blanco", "linterna"],
    mend: "Límpialo y acéitalo o pon uno nuevo, engrasa y asienta el borde, y vuelve a rodar antes de tocar un chiclé.",
  },
  "slide-snap-and-cable": {
    words: "Haz caer la campana de golpe y revisa el cable",
    steps: [
      "Motor parado. Abre del todo y suelta con el manillar recto, a la izquierda y a la derecha: cada vez se debe oír la campana en su tope.",
      "Nota el juego: cerca de 1 mm en el cable, de 2 a 4 mm en el borde del puño, si el manual no dice otra cosa.",
      "En la duda, fuera la tapa: campana y cuerpo sin surcos ni escalones, rebaje hacia el filtro, sujeción de la aguja firme, muelle entero.",
    ],
    tools: [SCREWDRIVERS, "linterna"],
    mend: "Suelta, recoloca o cambia el cable; limpia campana y cuerpo; cambia una campana gastada. Otra caída de golpe antes del primer arranque.",
  },
  "fresh-fuel-and-oil": {
    words: "Vacía y pon gasolina fresca",
    steps: [
      "Grifo cerrado, motor frío. Vacía la cuba en un vidrio claro: el agua queda en bolitas al fondo, la suciedad se ve.",
      "Pregunta de cuándo es la gasolina, de qué tipo y cómo se mezcló; más de un mes o no se sabe cuenta como mala.",
      "Vacía depósito y cuba, echa gasolina fresca del tipo y con el aceite que pide el fabricante, y repite la pasada.",
    ],
    tools: [
      "frasco de vidrio claro",
      "bidón para gasolina",
      SCREWDRIVERS,
      "llave hexagonal de 3 mm",
      BOWL_SPANNER,
    ],
    mend: "Sigue con gasolina fresca; limpia el filtro del grifo y la cuba si había agua o suciedad.",
  },
  "fuel-flow": {
    words: "Mide el caudal de gasolina",
    steps: [
      "Quita la manguera del carburador y ponla en un vaso medidor a la altura del carburador; tapón cerrado como al rodar.",
      "Grifo abierto dos minutos, y lee el vaso al final de cada uno.",
      "Unos 250 ml por minuto o más bastan para una 250 a 300; esa clase gasta a fondo entre 150 y 200 ml por minuto. Los motores pequeños piden menos.",
      "Un caudal que baja en el segundo minuto es un depósito que no respira.",
    ],
    tools: ["vaso medidor", "cronómetro", "alicates"],
    mend: "Despeja respiradero, grifo y filtro, cambia una manguera doblada o hinchada y mide otra vez.",
  },
  "choke-plunger": {
    words: "Comprueba que el estárter cierra",
    steps: [
      "Estárter quitado: botón o palanca en su reposo, con juego donde hay cable.",
      "Saca el émbolo: cara de goma limpia, sin marca ni hinchazón, muelle entero, asiento sin suciedad.",
      "Vuelve a montarlo y acciónalo varias veces: debe volver solo de golpe.",
    ],
    tools: [SCREWDRIVERS, "llave fija de 14 mm", "linterna"],
    mend: "Limpia el asiento, cambia el émbolo o su muelle, da juego al cable.",
  },
  "spark-and-plug": {
    words: "Revisa bujía, pipa, cable y chispa",
    steps: [
      "¿Estaba apretada la bujía? Compara su número con el manual y mide la separación.",
      "Pipa y cable: sin grietas, sin hilo verde, firmes en la bujía.",
      "Probador de chispa en el cable, cuerpo a masa, lejos de gasolina: una chispa azul y gorda debe saltar la distancia (un fabricante pide más de 6 mm).",
      "Pon una bujía nueva del número correcto y sal. Una chispa débil falla primero bajo carga, así que una buena en el banco prueba poco.",
    ],
    tools: ["llave de bujías", "galgas", "probador de chispa", "bujía nueva"],
    mend: "Bujía nueva del número correcto, pipa o cable; si sigue fallando bajo carga, que midan bobina, estátor y encendido.",
  },
  "ignition-timing": {
    words: "Revisa el punto de encendido",
    steps: [
      "Tapa fuera: chaveta del volante entera, marcas como en el manual, placa apretada.",
      "Con lámpara estroboscópica o reloj comparador en el agujero de la bujía, compara con el dato del manual.",
      "Mide los bobinados de bobina y estátor según el manual, en frío y otra vez en caliente.",
    ],
    tools: ["reloj comparador o estroboscópica", "polímetro", "extractor de volante"],
    mend: "Ajusta el punto, cambia chaveta, bobina o estátor.",
  },
  "head-and-plug-tight": {
    words: "Comprueba el apriete de culata y bujía",
    steps: [
      "Motor frío. Primero la bujía: no debe girar con facilidad.",
      "Mira las juntas de culata y de base por si hay aceite, hollín o refrigerante.",
      "Comprueba cada tuerca de culata y base con llave dinamométrica, en cruz, al dato del manual.",
    ],
    tools: ["llave dinamométrica", "vasos", "llave de bujías"],
    mend: "Aprieta en cruz al dato del manual; una junta soplada se cambia y se mira si el plano está recto.",
  },
  cooling: {
    words: "Revisa la refrigeración",
    steps: [
      "Motor frío: líquido hasta la marca, goma del tapón blanda y entera, mangueras firmes.",
      "Aletas del radiador o del cilindro rectas y sin barro.",
      "En marcha desde frío sin tapón: el líquido debe moverse; burbujas seguidas son gas de la junta de culata.",
    ],
    tools: ["agua y cepillo blando", "linterna"],
    mend: "Llena y purga, limpia las aletas, cambia tapón, manguera o retén de la bomba; burbujas son junta de culata.",
  },
  compression: {
    words: "Mide la compresión",
    steps: [
      "Motor caliente, compresímetro en el agujero de la bujía, encendido cortado, gas abierto del todo.",
      "De cinco a diez patadas hasta que la aguja se pare. Repite.",
      "Un dos tiempos 250 fresco da unos 175 a 200 psi (12 a 14 bar) o más, una 125 o una mini de 150 a 200 (10 a 14). Más de un 20 % por debajo del dato en fresco de este motor son segmentos. El dato del manual manda, y un descompresor lee de menos.",
      "Esto no prueba las fugas del cárter.",
    ],
    tools: ["compresímetro", "llave de bujías"],
    mend: "Segmentos y pistón, cilindro medido; en un cuatro tiempos, antes las válvulas.",
  },
  "gearbox-oil-and-smoke": {
    words: "Revisa el aceite del cambio y el humo",
    steps: [
      "Vacía el cambio y mide: claramente menos de lo que se echó, sin gota por fuera, es la señal.",
      "Huele el aceite: gasolina en él es que el retén pasa en los dos sentidos.",
      "Motor caliente al aire libre: humo constante que no cambia con el aceite de la mezcla.",
    ],
    tools: ["vaso medidor", "llaves", "bandeja"],
    mend: "Cambia el retén del cigüeñal del lado del cambio (y su rodamiento si tiene juego), luego prueba de presión.",
  },
  "clean-pilot": {
    words: "Limpia el chiclé de baja y sus conductos",
    steps: [
      "Grifo cerrado, cuba vacía y fuera. Cuenta las vueltas del tornillo pequeño hasta que asiente suave, apúntalas, y saca tornillo, muelle, arandela y tórica.",
      "Fuera el chiclé de baja con un destornillador estrecho que llene la ranura. Míralo al trasluz: un agujero redondo y limpio.",
      "Disolvente y luego aire por el chiclé, el agujero del tornillo y los agujeritos del lado del motor de la campana; todos deben rociar libres.",
      "Monta todo, el tornillo en las vueltas apuntadas.",
    ],
    tools: [
      ...BOWL_TOOLS,
      "destornillador plano estrecho",
      "limpiador de carburadores",
      "aire a baja presión",
      "linterna",
    ],
    mend: "Lo que salió lo dice: suciedad es limpiar también depósito, grifo y filtro. Un chiclé que no se despeja se cambia por el mismo número.",
  },
  "float-height": {
    words: "Mide la altura de la boya",
    steps: [
      "Fuera la cuba. Inclina el carburador hasta que la lengüeta toque justo la aguja de la válvula sin apretar su muelle.",
      "Mide de la cara del cuerpo a la boya, por los dos lados, contra el dato de este modelo en su manual.",
      "O montado y en marcha, con un tubo transparente del vaciado junto a la cuba: la gasolina debe estar en la marca del fabricante.",
      "Punta de la válvula: un anillo marcado es que pierde. Sacude la boya: debe estar seca por dentro.",
    ],
    tools: [...BOWL_TOOLS, "calibre o galga de boya", "tubo transparente"],
    mend: "Dobla la lengüeta poco a poco hasta el dato; cambia una válvula gastada con su asiento, y una boya que pesa.",
  },
  "measure-needle-and-jet": {
    words: "Mide la aguja y el pulverizador",
    steps: [
      "Fuera la campana y la aguja, muesca del clip apuntada. Fuera el pulverizador si se puede.",
      "Mira la aguja con lupa: planos, rayas brillantes, un escalón donde roza.",
      "Micrómetro en la parte recta, en cuatro giros de la aguja: 0,01 mm de óvalo o por debajo de la medida nueva ya cuenta (de un 3 a un 5 % de gasolina a 1/4).",
      "Pulverizador: pasadores patrón, o uno nuevo al lado con lupa; un agujero ovalado está gastado.",
    ],
    tools: [...BOWL_TOOLS, "micrómetro", "pasadores patrón", "lupa"],
    mend: "Aguja y pulverizador nuevos a la vez, de los mismos tipos; luego juzga de nuevo el clip desde el medio.",
  },
  reeds: {
    words: "Mira las láminas",
    steps: [
      "Fuera carburador y tobera, fuera la caja de láminas; tapa la admisión con un trapo limpio.",
      "Mira la caja al trasluz: sin luz por las láminas más de lo que permite el manual, sin mellas, grietas ni esquinas deshilachadas.",
      "Aprieta cada lámina: el mismo muelle en los dos lados. Topes apretados.",
    ],
    tools: [SCREWDRIVERS, "llaves hexagonales", "linterna", "trapo limpio"],
    mend: "Láminas nuevas en juego, y la junta; antes de cerrar encuentra cada trozo que falte, puede estar en el cárter.",
  },
  "exhaust-and-silencer": {
    words: "Revisa escape, unión y silencioso",
    steps: [
      "Escape frío. Unión del cilindro: hollín o aceite por fuera es que pierde.",
      "Fuera el silencioso: mira por el tubo, golpéalo, pésalo en la mano; la fibra empapada o soplada pesa o suena.",
      "Escape: abolladuras cerca del codo, carbonilla en el tubo final y en la lumbrera.",
      "Una pasada corta con otro silencioso del mismo tipo es lo que más dice.",
    ],
    tools: ["gancho de muelles", "llaves", "linterna"],
    mend: "Rellena o cambia el silencioso, quita la carbonilla, endereza o cambia el escape, anillos de unión nuevos.",
  },
  "power-valve": {
    words: "Comprueba que la válvula de escape se mueve",
    steps: [
      "Tapa fuera: el varillaje debe moverse a mano hasta los dos extremos y volver con su muelle.",
      "Donde se vea, mírala mientras se da un golpe de gas desde el ralentí: debe abrir y cerrar.",
      "Dura: sácala, raspa la carbonilla, busca pasadores rotos.",
    ],
    tools: ["llaves hexagonales", "disolvente", "rasqueta blanda", "linterna"],
    mend: "Limpia, cambia pasadores y retenes gastados, ajusta el varillaje según el manual.",
  },
  "spray-joints": {
    words: "Busca la fuga con gas o agua jabonosa en las uniones",
    steps: [
      "Motor al ralentí, solo templado, al aire libre, extintor a mano. Un ayudante en el botón de parada.",
      "Agua jabonosa, o con cuidado propano sin encender por un tubo, en toberas, junta de base y tapones de vacío, un sitio cada vez.",
      "Si las vueltas suben o bajan en un sitio, cada vez, ahí está la fuga. Un retén tras el volante no se alcanza así.",
    ],
    tools: ["pulverizador con agua jabonosa", "o propano con tubo", "extintor"],
    mend: "Arregla el sitio que respondió; si ninguno lo hizo y se queda colgado, prueba de presión.",
  },
  "pressure-test": {
    words: "Prueba de presión del cárter",
    steps: [
      "Antes el manual del fabricante, si da un dato. Prueba el aparato solo antes que el motor.",
      "Tapa escape y admisión, pistón abajo, bujía puesta.",
      "Bombea a 6 psi (0,41 bar) y mira 6 minutos. Las fuentes dan de 5 a 9 psi (de 0,34 a 0,62 bar) de 3 a 10 minutos.",
      "Lo mejor es no perder nada. La más tolerante admite 1 psi (0,07 bar) por minuto, las otras medio psi en 10 minutos o nada.",
      "Si cae: agua jabonosa en toberas, base, culata, unión de cárteres, bujía y el retén tras el volante. Burbujas en el respiradero del cambio son el retén de ese lado.",
    ],
    tools: ["tapas o tapones", "bomba de mano con manómetro de 0 a 15 psi", "agua jabonosa", "llaves"],
    mend: "Cambia el retén, la junta o la tobera que hizo burbujas y prueba otra vez antes de tocar un chiclé.",
  },
  "pump-timing": {
    words: "Revisa la bomba de aceleración",
    steps: [
      "Grifo cerrado, tobera de admisión fuera, cuba llena. Mira con linterna, los ojos bien atrás, y abre el gas una vez a mano.",
      "El chorro debe salir enseguida, librar la campana y durar lo que dice el manual; torcido o goteando es suciedad.",
      "Abrir rápido y despacio: solo rápido debe dar el chorro entero.",
    ],
    tools: [SCREWDRIVERS, "llaves hexagonales", "linterna"],
    mend: "Limpia el surtidor, cambia la membrana, ajusta momento y varilla según el manual, y solo entonces piensa en el chiclé de fuga.",
  },
  "valve-clearance": {
    words: "Mide el juego de válvulas",
    steps: [
      "Motor frío. Tapas fuera, pistón arriba en su tiempo de encendido, marcas como en el manual.",
      "Galga bajo cada leva o balancín; apunta cada dato.",
      "Compara con el manual. La que se ha cerrado desde la última vez se está comiendo su asiento.",
    ],
    tools: ["galgas", "llaves hexagonales", "vasos", "llaves"],
    mend: "Ajusta con pastillas o tornillo según el manual; si siguen cerrándose, hay que ver la culata.",
  },
};
