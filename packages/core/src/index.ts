// The only door of the package: every public name, by folder. No `export *`.

// parts
export { openArea, openWidth } from "./parts/bore-area.ts";
