import type { Words } from "../en.ts";

/** "con el gas cerrado", "de cerrado a 1/8", "de 3/4 en adelante". */
function stretch(from: string, to: string): string {
  if (from === to) {
    if (from === "closed") return "con el gas cerrado";
    return from === "full" ? "a todo gas" : `a ${from}`;
  }
  if (from === "closed" && to === "full") return "de cerrado a todo gas";
  if (to === "full") return `de ${from} en adelante`;
  return from === "closed" ? `de cerrado a ${to}` : `de ${from} a ${to}`;
}

export const bike: Words["bike"] = {
  bikes: "Motos",
  bar: { label: "Esta moto", ridden: "Rodado", next: "Siguiente paso", fitted: "Montado" },
  aside: (ride, temperature, height) =>
    [ride === 0 ? "sin rodar todavía" : `salida ${ride}`, temperature, height].filter(Boolean).join(" · "),
  noBike: "No existe esa moto",
  noSuch:
    "Ninguna anotación de este aparato habla de ella. Quizá está en otro teléfono: trae su copia en Más, Copia de seguridad.",
  notDescribed: "Nadie ha dicho qué motor lleva esta moto. Dilo en La moto en sí, y empezará el consejo.",
  openOrder: (complaint) =>
    complaint === "" ? "Orden de trabajo abierta" : `Orden de trabajo: «${complaint}»`,
  picture: "Mezcla ahora",
  pictureRow: (opening) =>
    opening === "closed" ? "gas cerrado" : opening === "full" ? "todo gas" : `${opening} de gas`,
  opening: "Gas",
  mixture: "Mezcla",
  doubt: "margen",
  percent: (x) => `${Math.abs(Math.round(x))} %`,
  stretch,
  both: (stretches) =>
    stretches.length < 2 ? stretches.join("") : `${stretches.slice(0, -1).join(", ")} y ${stretches.at(-1)}`,
  leans: (leaning, sure) =>
    leaning === "rich" ? (sure ? "Rica" : "Parece rica") : sure ? "Pobre" : "Parece pobre",
  rightIs: "Bien",
  allRight: "Va bien de cerrado a todo gas.",
  openIs: "Aún no se sabe",
  nothingTold: "Nadie ha dicho todavía cómo va.",
  usual:
    "El dibujo muestra lo que suele hacer una moto así, y cuánto puede apartarse de eso. El primer informe de una salida lo hace tuyo.",
  nothingSettled: "Lo dicho hasta ahora no aclara si va rica o pobre. Lo aclara el siguiente paso.",
  rightAt: (day, air) => `Marcada como buena el ${day}${air === "" ? "" : `, con ${air}`}.`,
  twoSided: (where) => `${where} puede ser dos cosas: rica o pobre. Lo decide una prueba, no una corazonada.`,
  suspect: (what, chance) =>
    chance >= 0.6
      ? `Lo más probable: ${what}, no un chiclé.`
      : chance >= 0.3
        ? `Bien puede ser esto: ${what}. Búscalo antes de tocar un chiclé.`
        : `También podría ser esto: ${what}.`,
  suspectsMore: "Otros sospechosos",
  next: "Ahora",
  minutes: (minutes) => `${Math.round(minutes)} minutos`,
  nextIn: (minutes) => `Ahora, ${Math.round(minutes)} minutos`,
  showMe: "Enséñame cómo",
  assumed: (count) => (count === 1 ? "Se supone una cosa" : `Se suponen ${count} cosas`),
  leftOut: (count) => (count === 1 ? "Queda fuera una anotación" : `Quedan fuera ${count} anotaciones`),
  rough: "El cálculo paró antes de tiempo: toma el dibujo por más tosco de lo que parece.",
  fitted: "Qué lleva montado",
  edit: "Cambiar o corregir",
  notKnown: "no se sabe",
  links: "Más de esta moto",
  describe: "La moto en sí",
  assumption: {
    "nothing-fitted": "Nadie ha dicho qué lleva montado. Míralo y anótalo en Montado.",
    "numbering-assumed":
      "No se ha dicho qué significan los números de los chiclés: se toman como paso en 1/100 mm. Dilo en La moto en sí.",
    "screw-side-unknown":
      "Nadie ha dicho de qué lado de la campana está el tornillo, así que sus vueltas no se usan. Dilo en La moto en sí.",
    "air-assumed":
      "No hay aire anotado: se toma un día normal, con una banda ancha. Anota temperatura y altura en Aire.",
    "fuel-assumed": "No hay combustible anotado: se toma gasolina corriente de surtidor.",
  },
  air: "Aire",
  trip: "Salida con varias alturas",
  chart: "Tabla por altura y temperatura",
  best: "Mejores reglajes para un aire",
  sheet: "Hoja para el piloto",
  listen: "Escuchar el motor",
  history: "Historia",
  order: "Orden de trabajo",
  here: "¿Qué llevábamos aquí la última vez?",
  ask: "Preguntar a un amigo",
  lately: "Lo último",
  allHistory: "Todo",
};
