/** Closes a switch over a union: a case without an answer does not compile, and one that arrives all the same is loud. */
export function neverReached(value: never): never {
  throw new Error(`no case for ${JSON.stringify(value)}`);
}
