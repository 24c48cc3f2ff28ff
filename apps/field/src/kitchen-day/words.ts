import { spoken } from "../words/packs.ts";

export const kitchenDayWords = spoken("visit").kitchenDay;
