import type { SignTexts } from "../../core-words.ts";

/** Starting and idle. */
export const startingAndIdle: SignTexts<"starting-and-idle"> = {
  "starts-on-choke-runs-clean-soon": {
    words: "Frío: arranca con estárter, pronto va limpio",
    description: "Unas patadas con estárter, medio minuto cargado, y luego toma el gas sin estárter.",
    when: "Primer arranque del día, por debajo de unos 20 °C",
  },
  "cold-start-without-choke": {
    words: "Frío: arranca sin nada de estárter",
    description: "Arranca helado sin tocar el estárter, y sigue enseguida.",
    notToBeTakenFor: "Un arranque con el motor aún templado, o tras cebar la boya.",
    when: "Primer arranque del día, por debajo de unos 15 °C",
  },
  "runs-only-on-choke": {
    words: "Solo anda con el estárter puesto",
    description:
      "Muy caliente, y aun así muere al quitar el estárter; con él aguanta el ralentí y toma un poco de gas.",
    notToBeTakenFor: "Un estárter usado al revés: unos se sacan para ponerlo, otros se empujan.",
    when: "Motor muy caliente, de cerrado a 1/4",
  },
  "hot-start-needs-open-throttle": {
    words: "Caliente: arranca solo con el gas abierto del todo",
    description:
      "Tras una parada no coge hasta sujetar el gas abierto; luego carraspea con un borboteo y humo.",
    notToBeTakenFor: "Dar gas antes de la patada, que ahoga también a un motor bueno.",
    when: "Pocos minutos tras parar caliente",
  },
  "hot-start-needs-choke": {
    words: "Caliente: arranca solo con estárter",
    description: "Caliente de rodar, y sin estárter no coge; ni olor a gasolina ni humo.",
    notToBeTakenFor: "Grifo aún cerrado, o gasolina evaporada de la cuba.",
    when: "Pocos minutos tras parar caliente",
  },
  "petrol-drips-from-overflow": {
    words: "Gotea gasolina por el tubo de rebose",
    description: "Recta y con el grifo abierto, gotea o corre gasolina por el tubo de debajo de la cuba.",
    notToBeTakenFor: "Unas gotas tras estar tumbada.",
    when: "Aparcada recta, grifo abierto",
  },
  "floods-after-a-fall": {
    words: "Se ahoga tras una caída",
    description: "Tras estar tumbada pide muchas patadas, la bujía sale mojada, y luego va como antes.",
    when: "Justo tras una caída; casi no dice nada de los chiclés",
  },
  "idles-steadily": {
    words: "Ralentí regular",
    description: "Un compás parejo que ni sube ni baja durante medio minuto o más, manos fuera.",
    notToBeTakenFor: "Un ralentí muy alto, que esconde uno malo.",
    when: "Caliente, parada, manos fuera más de 30 s",
  },
  "idle-loads-up": {
    words: "El ralentí se carga y muere",
    description:
      "Empieza bien, luego baja y se carga, tropieza o se para a los 20 a 60 s; un golpe de gas lo despeja con borboteo y humo.",
    notToBeTakenFor: "Un ralentí puesto demasiado bajo: ese muere sin borboteo.",
    when: "Caliente, parada un minuto",
  },
  "idle-hunts": {
    words: "El ralentí sube y baja solo",
    description: "El ralentí sube y cae solo cada pocos segundos, ligero e inquieto, sin humo.",
    notToBeTakenFor: "Una campana floja o un cable gastado.",
    when: "Caliente, parada, manos fuera",
  },
  "idle-creeps-up-when-hot": {
    words: "El ralentí sube al calentarse",
    description: "Bien puesto templado; tras rodar duro va claramente más alto sin haber tocado nada.",
    notToBeTakenFor: "Un cable que tira al girar el manillar.",
    when: "Justo tras una pasada dura",
  },
  "will-not-idle": {
    words: "No aguanta el ralentí con ningún ajuste del tornillo",
    description: "Muere en cuanto sueltas la mano, esté donde esté el tornillo pequeño.",
    notToBeTakenFor: "Un tope de ralentí demasiado aflojado.",
    when: "Caliente",
  },
  "idle-needs-stop-screw-far-in": {
    words: "Ralentí solo con el tope muy apretado",
    description: "Hay que sujetar la campana bien arriba para que ande; un poco menos y muere.",
    notToBeTakenFor: "Un motor cansado.",
    when: "Caliente",
  },
  "idle-suddenly-high": {
    words: "Ralentí alto de repente, la última vez iba bien",
    description: "Chilla o va muy por encima del ralentí de siempre de una salida a otra, sin tocar nada.",
    notToBeTakenFor: "Un tope que se movió: míralo primero.",
    when: "En cualquier momento",
  },
  "idle-better-with-tap-shut": {
    words: "El ralentí mejora un momento con el grifo cerrado",
    description:
      "Ralentí cargado y con humo que se alisa y sube un poco al cerrar el grifo, hasta que la cuba se agota.",
    when: "Caliente, parada, grifo cerrado un minuto",
  },
  "spits-back-at-the-mouth": {
    words: "Escupe gasolina por la boca del carburador",
    description: "Hay niebla de gasolina en la boca o moja el lado del filtro; arranca mal y tira flojo.",
    when: "Sin filtro, al ralentí y con golpes, los ojos bien lejos",
  },
  "kicks-over-easily": {
    words: "La patada baja muy fácil",
    description: "La palanca o el arranque lo giran casi sin resistencia, y tarda en coger.",
    notToBeTakenFor: "Un descompresor que hace su trabajo.",
    when: "Motor parado, gas abierto del todo",
  },
};
