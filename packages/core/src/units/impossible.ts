/** Closes a switch over a union: the compiler proves it is never reached; at run time it throws. */
export function impossible(value: never): never {
  throw new RangeError(`Case not handled: ${JSON.stringify(value)}`);
}
