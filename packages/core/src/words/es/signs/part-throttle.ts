import type { SignTexts } from "../../core-words.ts";

/** Riding at part throttle. */
export const partThrottle: SignTexts<"part-throttle"> = {
  "pulls-smoothly": {
    words: "Tira suave con ese gas",
    description:
      "Mantiene un sonido parejo con la mano quieta y tira más al abrir; sin tirones, borboteo ni cascabeleo.",
    when: "Caliente, mantenido y abriendo poco a poco en 2.ª a 4.ª",
  },
  "four-strokes-light-throttle": {
    words: "Hace el cuatro tiempos con poco gas constante",
    description:
      "Enciende una vuelta sí y otra no: medio compás, desigual y blando, como un burbujeo lento, con la mano quieta en llano. Uno leve es normal.",
    notToBeTakenFor: "Escape o agua aún fríos.",
    when: "Caliente, de 1/8 a 1/4, llano, sin carga",
  },
  "four-strokes-under-load": {
    words: "Hace el cuatro tiempos bajo carga",
    description:
      "Cuesta arriba enciende una vuelta sí y otra no: medio compás, blando y desigual, pesado, a menudo con humo detrás.",
    notToBeTakenFor: "Un limitador de vueltas o una bujía que se muere.",
    when: "Caliente, de 1/4 a 3/4, cuesta arriba o en marcha larga",
  },
  "jerks-at-constant-grip": {
    words: "Tirones o vaivenes con la mano quieta",
    description: "La moto tira y suelta aunque la mano no se mueva: tironcitos secos, sin humo.",
    notToBeTakenFor: "Una cadena floja.",
    when: "Caliente, de 1/8 a 1/2, quieto",
  },
  "revs-without-pull": {
    words: "Sube de vueltas pero no tira, hueco y caliente",
    description: "El sonido sube, fino y hueco, pero la moto no lo sigue, y el motor se nota caliente.",
    notToBeTakenFor: "Poca compresión.",
    when: "De 1/4 a 3/4 bajo carga",
  },
  "weaker-lap-by-lap": {
    words: "Primera vuelta buena, luego cada vez menos",
    description: "Fuerte al salir; cada vuelta tira menos y está más caliente.",
    notToBeTakenFor: "Un piloto cansado.",
    when: "Una manga entera o una subida larga",
  },
  "pings-on-roll-on": {
    words: "Pica: un cascabeleo leve al abrir",
    description:
      "Un cascabeleo metálico leve, como canicas en una lata, al hacerlo tirar de bajas vueltas en caliente.",
    notToBeTakenFor:
      "Cabeceo del pistón, ruido de embrague o una chapa suelta. Tómalo como aviso hasta probar lo contrario.",
    when: "Muy caliente, de 1/4 a 3/4, bajas vueltas, bajo carga",
  },
  "lazy-and-heavy": {
    words: "Suave pero perezoso y pesado",
    description:
      "Ni falla ni cascabelea, solo tarda y va apagado; una bujía limpia se moja al rodar mucho y despacio.",
    when: "De 1/8 a 1/2, rodar mucho y despacio",
  },
  "lazy-revs-petrol-smell-four-stroke": {
    words: "Sube perezoso y huele a gasolina",
    description:
      "Sube despacio con un sonido apagado y huele a gasolina sin quemar; nunca borbotea, pues enciende de por sí una vuelta sí y otra no.",
    when: "Caliente, abriendo poco a poco o con un golpe",
  },
  "heavy-in-the-middle-clean-on-top": {
    words: "Pesado en el medio, limpio a todo gas",
    description: "De 1/8 a 3/4 va cargado, borboteando o con humo; a fondo tira limpio.",
    when: "Caliente, la misma cuesta a medio gas y a fondo",
  },
  "clip-moves-make-no-difference": {
    words: "Mover el clip no cambia nada",
    description: "Una o dos muescas hacia cualquier lado, y el medio va igual de mal.",
    when: "Tras al menos un cambio de clip, misma cuesta, misma marcha",
  },
  "follows-revs-not-grip": {
    words: "Sale a las mismas vueltas con cualquier gas",
    description: "El fallo sale a unas vueltas concretas, a medio gas o a fondo, en todas las marchas.",
    when: "Las mismas vueltas con dos posiciones del gas",
  },
  "worse-at-low-revs-same-grip": {
    words: "Mismo gas: peor cuanto más bajas las vueltas",
    description: "Con un gas pequeño va fino y a tirones en bajas y mejora al subir de vueltas.",
    when: "Poco gas quieto, desde bajas vueltas",
  },
  "misses-more-the-harder-it-pulls": {
    words: "Falla más cuanto más tira",
    description:
      "Limpio sin carga; cargado caen explosiones sueltas con un chasquido, peor cuanto más se abre.",
    when: "Las mismas vueltas, sin carga y cargado",
  },
  "comes-and-goes": {
    words: "Va y viene sin motivo",
    description: "Perfecto un rato, mal otro rato, con el mismo gas en el mismo suelo.",
    when: "A lo largo de toda una salida",
  },
};
