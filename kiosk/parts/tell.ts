/** Fires an event of a part: it bubbles, crosses shadow roots and carries `detail`. */
export function tell(part: EventTarget, name: string, detail?: unknown): void {
  part.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}
