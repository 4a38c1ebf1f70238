let region: HTMLElement | null = null;

/** Says one thing through a live region, for those who do not see the screen. The newest replaces the one before. */
export function announce(text: string): void {
  if (region === null) {
    region = document.createElement('div');
    region.setAttribute('role', 'status');
    region.className = 'unseen';
    document.body.append(region);
  }
  region.textContent = text;
}
