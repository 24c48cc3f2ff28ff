import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  ssr: { noExternal: true },
  build: {
    ssr: "src/main.ts",
    outDir: "dist",
    emptyOutDir: true,
    target: "node20",
    rollupOptions: { output: { entryFileNames: "tapside.mjs", format: "es" } },
  },
});
