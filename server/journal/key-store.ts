/** Small secrets and settings of this plant by name, such as the key that signs certificates. Not part of the journal's chain. */
export interface KeyStore {
  /** Sets or replaces a value; resolves when durable. */
  put(name: string, value: string | Uint8Array): Promise<void>;
  /** Sets a value unless the name has one; false when it had. Of several servers making a key at once, one wins. */
  putIfAbsent(name: string, value: string | Uint8Array): Promise<boolean>;
  /** @throws OutsideDomain when the value was put as bytes */
  getText(name: string): Promise<string | null>;
  /** @throws OutsideDomain when the value was put as text */
  getBytes(name: string): Promise<Uint8Array | null>;
}
