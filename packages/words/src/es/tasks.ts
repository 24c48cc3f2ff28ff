import type { PartRole } from "@tapside/records";
import type { Messages } from "../messages.ts";
import { plainNumber } from "../plain-number.ts";
import { writtenDay } from "../written-day.ts";
import { finding } from "./findings.ts";
import { lowerFirst, roles } from "./names.ts";
import { DECIMAL_SIGN } from "./number.ts";

const TITLES: Readonly<Record<string, string>> = {
  setAirCharge: "Ajustar el aire",
  sanitise: "Desinfectar",
  rinseCarbon: "Enjuagar el carbón al desagüe",
  discardTank: "Desechar dos tanques de agua",
  findBackflow: "Buscar agua que regresa",
  rinsePreservative: "Enjuagar el conservante",
  shutDown: "Poner el equipo fuera de servicio",
  restart: "Reiniciar tras la parada",
  remove: "Retirar el equipo",
};

export const taskTitle: Messages["taskTitle"] = (id) => {
  const [verb, role] = id.split(":");
  if (verb !== "replace" || !role) return TITLES[id] ?? id;
  return `Cambiar ${lowerFirst(roles[role as PartRole] ?? role)}`;
};

export const taskWhy: Messages["taskWhy"] = (task, sign = DECIMAL_SIGN) => {
  const { detail = {} } = task;
  if (task.why === "dueByDate")
    return detail.byDate ? `vence por fecha: ${writtenDay("es")(String(detail.byDate))}` : "vence por fecha";
  if (task.why === "dueByLitres") return "vence por litros";
  if (task.why === "dueByHours") return "vence por horas";
  if (task.why === "kindOfVisit") return "motivo de esta visita";
  if (task.why === "openPoint") return "quedó pendiente en una visita anterior";
  if (task.id === "setAirCharge" && typeof detail.set === "number")
    return `a ${plainNumber(detail.set, sign)}${typeof detail.usableAtBest === "number" ? `: ${detail.usableAtBest.toFixed(0)} L útiles` : ""}`;
  if (!detail.finding) return "va con el trabajo";
  const bare = { id: String(detail.finding), phase: "asFound", verdict: "outside", consequence: 0 } as const;
  return `${lowerFirst(finding(bare).title)}: fuera del límite`;
};

const CAUTIONS: Readonly<Record<string, string>> = {
  appliancesHeld:
    "Resistencias y bombas de los aparatos apagadas, y que sigan apagadas, antes de cerrar el agua: se queman en seco.",
  pressureToZero:
    "Entrada cerrada, tanque cerrado, presión en cero en el manómetro antes de abrir un portacartucho. Lo prueba el manómetro, no el reloj.",
  wetElectricity:
    "Agua y corriente eléctrica bajo la mesa: desenchufe la bomba de refuerzo y la UV, manos secas.",
  wetFloor: "Piso mojado: ponga el aviso.",
  rinseBeforeElement: "Enjuague el carbón nuevo al desagüe antes de que llegue al elemento.",
  hygiene: "Guantes limpios; que las caras en contacto con el agua no toquen el piso.",
  discardFirstWater:
    "Deseche la primera agua; también el hielo del depósito y las primeras tandas. Retenga los aparatos hasta terminar.",
  uvEyes: "La UV daña ojos y piel: desenchufe antes de abrir.",
  tankHeavy: "Un tanque de 53 L cargado contiene de 30 a 35 L, unos 40 kg: vacíelo antes de levantarlo.",
  tankEnergy: "Aire a presión: nunca por encima de la placa, nunca en un tanque oxidado o mojado.",
  handPumpOnly: "Aire solo con bomba manual, tanque vacío y su llave abierta.",
  bleachNeverMixed: "Nunca mezcle cloro (lejía) con desincrustante, ácido o amoníaco: gas tóxico.",
  bleachNotThroughElement:
    "Primero saque elemento y carbón: el cloro destruye la membrana, el carbón consume el cloro.",
  ventilate: "Ventile el lugar; guantes y gafas protectoras.",
  rinseToZero: "Enjuague hasta que una tira marque cero antes de que alguien beba o cocine.",
  stagnantWater:
    "El agua estancada puede contener Legionella, moho, plomo y cobre: déjela correr sin rociar, no beba nada de ella.",
  deadLegs:
    "Sin tramos muertos: tape en la derivación. El trabajo en las tuberías del edificio es para personal con licencia.",
  unscentedOnly: "Solo cloro (lejía) sin aroma, como su etiqueta lo permite para sistemas de agua potable.",
  slowOn:
    "Abra la entrada despacio: el golpe de ariete y el aire atrapado rompen portacartuchos. Busque goteos mientras se llena.",
  disposal:
    "Carbón y elementos usados: basura común, salvo que hayan retenido arsénico o radio; pregunte a la autoridad.",
  noUse: "Nadie usa esta agua hasta que se libere: cuelgue el aviso, dígalo en voz alta.",
  hotSurfaces: "Superficies calientes y vapor en los aparatos: deje que se enfríen.",
  workingAlone: "¿Trabaja a solas? Diga a alguien dónde está y a qué hora saldrá.",
  backflowLicensed:
    "La válvula antirretorno del edificio la prueba y repara solo personal con licencia: déjela como está.",
  reducingValve:
    "Entrada por encima de la presión de la placa: manténgala cerrada. Un plomero con licencia instala y ajusta una válvula reductora de presión.",
  productUse:
    "No apta para diálisis. Tampoco para fórmula infantil donde la guía local lo prohíba, ni para humidificadores o uso médico sin el visto bueno de su fabricante.",
};

export const caution: Messages["caution"] = (id) =>
  CAUTIONS[id] ?? "Rigen el código local y el manual del aparato.";
