import { lastMove, switchingAfter } from '../../sampling/switching/index.ts';
import type { SwitchingEvent } from '../../sampling/switching/index.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireReason } from '../pen.ts';
import type { SwitchingCommand } from './commands.ts';

/** An engineer says whether production is steady, allows reduced inspection, or lets a discontinued inspection go on (on tightened). */
export function decideSwitching(pen: Pen, command: SwitchingCommand): void {
  pen.requireRole(command.type);
  requireReason(command.type, command.reason);
  const switching = pen.find(command.switching, 'switching', 'switching');
  switch (command.type) {
    case 'setSwitching': {
      const { steady, reducedAllowed, reason } = command;
      const events: SwitchingEvent[] = [...(steady === null ? [] : [{ type: 'steadySet' as const, steady }]), ...(reducedAllowed === null ? [] : [{ type: 'reducedAllowedSet' as const, allowed: reducedAllowed }])];
      if (events.length === 0) refuse({ code: 'nothingChanged', what: command.switching });
      const moved = lastMove(switching.state, events.reduce(switchingAfter, switching.state));
      return pen.write(command.switching, { type: 'switchingSet', steady, reducedAllowed, reason, moved });
    }
    case 'resumeInspection': {
      const { severity } = switching.state;
      if (severity !== 'discontinued') refuse({ code: 'notDiscontinued', switching: command.switching, severity });
      return pen.write(command.switching, { type: 'inspectionResumed', reason: command.reason, signature: pen.signature(command.type, 'resumedBy') });
    }
  }
}
