/** Number of the rules a judgement is made by: raised whenever the same records may be judged otherwise than before. */
export const RULES_VERSION = 10;
