/** After this long without a touch or a key nobody is taken to stand there, ms. */
const idleMs = 10 * 60_000;

/** Calls `onIdle` each time the kiosk has been left alone for long. */
export function watchIdle(onIdle: () => void): void {
  let timer = 0;
  const again = (): void => {
    clearTimeout(timer);
    timer = window.setTimeout(onIdle, idleMs);
  };
  for (const sign of ['pointerdown', 'keydown']) addEventListener(sign, again, { capture: true, passive: true });
  again();
}
