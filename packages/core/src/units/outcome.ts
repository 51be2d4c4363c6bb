/**
 * What a function gives when the world, not our code, may stand in the way: a value, or a reason a person
 * can act on. A bug of ours throws instead, with the value and the limit.
 */
export type Outcome<Value, Reason extends string = string> =
  | { readonly ok: true; readonly value: Value }
  | Refusal<Reason>;

export interface Refusal<Reason extends string = string> {
  readonly ok: false;
  /** Short fixed word for programs. */
  readonly reason: Reason;
  /** One sentence for people: what is wrong and what to do about it. */
  readonly detail: string;
  /** The figures of that sentence, rounded as it says them, for the sentences of other languages. */
  readonly given?: Readonly<Record<string, number | string>>;
}

export const accept = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({
  ok: true,
  value,
});

export const refuse = <Reason extends string>(
  reason: Reason,
  detail: string,
  given?: Refusal["given"],
): Refusal<Reason> => ({ ok: false, reason, detail, ...(given && { given }) });
