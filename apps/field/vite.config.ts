import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { fetchScreensEarly, fewFilesAtStart, filesAtStart } from "./files-at-start.ts";

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  base: "./",
  build: {
    outDir: "dist",
    emptyOutDir: true,
    target: "es2022",
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 2000,
    rolldownOptions: {
      output: {
        codeSplitting: { groups: filesAtStart },
      },
    },
  },
  worker: { format: "es" },
  plugins: [
    react(),
    fetchScreensEarly,
    fewFilesAtStart,
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
