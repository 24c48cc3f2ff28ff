import type { BookWords } from "./book-words.ts";

export const bookWordsEs: BookWords = {
  nothingDue: "nada vence",
  carry: (count, part) => `llevar ${count} × ${part}`,
  inVan: (count, short) => `en la camioneta ${count}${short > 0 ? `, faltan ${short}` : ""}`,
  noMonth: (typed) => `"${typed}" no es un mes escrito como 2026-11.`,
  monthOf: (month, sites, visits) => `${month}: ${sites} sitios, ${visits} visitas`,
  month: { visits: "visitas", outside: "fuera", parts: "piezas", due: "vence", open: "pendiente" },
  dueCount: (overdue, soon) => `${overdue} ${overdue === 1 ? "vencido" : "vencidos"}, ${soon} en 31 días`,
  openCount: (points, bypassed) => `${points} ${points === 1 ? "punto" : "puntos"}, ${bypassed} en desvío`,
  vanLine: (part, inVan, used, ordered, countAgain) =>
    `${part}: ${inVan} en la camioneta, ${used} usadas, ${ordered} pedidas${countAgain ? "; contar de nuevo" : ""}`,
  dueSoon: (count, part, short, toOrder) =>
    `vence en 31 días: ${count} × ${part}${short === undefined ? ", sin contar" : `, faltan ${short}, por pedir ${toOrder}`}`,
  vanNotCounted: "En esta camioneta nunca se contó nada: no se puede decir qué falta.",
  likely: (odds, part, stops) => `${odds} ${part}, en ${stops} ${stops === 1 ? "parada" : "paradas"}`,
  score: {
    told: (inside, told) =>
      `${inside} de ${told} ${told === 1 ? "lectura" : "lecturas"} de equipos sanos ${inside === 1 ? "cayó" : "cayeron"} donde se dijo`,
    elements: (kept, changed, good) =>
      [
        `elementos: ${kept} ${kept === 1 ? "conservado" : "conservados"} pasada su fecha por leerse bien`,
        `${changed} ${changed === 1 ? "cambiado" : "cambiados"}`,
        `${good} ${good === 1 ? "cambiado aunque se leía" : "cambiados aunque se leían"} bien`,
      ].join(", "),
    callBacks: (back, visits) =>
      `${back} de ${visits} ${visits === 1 ? "visita" : "visitas"} con nuevo llamado en 30 días`,
    cause: (found, place, first) =>
      place === 1
        ? `hallado ${found}: nombrado primero`
        : `hallado ${found}: nombrado ${place}.º, primero ${first}`,
    noCause: "Aún no se corrigió y confirmó ninguna causa.",
    person: (name, visits, back) =>
      `${name}: ${visits} ${visits === 1 ? "visita" : "visitas"}, ${back} con nuevo llamado`,
  },
  someOf: (names, count) =>
    `${names.join("; ")}${count > names.length ? `; y ${count - names.length} más` : ""}`,
  whichUnit: (units) => `Hay varios equipos: nombre uno con --unit: ${units}.`,
  noSuchUnit: (wanted, units) => `No hay ningún equipo «${wanted}» en este archivo. Hay: ${units}.`,
  noUnitOfSticker: (code) => `Ningún equipo de este libro lleva el adhesivo ${code}.`,
  noneLikely: "Ninguna pieza hará falta con una en diez o más.",
  noDay: (typed) => `"${typed}" no es un día escrito como 2026-11-25.`,
  nameAFile: "Indique un archivo exportado.",
  nameAList: "Indique una lista: tapside import LIST.csv -o OUT.tapside.json",
  counted: (newSites, newUnits, known) =>
    `${newSites} sitios nuevos, ${newUnits} equipos nuevos, ${known} ya estaban`,
  columnNotTaken: (name) => `la columna ${name} no se toma`,
  lineRefused: (line, why) => `línea ${line} rechazada: ${why}`,
  record: (sound, mark, visit, revision, again) =>
    `${sound ? "íntegro" : "ALTERADO"} ${mark} visita ${visit}, revisión ${revision}${sound ? `; ${again}` : ""}`,
  records: (count, broken, otherwise) =>
    `${count} ${count === 1 ? "registro" : "registros"}, ${broken} ${broken === 1 ? "alterado" : "alterados"}${otherwise > 0 ? `, ${otherwise} ${otherwise === 1 ? "JUZGADO" : "JUZGADOS"} DE OTRO MODO` : ""}`,
  noInputs: "no se puede juzgar de nuevo: no guarda los datos de entrada",
  judgedTheSame: "juzgado de nuevo: igual",
  judgedOtherwise: (rulesNow, rulesThen, differs) =>
    rulesThen === rulesNow
      ? `juzgado de nuevo con las mismas reglas, DE OTRO MODO: ${differs}`
      : `juzgado de nuevo con las reglas ${rulesNow}, antes con ${rulesThen === undefined ? "reglas anteriores sin número" : `las reglas ${rulesThen}`}, de otro modo: ${differs}`,
  missing: (names, count) => `No se puede decir: ${count > 1 ? "faltan" : "falta"} ${names}.`,
  noSuchVisit: "Esa visita con su equipo no está en este archivo.",
  noCounts: "El archivo de casos no tiene versión ni casos.",
  mostLikely: (unit) => `${unit}: lo más probable (según el modelo, no según casos del campo)`,
  speaksFor: "a favor",
  speaksAgainst: "en contra",
  howLarge: (sizes) => `qué tan grande: ${sizes}`,
  unexplained: "Nada de lo conocido explica estas lecturas: léalas de nuevo.",
  nextTest: (test, minutes) => `Próxima prueba: ${test}, ${minutes}`,
  nextRepair: (cause, sure) =>
    `Próximo paso: corregir: ${cause}${sure ? "" : " (la manera más rápida de saberlo)"}, luego medir de nuevo`,
  nextNothing: "Próximo paso: ninguno. No actúa ninguna causa conocida",
  notSeparable: (causes) => `Próximo paso: aquí ninguna lectura distingue entre ${causes}`,
  near: (value, odds, cause) => `cerca de ${value} (${odds}): ${cause}`,
  repair: (cause, parts, minutes, first) =>
    `${cause}: ${parts}, ${minutes}${first ? `; antes corregir o descartar: ${first}` : ""}`,
  noPart: "ninguna pieza",
  measureAgain: (tests) => `medir de nuevo: ${tests}`,
  neighbours: {
    same: "lee lo mismo que sus vecinos",
    waterMoved: "lee lo mismo que sus vecinos: cambió el agua",
    thisOne: "sus vecinos coinciden entre sí, no con este: medidor o llave",
    cannotTell: "un vecino lee otra cosa: agua o medidor",
  },
  neighbour: (on, title, own, others, said) => `${on} ${title}: ${own} µS/cm; otros ${others}: ${said}`,
  noNeighbours: "Ningún equipo tiene vecinos con la misma agua leídos en un plazo de 14 días.",
  meters: {
    agrees: "coincide con otros medidores",
    high: "lee alto frente a otros medidores",
    low: "lee bajo frente a otros medidores",
    cannotTell: "muy pocas comparaciones para decirlo",
  },
  meter: (name, lines, said, off) => `${name}: ${lines} líneas, ${said}${off ? ` (${off} %)` : ""}`,
  noMeters: "En este archivo no hay ningún medidor de sólidos disueltos.",
  nameALog: "Indique un archivo: tapside sensor LOG.csv",
  sensor: (count, from, until) => `${count} líneas, de ${from} a ${until}`,
  span: (low, high, unit) => `de ${low} a ${high} ${unit}`,
  alarms: (count) => `${count} alarmas`,
  counter: (on, title, value, unit) => `${on} ${title}: ${value} ${unit}`,
  perDay: (value, unit, since) => `${value} ${unit} al día desde ${since}`,
  noCounters: "En este archivo no se leyó ningún contador de un aparato.",
  kitchenWants: (verb) =>
    `Indique dónde guardar y una hora como 2026-11-25T08:00Z: tapside ${verb} FILE --unit ID -o OUT.pdf`,
  kitchenNoVisit: "El equipo aún no tiene visitas: nada se puede decir de su agua.",
};
