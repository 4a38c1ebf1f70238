import type { Command } from '../../shared/traveller/index.ts';
import type { Receipt } from '../journal/journal.ts';
import type { PinVault } from '../journal/pin-vault.ts';
import { hashPin } from '../people/pin-hash.ts';

/** The PIN that a command sets, and whose; null for all other commands. */
export function newPinOf(command: Command): { readonly badge: string; readonly pin: string } | null {
  switch (command.type) {
    case 'enrolPerson': case 'changePin': return { badge: command.badge, pin: command.pin };
    case 'openPlant': return { badge: command.keeper.badge, pin: command.keeper.pin };
    default: return null;
  }
}

/**
 * Puts a new PIN's hash in force, does the work, and puts the old one back when the work came to nothing. The hash goes first, so that a
 * crash in between leaves a PIN without its slip, which giving the command again mends, and never a slip whose PIN does not count.
 */
export async function withNewPin<Written extends Pick<Receipt, 'repeated'>>(vault: PinVault, { badge, pin }: { readonly badge: string; readonly pin: string }, work: () => Promise<Written>): Promise<Written> {
  const hash = await hashPin(pin);
  const before = await vault.get(badge);
  const restore = (): Promise<void> => (before === null ? vault.remove(badge) : vault.put(badge, before.hash));
  await vault.put(badge, hash);
  try {
    const receipt = await work();
    // A command repeated under its client id changes nothing, so it brings in no other PIN either.
    if (receipt.repeated) await restore();
    return receipt;
  } catch (fault) {
    await restore();
    throw fault;
  }
}
