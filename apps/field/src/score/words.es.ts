import type { scoreEn } from "./words.en.ts";

export const scoreEs: typeof scoreEn = {
  title: "Balance propio",
  since: (day) => `visitas desde ${day}`,
  counting: (done) => `contando, ${done} visitas hasta ahora`,
  readings: "Dicho y luego leído",
  inside: (share) => `${share} de las lecturas de equipos sanos cayó donde se dijo`,
  insideOf: (inside, told, range) =>
    `${inside} de ${told}, es decir ${range}; una banda debe abarcar 19 de 20`,
  noneTold: "Aún no se pudo decir ninguna banda.",
  causes: "Dicho y luego hallado",
  noneFound: "Aún no se corrigió y confirmó ninguna causa.",
  firstOf: (first, all) => `nombrada primero ${first} de ${all}`,
  saidInstead: (cause) => `se dijo primero: ${cause}`,
  elements: "Elementos de membrana",
  element: {
    keptAsGood: "conservados pasada su fecha: se leían bien",
    new: "cambiados",
    newThoughGood: "cambiados aunque se leían bien",
  },
  callBacks: "Llamados de nuevo en 30 días",
  noneBack: "Ninguno.",
  afterVisitOf: (who) => `tras una visita de ${who || "nadie nombrado"}`,
  people: "Por técnico",
  person: (visits, back) => `${visits} ${visits === 1 ? "visita" : "visitas"}, ${back} con nuevo llamado`,
  small: "Los números pequeños dicen poco: compare por años, no por semanas.",
};
