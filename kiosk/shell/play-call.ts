/** What calls somebody to a press. */
export type CallKind = 'look' | 'drift';

/** Tones of a call: frequency, Hz, and when each begins, s. Rising twice for a look; falling for a drift. Our own choice. */
const TONES: Readonly<Record<CallKind, readonly (readonly [hz: number, atS: number])[]>> = { look: [[660, 0], [880, 0.22], [660, 0.6], [880, 0.82]], drift: [[520, 0], [390, 0.3], [290, 0.6]] };
const toneS = 0.18;
const loudness = 0.25;
let context: AudioContext | null = null;

/** A browser plays nothing before somebody has touched the page. Called at each touch; the first opens the sound. */
export function openSound(): void {
  context ??= new AudioContext();
  if (context.state === 'suspended') void context.resume();
}

/** Plays a call; false where no sound may be made yet. */
export function playCall(kind: CallKind): boolean {
  if (context?.state !== 'running') return false;
  for (const [hz, atS] of TONES[kind]) {
    const [tone, gain] = [context.createOscillator(), context.createGain()];
    const begin = context.currentTime + atS;
    tone.frequency.value = hz;
    // Without a rise and a fall each tone would click.
    gain.gain.setValueAtTime(0, begin);
    gain.gain.linearRampToValueAtTime(loudness, begin + 0.02);
    gain.gain.linearRampToValueAtTime(0, begin + toneS);
    tone.connect(gain).connect(context.destination);
    tone.start(begin);
    tone.stop(begin + toneS);
  }
  return true;
}
