import type { ComponentType } from "preact";
import { lazy, Suspense } from "preact/compat";
import { Route, Switch } from "wouter-preact";
import { BikePage } from "./bike/bike-page.tsx";
import { Bikes } from "./bikes.tsx";
import { Report } from "./report/report.tsx";

// One line a screen: the address and the file that draws it. The main path comes with the first load; the rest when asked for.
// biome-ignore lint/suspicious/noExplicitAny: the router hands each screen its own address parts
type ScreenOf = ComponentType<{ params: any }>;
const later = (load: () => Promise<ScreenOf>): ScreenOf =>
  lazy(async () => ({ default: await load() })) as ScreenOf;

export const ROUTES: readonly (readonly [string, ScreenOf])[] = [
  ["/", Bikes],
  ["/bike/:bike", BikePage],
  ["/bike/:bike/report", Report],
  ["/bike/:bike/sheet", later(() => import("./sheet/sheet.tsx").then((m) => m.SheetScreen))],
];

export function Screens() {
  return (
    <Suspense fallback={<p class="screen quiet">…</p>}>
      <Switch>
        {ROUTES.map(([path, component]) => (
          <Route key={path} path={path} component={component} />
        ))}
        <Route component={Bikes as ScreenOf} />
      </Switch>
    </Suspense>
  );
}

export { later };
