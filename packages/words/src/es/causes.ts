import type { CauseMessages } from "../cause-messages.ts";
import { causesIn } from "../causes-in.ts";
import { causeNames } from "./cause-names.ts";
import { ports, setUps, signs, tests } from "./cause-tests.ts";
import { DECIMAL_SIGN } from "./number.ts";

const parts: CauseMessages["parts"] = {
  element: "elemento",
  preFilter: "cartucho de prefiltro",
  carbon: "cartucho de carbón",
  postFilter: "posfiltro",
  oRing: "juntas tóricas",
  brineSeal: "sello de salmuera",
  restrictor: "restrictor de drenaje",
  drainTube: "tubo de drenaje",
  shutOffValve: "válvula de corte",
  checkValve: "válvula de retención",
  tank: "tanque",
  bypassValve: "válvula de desvío",
  tube: "tubo",
  booster: "bomba elevadora",
  softenerSalt: "sal para ablandador",
  handPump: "bomba manual de aire",
  tdsStandard: "patrón de TDS",
  gauge: "manómetro",
};

const cautions: CauseMessages["cautions"] = {
  pressureToZero: "Cierre la entrada y baje toda la presión a cero antes de abrir nada.",
  appliancesHeld: "Detenga primero los aparatos: no deben trabajar en seco.",
  tankHeavy: "Un tanque lleno pesa mucho: vacíelo antes de levantarlo.",
  handPumpOnly: "Cargue solo con bomba manual, nunca con compresor.",
  platePressure: "Nunca por encima de la presión de la placa.",
  electricityOff: "Apague y aísle la electricidad; trabajo de personal con licencia donde la ley lo exige.",
  rinseNewCarbon: "Enjuague el carbón nuevo al desagüe.",
  rinseNewElement: "Enjuague el elemento nuevo al desagüe.",
  sanitise: "Desinfecte lo que se abrió y luego enjuáguelo.",
  discardTanks: "Deseche los primeros tanques; nadie bebe de ellos.",
  backflow: "Deje el dispositivo antirreflujo como lo exige el código.",
  drainGap: "Conserve la brecha de aire en el drenaje.",
  makersInstructions: "Siga las instrucciones del fabricante.",
};

const complaints: CauseMessages["complaints"] = {
  routine: "Nadie: rutina",
  runsOut: "Se acaba",
  weakAtTap: "Sale débil en la llave",
  taste: "Sabor",
  highSolids: "TDS alto",
  drainRuns: "El drenaje no para",
};

const tools: CauseMessages["tools"] = {
  gauge: "Manómetro",
  tdsMeter: "Medidor de TDS",
  tdsStandard: "Patrón de TDS",
  chlorineKit: "Kit de cloro",
  hardnessKit: "Kit de dureza",
  handPump: "Bomba manual de aire",
};

/** The words of finding a cause in Spanish, apart from the rest so that they come only with the search. */
export const causesEs: CauseMessages = causesIn({
  decimalSign: DECIMAL_SIGN,
  causes: causeNames,
  tests,
  ports,
  signs,
  parts,
  cautions,
  complaints,
  setUps,
  tools,
  measures: {
    waterPasses: (share) => `el elemento deja pasar el ${share} de su agua`,
    saltPasses: (times) => `${times} veces su sal`,
    drainPasses: (share) => `el drenaje deja pasar el ${share} de lo debido`,
    filterLoss: (times) => `${times} veces la caída de un cartucho limpio`,
    feedPressure: (psi) => `entrada de unos ${psi} psi`,
    temperature: (celsius) => `agua a unos ${celsius} °C`,
    airCharge: (psi) => `carga de unos ${psi} psi`,
    pastElement: (share) => `el ${share} se salta el elemento`,
    chlorinePasses: (share) => `pasa el ${share} del cloro`,
    hardness: (mgPerL) => `dureza de unos ${mgPerL} mg/L como CaCO3`,
    feedSolids: (mgPerL) => `entrada de unos ${mgPerL} mg/L como NaCl`,
    meterShows: (share) => `el medidor muestra el ${share} de lo que hay`,
    gaugeShows: (share) => `el manómetro muestra el ${share} de lo que hay`,
    firstDraw: (times) => `la primera agua, ${times} veces el resto`,
    dailyLitres: (litres) => `se piden unos ${litres} L por día`,
  },
  grades: { unknown: "tamaño aún no conocido", mild: "leve", middling: "mediano", severe: "grave" },
  seen: "Se ve",
  notSeen: "No se ve",
  under: "menos de",
  over: "más de",
  asNaCl: "como NaCl",
  asCaCO3: "como CaCO3",
  ofRight: "del valor correcto",
});
