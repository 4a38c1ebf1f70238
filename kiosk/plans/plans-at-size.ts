import { html } from 'lit';
import type { OwnTable } from '../../shared/sampling/attributes/index.ts';
import type { InspectionPlan } from '../../shared/traveller/index.ts';
import { askedAtSize } from '../../shared/traveller/plan/asked-at-size.ts';
import { writeAsked } from '../../shared/words/write-asked.ts';
import type { DeskRow } from '../desk/sorted-table.ts';
import { pageFormat } from './rule-text.ts';

/** What a lot of this size is asked for by every characteristic of a plan, on each severity. Loaded only when it is asked for. */
export function plansAtSize(plan: InspectionPlan, lotSize: number, tables: readonly OwnTable[]): readonly DeskRow[] {
  return plan.gates.flatMap((gate) => gate.characteristics.flatMap((characteristic) => askedAtSize(characteristic, lotSize, tables).map((line, at): DeskRow => {
    const { class: findingClass, severity, letter, n, samples, rest, origin, notes } = writeAsked(line, pageFormat());
    return {
      key: `${gate.id}/${characteristic.id}/${at}`,
      texts: { gate: gate.name, characteristic: characteristic.name, class: findingClass, severity, letter, n, samples: samples.join('; '), rest: rest.join('; '), note: [...origin, ...notes].join('; ') },
      shown: { samples: samples.map((sample) => html`<div>${sample}</div>`), rest: rest.map((each) => html`<div>${each}</div>`) },
    };
  })));
}
