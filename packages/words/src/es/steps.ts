import type { VisitWords } from "../visit-words.ts";

/** Steps of procedures, by their id. */
export const steps: VisitWords["steps"] = {
  hold: { title: "Retener los aparatos", text: "También hielo, café y vapor. Diga por cuánto tiempo." },
  toZero: { title: "Cerrar, presión a cero", text: "Abra la salida hasta que no salga nada." },
  partsOut: {
    title: "Sacar el elemento y todos los cartuchos",
    text: "También el posfiltro. Cierre los portacartuchos vacíos.",
  },
  dose: {
    title: "Medir el desinfectante",
    text: "La concentración está en su etiqueta; también para qué puede usarse.",
  },
  fillDosed: {
    title: "Dosificar, llenar, correr por cada salida",
    text: "Dosifique en el portacartucho vacío, abra la entrada despacio, válvula del tanque abierta, hasta que huela en cada salida.",
  },
  stripThere: {
    title: "Tira en la salida: está presente",
    text: "Cloro en la salida más lejana, antes de dejar reposar.",
  },
  contact: {
    title: "Tiempo de contacto",
    text: "Según la etiqueta del producto. 30 min es práctica común, sin fuente.",
  },
  rinse: { title: "Vaciar y enjuagar", text: "Vacíe el tanque, llene y vacíe otra vez. Litros o veces." },
  stripZero: {
    title: "Tira después: debe marcar cero",
    text: "En la salida y del tanque. Si no es cero: enjuague otra vez.",
  },
  partsIn: { title: "Cartuchos de vuelta, carbón enjuagado, luego el elemento" },
  discard: {
    title: "Desechar la primera agua",
    text: "Primera agua, depósito de hielo, primeras tandas.",
  },
  release: { title: "Devolver los aparatos", text: "Avise a la cocina; retire el aviso." },
  elementOut: {
    title: "Sacar el elemento viejo",
    text: "Mire ambos extremos: limo, sarro, juntas tóricas.",
  },
  elementIn: {
    title: "Colocar el elemento nuevo",
    text: "Sello de salmuera en el sentido correcto, juntas tóricas mojadas con agua, serie o lote de su etiqueta.",
  },
  slowOn: { title: "Abrir la entrada despacio", text: "Purgue el aire, mire cada unión." },
  elementToWaste: {
    title: "Elemento a desagüe",
    text: "Permeado y drenaje a desagüe según la etiqueta del elemento; 30 min es práctica común, sin fuente.",
  },
  swapCartridge: {
    title: "Viejo fuera, portacartucho limpio, nuevo dentro",
    text: "Junta tórica en su ranura. Lote de la etiqueta.",
  },
  counterReset: { title: "Fecha anotada, contadores a cero" },
  lineToDrain: {
    title: "Salida del carbón al desagüe",
    text: "Separada del elemento antes de abrir la entrada.",
  },
  carbonToDrain: {
    title: "El carbón corre al desagüe",
    text: "Hasta que salga clara, al menos lo que dice su etiqueta.",
  },
  lineBack: { title: "Línea de vuelta al elemento" },
  drainTank: { title: "Vaciar el tanque", text: "Llave abierta, hasta que solo gotee." },
  tankOut: { title: "Sacar el tanque viejo" },
  airBeforeWater: {
    title: "Carga de aire antes del agua",
    text: "Vacío, llave abierta. Manómetro de baja presión.",
  },
  tankIn: { title: "Colocar el tanque nuevo", text: "Lea su placa. Serie o lote de la etiqueta." },
  pumpAir: {
    title: "Aire con bomba manual",
    text: "Vacío, llave abierta. Escriba luego la carga nueva.",
  },
  fillTank: { title: "Llenar el tanque" },
  emptyTank: { title: "Vaciarlo y desechar" },
  firstTank: { title: "Primer tanque lleno y desechado" },
  flushLine: {
    title: "Correr la línea fría",
    text: "Sin pasar por el equipo, sin rociar, hasta que salga fría.",
  },
  drainOld: {
    title: "Desechar el agua vieja del tanque",
    text: "Al desagüe, sin rociar. Nadie la bebe.",
  },
  lookInside: {
    title: "Mirar adentro",
    text: "Moho, limo, olor en los portacartuchos. Lo que estuvo mojado se cambia.",
  },
  iceOut: { title: "Depósito de hielo vaciado, líneas de los aparatos purgadas" },
  elementKept: {
    title: "Elemento: según su etiqueta",
    text: "Guardado mojado y fresco, en conservante, o fuera. Si se seca, se daña.",
  },
  powerOff: { title: "Bomba de refuerzo y UV desenchufadas" },
  labelHung: {
    title: "Etiqueta colgada",
    text: "Fuera de servicio desde el …, no usar antes del reinicio.",
  },
  takeOff: { title: "Retirar equipo y tanque" },
  capLines: {
    title: "Líneas tapadas en la derivación",
    text: "Entrada, salida, drenaje. Agua de cocina abierta de nuevo, sin goteo.",
  },
  disposeOld: { title: "Piezas viejas retiradas del lugar" },
  stickerOff: { title: "Adhesivo retirado; el historial queda" },
};
