import type { CoreWords } from "../core-words.ts";

/** What to mind, one to three short sentences each. */
export const cautions: CoreWords["cautions"] = {
  "makers-manual":
    "El manual del fabricante de esta misma moto va antes que todo lo que se dice aquí: sus datos, su orden, sus pares de apriete.",
  "fuel-off-first":
    "Cierra la gasolina antes de empezar. Deja enfriar el motor. Vacía la cuba en una bandeja apta para gasolina.",
  "petrol-vapour":
    "Trabaja al aire libre o con las puertas abiertas. Sin llama, estufa, piloto, amoladora ni tabaco: el vapor de gasolina pesa y se queda en los fosos. Ten a mano un extintor para líquidos inflamables; nunca agua.",
  "spilled-fuel":
    "Seca la gasolina derramada antes de arrancar y echa los trapos en un cubo metálico cerrado. Una fuga que no para significa: no arranques.",
  battery:
    "Si hay batería, quita el borne negativo mientras haya gasolina abierta. Mantén el cable de bujía lejos de la gasolina, y nunca des al arranque con la bujía fuera junto a gasolina abierta.",
  fumes:
    "Los gases de escape matan sin oler. Nunca tengas el motor en marcha bajo techo, ni con la puerta abierta; el viento puede devolverlos adentro.",
  "hot-parts":
    "Codo de escape, culata y refrigerante queman. Espera o ponte guantes. Nunca abras un radiador caliente.",
  "eyes-and-skin":
    "Gafas al soplar chiclés, guantes contra la gasolina y el limpiador. Pon un trapo sobre el chiclé. Nunca apuntes el aire a la piel.",
  "seizure-at-full-throttle":
    "Poca gasolina a todo gas puede gripar el motor y bloquear la rueda. Empieza del lado rico, dos dedos en el embrague, ninguna pasada larga a fondo con un chiclé principal sin probar, y para al primer picado.",
  "lean-damage":
    "Poca gasolina quema pistones; de más casi solo engrasa bujías. En la duda, ve al lado de más gasolina.",
  "stop-at-knock":
    "Un golpeteo, un sonido que desgarra, metal en la bujía o un amago de gripaje acaban la puesta a punto. Cierra con suavidad, no lo repitas y busca la causa.",
  runaway:
    "El motor se embala: embrague, frenos, botón de parada. Si sigue: cierra la gasolina y tapa la boca del carburador si se llega sin peligro; o, solo sentado y con las dos ruedas en el suelo, la marcha más larga, los dos frenos a fondo y suelta el embrague para calarlo. Si no, apártate hasta que se seque, y no lo arranques hasta revisar campana, cable, toberas y retenes.",
  "slide-snap-before-start":
    "Antes de cada primer arranque, motor parado: abre y suelta, manillar recto, a la izquierda y a la derecha. Se debe oír la campana dar en su tope. Deja un pulgar en el botón de parada.",
  "test-riding":
    "Pruebas rodando solo en circuito cerrado o terreno permitido, con todo el equipo, con alguien mirando y el botón de parada probado. Nada de teléfono en la mano. Niños solo con vigilancia.",
  noise:
    "Quien ayuda junto a la moto lleva protección en los oídos. Respeta el límite y el horario de ruido del lugar.",
  "free-revving":
    "No mantengas todo gas en punto muerto: nada carga el motor, y las piezas vuelan. Solo golpes cortos.",
  "spray-fire":
    "Rociar gasolina o gas en las juntas puede provocar un incendio. Nunca con el motor caliente ni cerca de una chispa; la prueba de presión con agua jabonosa dice más y no quema nada.",
  "low-pressure-only":
    "Solo baja presión: nunca más de 10 psi (0,69 bar) en un cárter. Usa bomba de mano y manómetro hasta 15 psi, no el aire del taller.",
  "never-wire-or-drill":
    "Limpia los chiclés solo con disolvente y aire. Nunca metas alambre ni broca, y nunca soples hacia el lado del filtro.",
  waste:
    "Gasolina, limpiador, refrigerante, aceite y fibra vieja van a un punto de recogida, nunca a un desagüe ni a la tierra.",
  law: "En motos matriculadas no se pueden tocar tornillos ni chiclés precintados, y los cambios pueden anular la homologación y el seguro. En el campo rigen las normas locales de ruido y de parachispas.",
  "hand-over":
    "Llévalo a un técnico autorizado tras un embalamiento, gripaje o golpeteo, con metal en la bujía, una prueba de presión fallida, una fuga de gasolina que no para, un fallo de gas o frenos, o sin las herramientas y un sitio seguro.",
};
