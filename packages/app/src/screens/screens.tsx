import { Route, Switch } from "wouter-preact";
import { BikePage } from "./bike/bike-page.tsx";
import { Bikes } from "./bikes.tsx";
import { later, type ScreenOf } from "./later.tsx";
import { StepPage } from "./step/step-page.tsx";

// One line a screen: the address and the file that draws it. The main path comes with the first load; the rest when asked for.
export const ROUTES: readonly (readonly [string, ScreenOf])[] = [
  ["/", Bikes],
  ["/bike/:bike", BikePage],
  ["/bike/:bike/report", later(() => import("./report/report.tsx").then((m) => m.Report))],
  [
    "/bike/:bike/test/:test/:opening?",
    later(() => import("./test-card/test-card.tsx").then((m) => m.TestCard)),
  ],
  ["/bike/:bike/check/:check", later(() => import("./check-card/check-card.tsx").then((m) => m.CheckCard))],
  ["/bike/:bike/look-over", later(() => import("./look-over/look-over.tsx").then((m) => m.LookOver))],
  ["/bike/:bike/marks", later(() => import("./marks/marks.tsx").then((m) => m.Marks))],
  ["/bike/:bike/next/:index?", StepPage],
  ["/bike/:bike/fitted", later(() => import("./fitted/fitted-page.tsx").then((m) => m.FittedPage))],
  ["/bike/:bike/fitted/:part", later(() => import("./fitted/edit-part.tsx").then((m) => m.EditPart))],
  ["/bike/:bike/describe", later(() => import("./describe/describe.tsx").then((m) => m.Describe))],
  ["/bike/:bike/carburetor", later(() => import("./carburetor/carburetor.tsx").then((m) => m.Carburetor))],
  ["/bike/:bike/change/:index?", later(() => import("./change/change.tsx").then((m) => m.Change))],
  ["/new", later(() => import("./new-bike/new-bike.tsx").then((m) => m.NewBike))],
  ["/more", later(() => import("./settings.tsx").then((m) => m.Settings))],
  ["/cautions", later(() => import("./cautions.tsx").then((m) => m.AllCautions))],
  ["/bike/:bike/history", later(() => import("./history/history.tsx").then((m) => m.HistoryScreen))],
  ["/bike/:bike/ask", later(() => import("./ask/ask.tsx").then((m) => m.AskScreen))],
  ["/bike/:bike/listen", later(() => import("./listen/listen.tsx").then((m) => m.Listen))],
  ["/bike/:bike/sweep", later(() => import("./listen/sweep.tsx").then((m) => m.Sweep))],
  ["/bike/:bike/heard/:record", later(() => import("./listen/heard-page.tsx").then((m) => m.HeardPage))],
  ["/bike/:bike/proof", later(() => import("./listen/proof.tsx").then((m) => m.ProofScreen))],
  ["/start", later(() => import("./start/start.tsx").then((m) => m.StartScreen))],
  ["/shop/:code?", later(() => import("./shop/shop-screen.tsx").then((m) => m.ShopScreen))],
  ["/backup", later(() => import("./backup/backup.tsx").then((m) => m.BackupScreen))],
  ["/take", later(() => import("./take/take.tsx").then((m) => m.TakeScreen))],
  ["/take/:data", later(() => import("./take/take.tsx").then((m) => m.TakeScreen))],
  ["/bike/:bike/sheet", later(() => import("./sheet/sheet.tsx").then((m) => m.SheetScreen))],
  ["/bike/:bike/air", later(() => import("./air/air.tsx").then((m) => m.Air))],
  ["/bike/:bike/trip", later(() => import("./air/trip.tsx").then((m) => m.Trip))],
  ["/bike/:bike/here", later(() => import("./air/last-here.tsx").then((m) => m.LastHereScreen))],
  ["/bike/:bike/chart", later(() => import("./air/chart.tsx").then((m) => m.Chart))],
  ["/bike/:bike/best", later(() => import("./best/best.tsx").then((m) => m.Best))],
  ["/bike/:bike/order", later(() => import("./orders/open-order.tsx").then((m) => m.OpenOrder))],
  ["/orders", later(() => import("./orders/order-list.tsx").then((m) => m.OrderList))],
  ["/order/:order", later(() => import("./orders/order.tsx").then((m) => m.OrderScreen))],
  ["/remove", later(() => import("./remove/remove.tsx").then((m) => m.Remove))],
  ["/remove/:is/:who", later(() => import("./remove/remove.tsx").then((m) => m.Remove))],
  ["/customers", later(() => import("./orders/customers.tsx").then((m) => m.Customers))],
  ["/customer/:customer", later(() => import("./orders/customer.tsx").then((m) => m.Customer))],
  ["/drawer", later(() => import("./drawer/drawer.tsx").then((m) => m.Drawer))],
  ["/drawer/needle", later(() => import("./drawer/needle.tsx").then((m) => m.NeedleScreen))],
  ["/drawer/buy", later(() => import("./drawer/buy.tsx").then((m) => m.Buy))],
];

export function Screens() {
  return (
    <Switch>
      {ROUTES.map(([path, component]) => (
        <Route key={path} path={path} component={component} />
      ))}
      <Route component={Bikes as ScreenOf} />
    </Switch>
  );
}
