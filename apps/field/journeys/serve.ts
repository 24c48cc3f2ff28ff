import { ensureApp } from "../../../tools/ensure-ready.mjs";
import { serve } from "../../../tools/serve.mjs";

/** Builds the app when it is stale and serves it for all journeys. */
export default async function setup({ provide }: { provide: (key: "appUrl", value: string) => void }) {
  ensureApp();
  const { port, close } = await serve({ port: 4700 });
  provide("appUrl", `http://localhost:${port}/`);
  return close;
}

declare module "vitest" {
  export interface ProvidedContext {
    appUrl: string;
  }
}
