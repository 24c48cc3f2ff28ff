import type { VisitWords } from "../visit-words.ts";
import { writtenDay } from "../written-day.ts";
import { lowerFirst } from "./names.ts";
import { number } from "./number.ts";
import { steps } from "./steps.ts";

const on = writtenDay("es");

const listed = (items: readonly string[]) => items.map(lowerFirst).join("; ");

/** Two significant digits: an upper bound from a guessed demand has no more. */
const rough = (value: number): string => number(Number(value.toPrecision(2)));

const mass = (grams: number): string => (grams >= 1000 ? `${rough(grams / 1000)} kg` : `${rough(grams)} g`);

export const visit: VisitWords = {
  checks: {
    complaint: {
      title: "¿Qué falla?",
      items: {
        noWater: "No hay agua",
        weak: "Sale fuerte y luego se acaba",
        drainRuns: "El drenaje corre todo el tiempo",
        leak: "Fuga o piso mojado",
        alarm: "Alarma de un aparato",
        taste: "Sabor",
        smellChlorine: "Huele a piscina",
        smellOther: "Otro olor",
        cloudy: "Turbia",
        ice: "Hielo con sabor, turbio o pequeño",
        scale: "Sarro blanco",
        noise: "Ruido",
      },
    },
    premises: {
      title: "El lugar",
      items: {
        coldOnly: "Línea fría de agua potable, sin agua caliente en ella",
        isolation: "Llave de paso encontrada y funciona",
        socket: "Enchufe al alcance, lejos del piso, con protección diferencial",
        space: "Espacio para equipo y tanque, y para cambiar cartuchos",
        floor: "El piso o la pared soporta el tanque lleno",
        drain: "Drenaje al alcance con lugar para la brecha de aire",
        floorDrain: "Es posible un drenaje de piso o un corte por fuga",
        frost: "Sin heladas, menos de 35 °C",
        backflow: "Dispositivo antirreflujo donde el código lo exige",
        access: "Acceso, horario y llave acordados",
        photos: "Fotos: pared, drenaje, enchufe, aparatos",
      },
    },
    shown: {
      title: "Usuarios instruidos, etiqueta colgada",
      items: {
        isolation: "Se mostró la llave de paso",
        bypass: "Se mostró el desvío, y que requiere permiso",
        leak: "Qué hacer ante una fuga",
        heaters: "Resistencias de los aparatos apagadas antes de cerrar el agua",
        firstWater: "La primera agua y el primer hielo se desechan",
        label: "Etiqueta colgada: fecha, número para llamar, próximo vencimiento",
      },
    },
  },
  reasons: {
    nobody: "No había nadie",
    noKey: "Sin llave, sin código",
    kitchenBusy: "Cocina demasiado ocupada para cerrar el agua",
    closed: "Cerrado",
    unsafe: "No es seguro trabajar",
    notFound: "No se encontró el equipo",
    called: "Llamado a otro lugar",
  },
  steps,
  waits: {
    tankDraining: "Tanque vaciándose",
    toWaste: "A desagüe",
    carbonRinse: "Enjuague del carbón",
    contact: "Tiempo de contacto",
    filling: "Llenándose",
    rinse: "Enjuague",
    flush: "Purga de línea",
  },
  authorities: {
    owner: "propietario",
    tenant: "inquilino",
    headOffice: "oficina central",
    keyHolder: "encargado de este turno",
  },
  titles: { thisVisit: "Esta visita", stepByStep: "Trabajo, paso a paso" },
  says: {
    baseline: "Línea base de este equipo, provisional: un elemento nuevo se asienta en días.",
    surveyDone: "Inspección del lugar antes de una instalación.",
    labelGoverns:
      "La etiqueta del producto, el manual del aparato y el código local prevalecen sobre lo que dice aquí.",
    stripNotWritten: "Tira tras el enjuague: no se anotó",
  },
  noAccess: (reason, time, note) =>
    [`${visit.reasons[reason] ?? reason}, ${time}`, note].filter(Boolean).join(": "),
  times: (from, to, minutes) =>
    [`Llegada ${from}${to ? `, salida ${to}` : ""}`, minutes !== undefined && `${minutes} min de trabajo`]
      .filter(Boolean)
      .join("; "),
  counter: (name, value, unit, perDay, since) =>
    `${name}: contador ${value} ${unit}${perDay === undefined ? "" : `, ${Number(perDay.toPrecision(2))} ${unit} al día desde ${on(since)}`}`,
  noLeakPhoto: (reason) => `Sin foto de la fuga antes de tocarla: ${reason}`,
  others: (names) => `También presentes: ${names}`,
  ticked: (title, items) => `${title.replace(/^¿|\?$/g, "")}: ${listed(items)}`,
  notSo: (title, items) => `${title}, no se cumple: ${listed(items)}`,
  inWords: (note) => `“${note}”`,
  drips: ({ minutes, pressure, unit, seen }) =>
    `${seen === "none" ? "No se vio goteo" : "Se vio goteo"} durante ${number(minutes)} min${pressure === undefined ? "" : ` a ${number(pressure)} ${unit ?? ""}`}`.trim(),
  acceptance: ({ name, role, decision, note }) =>
    `${{ accepted: "Aceptado", withReserve: "Aceptado con reserva", refused: "No aceptado" }[decision]} por ${[name, role].filter(Boolean).join(", ")}${note ? `: ${note}` : ""}`,
  dose: (target, litres, strength, ml) =>
    `${number(target)} mg/L × ${number(Number(litres.toPrecision(3)))} L ÷ ${number(strength)} g/L = ${number(Number(ml.toPrecision(3)))} mL`,
  step: (title, { value, unit, notDetected, minutes, text, from }) => {
    const { targetMgPerL, litres, strengthGPerL } = from ?? {};
    const sum =
      value !== undefined && targetMgPerL !== undefined && litres !== undefined && strengthGPerL !== undefined
        ? visit.dose(targetMgPerL, litres, strengthGPerL, value)
        : value !== undefined &&
          (notDetected
            ? `no se vio nada, escalón ${number(value)} ${unit ?? ""}`.trim()
            : `${number(value)} ${unit ?? ""}`.trim());
    return [title, sum, minutes !== undefined && `${minutes} min`, text].filter(Boolean).join(", ");
  },
  advice: ({ detail, owner, due, agreed, byPhone, refusedBy, refusedRole, refusedWords }) => {
    const decision = refusedBy
      ? `rechazado por ${[refusedBy, refusedRole].filter(Boolean).join(", ")}${refusedWords ? `: “${refusedWords}”` : ""}`
      : `${agreed === "accepted" ? "aceptado" : "sin decidir"}, ${owner ?? "nadie nombrado"}`;
    return `Recomendado${byPhone ? " por teléfono" : ""}: ${detail ?? ""}; ${decision}${due ? `, para el ${on(due)}` : ""}`;
  },
  bypassSoFar: (since, days, litresPerDay, scaleG) =>
    `El agua pasa por el desvío desde ${on(since)}, ${days} días. ${
      litresPerDay === undefined || scaleG === undefined
        ? "No se puede dar un máximo de sarro: faltan la dureza o los litros por día."
        : `Con unos ${rough(litresPerDay)} L/día, como máximo ${mass(scaleG)} de sarro hasta ahora; estimación.`
    }`,
};
