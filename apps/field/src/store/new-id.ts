import { uuidV7 } from "@tapside/records";

/** A fresh id of this phone: by the time, then random. */
export function newId(): string {
  return uuidV7(Date.now(), crypto.getRandomValues(new Uint8Array(10)));
}
