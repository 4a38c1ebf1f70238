/** The keys of a union, and one saying for each of its members: a member without words does not compile. */
export type WordsFor<Union, Key extends keyof Union, Out, Extra extends readonly unknown[] = []> = {
  readonly [Value in Union[Key] & string]: (each: Extract<Union, { readonly [K in Key]: Value }>, ...extra: Extra) => Out;
};

/** Says the words of one member of a union. `key` is the member's own value of `Key`; it is passed so that the pair stays typed. */
export function say<Union, Key extends keyof Union, Out, Extra extends readonly unknown[], Value extends Union[Key] & string>(
  words: WordsFor<Union, Key, Out, Extra>, key: Value, each: Extract<Union, { readonly [K in Key]: Value }>, ...extra: Extra
): Out {
  return words[key](each, ...extra);
}

/** The label of a key that may be unknown here, such as one from a later version: then the key itself is shown, never nothing. */
export function labelOf(labels: Readonly<Record<string, string>>, key: string): string {
  return Object.hasOwn(labels, key) ? labels[key] ?? key : key;
}
