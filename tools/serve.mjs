import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import { root } from "./ensure-ready.mjs";

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
  ".otf": "font/otf",
  ".ttf": "font/ttf",
  ".wasm": "application/wasm",
};

/** The file a request names, or undefined when it lies outside the folder or is not there. */
function fileFor(folder, url) {
  const path = normalize(decodeURIComponent(new URL(url, "http://x").pathname));
  const file = join(folder, path.endsWith("/") ? `${path}index.html` : path);
  return file.startsWith(folder) && existsSync(file) && statSync(file).isFile() ? file : undefined;
}

/** Serves the built app; resolves to the port taken (the next free one when the wanted one is not) and a way to stop. */
export function serve({ port, folder = join(root, "apps/field/dist") }) {
  const server = createServer((request, response) => {
    let file;
    try {
      file = fileFor(folder, request.url ?? "/");
    } catch {
      file = undefined;
    }
    if (!file) return response.writeHead(404).end("Not found");
    const lasting = file.includes("/assets/") ? "public, max-age=31536000, immutable" : "no-cache";
    response.writeHead(200, {
      "Content-Type": TYPES[extname(file)] ?? "application/octet-stream",
      "Cache-Control": lasting,
    });
    createReadStream(file).pipe(response);
  });
  return new Promise((resolve, reject) => {
    const listen = (wanted) => {
      server.once("error", (error) =>
        error.code === "EADDRINUSE" && wanted < port + 50 ? listen(wanted + 1) : reject(error),
      );
      server.listen(wanted, () => {
        server.removeAllListeners("error");
        resolve({ port: server.address().port, close: () => server.close() });
      });
    };
    listen(port);
  });
}
