import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { withoutSources } from "./without-sources.ts";

/** What is loaded at once comes in one file: fewer ways over a slow network, and one file packs better than many. */
const AT_ONCE = { output: { codeSplitting: { groups: [{ name: "first", tags: ["$initial" as const] }] } } };

/** d3-shape makes each of its curves at load; marked as free of effects, those nobody draws stay out: 1 kB gzip. */
const curvesInUse: Plugin = {
  name: "curves-in-use",
  transform: (code, id) =>
    id.endsWith("d3-shape.mjs")
      ? { code: code.replaceAll("= (function custom(", "= /* @__PURE__ */ (function custom("), map: null }
      : undefined,
};

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  worker: { format: "es", plugins: () => [withoutSources], rolldownOptions: AT_ONCE },
  build: { rolldownOptions: AT_ONCE, target: "es2022", outDir: "../../dist/app", emptyOutDir: true },
  preview: { port: 4173, strictPort: false },
  plugins: [
    curvesInUse,
    VitePWA({
      registerType: "prompt",
      includeAssets: ["mark.svg"],
      workbox: { globPatterns: ["**/*.{js,css,html,svg,woff2}"], globIgnores: ["**/*vietnamese*"] },
      manifest: {
        name: "Jetwright",
        short_name: "Jetwright",
        description: "Sets up a slide carburetor, beside the bike and without a network",
        display: "standalone",
        background_color: "#fdfdfb",
        theme_color: "#14181b",
        icons: [{ src: "mark.svg", sizes: "any", type: "image/svg+xml", purpose: "any" }],
      },
    }),
  ],
});
