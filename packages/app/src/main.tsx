import "@fontsource-variable/archivo/standard.css";
import "./styles/tokens.css";
import "./styles/base.css";
import "./styles/parts.css";
import { render } from "preact";
import { App } from "./app.tsx";
import { PreferenceStore } from "./preferences/preferences.ts";
import { Shop } from "./store/shop.ts";

const root = document.getElementById("app")!;

try {
  const shop = await Shop.open();
  const preferences = await PreferenceStore.open(shop.database);
  shop.engine.speak(preferences.now.get().language);
  // For a person at the console, and for the tests that kill the browser while it writes.
  Object.assign(window, { jetwright: shop });
  render(<App shop={shop} preferences={preferences} />, root);
} catch (error) {
  // Nothing can be kept here: say so instead of losing what would be typed.
  root.textContent = `Jetwright cannot open its storage in this browser, so nothing would be kept. A private window or a blocked site can do that: open the page in a normal window. (${String(error)})`;
}
