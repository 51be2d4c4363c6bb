import "@fontsource-variable/archivo/standard.css";
import "./styles/tokens.css";
import "./styles/base.css";
import "./styles/parts.css";
import "./styles/columns.css";
import { render } from "preact";
import { App } from "./app.tsx";
import { PreferenceStore } from "./preferences/preferences.ts";
import { Shop } from "./store/shop.ts";
import { followShop } from "./sync/follow-shop.ts";
import { fetchWords, languageWanted } from "./words/languages.ts";

const root = document.getElementById("app")!;

const LATE_WORDS_MS = 500;
/** When the first screens are long drawn. */
const CALM_MS = 60_000;

try {
  const shop = await Shop.open();
  const preferences = await PreferenceStore.open(shop.database);
  const { language } = preferences.now.get();
  shop.engine.speak(language);
  // Words that come at once are waited for, so that nothing is drawn in English first.
  const late = new Promise((resolve) => setTimeout(resolve, LATE_WORDS_MS));
  await Promise.race([fetchWords(language), late]);
  // For a person at the console, and for the tests that kill the browser while it writes.
  Object.assign(window, { jetwright: shop });
  void followShop(shop);
  setTimeout(() => {
    // What cannot be had now is done another day.
    import("./photos/sweep-photos.ts").then(({ sweepPhotos }) => sweepPhotos(shop)).catch(() => undefined);
  }, CALM_MS);
  render(<App shop={shop} preferences={preferences} />, root);
} catch (error) {
  // Nothing can be kept here: say so instead of losing what would be typed.
  const { noStorage } = await import("./words/no-storage.ts");
  const language = languageWanted(navigator.languages);
  document.documentElement.lang = language;
  render(
    <main class="screen">
      <h1>Jetwright</h1>
      <p role="alert">{noStorage(language, error)}</p>
      <p class="quiet small">{String(error)}</p>
    </main>,
    root,
  );
}
