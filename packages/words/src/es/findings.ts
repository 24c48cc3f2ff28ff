import type { Finding } from "@tapside/assessment";
import type { DecimalSign, FindingWords, Messages } from "../messages.ts";
import { plainNumber } from "../plain-number.ts";
import { listed, missing, missingName, quantity, source, unit as unitName, verdicts } from "./names.ts";
import { refusal } from "./refusals.ts";

type Detail = Readonly<Record<string, string | number>>;

const TITLES: Readonly<Record<string, string>> = {
  bypassed: "En desvío",
  saltPassage: "Paso de sal",
  membraneFlow: "Caudal de membrana",
  percentReduction: "Reducción porcentual",
  recovery: "Recuperación",
  filterDrop: "Caída en prefiltros",
  waterlogged: "Tanque anegado",
  airCharge: "Carga de aire",
  chlorineAfterCarbon: "Cloro tras el carbón",
  delivered: "Entregado",
  deliveredNoLimit: "Entregado",
  deliveredOverMembrane: "Tanque frente a membrana",
  feedTds: "Agua de entrada",
  roOptional: "Aquí la ósmosis es opcional",
  usableLitres: "Litros útiles",
  shutOffPressure: "Corte esperado",
  fillingHours: "Llenado esperado",
  carbonLeft: "Carbón restante",
  feedPressure: "Presión de entrada",
  drainFeedClosed: "Drenaje con entrada cerrada",
  drainTankFull: "Drenaje con tanque lleno",
  postFilterDrop: "Caída en el posfiltro",
  deliveredFlow: "Caudal entregado",
  firstDraw: "Primera agua",
  meterCheck: "Medidor en solución patrón",
  doubtful: "Lecturas dudosas",
};

/** What a pattern of readings points to. */
const PATTERNS: Readonly<Record<string, string>> = {
  oxidised: "más caudal y más sal a la vez: el patrón de un elemento oxidado",
  checkValve: "regresa agua del tanque: la válvula antirretorno tiene fuga",
  shutOff: "se detiene con la entrada cerrada: la válvula de corte no cierra",
  closeFeedToTell:
    "cierre la entrada: si sigue, la válvula antirretorno tiene fuga; si se detiene, es la válvula de corte",
};

const short = plainNumber;

/** A finding in words: what, verdict, why it cannot be told, and its limit with where that comes from. */
export const finding: Messages["finding"] = (one, sign = ".") => {
  const detail: Detail = one.detail ?? {};
  const [id, ofWhat] = one.id.split(":");
  const words: FindingWords = {
    title: ofWhat ? `Entregado: ${quantity(ofWhat)}` : (TITLES[id ?? ""] ?? one.id),
    verdict: verdicts[one.verdict],
    reason: reasonOf(one, detail, sign),
    limit: limitText(one, sign),
    source: one.limit ? source(one.limit.source) : "",
  };
  return words;
};

function reasonOf(finding: Finding, detail: Detail, sign: DecimalSign): string {
  if (finding.id === "roOptional")
    return `con 100 ppm o menos decide el propietario; no medido: ${listed((finding.missing ?? []).map(quantity))}`;
  if (finding.id === "bypassed") {
    return detail.name
      ? `${detail.name}, ${detail.role}: ${detail.decision === "putInUse" ? "puesto de nuevo en uso" : `sigue en desvío hasta ${detail.until ?? "fecha no indicada"}`}`
      : "aún no se preguntó a nadie";
  }
  if (detail.why === "noPort") return "no hay manómetro; una te y un manómetro lo dirían";
  if (typeof detail.doubtful === "string") return `dudoso, no se usó: ${namesIn(detail.doubtful)}`;
  if (finding.id === "doubtful") return `${namesIn(detail.slots)}: se conserva, no se usó para juzgar`;
  if (detail.why === "conductivity")
    return `no medido; con esta conductividad, ${short(Number(detail.atMost), sign)} como máximo`;
  if (finding.missing?.length) return becauseMissing(finding.missing);
  if (detail.why === "remineralised")
    return "con remineralizador o válvula de mezcla es correcto que haya más sólidos entregados";
  if (typeof detail.pattern === "string" && PATTERNS[detail.pattern])
    return `${PATTERNS[detail.pattern]}${elementPasses(detail, sign)}`;
  if (finding.verdict === "cannotTell" && typeof detail.code === "string")
    return refusal({ code: detail.code, detail });
  if (
    finding.id === "airCharge" &&
    typeof detail.usable === "number" &&
    typeof detail.usableAtBest === "number"
  ) {
    return `útiles ${short(detail.usable, sign)} L; ${short(detail.usableAtBest, sign)} L con la mejor carga`;
  }
  if (finding.id === "waterlogged") return "menos gas del que cabe en el tanque: agua del lado del aire";
  return usualReason(finding, detail, sign);
}

const elementPasses = ({ elementPasses: flow }: Detail, sign: DecimalSign): string =>
  typeof flow === "number"
    ? `; solo por el elemento vendrían unos ${short(Number(flow.toPrecision(2)), sign)} L/min`
    : "";

const namesIn = (slots: string | number | undefined): string =>
  listed(
    String(slots ?? "")
      .split(" ")
      .map(missingName),
  );

const becauseMissing = (ids: readonly string[]): string =>
  missing({ kind: "missing", missing: ids }).replace(/^no se puede saber, /, "");

const REFERENCES: Readonly<Record<string, string>> = {
  commissioning: "frente a su puesta en marcha",
  firstVisit: "frente a su primera visita",
  nameplate: "frente a la placa",
};

function usualReason(finding: Finding, detail: Detail, sign: DecimalSign): string {
  switch (finding.id) {
    case "carbonLeft":
      return carbonReason(detail, sign);
    case "deliveredOverMembrane":
      return finding.verdict === "outside"
        ? "tanque siempre casi lleno, o se cuela agua de entrada"
        : "de 1.4 a 1.8 es normal: el tanque se llena contra presión".replaceAll(".", sign);
    case "feedPressure":
      return finding.verdict === "outside"
        ? "juzgue por el caudal: muchos sitios buenos trabajan con menos"
        : "";
    default: {
      const against = REFERENCES[String(detail.reference)] ?? "";
      return detail.provisional === "yes" ? `${against}, provisional` : against;
    }
  }
}

function carbonReason({ usedShare, lowM3, highM3 }: Detail, sign: DecimalSign): string {
  if (typeof usedShare === "number" && usedShare > 1)
    return `han pasado ${short(Number(usedShare.toPrecision(2)), sign)} × sus litros nominales con este cloro`;
  if (typeof lowM3 !== "number" || typeof highM3 !== "number") return "";
  return `${Math.max(0, lowM3).toFixed(0)} a ${Math.max(0, highM3).toFixed(0)} m³, por cloro y capacidad nominal`;
}

/** "16 a 20 psi: etiqueta del aparato 20, menos 2". */
function limitText(finding: Finding, sign: DecimalSign): string {
  const { limit } = finding;
  if (!limit) return "";
  const unit = [unitName(limit.unit), limit.scale && `escala ${limit.scale}`].filter(Boolean).join(", ");
  const range =
    limit.low !== undefined && limit.high !== undefined
      ? `${short(limit.low, sign)} a ${short(limit.high, sign)}`
      : limit.high !== undefined
        ? `hasta ${short(limit.high, sign)}`
        : `al menos ${short(limit.low ?? 0, sign)}`;
  const own = limit.detail ?? {};
  const label = typeof own.appliance === "string" && own.appliance ? `${own.appliance}: ` : "";
  const from = typeof own.label === "string" ? own.label : source(limit.source);
  const minimum =
    typeof own.minimum === "number"
      ? ` ${short(own.minimum, sign)}, menos ${short(Number(own.less), sign)}`
      : "";
  return `${range} ${unit}: ${label}${from}${minimum}`.replace("  ", " ");
}
