import { hash } from 'node:crypto';
import type { Command } from '../../shared/traveller/index.ts';

/** Stands for one command of one person, to tell a repeated one from another under the same client id. PINs are left out of it. */
export function commandDigest(by: string, command: Command): string {
  return hash('sha256', JSON.stringify([by, withoutPin(command)]), 'base64url').slice(0, 24);
}

function withoutPin(command: Command): unknown {
  switch (command.type) {
    case 'openPlant': return { ...command, keeper: { ...command.keeper, pin: '' } };
    case 'enrolPerson': case 'changePin': return { ...command, pin: '' };
    default: return command;
  }
}
