/** A thread that cannot have happened: the fold is loud about it, for it never judges. */
export class BrokenThread extends Error {
  constructor(what: string) { super(what); this.name = 'BrokenThread'; }
}
