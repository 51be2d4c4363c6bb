import type { OrderView } from "../../engine/answers/orders/order-view.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import "../../styles/sheet.css";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import { CloseOrder } from "./close-order.tsx";
import { NoteWork } from "./note-work.tsx";
import { OrderPage } from "./order-page.tsx";

/** A work order: the page that is printed, and while it is open what is to be added to it. */
export function OrderScreen({ params }: { readonly params: { readonly order: string } }) {
  const words = useWords().orders;
  const [{ language }] = usePreferences();
  const order = useAnswer("order", { order: params.order, language });
  const view: OrderView | null = order?.ok ? order.value : null;
  return (
    <Screen
      title={words.orderOf(view?.bikeName ?? "")}
      aside={view === null ? undefined : view.closedAt === null ? words.isOpen : words.isClosed}
      back={{ to: "/orders", words: words.title }}
      bar={
        view && (
          <button type="button" class="main" onClick={() => window.print()}>
            {words.print}
          </button>
        )
      }
      wide
    >
      {order !== null && !order.ok && <p>{words.noSuch}</p>}
      {view && (
        <div class="columns">
          <OrderPage order={view} />
          <div class="column">
            {view.closedAt === null && <NoteWork order={view} />}
            <CloseOrder order={view} />
          </div>
        </div>
      )}
    </Screen>
  );
}
