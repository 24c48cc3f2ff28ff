import { networkInterfaces } from "node:os";
import { ensureApp, ensureInstalled } from "./ensure-ready.mjs";
import { serve } from "./serve.mjs";

ensureInstalled();
ensureApp();
const { port } = await serve({ port: Number(process.env.PORT ?? 4173) });
console.log(`Tapside is at http://localhost:${port}/`);
for (const address of Object.values(networkInterfaces()).flat())
  if (address && address.family === "IPv4" && !address.internal)
    console.log(
      `  in this network: http://${address.address}:${port}/ (without HTTPS a phone keeps no offline copy)`,
    );
console.log(
  "Open it once with a signal; afterwards it works without. A demo book is one tap away. Ctrl+C stops.",
);
