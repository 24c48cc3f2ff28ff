import type { Said } from "../en/said.ts";
import type { Messages } from "../messages.ts";
import { refusedLists } from "./refused-lists.ts";
import { refusedWaters } from "./refused-waters.ts";

/** Why something cannot be calculated or taken, by its code. */
export const refusalTexts: Readonly<Record<string, Said>> = {
  ...refusedWaters,
  ...refusedLists,
  "nothing-typed": "Escriba un número.",
  "dose-needs":
    "Una dosis necesita el cloro deseado, los litros y la concentración, cada uno mayor que cero.",
  "dose-too-strong": ({ mostMgPerL }) =>
    `Más de ${mostMgPerL} mg/L no es dosis de desinfección: ¿un error en el signo decimal?`,
  "product-too-weak": "El producto es más débil que lo deseado.",
  "heater-needs-power": "Escriba la potencia de la resistencia en kW.",
  "carbon-needs-rating": "Se necesitan los litros nominales del carbón y el cloro al que se indican.",
  "carbon-needs-chlorine": "Sin cloro en la entrada no se pueden calcular sus litros.",
  "carbon-needs-litres": "Los litros de carbón y de permeado por día deben ser mayores que cero.",
  "below-scald-table": "Por debajo de 49 °C no hay tiempo publicado. Eso no dice que sea seguro.",
  "scale-needs-amounts": "Dureza, litros y días no pueden ser menores que cero.",
  "two-decimal-marks": "Una sola coma o punto; omita el separador de miles.",
  "not-a-number": ({ text, name, input }) =>
    text === undefined
      ? `${input ?? "Esto"} no es un número.`
      : `${name === undefined ? "" : `${name}: `}"${text}" no es un número: cifras y una coma o un punto.`,
  "too-long": "Demasiadas cifras para una lectura.",
  "unit-not-for-slot": ({ unit }) => `${unit} no corresponde aquí.`,
  "cup-needs-volume": "Elija primero el vaso.",
  "text-has-nul": "Este texto tiene un signo que no se puede guardar. Bórrelo.",
  "text-has-half-character": "Este texto tiene medio signo. Bórrelo y escríbalo de nuevo.",
  "number-not-finite": "Eso no es un número.",
  "no-such-visit": "No existe esa visita en este archivo.",
  "file-empty": "El archivo está vacío. Elija el que se exportó.",
  "file-foreign": "Este archivo no lo escribió Tapside. No se tomó nada.",
  "file-newer":
    "Este archivo lo escribió una versión más nueva. Instale primero esa versión; no se tomó nada.",
  "file-truncated": "El archivo termina antes de tiempo. Cópielo de nuevo; no se tomó nada.",
  "file-altered": "El archivo se cambió después de escribirse. No se tomó nada.",
  "file-broken": ({ line }) => `La línea ${line} del archivo no se puede leer. No se tomó nada.`,
  "change-newer": "Esto lo escribió una versión más nueva. Instale primero esa versión.",
  "id-reused": "El archivo no coincide con este libro en una entrada. No se tomó nada.",
  "storage-refused": "Este teléfono se niega a guardarlo. Exporte ahora.",
  "not-a-photo": "Una foto del archivo no se puede leer. No se tomó nada.",
  "not-a-change": "Una línea del archivo no es una entrada de un libro. No se tomó nada.",
  "pdf-failed": "No se pudo crear el PDF. El registro mismo está guardado.",
  "record-altered": "El registro se cambió después de congelarse.",
  "record-broken": "El registro no se puede leer.",
  "not-a-finite-number": "Eso no es un número.",
  "unit-unknown": ({ unit }) =>
    unit === undefined ? "Esta unidad no se conoce." : `"${unit}" no es una unidad conocida aquí.`,
  "units-differ-in-kind": ({ from, fromKind, to, toKind }) =>
    from === undefined
      ? "Estas unidades miden cosas distintas."
      : `${from} mide ${fromKind}, ${to} mide ${toKind}: elija dos del mismo tipo.`,
  "feed-not-above-zero": "El TDS de entrada debe ser mayor que cero.",
  "permeate-not-below-feed": "El permeado no es menor que la entrada: ¿están cambiadas las muestras?",
  "permeate-not-to-waste": "Lea con el permeado a desagüe, no en el tanque.",
  "first-water-not-discarded": "Primera agua tras reposo: déjela correr, lea de nuevo.",
  "temperature-out-of-range": ({ lowC = 1, highC = 45 }) =>
    `La temperatura del agua está fuera de ${lowC} a ${highC} °C.`,
  "not-positive": ({ name }) => `${name ?? "Esta lectura"}: debe ser mayor que cero.`,
  "no-net-driving-pressure": "La presión es muy baja para empujar agua por la membrana.",
  "mixed-temperature-forms": "Las lecturas se corrigieron con distintas formas de temperatura.",
  "nothing-drawn": "No se extrajo agua.",
  "pressure-did-not-fall": "El manómetro del tanque no bajó al extraer agua.",
  "tank-emptied": "El manómetro del tanque bajó a cero: extraiga menos, o ajuste la carga en vacío.",
  "more-gas-than-tank": "Más gas del que cabe en el tanque: revise manómetro y litros.",
  "minimum-above-full": "El aparato necesita más presión que la del tanque lleno.",
  "no-use": "No se ha dicho nada de lo que toma la cocina.",
  "makes-too-little": "Ningún tanque ayuda: en un día se usa más de lo que se produce.",
  "hour-of-day": ({ hour }) => `${hour} no es una hora del día: de 0 a 24.`,
  "no-tank": "No hay tanque.",
  "vented-tank": "El tanque está abierto al aire.",
  "permeate-pump-untrained":
    "Las causas probables nunca se calcularon para un equipo con bomba de permeado: sin probabilidades.",
  "never-shuts-off": "La válvula de corte nunca cerraría.",
  "shut-off-below-air-charge": "La carga de aire supera la presión de corte: el tanque no puede llenarse.",
  "tank-above-feed": "El tanque está por encima de la entrada: no fluye nada.",
  "no-flow": "No fluye nada a esta presión.",
  "no-element": "El equipo no tiene elemento.",
  "no-root": "Estas piezas y presiones no dan un punto de trabajo: revise el restrictor y la placa.",
  "unknown-temperature-form": ({ text }) => `"${text}" no es una forma de temperatura conocida aquí.`,
  "out-of-range": ({ name, low, high, unit, rangeUnit }) => {
    if (low === undefined) return "Una lectura está fuera de lo que se puede calcular.";
    return name === undefined
      ? `Apenas posible: puede ser de ${low} a ${high} ${rangeUnit ?? unit}.`
      : `${name}: debe estar entre ${low} y ${high}.`;
  },
  "leak-above-membrane": ({ mLPerMin }) =>
    `La membrana no deja volver más de ${mLPerMin} mL/min: lo que drena de más viene por otro camino, como un corte que queda abierto.`,
  "line-takes-too-much": ({ kPa }) =>
    `Una línea así pierde ${kPa} kPa con un litro por minuto, más de lo que un equipo soporta: revise diámetro y largo. No se cuenta.`,
  "readings-too-uncertain": "Aquí las lecturas son demasiado inciertas para decirlo.",
  "nameplate-incomplete": "La placa está incompleta.",
  "nameplate-rejection": "El rechazo de la placa está fuera de 20 a 100 %.",
  "nameplate-recovery": "El caudal de drenaje es muy pequeño frente al de permeado.",
  "nameplate-contradictory": "Estos caudales y presiones se contradicen.",
  "no-reference-salt": "La referencia no muestra sal con qué comparar.",
  "not-computable": "Estas lecturas no dan una cifra razonable.",
  "filling-time-out-of-range": "Ningún elemento de este equipo podría llenar el tanque en ese tiempo.",
  "no-such-restrictor": "Ningún restrictor da aquí esta recuperación.",
  "feed-already-scales": ({ mineral }) =>
    `La entrada ya deposita ${mineral ?? "sarro"} por sí sola: ninguna recuperación queda libre de sarro.`,
  "meter-went-back": "El medidor de agua retrocedió: ¿medidor nuevo?",
};

export const refusal: Messages["refusal"] = ({ code, detail = {} }) => {
  const said = refusalTexts[code];
  if (said === undefined) return `No es posible: ${code}.`;
  return typeof said === "string" ? said : said(detail);
};
