import { useEffect } from "preact/hooks";
import { Router } from "wouter-preact";
import { useHashLocation } from "wouter-preact/use-hash-location";
import type { PreferenceStore } from "./preferences/preferences.ts";
import { PreferencesContext } from "./preferences/use-preferences.ts";
import { Screens } from "./screens/screens.tsx";
import { type Shop, ShopContext } from "./store/shop.ts";
import { useWatched } from "./store/value.ts";
import { Toast } from "./ui/toast.tsx";
import { UpdatePrompt } from "./ui/update-prompt.tsx";
import { useSpoken } from "./words/spoken.ts";
import { WordsContext } from "./words/use-words.ts";

interface AppProps {
  readonly shop: Shop;
  readonly preferences: PreferenceStore;
}

/** The app: the shop, the choices of this device, and the screen the address names. */
export function App({ shop, preferences }: AppProps) {
  const chosen = useWatched(preferences.now);
  const spoken = useSpoken(chosen.language);
  shop.person = chosen.person;
  shop.engine.speak(chosen.language);
  useEffect(() => {
    const night = window.matchMedia("(prefers-color-scheme: dark)");
    const apply = () => {
      const theme = chosen.theme === "auto" ? (night.matches ? "night" : "paper") : chosen.theme;
      document.documentElement.dataset.theme = theme;
      document.documentElement.dataset.gloves = chosen.gloves ? "yes" : "no";
      document.documentElement.dataset.hand = chosen.hand;
    };
    apply();
    night.addEventListener("change", apply);
    return () => night.removeEventListener("change", apply);
  }, [chosen]);
  useEffect(() => {
    document.documentElement.lang = spoken.language;
  }, [spoken.language]);
  return (
    <ShopContext.Provider value={shop}>
      <PreferencesContext.Provider value={preferences}>
        <WordsContext.Provider value={spoken.words}>
          <Router hook={useHashLocation}>
            <UpdatePrompt />
            <Screens />
            <Toast />
          </Router>
        </WordsContext.Provider>
      </PreferencesContext.Provider>
    </ShopContext.Provider>
  );
}
