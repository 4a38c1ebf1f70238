/**
 * Commands under way, by client id. A record with no prototype and not a Map: thousands a second come and go here, and a Map lays itself out
 * anew every few hundred of them, each old layout holding on to the next and to all that stood in it until the whole heap is collected.
 * Client ids are letters, digits and hyphens.
 */
export class UnderWay<Answer> {
  readonly #answers: Record<string, Promise<Answer>> = Object.create(null) as Record<string, Promise<Answer>>;
  #size = 0;

  get size(): number {
    return this.#size;
  }

  get(clientId: string): Promise<Answer> | undefined {
    return this.#answers[clientId];
  }

  set(clientId: string, answer: Promise<Answer>): void {
    if (this.#answers[clientId] === undefined) this.#size += 1;
    this.#answers[clientId] = answer;
  }

  delete(clientId: string): void {
    if (this.#answers[clientId] === undefined) return;
    this.#size -= 1;
    delete this.#answers[clientId];
  }
}
