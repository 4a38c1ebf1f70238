/** A string or number marked with what it stands for, so that two of them cannot change places unseen. */
export type Marked<Base, Mark extends string> = Base & { readonly __mark?: Mark };
