import type { KitchenWords } from "../kitchen-words.ts";
import { writtenDay } from "../written-day.ts";

const on = writtenDay("es");

const STEAM =
  "El vapor deja atrás todo lo disuelto: la dureza se pega como sarro blanco y el cloruro pica el acero.";

export const kitchenEs: KitchenWords = {
  day: {
    title: "Un día de mucho trabajo en la cocina",
    asked: (litres, u) => `La cocina pide ${litres} ± ${u} L en un día de mucho trabajo.`,
    serves: (low, high, celsius) => `El equipo da de ${low} a ${high} L con agua a ${celsius} °C`,
    verdicts: { keepsUp: "alcanza", tooCloseToSay: "muy justo para decirlo", short: "no alcanza" },
    enoughWith: (remedy, low, high) => `Alcanza con: ${remedy}, de ${low} a ${high} L.`,
    nothingTried:
      "Ni un segundo tanque, ni una bomba elevadora, ni el doble de membrana alcanzan con certeza.",
    remedies: {
      asItIs: "Como está",
      airCharge: "Carga de aire ajustada",
      secondTank: "Un segundo tanque",
      booster: "Una bomba elevadora",
      twiceTheElement: "El doble de membrana",
      elementAndTank: "El doble de membrana, segundo tanque",
    },
    air: (psi) => `aire a ${psi} psi`,
    estimate: "Estimado con los litros dichos y el equipo como se leyó la última vez; no es una promesa.",
  },
  card: {
    title: "Equipo de agua: tarjeta para la cocina",
    titles: {
      unit: "Qué es",
      full: "Cuando el tanque esté lleno",
      ring: "Llame enseguida si",
      never: "No lo toque",
      leak: "Agua en el piso",
    },
    unit: (appliances) =>
      `Este equipo quita del agua de la red la mayor parte de las sales disueltas${appliances && ` para: ${appliances}`}.`,
    tankHolds:
      "Produce agua despacio y la guarda en un tanque. Mientras se llena, corre agua por el desagüe: es lo normal.",
    notBefore: (latest) => `No use su agua antes de las ${latest}.`,
    fullAbout: (about) => `El tanque debería estar lleno hacia las ${about}.`,
    fullNotKnown: "Use su agua solo cuando el desagüe esté en silencio: entonces el tanque está lleno.",
    bypassed: "El equipo está en desvío: los aparatos reciben el agua de la red tal como llega.",
    ring: (name, phone) => [`Llame a ${name || "la persona técnica"}`, phone].filter(Boolean).join(", "),
    readOut: {
      time: "Diga: la hora en que el desagüe quedó en silencio.",
      gauge: "Diga: lo que marca el manómetro del tanque, y su unidad.",
      silent: "Escuche otra vez diez minutos después: ¿sigue en silencio el desagüe?",
    },
    ringWhen: [
      "hay agua debajo o al lado del equipo",
      "el desagüe corre durante horas sin que nadie saque agua",
      "el agua huele a piscina, o sabe o se ve distinta",
      "sale mucha menos agua que de costumbre, o un aparato muestra una alarma de agua",
    ],
    never: [
      "No abra ninguna carcasa: está bajo presión.",
      "No gire ninguna válvula del equipo, salvo la que cierra su agua; no toque los precintos.",
      "El tanque contiene aire a presión: no lo suelte ni lo infle.",
    ],
    shutValve: (where) =>
      `Cierre el agua del equipo${where ? `: ${where}` : " en la válvula que está antes"}. Apague los aparatos que alimenta antes de que queden sin agua. No pise el piso mojado cerca de enchufes.`,
    sign: "La persona técnica escanea este signo o escribe el código.",
    signAsks: "¿Algo falla? Escanee este signo: cuatro preguntas llegan al técnico como mensaje.",
  },
  page: {
    title: "Su agua en palabras sencillas",
    titles: {
      water: "El agua",
      checks: "Lo que cuida la cocina",
      next: "Lo que toca después",
      open: "Todavía pendiente",
    },
    feed: (figure) => `De la red: ${figure} de sólidos disueltos.`,
    delivered: (figure) => `En los aparatos: ${figure}.`,
    takenOut: (percent) => `El equipo quitó unas ${percent} de cada 100 partes de lo que estaba disuelto.`,
    hardness: (figure) => `Dureza del agua de la red, de la que se hace el sarro: ${figure}.`,
    notRead: "El agua no se midió en esta visita.",
    bypassed: (until) =>
      `El equipo está en desvío${until ? ` hasta el ${on(until)}` : ""}: los aparatos reciben agua de la red, con toda su dureza y su cloro.`,
    kept: (names) => `Como debe ser: ${names}.`,
    outside: (names) => `No está como debe: ${names}. El registro de servicio dice por cuánto.`,
    notTold: (names) => `No se midió: ${names}.`,
    noLimits: "No hay ningún límite de su etiqueta registrado: muestre la etiqueta o el manual.",
    does: {
      combiOven: STEAM,
      steamer: STEAM,
      coffee:
        "El agua dura llena de sarro la caldera y las válvulas; un agua casi sin nada sabe plana y puede atacar el metal.",
      ice: "La dureza enturbia el hielo y deja sarro en la placa; el hielo guarda olores, y en agua tibia o estancada crece limo.",
      dishwasher: "Lo disuelto queda como manchas en los vasos al secarse.",
      dispenser: "La gente la bebe tal como sale: lo que más cuenta es el sabor y la limpieza.",
      other: "Lo disuelto queda donde el agua se seca o hierve.",
    },
    care: {
      combiOven:
        "Quite el sarro cuando el horno lo pida o se vea una costra blanca; seque la cámara al cerrar; vacíe la caldera como dice su manual.",
      steamer:
        "Quite el sarro cuando la vaporera lo pida o se vea una costra blanca; vacíe la caldera al cerrar como dice su manual.",
      coffee: "Purgue cada día la lanza de vapor y los grupos; quite el sarro solo como dice el manual.",
      ice: "Vacíe y limpie el depósito cada semana; límpielo y desinféctelo como dice su manual, al menos dos veces al año.",
      dishwasher: "Limpie sus filtros cada día; mire cada semana si los vasos tienen manchas.",
      dispenser:
        "Limpie cada día la salida con un paño limpio; déjela correr un minuto después de un fin de semana.",
      other: "Límpielo y quite el sarro como dice su manual.",
    },
    checks: [
      "Cada día: mire si hay agua debajo del equipo.",
      "Cada semana: cuando nadie saca agua y el tanque está lleno, el desagüe está en silencio.",
      "Cada mes: mire el manómetro del tanque y la fecha del cartucho; anote los dos.",
      "Cerrado más de dos días: cierre el agua del equipo y apague los aparatos. Al volver: deje correr cada llave cinco minutos, tire el primer hielo y las primeras tandas.",
      "Cerrado más de dos semanas: pida que se pare y se vuelva a poner en marcha el equipo.",
    ],
    dueBy: (part, day) => `${part}: ${day ? `hasta el ${on(day)}` : "fecha desconocida"}`,
    dueNow: " (ya toca)",
    nothingDue: "Nada registrado.",
    manualRules:
      "Los plazos son práctica común; primero valen el manual del aparato y las reglas locales. Antes de limpiar: aparato apagado y frío. Nunca mezcle un limpiador con cloro con quitasarro o ácido: gas tóxico.",
  },
};
