/** Puts the focus on an element that a sheet has just shown, once the sheet has taken it for itself. For Lit's `ref`. */
export function focusWhenShown(element: Element | undefined): void {
  if (element instanceof HTMLElement) setTimeout(() => element.focus());
}

/** Brings into sight what a key has just unfolded below it. For Lit's `ref`. */
export function seenWhenShown(element: Element | undefined): void {
  if (element !== undefined) setTimeout(() => element.scrollIntoView({ block: 'nearest', behavior: 'instant' }));
}
