import type { Messages } from "../messages.ts";
import { missingName } from "./names.ts";

/** A likely slip, asked and never corrected. */
export const question: Messages["question"] = ({ id, slots, detail = {} }) => {
  const name = missingName(slots[0] ?? "");
  switch (id) {
    case "barAsPsi":
      return `${detail.value} psi, ${name}: ¿eran bar?`;
    case "psiAsBar":
      return `${detail.value} bar, ${name}: ¿eran psi?`;
    case "fahrenheitAsCelsius":
      return `${detail.value} °C de entrada: ¿eran °F?`;
    case "celsiusAsFahrenheit":
      return `${detail.value} °F de entrada: ¿eran °C?`;
    case "pressuresOutOfOrder":
      return "Más presión después de los filtros que antes: ¿manómetros cambiados?";
    case "flowingAboveStatic":
      return "Presión con flujo mayor que sin flujo: ¿cambiadas?";
    case "tankAboveFeedPressure":
      return "Tanque muy por encima de la entrada: ¿una bomba de represurización o de permeado que el registro no nombra, o un error?";
    case "tankRoseWhileDrawing":
      return "El manómetro del tanque subió al extraer: ¿lecturas cambiadas?";
    case "permeateAboveFeed":
      return "Permeado más salado que la entrada: ¿muestras cambiadas?";
    case "deliveredAboveFeed":
      return "Agua entregada más salada que la entrada: ¿muestras cambiadas?";
    case "deliveredBelowPermeate":
      return "Agua del tanque más limpia que la de la membrana: ¿primera agua tras reposo, o un error?";
    case "chlorineRises":
      return "Más cloro después del carbón que antes: ¿cambiados?";
    case "flowsSwapped":
      return `${detail.recovery} % de recuperación: ¿permeado y drenaje cambiados?`;
    case "drainAgainstRestrictor":
      return `El drenaje es ${detail.ratio} × lo que pasa el restrictor: ¿es correcto el tamaño del vaso?`;
    case "meterOnAnotherScale":
      return `Entrada ${signed(detail.percent)} %, rechazo sin cambio: ¿medidor en otra escala que ${detail.scale}?`;
    case "freeAboveTotal":
      return "Más cloro libre que total: ¿cambiados?";
    case "saltDoesNotBalance":
      return `TDS de drenaje ${signed(detail.percent)} % respecto a lo que dan entrada, producto y caudales: ¿un error en alguno?`;
    case "meterWentBack":
      return `Medidor por debajo de los ${detail.last} m³ de la última visita: ¿medidor nuevo, o un error?`;
    default:
      return `${name}: ¿es correcto?`;
  }
};

const signed = (x: string | number | undefined): string =>
  typeof x === "number" && x > 0 ? `+${x}` : String(x ?? "");
