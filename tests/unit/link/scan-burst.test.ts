import { describe, expect, it } from 'vitest';
import { ScanBurst, type ScannedKey } from '../../../kiosk/shell/scan-listener.ts';

/** Types keys a few milliseconds apart, as a scanner does, and gives back what was scanned. */
function scanned(keys: readonly (string | Partial<ScannedKey>)[], apartMs = 5): string | null {
  const burst = new ScanBurst();
  let text: string | null = null;
  keys.forEach((key, at) => {
    if (key === 'Alt let go') return burst.releaseAlt();
    const heard = burst.hear({ key: '', ctrl: false, alt: false, atMs: at * apartMs, ...(typeof key === 'string' ? { key } : key) });
    if (heard.what === 'scan') text = heard.text;
  });
  return text;
}

describe('a burst of keys that ends with Enter', () => {
  it('is a scan when it holds more than a figure', () => {
    expect(scanned([...'L26-0417', 'Enter'])).toBe('L26-0417');
  });
  it('is left to the keypad when it is a figure, with or without its unit', () => {
    expect(scanned([...'4.762', 'Enter'])).toBeNull();
    expect(scanned([...'-0,5mm', 'Enter'])).toBeNull();
    expect(scanned([...' +012.701 mm', 'Enter'])).toBeNull();
  });
  it('is not left to the keypad when it holds a second figure or a prefix', () => {
    expect(scanned([...'12.70 12.71', 'Enter'])).toBe('12.70 12.71');
    expect(scanned([...'01A+00012.701', 'Enter'])).toBe('01A+00012.701');
  });
  it('is nobody’s scan when it was typed slowly', () => {
    expect(scanned([...'L26-0417', 'Enter'], 200)).toBeNull();
  });
  it('leaves Shift and other silent keys out', () => {
    expect(scanned([{ key: 'Shift' }, 'L', '2', '6', 'Enter'])).toBe('L26');
  });
});

describe('the separators of an ISO/IEC 15434 message', () => {
  const message = '[)>\x1e06\x1dPX1\x1dT26\x1e\x04';
  it('are understood as control keys', () => {
    const ctrl = (key: string): Partial<ScannedKey> => ({ key, ctrl: true });
    expect(scanned([...'[)>', ctrl('^'), ...'06', ctrl(']'), ...'PX1', ctrl(']'), ...'T26', ctrl('^'), ctrl('d'), 'Enter'])).toBe(message);
  });
  it('are understood as bare control characters', () => {
    expect(scanned([...message, 'Enter'])).toBe(message);
  });
  it('are understood as numbers typed with Alt', () => {
    const alt = (digits: string): (string | Partial<ScannedKey>)[] => [...[...digits].map((key) => ({ key, alt: true })), 'Alt let go'];
    expect(scanned([...'[)>', ...alt('0030'), ...'06', ...alt('0029'), ...'PX1', ...alt('029'), ...'T26', ...alt('030'), ...alt('004'), 'Enter'])).toBe(message);
  });
  it('are left to the browser outside such a message', () => {
    const burst = new ScanBurst();
    expect(burst.hear({ key: 'd', ctrl: true, alt: false, atMs: 0 }).what).toBe('pass');
  });
});
