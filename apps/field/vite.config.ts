import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";

/** The page fetches its screens while the words of its language are still on their way. */
const fetchScreensEarly: Plugin = {
  name: "fetch-screens-early",
  transformIndexHtml: {
    order: "post",
    handler: (_page, { bundle = {} }) => {
      const wanted = Object.values(bundle).flatMap((one) =>
        one.type === "chunk" && one.facadeModuleId?.endsWith("/src/start.tsx") ? [one.fileName] : [],
      );
      for (const name of wanted) {
        const one = bundle[name];
        if (one?.type === "chunk") wanted.push(...one.imports.filter((next) => !wanted.includes(next)));
      }
      return wanted.map((name) => ({
        tag: "link",
        attrs: { rel: "modulepreload", crossorigin: true, href: `./${name}` },
        injectTo: "head",
      }));
    },
  },
};

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  base: "./",
  build: {
    outDir: "dist",
    emptyOutDir: true,
    target: "es2022",
    chunkSizeWarningLimit: 2000,
    rolldownOptions: {
      output: {
        // What every screen stands on comes in one file: each of many small ones costs a slow phone a turn.
        // No part of it may speak words at its loading: the language is learned after it.
        codeSplitting: {
          groups: [{ name: "base", test: /packages\/(?:quantities|records)\/|field\/src\/store\// }],
        },
      },
    },
  },
  worker: { format: "es" },
  plugins: [
    react(),
    fetchScreensEarly,
    VitePWA({
      registerType: "prompt",
      injectRegister: false,
      includeAssets: ["icon.svg", "icon-192.png", "icon-512.png", "icon-maskable-512.png"],
      manifest: {
        name: "Tapside",
        short_name: "Tapside",
        description: "Field tool for small reverse-osmosis units with a pressurised tank.",
        display: "standalone",
        start_url: "./",
        background_color: "#F4F5F0",
        theme_color: "#F4F5F0",
        icons: [
          { src: "icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
          { src: "icon-192.png", sizes: "192x192", type: "image/png", purpose: "any" },
          { src: "icon-512.png", sizes: "512x512", type: "image/png", purpose: "any" },
          { src: "icon-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
        ],
      },
      workbox: {
        // From its first minute the page has its offline copy, also for what is fetched later.
        clientsClaim: true,
        globPatterns: ["**/*.{js,css,html,svg,woff2,ttf,otf,json,wasm,txt}"],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
        navigateFallback: "index.html",
      },
    }),
  ],
});
