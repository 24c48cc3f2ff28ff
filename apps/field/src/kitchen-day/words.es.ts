import type { Packs } from "../words/packs.ts";

export const kitchenDayEs: Packs["visit"]["kitchenDay"] = {
  open: "El día de la cocina",
  openHint: "si el tanque alcanza, y qué ayudaría",
  title: "El día de la cocina",
  unit: "Equipo",
  tryChange: "Probar un cambio",
  enough: "alcanza",
  short: "falta",
  perDay: "L/día",
  serves: (litres) => `da ${litres} L al día`,
  inWater: (celsius) => `con agua a ${celsius} °C`,
  colder: "Agua más fría",
  warmer: "Agua más caliente",
  runsShort: (days, litres) =>
    `No alcanza en ${days} de 100 días de mucho trabajo; faltan casi siempre ${litres} L`,
  neverShort: "Con lo dicho, alcanza todos los días.",
  lowest: (from, until) => `El tanque está más bajo de ${from} a ${until}.`,
  drains: (litres, hours) => `${litres} L al día al drenaje, ${hours} h en marcha.`,
  tankPanel: (litres, psi) =>
    psi ? `en el tanque sobre ${psi} psi: hasta ${litres} L` : `en el tanque: hasta ${litres} L`,
  askedPanel: (litres) => `pedido en una hora: hasta ${litres} L`,
  working: "Calculando",
  whatHelps: "Qué ayudaría",
  servesMore: "Qué daría más",
  appliances: "Lo que toman los aparatos",
  from: {
    told: (litres, hours) => `${litres} L en un día de mucho trabajo, ${hours}`,
    counter: (litres, hours) => `${litres} L al día por su contador, contando días libres; ${hours}`,
    nowhere: () => "litros al día sin decir: no se cuenta",
  },
  between: (from, until) => `de ${from} a ${until}`,
  restaurantHours: "repartido como en un restaurante",
  estimate:
    "Estimación del modelo: un día de cada veinte puede no alcanzar; los días difieren un 15 %, los litros dichos un 20 %, tomas de 3 L (práctica común, sin fuente). Bomba y membrana son supuestas. Más presión que la de la placa exige una válvula reductora.",
};
