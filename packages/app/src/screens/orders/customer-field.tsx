import { useId } from "preact/hooks";
import type { CustomerListed } from "../../engine/answers/orders/customer-list.ts";
import { TextField } from "../../ui/text-field.tsx";
import { useWords } from "../../words/use-words.ts";
import { type CustomerTyped, customerMeant, namesakes } from "./customer-typed.ts";

interface CustomerFieldProps {
  readonly typed: CustomerTyped;
  readonly customers: readonly CustomerListed[];
  readonly onType: (typed: CustomerTyped) => void;
}

/** Whose bike it is: a name that is known is that customer, any other is a new one. */
export function CustomerField({ typed, customers, onType }: CustomerFieldProps) {
  const words = useWords().orders;
  const list = useId();
  const meant = customerMeant(typed, customers);
  const named = namesakes(typed, customers);
  return (
    <>
      <TextField
        label={words.customerName}
        value={typed.name}
        list={list}
        hint={
          meant !== null
            ? words.knownCustomer(meant.reach)
            : named.length > 1
              ? words.whichCustomer(named.length)
              : words.customerHint
        }
        onInput={(name) => onType({ ...typed, name: name.slice(0, 200) })}
      />
      <datalist id={list}>
        {[...new Set(customers.map(({ name }) => name))].map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      <TextField
        label={words.reach}
        value={typed.reach}
        hint={words.reachHint}
        onInput={(reach) => onType({ ...typed, reach: reach.slice(0, 200) })}
      />
    </>
  );
}
