import type { Said } from "../en/said.ts";

/** Why a table, a row of a list, or a sticker, is not taken. */
export const refusedLists: Readonly<Record<string, Said>> = {
  "no-number": ({ name }) =>
    `${name}: de tales cifras no sale ningún número. Revise su tamaño y sus unidades.`,
  "word-unknown": ({ name, text, words }) => `${name}: "${text}" no es ninguna de: ${words}.`,
  "not-a-count": ({ name, value }) => `${name}: ${value} no es un número entero desde 0.`,
  "not-a-share": ({ name, value }) => `${name}: ${value} no es una parte desde 0 hasta menos de 1.`,
  "permeate-pump-lifts":
    "Leído mientras la bomba de permeado eleva: desagüe y caudal no son los de las piezas. Lea con el permeado al desagüe.",
  "below-zero": ({ name, value }) => `${name} no puede ser menor que cero: ${value}.`,
  "empty-table": "La tabla está vacía: hace falta una línea de nombres de columna y una línea por caso.",
  "column-twice": ({ column }) => `La columna ${column} aparece dos veces: deje una.`,
  "unclosed-quote": ({ row }) => `Unas comillas de la línea ${row} se abren y nunca se cierran.`,
  "list-empty": "El archivo no tiene línea de encabezado con los nombres de las columnas.",
  "list-column-missing": ({ column }) => `El archivo no tiene la columna "${column}". No se tomó nada.`,
  "list-column-twice": ({ column }) => `La columna "${column}" aparece dos veces. No se tomó nada.`,
  "list-too-long": ({ lines, most }) => `El archivo tiene ${lines} líneas; se pueden tomar ${most} a la vez.`,
  "row-no-such-time": ({ column, text }) =>
    `${column}: «${text}» no es una hora escrita como 2026-11-25 08:00.`,
  "row-says-nothing": "No hay ni valor ni alarma.",
  "row-unclosed-quote": "Unas comillas se abren y nunca se cierran; lo que sigue no se lee.",
  "row-too-long": ({ cells, columns, row }) =>
    row === undefined
      ? `${cells} celdas para ${columns} columnas: ¿hay una coma fuera de comillas?`
      : `La línea ${row} tiene más valores que columnas.`,
  "row-without-site": "No hay sitio.",
  "row-unkeepable-text": ({ column }) => `${column} tiene un signo que no se puede guardar.`,
  "row-not-yes-or-no": ({ column, text }) => `${column}: "${text}" no es ni yes ni no.`,
  "row-not-a-type": ({ column, text, types }) => `${column}: "${text}" no es ninguno de ${types}.`,
  "row-no-such-day": ({ column, text }) => `${column}: "${text}" no es un día escrito como 2026-11-25.`,
  "row-not-a-number": ({ column, text }) => `${column}: "${text}" no es un número.`,
  "row-out-of-range": ({ column, text, low, high }) =>
    `${column}: ${text} es apenas posible; puede ser de ${low} a ${high}.`,
  "row-code-taken": ({ text }) => `El código de sitio ${text} pertenece a otro sitio de la lista.`,
  "row-twice": ({ column, text, line }) => `${column} ${text} ya está en la línea ${line}.`,
  "sticker-unreadable": "No es un código de adhesivo: ocho letras y cifras.",
  "call-unreadable": "No es un mensaje de una cocina, o se cortó en el camino. Pídalo otra vez.",
  "sticker-mistyped": "Un signo de este código está mal. Mire de nuevo.",
};
