import type { UnitFile } from "@tapside/records";
import { elementReference } from "./element-reference.ts";
import { soundElement } from "./expected.ts";
import type { Visit } from "./internal/parts-in-service.ts";

/** Earlier visits whose readings this judgement compares with: what "new" means, and the element as last seen. */
export function standsOn(file: UnitFile, visit: Visit): readonly string[] {
  const references = (["asFound", "asLeft"] as const).flatMap((phase) => {
    const reference = elementReference(file, visit, phase);
    return reference.kind === "known" && reference.value.visit ? [reference.value.visit] : [];
  });
  const sound = soundElement(file, visit);
  const seen = sound.kind === "known" && sound.value.visit ? [sound.value.visit] : [];
  return [...new Set([...references, ...seen])].sort();
}
