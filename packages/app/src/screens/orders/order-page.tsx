import type { OrderLine, OrderView } from "../../engine/answers/orders/order-view.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { dayText } from "../../words/dates.ts";
import { useWords } from "../../words/use-words.ts";

/** The order as it is printed: the complaint, what was tested, found and changed, parts and minutes, what was handed over. */
export function OrderPage({ order }: { readonly order: OrderView }) {
  const words = useWords().orders;
  const [{ language }] = usePreferences();
  const day = (at: number) => dayText(at, language);
  const sections = [
    [words.told, order.told],
    [words.tested, order.tested],
    [words.ruledOut, order.ruledOut],
    [words.found, order.found],
    [words.changed, order.changed],
  ] as const;
  return (
    <article class="sheet">
      <div class="sheet-head">
        <h2>{order.bikeName}</h2>
        <span>{words.span(day(order.openedAt), order.closedAt === null ? null : day(order.closedAt))}</span>
      </div>
      {order.customer !== null && (
        <p class="sheet-wide">{[order.customer, order.reach].filter(Boolean).join(" · ")}</p>
      )}
      <section class="sheet-wide">
        <h3>{words.complaint}</h3>
        <p>{order.complaint === "" ? words.noComplaint : words.said(order.complaint)}</p>
      </section>
      {sections.map(
        ([heading, lines]) =>
          lines.length > 0 && <Lines key={heading} heading={heading} lines={lines} day={day} />,
      )}
      {order.fitted !== "" && (
        <section>
          <h3>{words.fitted}</h3>
          <p>{order.fitted}</p>
        </section>
      )}
      <section>
        <h3>{words.parts}</h3>
        {order.parts.length === 0 ? (
          <p class="quiet">{words.noParts}</p>
        ) : (
          <ul class="sheet-list">
            {order.parts.map(({ name, count }) => (
              <li key={name}>{words.times(count, name)}</li>
            ))}
          </ul>
        )}
      </section>
      {(order.work.length > 0 || order.minutes > 0) && (
        <section>
          <h3>{words.work}</h3>
          <table>
            <tbody>
              {order.work.map(({ id, words: what, minutes }) => (
                <tr key={id}>
                  <td>{what}</td>
                  <td class="number">{minutes !== null && words.minutes(minutes)}</td>
                </tr>
              ))}
              <tr>
                <th scope="row">{words.together}</th>
                <td class="number">
                  <strong>{words.minutes(order.minutes)}</strong>
                </td>
              </tr>
            </tbody>
          </table>
        </section>
      )}
      {order.closedAt !== null && (
        <section class="sheet-wide">
          <h3>{words.handedOver}</h3>
          <p>{order.handedOver === "" ? words.nothingSaid : order.handedOver}</p>
        </section>
      )}
      <div class="sheet-foot">
        <div class="sheet-sign">
          <p class="sheet-line">{words.signed}</p>
        </div>
      </div>
    </article>
  );
}

interface LinesProps {
  readonly heading: string;
  readonly lines: readonly OrderLine[];
  readonly day: (at: number) => string;
}

function Lines({ heading, lines, day }: LinesProps) {
  return (
    <section>
      <h3>{heading}</h3>
      <ul class="sheet-list">
        {lines.map(({ id, at, words }) => (
          <li key={id}>
            <span class="sheet-small">{day(at)}</span> {words}
          </li>
        ))}
      </ul>
    </section>
  );
}
